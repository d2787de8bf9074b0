package org.slowbend.app.screens

import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.ui.unit.Dp
import org.slowbend.app.Shell
import org.slowbend.app.parts.Buttons
import org.slowbend.app.parts.Cautions
import org.slowbend.app.parts.Fold
import org.slowbend.app.parts.Heading
import org.slowbend.app.parts.LineRow
import org.slowbend.app.parts.Links
import org.slowbend.app.parts.Points
import org.slowbend.app.parts.Slips
import org.slowbend.app.parts.WhenDoneFolded
import org.slowbend.app.theme.At2m
import org.slowbend.app.theme.LocalInks
import org.slowbend.app.theme.mm
import org.slowbend.app.theme.type
import slowbend.core.FireGroup
import slowbend.core.FireScreen
import slowbend.core.FireStep

/** The fire of a pit, for gloves: what is put on, a tap each; when to feed next; then what is tapped seldom, folded. */
@Composable
fun Fire(screen: FireScreen, shell: Shell) = Page(screen.title, shell, screen.undo, mm(At2m.TARGET_MM)) {
    val least = mm(At2m.TARGET_MM)
    LineRow(screen.state, shell, least = least)
    Group(screen.feed, shell, least)
    screen.next.forEach { LineRow(it, shell, least = least) }
    Buttons(listOfNotNull(screen.accept), shell, least)
    Text(screen.rings, style = type.bodyMedium)
    WhenDoneFolded(shell, least)
    Heading(screen.jobsTitle)
    screen.jobs.forEach { Step(it, shell, least) }
    Heading(screen.smokeTitle)
    screen.smoke.forEach { LineRow(it, shell, least = least) }
    Points(screen.smokeAdvice)
    screen.smokeTaps.firstOrNull()?.let { Groups(it.heading, screen.smokeTell, screen.smokeTaps, "smoke", shell, least) }
    if (screen.vents.isNotEmpty()) Groups(screen.ventsTitle, "", screen.vents, "vents", shell, least)
    Groups(screen.weatherTitle, screen.weatherLead, screen.weather, "weather", shell, least)
    Slips(listOfNotNull(screen.weigh), screen.cook, null, shell, least)
    Cautions(screen.cautions, shell)
    Text(screen.source, style = type.bodyMedium, color = LocalInks.current.soft)
    Links(screen.links, shell, least)
}

/** Taps of one kind, with what was tapped last. */
@Composable
private fun Group(group: FireGroup, shell: Shell, least: Dp) {
    Heading(group.heading)
    Text(group.state, style = type.bodyLarge)
    Buttons(group.buttons, shell, least)
}

/** Groups folded under one heading; what was said of each stands beside it. */
@Composable
private fun Groups(title: String, lead: String, groups: List<FireGroup>, tag: String, shell: Shell, least: Dp) {
    Fold(title, tag, least) {
        if (lead.isNotEmpty()) Text(lead, style = type.bodyLarge)
        groups.forEach { Group(it, shell, least) }
    }
    Text(groups.joinToString(" · ") { it.state }, style = type.bodyMedium)
}

/** One job of the fire: how, and with what care. The one that is next stands open. */
@Composable
private fun Step(step: FireStep, shell: Shell, least: Dp) =
    Fold("${step.name} · ${step.state}", "job-${step.name}", least, step.isNext) {
        Text(step.how, style = type.bodyLarge)
        Cautions(step.cautions, shell)
        Buttons(step.buttons, shell, least)
    }
