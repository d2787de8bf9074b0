package org.slowbend.app.screens

import androidx.compose.foundation.background
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.BoxWithConstraints
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.IntrinsicSize
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxHeight
import androidx.compose.foundation.layout.fillMaxSize
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.height
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
import androidx.compose.ui.unit.Dp
import androidx.compose.ui.unit.dp
import org.slowbend.app.Shell
import org.slowbend.app.later
import org.slowbend.app.night.ToNight
import org.slowbend.app.parts.Buttons
import org.slowbend.app.parts.Cautions
import org.slowbend.app.parts.FirstSight
import org.slowbend.app.parts.Fitted
import org.slowbend.app.parts.Heading
import org.slowbend.app.parts.LineRow
import org.slowbend.app.parts.Links
import org.slowbend.app.parts.MeatRow
import org.slowbend.app.parts.Notices
import org.slowbend.app.parts.RestRow
import org.slowbend.app.parts.Section
import org.slowbend.app.parts.Tap
import org.slowbend.app.parts.ToldBar
import org.slowbend.app.parts.Undoing
import org.slowbend.app.parts.WhenDone
import org.slowbend.app.probes.ToProbes
import org.slowbend.app.theme.At2m
import org.slowbend.app.theme.LocalInks
import org.slowbend.app.theme.boardOf
import org.slowbend.app.theme.mm
import org.slowbend.app.theme.type
import slowbend.core.Headline
import slowbend.core.Pitside
import slowbend.core.Tone

/**
 * Now: the screen of a propped phone, read at two meters. The one next thing, huge; what to do about it; then as many
 * meats as fit, worst first. Held across, what is tapped stands on the side of the hand.
 */
@Composable
fun Now(screen: Pitside, shell: Shell) = BoxWithConstraints(Modifier.fillMaxSize()) {
    val high = maxHeight - EDGE * 2
    if (maxWidth > maxHeight) {
        val halves = listOf<@Composable () -> Unit>(
            { Act(screen, shell) },
            {
                Meats(screen, shell, high) {
                    Top(screen)
                    Takeback(screen, shell)
                }
                Rest(screen, shell)
            },
        )
        Row { (if (shell.leftHanded) halves else halves.reversed()).forEach { Scrolled(Modifier.weight(1f).fillMaxHeight(), it) } }
    } else {
        Scrolled(Modifier.fillMaxSize()) {
            Meats(screen, shell, high) {
                Top(screen)
                Act(screen, shell)
                Takeback(screen, shell)
            }
            Rest(screen, shell)
        }
    }
}

/** Above and below: as little as there may be, so that three meats are seen under the one next thing. */
private val EDGE = 1.dp

@Composable
private fun Scrolled(modifier: Modifier, content: @Composable () -> Unit) =
    Column(modifier.verticalScroll(rememberScrollState()).padding(horizontal = 6.dp, vertical = EDGE)) { content() }

@Composable
private fun Top(screen: Pitside) = Row(Modifier.fillMaxWidth(), Arrangement.SpaceBetween) {
    Text(screen.title, Modifier.weight(1f).semantics { heading() }, style = type.titleMedium)
    Text(screen.clock, style = type.titleMedium)
}

/** The one next thing, and what answers it at one touch. */
@Composable
private fun Act(screen: Pitside, shell: Shell) {
    val now = screen.now
    Verb(now)
    val first = now.first()
    if (first.isEmpty()) return
    Row(Modifier.fillMaxWidth().height(IntrinsicSize.Min).padding(vertical = 1.dp), Arrangement.spacedBy(8.dp)) {
        first.forEach { button ->
            val main = button.tone == Tone.MAIN
            Tap(button.label, Modifier.weight(1f).fillMaxHeight(), main, mm(At2m.TARGET_MM), style = type.headlineMedium) {
                shell.press(button)
            }
        }
    }
}

/** Beside the one next thing: what is meant, and later. */
private fun Headline.first() = buttons.filter { it.tone == Tone.MAIN || it == later() }

@Composable
private fun Verb(now: Headline) {
    val inks = LocalInks.current.of(now.weight)
    Column(
        Modifier.fillMaxWidth().background(inks.ground).padding(horizontal = 6.dp, vertical = 1.dp).testTag("headline")
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

/** What was done last and how to take it back, as wide as there is room, while it is fresh; or why it was not done. */
@Composable
private fun Takeback(screen: Pitside, shell: Shell) {
    ToldBar(shell.told?.copy(undo = null), shell)
    val undo = screen.undo ?: shell.told?.undo ?: return
    Undoing(undo.label) { shell.record(undo.act) }
}

@Composable
private fun Meats(screen: Pitside, shell: Shell, high: Dp, top: @Composable () -> Unit) {
    var open by rememberSaveable(screen.cook) { mutableStateOf(false) }
    val all = screen.meats.size + screen.others.size
    FirstSight(
        if (open) Dp.Infinity else high,
        top,
        screen.meats.size,
        { MeatRow(screen.meats[it], screen.briefs[it], shell) },
    ) { shown ->
        val left = screen.counts.getOrNull(all - shown - 1) ?: return@FirstSight
        RestRow(left) { open = !open }
        if (open) screen.others.forEach { LineRow(it, shell, least = mm(At2m.TARGET_MM)) }
    }
}

/** What is read in the hand, below the first sight. */
@Composable
private fun Rest(screen: Pitside, shell: Shell) {
    val least = mm(At2m.TARGET_MM)
    val now = screen.now
    Text(screen.serve, Modifier.padding(top = 8.dp), style = type.titleMedium)
    if (now.why.isNotEmpty()) Text(now.why, Modifier.padding(top = 8.dp), style = type.bodyLarge)
    Cautions(now.cautions, shell)
    Buttons(now.buttons - now.first().toSet(), shell, least)
    now.link?.let { Links(listOf(it), shell, least) }
    WhenDone(shell, least)
    Notices(screen.notices, shell, least)
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
