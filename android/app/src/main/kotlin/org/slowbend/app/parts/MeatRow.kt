package org.slowbend.app.parts

import androidx.compose.foundation.background
import androidx.compose.foundation.clickable
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.BoxWithConstraints
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.Spacer
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.heightIn
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.layout.width
import androidx.compose.material3.HorizontalDivider
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.graphics.Color
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.Role
import androidx.compose.ui.semantics.clearAndSetSemantics
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.semantics.stateDescription
import androidx.compose.ui.text.TextStyle
import androidx.compose.ui.text.rememberTextMeasurer
import androidx.compose.ui.text.style.TextAlign
import androidx.compose.ui.text.style.TextGeometricTransform
import androidx.compose.ui.unit.dp
import org.slowbend.app.Shell
import org.slowbend.app.theme.At2m
import org.slowbend.app.theme.LocalInks
import org.slowbend.app.theme.boardOf
import org.slowbend.app.theme.mm
import slowbend.core.Line

/** Room for a sign of a weight; it is seen from afar and says what the words beside it say, so it may be small. */
private const val SIGN_MM = 5.5f

/** One meat, read at two meters: its name, and when or how it stands, on one line where both fit. All of it is heard. */
@Composable
fun MeatRow(line: Line, brief: String, shell: Shell) {
    val inks = LocalInks.current.of(line.weight)
    val style = boardOf(At2m.MEAT_MM)
    val said = listOf(line.state, line.detail, shell.frame?.said(line.weight).orEmpty()).filter { it.isNotEmpty() }
    val tap = line.link?.let { place -> Modifier.clickable { shell.go(place) } } ?: Modifier
    Column(
        Modifier.fillMaxWidth().background(inks.ground).then(tap).heightIn(min = mm(At2m.TARGET_MM))
            .testTag("meat").semantics(mergeDescendants = true) { stateDescription = said.joinToString(". ") },
        Arrangement.SpaceBetween,
    ) {
        HorizontalDivider(thickness = 2.dp, color = LocalInks.current.rule)
        Row(Modifier.fillMaxWidth().padding(horizontal = 4.dp), verticalAlignment = Alignment.CenterVertically) {
            val small = boardOf(At2m.MEAT_MM / 2)
            Text(sign(line.weight), Modifier.width(mm(SIGN_MM)).clearAndSetSemantics {}, inks.ink, style = small)
            NameAndBrief(line.name, brief, inks.ink, style)
        }
        Spacer(Modifier)
    }
}

/** The meats that are not shown, counted; a tap shows them. */
@Composable
fun RestRow(counted: String, onTap: () -> Unit) = Column(
    Modifier.fillMaxWidth().clickable(role = Role.Button, onClick = onTap).heightIn(min = mm(At2m.TARGET_MM)).testTag("rest"),
    Arrangement.SpaceBetween,
) {
    HorizontalDivider(thickness = 2.dp, color = LocalInks.current.rule)
    Fitted(counted, LocalInks.current.page.ink, boardOf(At2m.MEAT_MM * COUNTED), Modifier.padding(horizontal = 4.dp))
    Spacer(Modifier)
}

@Composable
private fun NameAndBrief(name: String, brief: String, ink: Color, style: TextStyle) = BoxWithConstraints(Modifier.fillMaxWidth()) {
    val measurer = rememberTextMeasurer()
    val gap = with(measurer.measure(" ", style, softWrap = false)) { size.width }
    val wide = listOf(name, brief).sumOf { measurer.measure(it, style, softWrap = false).size.width } + gap
    val part = constraints.maxWidth / wide.toFloat()
    if (part < NARROWEST) {
        Column {
            Fitted(name, ink, style)
            Fitted(brief, ink, style.copy(textAlign = TextAlign.End), Modifier.fillMaxWidth())
        }
        return@BoxWithConstraints
    }
    val narrow = style.copy(textGeometricTransform = TextGeometricTransform(scaleX = part.coerceAtMost(1f) * SURE))
    Row(Modifier.fillMaxWidth(), Arrangement.SpaceBetween) {
        Text(name, color = ink, style = narrow, softWrap = false)
        Text(brief, color = ink, style = narrow, softWrap = false)
    }
}

/** How large the count of the rest is beside the names of meats, so that it stays on one line: read when stepping closer. */
private const val COUNTED = 0.75f
