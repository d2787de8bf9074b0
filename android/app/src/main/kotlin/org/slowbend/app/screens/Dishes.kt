package org.slowbend.app.screens

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
import org.slowbend.app.Shell
import org.slowbend.app.parts.Block
import org.slowbend.app.parts.Buttons
import org.slowbend.app.parts.Cautions
import org.slowbend.app.parts.Choice
import org.slowbend.app.parts.Field
import org.slowbend.app.parts.Fold
import org.slowbend.app.parts.LineRow
import org.slowbend.app.parts.Links
import org.slowbend.app.parts.Option
import org.slowbend.app.parts.Tap
import org.slowbend.app.parts.fillIn
import org.slowbend.app.theme.At2m
import org.slowbend.app.theme.mm
import org.slowbend.app.theme.type
import slowbend.core.DishCard
import slowbend.core.DishesScreen

/** What is not meat: ready or not, how it is held, what was written down about it. */
@Composable
fun Dishes(screen: DishesScreen, shell: Shell) = Page(screen.title, shell) {
    Text(screen.serve, style = type.titleMedium)
    if (screen.dishes.isEmpty()) Text(screen.none, style = type.bodyLarge)
    screen.dishes.forEach { key(it.dish) { Dish(it, screen, shell) } }
    Fold(screen.labels.add, "add") { close -> Add(screen, shell, close) }
    Cautions(screen.cautions, shell)
    Links(screen.links, shell, mm(At2m.TARGET_MM))
}

@Composable
private fun Dish(dish: DishCard, screen: DishesScreen, shell: Shell) {
    val labels = screen.labels
    Block(dish.weight, dish.name) { ink ->
        Text(dish.state, color = ink, style = type.titleMedium)
        Text(dish.detail, color = ink, style = type.bodyLarge)
    }
    Buttons(dish.buttons, shell, mm(At2m.TARGET_MM))
    dish.notes.forEach { LineRow(it, shell) }
    Fold(labels.note, "note-${dish.dish}") { close ->
        Line(labels.note, labels.write, "", "${dish.name}/note") { text ->
            shell.fillIn(screen.cook, "dish-note", mapOf("dish" to dish.dish, "text" to text), close)
        }
    }
    Fold(labels.name, "name-${dish.dish}") { close ->
        Line(labels.name, labels.write, dish.name, "${dish.name}/name") { text ->
            shell.fillIn(screen.cook, "dish-name", mapOf("dish" to dish.dish, "name" to text), close)
        }
    }
}

/** One line to write, and the button that records it. */
@Composable
private fun Line(label: String, submit: String, usual: String, tag: String, onWrite: (String) -> Unit) {
    var text by rememberSaveable { mutableStateOf(usual) }
    Field(label, text, tag) { text = it }
    Tap(submit, Modifier.testTag("$tag/submit"), main = true) { onWrite(text) }
}

@Composable
private fun Add(screen: DishesScreen, shell: Shell, close: () -> Unit) {
    val labels = screen.labels
    var name by rememberSaveable { mutableStateOf("") }
    var held by rememberSaveable { mutableStateOf("hot") }
    Field(labels.name, name, "dish") { name = it }
    Choice(labels.held, listOf(Option("hot", labels.hot), Option("cold", labels.cold)), held) { held = it }
    Tap(labels.add, Modifier.fillMaxWidth().testTag("dish/submit"), main = true) {
        shell.fillIn(screen.cook, "dish", mapOf("name" to name, "hot" to held), close)
    }
}
