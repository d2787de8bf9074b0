package org.slowbend.app.parts

import androidx.compose.foundation.background
import androidx.compose.foundation.clickable
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.heightIn
import androidx.compose.foundation.layout.padding
import androidx.compose.material3.HorizontalDivider
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.clearAndSetSemantics
import androidx.compose.ui.semantics.heading
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.semantics.stateDescription
import androidx.compose.ui.text.TextStyle
import androidx.compose.ui.text.style.TextDecoration
import androidx.compose.ui.unit.Dp
import androidx.compose.ui.unit.dp
import org.slowbend.app.Shell
import org.slowbend.app.theme.LocalInks
import org.slowbend.app.theme.type
import slowbend.core.Frame
import slowbend.core.Line
import slowbend.core.Weight

/** The sign of a weight, for eyes that cannot tell colors apart; the words of the line say it too. */
internal fun sign(weight: Weight) = when (weight) {
    Weight.WAKE -> "‼"
    Weight.CALL -> "●"
    Weight.SOON -> "◐"
    Weight.CALM -> "○"
    Weight.FAINT -> "–"
}

/** The same for ears. */
internal fun Frame.said(weight: Weight) = when (weight) {
    Weight.WAKE -> weightWake
    Weight.CALL -> weightCall
    Weight.SOON -> weightSoon
    Weight.CALM -> weightCalm
    Weight.FAINT -> weightFaint
}

/** One line about one thing: its name, how it stands in words, and where a tap leads. */
@Composable
fun LineRow(
    line: Line,
    shell: Shell,
    name: TextStyle = type.titleLarge,
    state: TextStyle = type.bodyLarge,
    least: Dp = 48.dp,
    detailed: Boolean = true,
) {
    val inks = LocalInks.current.of(line.weight)
    val said = shell.frame?.said(line.weight).orEmpty()
    val tap = line.link?.let { place -> Modifier.clickable { shell.go(place) }.heightIn(min = least) } ?: Modifier
    HorizontalDivider(thickness = 2.dp, color = LocalInks.current.rule)
    Row(
        Modifier.fillMaxWidth().background(inks.ground).then(tap).padding(vertical = 6.dp, horizontal = 8.dp)
            .semantics(mergeDescendants = true) { stateDescription = said },
    ) {
        Text(sign(line.weight), Modifier.padding(end = 8.dp).clearAndSetSemantics {}, inks.ink, style = name)
        Column(Modifier.weight(1f)) {
            val decoration = line.link?.let { TextDecoration.Underline }
            Fitted(line.name, inks.ink, name.copy(textDecoration = decoration))
            if (line.state.isNotEmpty()) Fitted(line.state, inks.ink, state)
            if (detailed && line.detail.isNotEmpty()) Text(line.detail, color = inks.ink, style = type.bodyMedium)
        }
    }
}

/** Lines under a heading; nothing where there are none. */
@Composable
fun Section(heading: String?, lines: List<Line>, shell: Shell, least: Dp = 48.dp) {
    if (lines.isEmpty()) return
    Heading(heading)
    lines.forEach { LineRow(it, shell, least = least) }
}

@Composable
fun Heading(text: String?) =
    Text(text.orEmpty(), Modifier.padding(top = 20.dp, bottom = 4.dp).semantics { heading() }, style = type.titleMedium)
