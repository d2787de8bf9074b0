package org.slowbend.app.parts

import androidx.compose.foundation.Canvas
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.height
import androidx.compose.foundation.layout.padding
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.graphics.Path
import androidx.compose.ui.graphics.drawscope.DrawScope
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.text.TextMeasurer
import androidx.compose.ui.text.drawText
import androidx.compose.ui.text.rememberTextMeasurer
import androidx.compose.ui.unit.dp
import org.slowbend.app.theme.Inks
import org.slowbend.app.theme.LocalInks
import org.slowbend.app.theme.type
import slowbend.core.Area
import slowbend.core.Chart
import slowbend.core.Curve
import slowbend.core.LevelLine

/** How high the field of a chart is; with large letters too, for it is not read but seen. */
private val HIGH = 280.dp

/** The chart on its grid. Who hears it hears one sentence; the lines beside it say the rest. */
@Composable
fun ChartOf(chart: Chart) {
    val inks = LocalInks.current
    val measurer = rememberTextMeasurer()
    Canvas(Modifier.fillMaxWidth().padding(vertical = 8.dp).height(HIGH).semantics { contentDescription = chart.says }) {
        Drawn(chart, inks, measurer, this).all()
    }
    chart.lanes.forEach { lane ->
        Text(lane.name, style = type.bodyMedium)
        Canvas(Modifier.fillMaxWidth().height(12.dp)) {
            for (x in lane.at) {
                val at = x * size.width / chart.width.toFloat()
                drawLine(inks.page.ink, Offset(at, 0f), Offset(at, size.height), 3.dp.toPx())
            }
        }
    }
}

/** One drawing of a chart: the hours stand under the field, the degrees on its left, the numbers at the ends of curves. */
private class Drawn(val chart: Chart, val inks: Inks, val measurer: TextMeasurer, val on: DrawScope) {
    private val small = type.bodyMedium
    private val under = measurer.measure("0", small).size.height.toFloat()
    private val wide = on.size.width
    private val high = on.size.height - under

    private fun x(at: Number) = at.toFloat() * wide / chart.width.toFloat()
    private fun y(at: Number) = high - at.toFloat() * high / chart.height.toFloat()

    fun all() {
        chart.areas.forEach(::shade)
        chart.degrees.forEach { across(y(it.at.toInt())) }
        hours()
        chart.levels.forEach(::level)
        chart.curves.forEachIndexed { index, curve -> draw(curve, chart.curves.take(index).count { it.stroke == curve.stroke }) }
        chart.degrees.forEach { write(it.text, 0f, (y(it.at.toInt()) - under).coerceAtLeast(0f)) }
        val levels = apart(chart.levels.map { y(it.y) - under }, under, high - under)
        chart.levels.zip(levels).forEach { (level, at) -> write(level.label, wide * LEVEL_LABEL, at) }
        numbers()
    }

    private fun level(level: LevelLine) {
        val at = y(level.y)
        on.drawLine(inks.page.ink, Offset(0f, at), Offset(wide, at), LEVEL, pathEffect = on.across(level.kind))
    }

    private fun across(at: Float) = on.drawLine(inks.rule, Offset(0f, at), Offset(wide, at), 1f)

    /** The hours, as many of them in words as there is room for. */
    private fun hours() {
        var free = 0f
        for (tick in chart.hours) {
            val at = x(tick.at.toInt())
            on.drawLine(inks.rule, Offset(at, 0f), Offset(at, high), if (tick.strong) STRONG else 1f)
            val text = measurer.measure(tick.text, small).size.width
            val left = (at - text / 2).coerceIn(0f, (wide - text).coerceAtLeast(0f))
            if (left < free) continue
            write(tick.text, left, high)
            free = left + text + under / 2
        }
    }

    /** Letters on their own ground, so that no line runs through them. */
    private fun write(text: String, left: Float, top: Float) {
        val laid = measurer.measure(text, small.copy(color = inks.page.ink, background = inks.page.ground))
        on.drawText(laid, topLeft = Offset(left, top))
    }

    private fun shade(area: Area) {
        val path = Path()
        val (there, back) = area.upper.chunked(2) to area.lower.chunked(2).reversed()
        (there + back).forEachIndexed { index, (px, py) -> if (index == 0) path.moveTo(x(px), y(py)) else path.lineTo(x(px), y(py)) }
        path.close()
        on.drawPath(path, inks.rule, alpha = SHADE)
    }

    /** Each unbroken piece begins anew; one of a single point is a dot. */
    private fun draw(curve: Curve, nth: Int) {
        val points = curve.points.chunked(2).map { (px, py) -> Offset(x(px), y(py)) }
        var from = 0
        for (run in curve.runs) {
            on.stroke(points.subList(from, from + run.toInt()), curve.stroke, nth, inks.page.ink)
            from += run.toInt()
        }
    }

    private fun numbers() {
        val ends = chart.curves.filter { it.number > 0u && it.points.size >= 2 }
        val tops = apart(ends.map { y(it.points.last()) - under }, under, high - under)
        for ((curve, top) in ends.zip(tops)) {
            val text = measurer.measure("${curve.number}", small)
            write("${curve.number}", (x(curve.points[curve.points.size - 2]) - text.size.width).coerceAtLeast(0f), top)
        }
    }

    private companion object {
        const val LEVEL = 3f
        const val STRONG = 5f
        const val SHADE = 0.3f
        const val LEVEL_LABEL = 0.3f
    }
}
