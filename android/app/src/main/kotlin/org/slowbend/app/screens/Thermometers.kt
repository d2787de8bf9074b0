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
import org.slowbend.app.Shell
import org.slowbend.app.parts.Block
import org.slowbend.app.parts.Choice
import org.slowbend.app.parts.Field
import org.slowbend.app.parts.Fold
import org.slowbend.app.parts.Heading
import org.slowbend.app.parts.LineRow
import org.slowbend.app.parts.Links
import org.slowbend.app.parts.Option
import org.slowbend.app.parts.Points
import org.slowbend.app.parts.Steps
import org.slowbend.app.parts.Tap
import org.slowbend.app.theme.LocalInks
import org.slowbend.app.theme.type
import slowbend.core.Act
import slowbend.core.Bath
import slowbend.core.BathGuide
import slowbend.core.BathTyped
import slowbend.core.ThermometersScreen

/** Checking thermometers: how each stands, the baths step by step, and what one showed. */
@Composable
fun Thermometers(screen: ThermometersScreen, shell: Shell) = Page(screen.title, shell) {
    val labels = screen.labels
    Text(screen.lead, style = type.bodyLarge)
    screen.none?.let { Text(it, style = type.titleMedium) }
    if (screen.thermometers.isNotEmpty()) Heading(labels.standing)
    screen.thermometers.forEach { one ->
        Block(one.weight, one.name) { ink ->
            Text(one.state, color = ink, style = type.titleMedium)
            Text(one.means, color = ink, style = type.bodyLarge)
            Points(one.checks, ink)
        }
    }
    screen.baths.forEach { Guide(it, labels.heights, shell) }
    if (screen.thermometers.isNotEmpty()) Read(screen, shell)
    Fold(labels.add, "add") { close -> Add(screen, shell, close) }
    Heading(labels.rules)
    Points(screen.rules)
    Text(screen.source, style = type.bodyMedium, color = LocalInks.current.soft)
    Links(screen.links, shell)
}

@Composable
private fun Guide(bath: BathGuide, heights: String, shell: Shell) {
    Heading(bath.name)
    Text(bath.expected, style = type.titleMedium)
    Steps(bath.steps)
    if (bath.heights.isNotEmpty()) Fold(heights, "heights") { bath.heights.forEach { LineRow(it, shell) } }
}

/** What a thermometer showed in a bath; the core reads it and says what is made of it. */
@Composable
private fun Read(screen: ThermometersScreen, shell: Shell) {
    val labels = screen.labels
    var which by rememberSaveable { mutableStateOf(screen.thermometers.first().thermometer) }
    var boiling by rememberSaveable { mutableStateOf(false) }
    var read by rememberSaveable { mutableStateOf("") }
    var height by rememberSaveable { mutableStateOf(labels.altitudeValue) }
    Heading(labels.heading)
    Choice(labels.thermometer, screen.thermometers.map { Option(it.thermometer, it.name) }, which) { which = it }
    Choice(labels.bath, screen.baths.map { Option(it.bath is Bath.Boiling, it.name) }, boiling) { boiling = it }
    if (boiling) Field(labels.altitude, height, "height", number = true) { height = it }
    Field(labels.read, read, "read", number = true) { read = it }
    Tap(labels.record, Modifier.fillMaxWidth().testTag("record"), main = true) {
        val typed = BathTyped(which, height.takeIf { boiling }, read)
        shell.recordTyped({ core, viewer, _ -> core.readBath(viewer, typed) }) { read = "" }
    }
}

@Composable
private fun Add(screen: ThermometersScreen, shell: Shell, close: () -> Unit) {
    var name by rememberSaveable { mutableStateOf("") }
    Field(screen.labels.name, name, "thermometer") { name = it }
    Tap(screen.labels.add, Modifier.testTag("thermometer/submit"), main = true) {
        shell.record(Act.AddThermometer(name)) { close() }
    }
}
