package org.slowbend.app.parts

import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.layout.Placeable
import androidx.compose.ui.layout.SubcomposeLayout
import androidx.compose.ui.unit.Constraints
import androidx.compose.ui.unit.Dp

/**
 * As many meats as there is room for within [high] under [top], worst first; the rest is counted on one line. A line is
 * [least] high at the least, so no meat is begun that would stand cut at the edge, and one is always shown.
 */
@Composable
fun FirstSight(
    high: Dp,
    least: Dp,
    top: @Composable () -> Unit,
    meats: Int,
    meat: @Composable (Int) -> Unit,
    rest: @Composable (shown: Int) -> Unit,
) = SubcomposeLayout(Modifier.fillMaxWidth()) { constraints ->
    val loose = constraints.copy(minHeight = 0, maxHeight = Constraints.Infinity)
    val above = subcompose("top") { Column { top() } }.map { it.measure(loose) }
    var room = (if (high == Dp.Infinity) PLENTY else high.roundToPx()) - above.sumOf { it.height }
    val rows = mutableListOf<Placeable>()
    for (index in 0 until meats) {
        val kept = if (index == meats - 1) 0 else least.roundToPx()
        if (rows.isNotEmpty() && room < least.roundToPx() + kept) break
        val row = subcompose(index) { meat(index) }.map { it.measure(loose) }
        rows += row
        room -= row.sumOf { it.height }
    }
    val counted = subcompose("rest") { Column { rest(rows.size) } }.map { it.measure(loose) }
    val all = above + rows + counted
    layout(constraints.maxWidth, all.sumOf { it.height }) {
        var y = 0
        for (one in all) {
            one.placeRelative(0, y)
            y += one.height
        }
    }
}

/** Pixels that no screen has. */
private const val PLENTY = 1_000_000
