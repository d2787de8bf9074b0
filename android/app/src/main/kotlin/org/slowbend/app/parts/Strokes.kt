package org.slowbend.app.parts

import androidx.compose.foundation.Canvas
import androidx.compose.foundation.layout.height
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.layout.width
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.graphics.Color
import androidx.compose.ui.graphics.Path
import androidx.compose.ui.graphics.PathEffect
import androidx.compose.ui.graphics.StrokeCap
import androidx.compose.ui.graphics.drawscope.DrawScope
import androidx.compose.ui.unit.dp
import org.slowbend.app.theme.LocalInks
import slowbend.core.LevelKind
import slowbend.core.Stroke
import androidx.compose.ui.graphics.drawscope.Stroke as Pen

/** Widths of the curves of one kind, in their order; a number at its end tells each for sure. */
private val WIDTHS = listOf(2.5f, 5f, 1.5f, 3.5f)

/** One unbroken piece of a curve. Kinds are told apart by dashes, curves of one kind by width and number, never by color. */
internal fun DrawScope.stroke(points: List<Offset>, kind: Stroke, nth: Int, ink: Color) {
    val wide = WIDTHS[nth % WIDTHS.size].dp.toPx()
    if (kind == Stroke.HAND || points.size == 1) return points.forEach { drawCircle(ink, wide * 1.5f, it) }
    val path = Path().apply {
        points.forEachIndexed { index, at -> if (index == 0) moveTo(at.x, at.y) else lineTo(at.x, at.y) }
    }
    drawPath(path, ink, style = Pen(wide, cap = StrokeCap.Butt, pathEffect = dashes(kind)))
}

private fun DrawScope.dashes(kind: Stroke) = when (kind) {
    Stroke.MEAT, Stroke.HAND -> null
    Stroke.PIT -> every(12f, 5f)
    Stroke.DOUBTFUL -> every(2f, 4f)
    Stroke.AHEAD -> every(5f, 5f)
}

/** How a line across is broken. */
internal fun DrawScope.across(kind: LevelKind) = when (kind) {
    LevelKind.MINIMUM -> every(16f, 4f)
    LevelKind.PULL -> every(3f, 6f)
}

private fun DrawScope.every(drawn: Float, left: Float) =
    PathEffect.dashPathEffect(floatArrayOf(drawn.dp.toPx(), left.dp.toPx()))

/** How a curve is drawn, beside its words. */
@Composable
fun Sample(kind: Stroke, nth: Int) {
    val ink = LocalInks.current.page.ink
    Canvas(Modifier.padding(end = 8.dp).width(56.dp).height(24.dp)) {
        val middle = size.height / 2
        val dots = listOf(0.1f, 0.5f, 0.9f).map { Offset(size.width * it, middle) }
        stroke(if (kind == Stroke.HAND) dots else listOf(Offset(0f, middle), Offset(size.width, middle)), kind, nth, ink)
    }
}

/** The same heights, pushed down or up until none is nearer than [by] to another. */
internal fun apart(at: List<Float>, by: Float, most: Float): List<Float> {
    val placed = at.toMutableList()
    val order = at.indices.sortedBy { at[it] }
    var least = 0f
    for (index in order) {
        placed[index] = maxOf(placed[index], least)
        least = placed[index] + by
    }
    var end = most
    for (index in order.reversed()) {
        placed[index] = minOf(placed[index], end).coerceAtLeast(0f)
        end = placed[index] - by
    }
    return placed
}
