package org.slowbend.app.screens

import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.saveable.rememberSaveable
import androidx.compose.runtime.setValue
import org.slowbend.app.Asked
import org.slowbend.app.Shell
import org.slowbend.app.parts.Choice
import org.slowbend.app.parts.Field
import org.slowbend.app.parts.Heading
import org.slowbend.app.parts.LineRow
import org.slowbend.app.parts.Links
import org.slowbend.app.parts.Notices
import org.slowbend.app.parts.Option
import org.slowbend.app.parts.Section
import org.slowbend.app.parts.Tap
import org.slowbend.app.theme.type
import slowbend.core.Cut
import slowbend.core.MeatTyped
import slowbend.core.Outcome
import slowbend.core.Place
import slowbend.core.StartScreen
import slowbend.core.StartTyped
import slowbend.core.Subject

/** The first screen: cooks under way, a form that starts one, and the past. */
@Composable
fun Start(screen: StartScreen, shell: Shell) = Page(screen.title, shell) {
    if (screen.open.isEmpty() && screen.past.isEmpty()) Text(screen.lead, style = type.bodyLarge)
    Notices(screen.notices, shell)
    screen.open.forEach { LineRow(it, shell) }
    Links(screen.links, shell)
    New(screen, shell)
    Section(shell.frame?.past, screen.past, shell)
    screen.pastNext?.let { next -> Tap(shell.frame?.earlier.orEmpty()) { shell.ask(Asked(before = next)) } }
    Tap(shell.frame?.settings.orEmpty()) { shell.go(Place.Settings) }
}

@Composable
private fun New(screen: StartScreen, shell: Shell) {
    val form = screen.form
    var name by rememberSaveable { mutableStateOf("") }
    var serve by rememberSaveable { mutableStateOf("") }
    var people by rememberSaveable { mutableStateOf("") }
    var meats by rememberSaveable { mutableStateOf(listOf(Row())) }
    Heading(form.heading)
    Field(form.name, name, "name") { name = it }
    Field("${form.serve}. ${shell.frame?.serveHow.orEmpty()}", serve, "serve") { serve = it }
    Field(form.people, people, "people", number = true) { people = it }
    Heading(form.meats)
    meats.forEachIndexed { index, row ->
        Meat(screen, shell, row, index) { changed -> meats = meats.toMutableList().also { it[index] = changed } }
    }
    Tap(shell.frame?.anotherMeat.orEmpty()) { meats = meats + Row() }
    Tap(form.start, main = true) {
        val typed = StartTyped(name, serve, people, meats.mapNotNull { it.typed() })
        shell.recordTyped({ core, viewer, moment -> core.readStart(viewer, typed, moment) }) { done ->
            done.cook()?.let { shell.go(Place.Now(it)) }
        }
    }
}

/** A meat on the form; serializable, so that it is kept while the process is not running. */
private data class Row(val cut: Cut? = null, val weight: String = "", val pit: String? = null) : java.io.Serializable {
    fun typed() = cut?.let { MeatTyped(it, weight, pit) }
}

@Composable
private fun Meat(screen: StartScreen, shell: Shell, row: Row, index: Int, onChange: (Row) -> Unit) {
    val none = Option<Cut?>(null, shell.frame?.noMeat.orEmpty())
    val cuts = screen.cuts.map { Option<Cut?>(it.cut, it.name, it.detail) }
    Choice(shell.frame?.cut.orEmpty(), listOf(none) + cuts, row.cut) { onChange(row.copy(cut = it)) }
    if (row.cut == null) return
    Field(screen.form.weight, row.weight, "weight-$index", number = true) { onChange(row.copy(weight = it)) }
    val pits = screen.pits.map { Option<String?>(it.pit, it.name, it.detail) }
    Choice(screen.form.pit, listOf(Option<String?>(null, shell.frame?.noPit.orEmpty())) + pits, row.pit) { onChange(row.copy(pit = it)) }
}

private fun Outcome.cook() = made.firstNotNullOfOrNull { (it as? Subject.Cook)?.v1 }
