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
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.saveable.rememberSaveable
import androidx.compose.runtime.setValue
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.LiveRegionMode
import androidx.compose.ui.semantics.heading
import androidx.compose.ui.semantics.liveRegion
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import org.slowbend.app.Shell
import org.slowbend.app.later
import org.slowbend.app.night.ToNight
import org.slowbend.app.parts.Buttons
import org.slowbend.app.parts.Cautions
import org.slowbend.app.parts.Fitted
import org.slowbend.app.parts.Heading
import org.slowbend.app.parts.LineRow
import org.slowbend.app.parts.Links
import org.slowbend.app.parts.Notices
import org.slowbend.app.parts.Section
import org.slowbend.app.parts.Tap
import org.slowbend.app.parts.ToldBar
import org.slowbend.app.probes.ToProbes
import org.slowbend.app.theme.At2m
import org.slowbend.app.theme.LocalInks
import org.slowbend.app.theme.boardOf
import org.slowbend.app.theme.mm
import org.slowbend.app.theme.type
import slowbend.core.Headline
import slowbend.core.Pitside
import slowbend.core.Tone
import slowbend.core.Undo

/**
 * Now: the screen of a propped phone, read at two meters. The one next thing, huge; what to do about it; then the meats,
 * worst first. Held across, what is tapped stands on the side of the hand.
 */
@Composable
fun Now(screen: Pitside, shell: Shell) = BoxWithConstraints(Modifier.fillMaxSize()) {
    if (maxWidth > maxHeight) {
        val halves = listOf<@Composable () -> Unit>({ Hands(screen, shell) }, { NextThing(screen) })
        Row {
            (if (shell.leftHanded) halves else halves.reversed()).forEach { half ->
                Column(Modifier.weight(1f).fillMaxHeight().verticalScroll(rememberScrollState()).padding(8.dp)) { half() }
            }
        }
    } else {
        Column(Modifier.fillMaxSize().verticalScroll(rememberScrollState()).padding(8.dp)) {
            NextThing(screen)
            Hands(screen, shell)
        }
    }
}

@Composable
private fun NextThing(screen: Pitside) {
    Row(Modifier.fillMaxWidth(), Arrangement.SpaceBetween) {
        Text(screen.title, Modifier.weight(1f).semantics { heading() }, style = type.titleMedium)
        Text(screen.clock, style = type.titleMedium)
    }
    Verb(screen.now)
    Text(screen.serve, style = type.titleMedium)
}

/** What is tapped, and what is read once the next thing is known. */
@Composable
private fun Hands(screen: Pitside, shell: Shell) {
    val least = mm(At2m.TARGET_MM)
    val now = screen.now
    val (first, others) = now.buttons.partition { it.tone == Tone.MAIN || it == now.later() }
    Buttons(first, shell, least)
    screen.undo?.let { Takeback(it, shell) }
    ToldBar(shell.told?.copy(undo = null), shell)
    Meats(screen, shell)
    if (now.why.isNotEmpty()) Text(now.why, Modifier.padding(top = 8.dp), style = type.bodyLarge)
    Cautions(now.cautions)
    Buttons(others, shell, least)
    now.link?.let { Links(listOf(it), shell, least) }
    Notices(screen.notices, shell)
    Rest(screen, shell)
}

@Composable
private fun Verb(now: Headline) {
    val inks = LocalInks.current.of(now.weight)
    Column(
        Modifier.fillMaxWidth().background(inks.ground).padding(8.dp).testTag("headline")
            .semantics(mergeDescendants = true) {
                liveRegion = LiveRegionMode.Polite
                heading()
            },
    ) {
        val (huge, large) = boardOf(At2m.VERB_MM) to boardOf(At2m.MEAT_MM)
        Fitted(now.verb, inks.ink, huge, Modifier.testTag("verb"))
        if (now.what.isNotEmpty()) Fitted(now.what, inks.ink, large, Modifier.testTag("what"))
        if (now.`when`.isNotEmpty()) Fitted(now.`when`, inks.ink, huge, Modifier.testTag("when"))
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
    var open by rememberSaveable(screen.cook) { mutableStateOf(false) }
    screen.rest?.let { rest -> Tap(rest, Modifier.fillMaxWidth().testTag("rest"), least = least, style = style) { open = !open } }
    if (open) screen.others.forEach { LineRow(it, shell, least = least) }
}

@Composable
private fun Rest(screen: Pitside, shell: Shell) {
    val least = mm(At2m.TARGET_MM)
    Section(shell.frame?.pits, screen.pits, shell, least)
    Section(shell.frame?.next, screen.next, shell, least)
    if (screen.watch.isNotEmpty()) Heading(shell.frame?.watch)
    screen.watch.forEach { Text(it, style = type.bodyLarge) }
    if (screen.more.isNotEmpty()) Heading(shell.frame?.atHand)
    Buttons(screen.more, shell, least)
    Links(screen.links, shell, least)
    ToProbes(shell.frame?.probes, least)
    ToNight(least)
}
