package org.slowbend.app.screens

import androidx.compose.foundation.background
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.BoxWithConstraints
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxHeight
import androidx.compose.foundation.layout.fillMaxSize
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.rememberScrollState
import androidx.compose.foundation.verticalScroll
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.LiveRegionMode
import androidx.compose.ui.semantics.heading
import androidx.compose.ui.semantics.liveRegion
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import org.slowbend.app.Shell
import org.slowbend.app.didIt
import org.slowbend.app.later
import org.slowbend.app.parts.Buttons
import org.slowbend.app.parts.Cautions
import org.slowbend.app.parts.Heading
import org.slowbend.app.parts.LineRow
import org.slowbend.app.parts.Links
import org.slowbend.app.parts.Notices
import org.slowbend.app.parts.Section
import org.slowbend.app.parts.Tap
import org.slowbend.app.parts.ToldBar
import org.slowbend.app.theme.At2m
import org.slowbend.app.theme.LocalInks
import org.slowbend.app.theme.boardOf
import org.slowbend.app.theme.mm
import org.slowbend.app.theme.type
import slowbend.core.Headline
import slowbend.core.Pitside
import slowbend.core.Undo

/** Now: the screen of a propped phone, read at two meters. The one next thing, huge; then the meats, worst first. */
@Composable
fun Now(screen: Pitside, shell: Shell) = BoxWithConstraints(Modifier.fillMaxSize()) {
    val wide = maxWidth > maxHeight
    val halves = listOf<@Composable () -> Unit>({ NextThing(screen, shell) }, { Meats(screen, shell) })
    if (wide) {
        Row {
            val placed = if (shell.leftHanded) halves else halves.reversed()
            placed.forEach { half ->
                Column(Modifier.weight(1f).fillMaxHeight().verticalScroll(rememberScrollState()).padding(8.dp)) { half() }
            }
        }
    } else {
        Column(Modifier.fillMaxSize().verticalScroll(rememberScrollState()).padding(8.dp)) { halves.forEach { it() } }
    }
}

@Composable
private fun NextThing(screen: Pitside, shell: Shell) {
    Row(Modifier.fillMaxWidth(), Arrangement.SpaceBetween) {
        Text(screen.title, Modifier.weight(1f).semantics { heading() }, style = type.titleMedium)
        Text(screen.clock, style = type.titleMedium)
    }
    Verb(screen.now)
    val least = mm(At2m.TARGET_MM)
    val now = screen.now
    val first = listOfNotNull(now.didIt(), now.later())
    Buttons(first, shell, least)
    screen.undo?.let { Takeback(it, shell) }
    ToldBar(shell.told?.copy(undo = null), shell)
    Text(now.why, style = type.bodyLarge)
    Buttons(now.buttons - first.toSet(), shell, least)
    now.link?.let { Links(listOf(it), shell, least) }
    Cautions(now.cautions)
    Notices(screen.notices, shell)
}

@Composable
private fun Verb(now: Headline) {
    val inks = LocalInks.current.of(now.weight)
    Column(
        Modifier.fillMaxWidth().background(inks.ground).padding(8.dp).testTag("headline")
            .semantics(mergeDescendants = true) { liveRegion = LiveRegionMode.Polite; heading() },
    ) {
        Text(now.verb, Modifier.testTag("verb"), inks.ink, style = boardOf(At2m.VERB_MM))
        if (now.what.isNotEmpty()) Text(now.what, Modifier.testTag("what"), inks.ink, style = boardOf(At2m.MEAT_MM))
        if (now.`when`.isNotEmpty()) Text(now.`when`, Modifier.testTag("when"), inks.ink, style = boardOf(At2m.VERB_MM))
    }
}

/** The last act, to be taken back: as wide as there is room, while the core says that it is fresh. */
@Composable
private fun Takeback(undo: Undo, shell: Shell) = Tap(
    undo.label,
    Modifier.fillMaxWidth().padding(vertical = 6.dp).testTag("undo"),
    least = mm(At2m.TARGET_MM),
    style = type.displaySmall,
) { shell.record(undo.act) }

@Composable
private fun Meats(screen: Pitside, shell: Shell) {
    val style = boardOf(At2m.MEAT_MM)
    val least = mm(At2m.TARGET_MM)
    Column(Modifier.testTag("meats")) {
        screen.meats.forEach { LineRow(it, shell, style, style, least, detailed = false) }
    }
    screen.rest?.let { Text(it, Modifier.testTag("rest"), style = style) }
    Text(screen.serve, Modifier.padding(vertical = 8.dp), style = type.titleLarge)
    Section(shell.frame?.pits, screen.pits, shell)
    Section(shell.frame?.next, screen.next, shell)
    if (screen.watch.isNotEmpty()) Heading(shell.frame?.watch)
    screen.watch.forEach { Text(it, style = type.bodyLarge) }
    if (screen.more.isNotEmpty()) Heading(shell.frame?.atHand)
    Buttons(screen.more, shell, least)
    Links(screen.links, shell, least)
}
