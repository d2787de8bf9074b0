package org.slowbend.app.screens

import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.saveable.rememberSaveable
import androidx.compose.runtime.setValue
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.unit.dp
import org.slowbend.app.Asked
import org.slowbend.app.Shell
import org.slowbend.app.parts.Block
import org.slowbend.app.parts.Cautions
import org.slowbend.app.parts.Field
import org.slowbend.app.parts.Fold
import org.slowbend.app.parts.Framed
import org.slowbend.app.parts.Jobs
import org.slowbend.app.parts.LineRow
import org.slowbend.app.parts.Points
import org.slowbend.app.parts.Sentences
import org.slowbend.app.parts.Slips
import org.slowbend.app.parts.Switch
import org.slowbend.app.parts.Tap
import org.slowbend.app.parts.Taps
import org.slowbend.app.parts.ToPlace
import org.slowbend.app.plans
import org.slowbend.app.theme.At2m
import org.slowbend.app.theme.mm
import org.slowbend.app.theme.type
import slowbend.core.Place
import slowbend.core.PlanProposal
import slowbend.core.PlanScreen
import slowbend.core.Weight

/** Planning a cook: the plans that come of what was said, each accepted whole or left; then what was said, to change it. */
@Composable
fun Plan(screen: PlanScreen, shell: Shell) = Page(screen.title, shell) {
    Sentences(screen.about)
    Text(screen.lead, style = type.bodyLarge)
    screen.fits?.let { Fits(it, shell) }
    screen.refused.firstOrNull()?.let { conflict ->
        Block(Weight.CALL, conflict) { ink -> Points(screen.refused.drop(1), ink) }
    }
    screen.proposals.forEachIndexed { index, proposal -> Proposal(proposal, index, screen, shell) }
    if (screen.proposals.isEmpty()) {
        Said(screen, shell)
    } else {
        Tap(screen.labels.refuse, Modifier.fillMaxWidth()) { shell.go(Place.RunSheet(screen.cook)) }
        Fold(screen.labels.go, "said") { Said(screen, shell) }
    }
    Slips(listOfNotNull(screen.courses), screen.cook, null, shell)
    Taps(shell) {
        HourLater(screen.labels.hourLater, screen.cook, shell)
        screen.links.forEach { ToPlace(it, shell) }
    }
    Cautions(screen.cautions, shell)
}

@Composable
private fun Proposal(plan: PlanProposal, index: Int, screen: PlanScreen, shell: Shell) = Framed {
    Text(plan.heading, style = type.headlineMedium)
    Text(plan.serve, style = type.titleMedium)
    Text(plan.chance, style = type.titleMedium)
    Points(plan.says)
    Tap(plan.accept.label, Modifier.fillMaxWidth().testTag("accept-$index"), index == 0, mm(At2m.TARGET_MM)) {
        shell.press(plan.accept) { shell.go(Place.RunSheet(screen.cook)) }
    }
    if (plan.changes.isNotEmpty()) {
        Fold(screen.labels.changes, "changes-$index") { plan.changes.forEach { LineRow(it, shell) } }
    }
    Fold(screen.labels.jobs, "jobs-$index") { plan.days.forEach { Jobs(it, shell) } }
}

/** What is said for a plan. */
@Composable
private fun Said(screen: PlanScreen, shell: Shell) {
    val labels = screen.labels
    var said by rememberSaveable(screen.typed.toString(), stateSaver = plans) { mutableStateOf(screen.typed) }
    Field(labels.hands, said.hands, "hands", number = true) { said = said.copy(hands = it) }
    Field(labels.sleepFrom, said.sleepFrom, "sleep-from") { said = said.copy(sleepFrom = it) }
    Field(labels.sleepTo, said.sleepTo, "sleep-to") { said = said.copy(sleepTo = it) }
    Switch(labels.watched, said.watched) { said = said.copy(watched = it) }
    Switch(labels.cooler, said.cooler) { said = said.copy(cooler = it) }
    Switch(labels.oven, said.oven) { said = said.copy(oven = it) }
    Field(labels.late, said.late, "late", number = true) { said = said.copy(late = it) }
    Tap(labels.go, Modifier.fillMaxWidth().testTag("go"), main = true, least = 64.dp) {
        shell.ask(Asked(plan = said.copy(go = true)))
    }
}
