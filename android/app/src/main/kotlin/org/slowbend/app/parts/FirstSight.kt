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
 * As many meats as there is room for within [high] under [top], worst first; the rest is counted below. Each is measured as
 * it is drawn, so no meat is begun that would stand cut at the edge; one is always shown.
 */
@Composable
fun FirstSight(
    high: Dp,
    top: @Composable () -> Unit,
    meats: Int,
    meat: @Composable (Int) -> Unit,
    rest: @Composable (shown: Int) -> Unit,
) = SubcomposeLayout(Modifier.fillMaxWidth()) { constraints ->
    val loose = constraints.copy(minHeight = 0, maxHeight = Constraints.Infinity)
    fun of(slot: Any, content: @Composable () -> Unit) = subcompose(slot) { Column { content() } }.map { it.measure(loose) }
    val above = of("top", top)
    val room = (if (high == Dp.Infinity) PLENTY else high.roundToPx()) - above.high()
    val rows = mutableListOf<List<Placeable>>()
    while (rows.size < meats && (rows.isEmpty() || rows.sumOf { it.high() } < room)) {
        val index = rows.size
        rows += of(index) { meat(index) }
    }
    var counted = of("rest ${rows.size}") { rest(rows.size) }
    while (rows.size > 1 && rows.sumOf { it.high() } + counted.high() > room) {
        rows.removeAt(rows.lastIndex)
        counted = of("rest ${rows.size}") { rest(rows.size) }
    }
    val all = above + rows.flatten() + counted
    layout(constraints.maxWidth, all.high()) {
        var y = 0
        for (one in all) {
            one.placeRelative(0, y)
            y += one.height
        }
    }
}

private fun List<Placeable>.high() = sumOf { it.height }

/** Pixels that no screen has. */
private const val PLENTY = 1_000_000
