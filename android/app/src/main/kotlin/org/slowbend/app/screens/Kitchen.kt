package org.slowbend.app.screens

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.FlowRow
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.material3.HorizontalDivider
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.saveable.rememberSaveable
import androidx.compose.runtime.setValue
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.heading
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import org.slowbend.app.Shell
import org.slowbend.app.parts.Block
import org.slowbend.app.parts.Buttons
import org.slowbend.app.parts.Cautions
import org.slowbend.app.parts.Heading
import org.slowbend.app.parts.Links
import org.slowbend.app.parts.Points
import org.slowbend.app.parts.Sentences
import org.slowbend.app.parts.Slips
import org.slowbend.app.parts.Switch
import org.slowbend.app.parts.Tap
import org.slowbend.app.theme.LocalInks
import org.slowbend.app.theme.type
import slowbend.core.KitchenGroup
import slowbend.core.KitchenLine
import slowbend.core.KitchenPart
import slowbend.core.KitchenScreen
import slowbend.core.KitchenSheet
import slowbend.core.Place
import slowbend.core.Weight

/** The kitchen of a cook: what is mixed, shared out and bought, each section with what is written down of it. */
@Composable
fun Kitchen(screen: KitchenScreen, shell: Shell) = Page(screen.title, shell) {
    Text(screen.lead, style = type.bodyLarge)
    Tap(screen.toSheet) { shell.go(Place.KitchenSheet(screen.cook)) }
    screen.parts.forEach { part ->
        Told(part, shell)
        if (part.by.isNotEmpty()) Text(part.by, style = type.bodyMedium, color = LocalInks.current.soft)
        Buttons(part.buttons, shell)
        Slips(part.slips, screen.cook, null, shell)
    }
    Links(screen.links, shell)
}

/** What a section says: what asks for an eye, what is weighed, what follows. */
@Composable
private fun Told(part: KitchenPart, shell: Shell) {
    Text(part.heading, Modifier.padding(top = 28.dp, bottom = 4.dp).semantics { heading() }, style = type.headlineMedium)
    if (part.lead.isNotEmpty()) Text(part.lead, style = type.bodyLarge)
    part.flags.forEach { Block(Weight.CALL, it) {} }
    part.groups.forEach { group ->
        if (group.heading.isNotEmpty()) Heading(group.heading)
        group.lines.forEach { Weighed(it) }
    }
    Points(part.notes)
    Cautions(part.cautions, shell)
}

/** One line on the scale: what, and how much at the edge, where the eye looks for it. */
@Composable
private fun Weighed(line: KitchenLine) {
    HorizontalDivider(color = LocalInks.current.rule)
    FlowRow(
        Modifier.fillMaxWidth().padding(vertical = 6.dp).semantics(mergeDescendants = true) {},
        Arrangement.SpaceBetween,
    ) {
        Text(line.name, Modifier.padding(end = 12.dp), style = type.bodyLarge)
        Text(line.amount, style = type.titleLarge)
        if (line.detail.isNotEmpty()) Text(line.detail, Modifier.fillMaxWidth(), LocalInks.current.soft, style = type.bodyMedium)
    }
}

/** The same without the forms, in order, to be ticked off while it is done. What is ticked stays on this phone. */
@Composable
fun OnPaper(screen: KitchenSheet, shell: Shell) = Page(screen.title, shell) {
    Sentences(screen.about)
    Ticked(screen.jobs)
    screen.parts.forEach { Told(it, shell) }
    Links(screen.links, shell)
}

@Composable
private fun Ticked(jobs: KitchenGroup) {
    var done by rememberSaveable { mutableStateOf(setOf<String>()) }
    if (jobs.lines.isNotEmpty()) Heading(jobs.heading)
    jobs.lines.forEach { job ->
        val label = listOf(job.name, job.amount, job.detail).filter { it.isNotEmpty() }.joinToString(" · ")
        Switch(label, label in done) { on -> done = if (on) done + label else done - label }
    }
}
