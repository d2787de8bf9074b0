package org.slowbend.app.screens

import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import org.slowbend.app.Shell
import org.slowbend.app.parts.Block
import org.slowbend.app.parts.Buttons
import org.slowbend.app.parts.Cautions
import org.slowbend.app.parts.Fold
import org.slowbend.app.parts.Heading
import org.slowbend.app.parts.LineRow
import org.slowbend.app.parts.Links
import org.slowbend.app.parts.Steps
import org.slowbend.app.parts.WhenDoneFolded
import org.slowbend.app.theme.At2m
import org.slowbend.app.theme.LocalInks
import org.slowbend.app.theme.mm
import org.slowbend.app.theme.type
import slowbend.core.Caution
import slowbend.core.TroubleScreen
import slowbend.core.Weight

/** The fire is not as it should be: what the readings show stands first, with what to try, in order; then all else, folded. */
@Composable
fun Amiss(screen: TroubleScreen, shell: Shell) = Page(screen.title, shell, least = mm(At2m.TARGET_MM)) {
    val least = mm(At2m.TARGET_MM)
    LineRow(screen.state, shell, least = least)
    Text(screen.lead, style = type.bodyLarge)
    val (now, others) = screen.troubles.partition { it.isNow }
    now.forEach { Block(Weight.WAKE, it.name) { ink -> Steps(it.steps, ink) } }
    Heed(now.flatMap { it.cautions }.distinct(), screen.food, now.flatMap { it.food }.distinct(), shell)
    if (screen.buttons.isNotEmpty()) {
        Heading(screen.did)
        Buttons(screen.buttons, shell, least)
        WhenDoneFolded(shell, least)
    }
    others.forEach { card ->
        Fold(card.name, "trouble-${card.trouble}", least) {
            Steps(card.steps)
            Heed(card.cautions, screen.food, card.food, shell)
        }
    }
    Links(screen.links, shell, least)
    Text(screen.source, style = type.bodyMedium, color = LocalInks.current.soft)
}

@Composable
private fun Heed(cautions: List<Caution>, heading: String, food: List<Caution>, shell: Shell) {
    Cautions(cautions, shell)
    if (food.isNotEmpty()) Heading(heading)
    Cautions(food - cautions.toSet(), shell)
}
