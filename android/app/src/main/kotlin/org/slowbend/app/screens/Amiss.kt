package org.slowbend.app.screens

import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.ui.unit.Dp
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
import slowbend.core.TroubleCard
import slowbend.core.TroubleScreen
import slowbend.core.Weight

/** The fire is not as it should be: what the readings show stands open, with what to try, in order; then all else. */
@Composable
fun Amiss(screen: TroubleScreen, shell: Shell) = Page(screen.title, shell, least = mm(At2m.TARGET_MM)) {
    val least = mm(At2m.TARGET_MM)
    LineRow(screen.state, shell, least = least)
    Text(screen.lead, style = type.bodyLarge)
    screen.troubles.forEach { Trouble(it, screen.food, shell, least) }
    if (screen.buttons.isNotEmpty()) {
        Heading(screen.did)
        Buttons(screen.buttons, shell, least)
        WhenDoneFolded(shell, least)
    }
    Links(screen.links, shell, least)
    Text(screen.source, style = type.bodyMedium, color = LocalInks.current.soft)
}

@Composable
private fun Trouble(card: TroubleCard, food: String, shell: Shell, least: Dp) {
    if (card.isNow) {
        Block(Weight.WAKE, card.name) { ink -> Steps(card.steps, ink) }
        Heed(card, food, shell, least)
    } else {
        Fold(card.name, "trouble-${card.trouble}", least) {
            Steps(card.steps)
            Heed(card, food, shell, least)
        }
    }
}

@Composable
private fun Heed(card: TroubleCard, food: String, shell: Shell, least: Dp) {
    Cautions(card.cautions, shell, least)
    if (card.food.isNotEmpty()) Heading(food)
    Cautions(card.food, shell, least)
}
