package org.slowbend.app.screens

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.FlowRow
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.key
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.saveable.rememberSaveable
import androidx.compose.runtime.setValue
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.unit.dp
import org.slowbend.app.Shell
import org.slowbend.app.parts.Buttons
import org.slowbend.app.parts.Cautions
import org.slowbend.app.parts.Choice
import org.slowbend.app.parts.Field
import org.slowbend.app.parts.Fold
import org.slowbend.app.parts.LineRow
import org.slowbend.app.parts.Links
import org.slowbend.app.parts.Option
import org.slowbend.app.parts.Tap
import org.slowbend.app.parts.Target
import org.slowbend.app.parts.WhenDoneFolded
import org.slowbend.app.theme.At2m
import org.slowbend.app.theme.mm
import org.slowbend.app.theme.type
import slowbend.core.MeatMove
import slowbend.core.MovesTyped
import slowbend.core.PitCard
import slowbend.core.PitsScreen
import slowbend.core.PlacedMeat

/** How each pit stands, where to go from it, and what sits where. */
@Composable
fun Pits(screen: PitsScreen, shell: Shell) = Page(screen.title, shell, least = mm(At2m.TARGET_MM)) {
    val least = mm(At2m.TARGET_MM)
    if (screen.pits.isEmpty()) Text(screen.none, style = type.bodyLarge)
    screen.pits.forEach { pit ->
        key(pit.pit) {
            LineRow(pit.line, shell, least = least)
            Links(pit.links, shell, least)
            pit.meats.forEach { Text("${it.name} · ${it.state}", style = type.titleMedium) }
            Buttons(pit.buttons, shell, least)
            if (pit.meats.isNotEmpty()) {
                Fold(screen.labels.heading, "where-${pit.pit}", least) { close -> Where(pit, screen, shell, close) }
            }
            pit.facts.forEach { LineRow(it, shell, least = least) }
        }
    }
    if (screen.pits.any { it.buttons.isNotEmpty() }) WhenDoneFolded(shell, least)
    Cautions(screen.cautions, shell)
    Links(screen.links, shell, least)
}

/** Where each meat of a pit sits, and to which pit it goes. */
@Composable
private fun Where(pit: PitCard, screen: PitsScreen, shell: Shell, close: () -> Unit) {
    var spots by rememberSaveable { mutableStateOf(mapOf<String, String>()) }
    var pits by rememberSaveable { mutableStateOf(mapOf<String, String>()) }
    fun spot(meat: PlacedMeat) = spots[meat.piece] ?: meat.spot
    fun to(meat: PlacedMeat) = pits[meat.piece] ?: pit.pit
    Text(screen.labels.lead, style = type.bodyLarge)
    pit.meats.forEach { meat ->
        Text(meat.name, style = type.titleLarge)
        Field(screen.labels.spot, spot(meat), "${meat.name}/spot") { spots = spots + (meat.piece to it) }
        FlowRow(Modifier.fillMaxWidth(), Arrangement.spacedBy(8.dp), Arrangement.spacedBy(8.dp)) {
            pit.spots.forEach { spot ->
                val tag = Modifier.testTag("${meat.name}/$spot")
                Target(spot, spot == spot(meat), tag) { spots = spots + (meat.piece to spot) }
            }
        }
        val choices = screen.choices.map { Option(it.pit, it.name, it.detail) }
        Choice(screen.labels.pit, choices, to(meat)) { pits = pits + (meat.piece to it) }
    }
    Tap(screen.labels.submit, Modifier.testTag("moves"), main = true) {
        val moves = MovesTyped(pit.meats.map { MeatMove(it.piece, to(it), spot(it)) }, null)
        shell.recordTyped({ core, _, _ -> core.readMoves(moves) }) { close() }
    }
}
