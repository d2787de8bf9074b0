package org.slowbend.app.screens

import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import org.slowbend.app.Shell
import org.slowbend.app.parts.Buttons
import org.slowbend.app.parts.Heading
import org.slowbend.app.theme.type
import slowbend.core.AheadCard
import slowbend.core.AheadChoice

/** The hours ahead of one meat: a forecast, which nothing rings or judges by. */
@Composable
fun Ahead(card: AheadCard, shell: Shell) {
    Heading(card.heading)
    Text(card.ready, style = type.titleLarge)
    card.check?.let { Text(it, style = type.titleLarge) }
    Buttons(listOfNotNull(card.accept), shell)
    card.stall?.let { Text(it, style = type.bodyLarge) }
    if (card.choices.isNotEmpty()) Heading(card.choicesHeading)
    card.choices.forEach { Choice(it) }
    card.notes.forEach { Text(it, style = type.bodyMedium) }
}

/** What could be done, and when it would then be ready. */
@Composable
private fun Choice(choice: AheadChoice) {
    Text(choice.label, style = type.titleMedium)
    Text(choice.ready, style = type.bodyLarge)
    Text(choice.shift, style = type.bodyLarge)
}
