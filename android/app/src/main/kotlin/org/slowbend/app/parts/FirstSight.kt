package org.slowbend.app.parts

import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.layout.Placeable
import androidx.compose.ui.layout.SubcomposeLayout
import androidx.compose.ui.semantics.clearAndSetSemantics
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

    // Only measured: it is neither placed nor read out.
    fun tried(slot: Any, content: @Composable () -> Unit) = of(slot) { Box(Modifier.clearAndSetSemantics {}) { content() } }.high()
    val above = of("top", top)
    val room = (if (high == Dp.Infinity) PLENTY else high.roundToPx()) - above.high()
    val heights = mutableListOf<Int>()
    while (heights.size < meats && (heights.isEmpty() || heights.sum() < room)) {
        val index = heights.size
        heights += tried("meat? $index") { meat(index) }
    }
    while (heights.size > 1 && heights.sum() + tried("rest? ${heights.size}") { rest(heights.size) } > room) {
        heights.removeAt(heights.lastIndex)
    }
    val shown = heights.size
    val all = above + (0 until shown).flatMap { of(it) { meat(it) } } + of("rest") { rest(shown) }
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
