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
import org.slowbend.app.parts.Cautions
import org.slowbend.app.parts.Choice
import org.slowbend.app.parts.Field
import org.slowbend.app.parts.Framed
import org.slowbend.app.parts.Heading
import org.slowbend.app.parts.Option
import org.slowbend.app.parts.Points
import org.slowbend.app.parts.Section
import org.slowbend.app.parts.Switch
import org.slowbend.app.parts.TakeFile
import org.slowbend.app.parts.Tap
import org.slowbend.app.theme.type
import slowbend.core.Act
import slowbend.core.BeginMeat
import slowbend.core.BeginMeatTyped
import slowbend.core.BeginScreen
import slowbend.core.BeginTyped
import slowbend.core.NewPit
import slowbend.core.Place
import slowbend.core.Subject

/** Takes the text of a card that somebody handed over; the core says what it is, or why it is none. */
@Composable
fun TakeCard(shell: Shell) = Page(shell.frame?.card.orEmpty(), shell) {
    var text by rememberSaveable { mutableStateOf("") }
    Text(shell.frame?.cardHow.orEmpty(), style = type.bodyLarge)
    Field(shell.frame?.cardText.orEmpty(), text, "card", lines = 6) { text = it }
    Tap(shell.frame?.cardRead.orEmpty(), Modifier.testTag("read"), main = true) { shell.ask(Asked(handed = text)) }
    TakeFile(shell.frame?.cardFile.orEmpty(), shell) { shell.ask(Asked(handed = it)) }
}

/** Beginning a cook from a card, or as an earlier one: all of it filled in, to be changed where it differs this time. */
@Composable
fun Begin(screen: BeginScreen, shell: Shell) = Page(screen.title, shell) {
    val labels = screen.labels
    var name by rememberSaveable { mutableStateOf(screen.name) }
    var serve by rememberSaveable { mutableStateOf(screen.serve) }
    var people by rememberSaveable { mutableStateOf(screen.people) }
    var rows by rememberSaveable { mutableStateOf(screen.meats.map { Planned(false, it.weight, it.pit, it.newPit?.toInt()) }) }
    Text(screen.lead, style = type.bodyLarge)
    Points(screen.told)
    screen.by?.let { Text(it, style = type.titleMedium) }
    Field(labels.name, name, "name") { name = it }
    Field(labels.serve, serve, "serve") { serve = it }
    Text(labels.serveHow, style = type.bodyMedium)
    Field(labels.people, people, "people", number = true) { people = it }
    Heading(labels.meats)
    screen.meats.forEachIndexed { index, meat ->
        Meat(meat, rows[index], index, screen, shell) { changed -> rows = rows.toMutableList().also { it[index] = changed } }
    }
    Section(labels.dishes, screen.dishes, shell)
    if (screen.notes.isNotEmpty()) Heading(labels.notes)
    Points(screen.notes)
    Tap(labels.start, Modifier.fillMaxWidth().testTag("begin"), main = true, least = 64.dp) {
        val new = screen.newPits.filter { pit -> rows.any { it.isFor(pit) } }
        shell.begin(new) { pits -> BeginTyped(screen.card, name, serve, people, rows.map { it.typed(pits) }) }
    }
    Cautions(screen.cautions, shell)
}

/** The pits that are new here are added once all else can be read; then the cook begins. */
private fun Shell.begin(new: List<NewPit>, typed: (Map<Int, String>) -> BeginTyped) = recordTyped({ core, viewer, moment ->
    core.readBegin(viewer, typed(emptyMap()), moment)
    val pits = new.associate { pit ->
        pit.place.toInt() to core.act(viewer, Act.AddPit(pit.name, pit.kind, null, null), moment).made.pit()
    }
    core.readBegin(viewer, typed(pits), moment)
}) { done -> done.made.firstNotNullOfOrNull { (it as? Subject.Cook)?.v1 }?.let { go(Place.Now(it)) } }

private fun List<Subject>.pit() = firstNotNullOf { (it as? Subject.Pit)?.v1 }

/** A meat of the card as it stands in the form; serializable, so that it is kept while the process is not running. */
private data class Planned(val leftOut: Boolean, val weight: String, val pit: String?, val newPit: Int?) : java.io.Serializable {
    fun isFor(new: NewPit) = !leftOut && newPit == new.place.toInt()

    fun typed(pits: Map<Int, String>) = BeginMeatTyped(leftOut, weight, pit ?: pits[newPit])
}

@Composable
private fun Meat(meat: BeginMeat, row: Planned, index: Int, screen: BeginScreen, shell: Shell, onChange: (Planned) -> Unit) = Framed {
    val labels = screen.labels
    Text(meat.name, style = type.titleLarge)
    Text(meat.detail, style = type.bodyLarge)
    Switch(labels.leftOut, row.leftOut) { onChange(row.copy(leftOut = it)) }
    if (row.leftOut) return@Framed
    Field(labels.weight, row.weight, "weight-$index", number = true) { onChange(row.copy(weight = it)) }
    val known = screen.pits.map { Option<Pair<String?, Int?>>(it.pit to null, it.name, it.detail) }
    val new = screen.newPits.map { Option<Pair<String?, Int?>>(null to it.place.toInt(), it.label) }
    val none = Option<Pair<String?, Int?>>(null to null, shell.frame?.noPit.orEmpty())
    Choice(labels.pit, known + new + none, row.pit to row.newPit) { (pit, place) -> onChange(row.copy(pit = pit, newPit = place)) }
}
