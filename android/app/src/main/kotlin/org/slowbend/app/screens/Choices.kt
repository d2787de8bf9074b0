package org.slowbend.app.screens

import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.saveable.rememberSaveable
import androidx.compose.runtime.setValue
import org.slowbend.app.Shell
import org.slowbend.app.night.ToNight
import org.slowbend.app.parts.Choice
import org.slowbend.app.parts.Field
import org.slowbend.app.parts.Heading
import org.slowbend.app.parts.Links
import org.slowbend.app.parts.Notices
import org.slowbend.app.parts.Option
import org.slowbend.app.parts.Tap
import org.slowbend.app.probes.ToProbes
import org.slowbend.app.theme.type
import slowbend.core.Act
import slowbend.core.BandTyped
import slowbend.core.BathTyped
import slowbend.core.Editable
import slowbend.core.FieldLine
import slowbend.core.FieldTyped
import slowbend.core.PitKind
import slowbend.core.Settings
import slowbend.core.SettingsLabels
import slowbend.core.Subject

/** Pits, thermometers and habits of the crew, and how this phone's owner reads. Each field is saved by itself. */
@Composable
fun Choices(screen: Settings, shell: Shell) = Page(screen.title, shell) {
    val labels = screen.labels
    Notices(screen.notices, shell)
    Heading(labels.viewer)
    screen.viewer.forEach { choice ->
        val options = choice.options.map { Option(it.value, it.label) }
        Choice(choice.label, options, choice.options.find { it.chosen }?.value) { shell.choose(choice.field, it) }
    }
    val hands = listOf(Option(false, shell.frame?.handRight.orEmpty()), Option(true, shell.frame?.handLeft.orEmpty()))
    Choice(shell.frame?.hand.orEmpty(), hands, shell.leftHanded) { shell.tapWith(it) }
    Heading(labels.pits)
    screen.pits.forEach { Pit(it, labels, shell) }
    AddPit(labels, shell)
    Heading(labels.thermometers)
    screen.thermometers.forEach { Thermometer(it, labels, shell) }
    AddThermometer(labels, shell)
    Heading(labels.habits)
    screen.habits.forEach { Fields(it, it.fields, labels, shell) }
    screen.about.forEach { Text(it, style = type.bodyMedium) }
    Links(screen.links, shell)
    ToProbes(shell.frame?.probes)
    ToNight()
}

@Composable
private fun Fields(thing: Editable, fields: List<FieldLine>, labels: SettingsLabels, shell: Shell) {
    Text(thing.name, style = type.titleLarge)
    Text(thing.detail, style = type.bodyLarge)
    fields.forEach { OneField(thing, it, labels, shell) }
}

@Composable
private fun OneField(thing: Editable, field: FieldLine, labels: SettingsLabels, shell: Shell) {
    var text by rememberSaveable(thing.of.toString(), field.field, field.value) { mutableStateOf(field.value) }
    val label = listOf(field.label, field.unit).filter { it.isNotEmpty() }.joinToString(" · ")
    if (field.field == "pit_kind") {
        Choice(label, labels.kinds.map { Option(it.kind.recorded(), it.name) }, text) { text = it }
    } else {
        Field(label, text, "${thing.name}/${field.field}") { text = it }
    }
    if (text == field.value) return
    Tap(labels.save) {
        val typed = FieldTyped(thing.of, field.field, text, field.saw)
        shell.recordTyped({ core, viewer, _ -> core.readField(viewer, typed) })
    }
}

/** The name that the log gives a kind. */
private fun PitKind.recorded() = name.lowercase()

@Composable
private fun Pit(pit: Editable, labels: SettingsLabels, shell: Shell) {
    val (band, others) = pit.fields.partition { it.field.startsWith("band") }
    Fields(pit, others, labels, shell)
    var typed by rememberSaveable(pit.of.toString(), band.map { it.value }.toString()) { mutableStateOf(band.map { it.value }) }
    band.forEachIndexed { index, field ->
        Field("${field.label} · ${field.unit}", typed[index], "${pit.name}/${field.field}", number = true) { text ->
            typed = typed.toMutableList().also { it[index] = text }
        }
    }
    if (typed == band.map { it.value }) return
    Tap(labels.save) {
        val (low, high, minutes) = typed
        val whole = BandTyped(pit.of, low, high, minutes, band.first().saw)
        shell.recordTyped({ core, viewer, _ -> core.readBand(viewer, whole) })
    }
}

@Composable
private fun AddPit(labels: SettingsLabels, shell: Shell) {
    var name by rememberSaveable { mutableStateOf("") }
    var kind by rememberSaveable { mutableStateOf(PitKind.KETTLE) }
    Field(labels.name, name, "new-pit") { name = it }
    Choice(labels.kind, labels.kinds.map { Option(it.kind, it.name) }, kind) { kind = it }
    Tap(labels.addPit) { shell.record(Act.AddPit(name, kind, null, null)) { name = "" } }
}

@Composable
private fun Thermometer(thermometer: Editable, labels: SettingsLabels, shell: Shell) {
    Fields(thermometer, thermometer.fields, labels, shell)
    val id = (thermometer.of as? Subject.Thermometer)?.v1 ?: return
    var read by rememberSaveable(id) { mutableStateOf("") }
    var height by rememberSaveable(id) { mutableStateOf<String?>(null) }
    Text(labels.check, style = type.titleMedium)
    val baths = listOf(Option(false, labels.ice), Option(true, labels.boiling))
    Choice("", baths, height != null) { boiling -> height = if (boiling) "" else null }
    height?.let { typed -> Field(labels.altitude, typed, "${thermometer.name}/height", number = true) { height = it } }
    Field(labels.read, read, "${thermometer.name}/read", number = true) { read = it }
    Tap(labels.save) {
        val typed = BathTyped(id, height, read)
        shell.recordTyped({ core, viewer, _ -> core.readBath(viewer, typed) }) { read = "" }
    }
}

@Composable
private fun AddThermometer(labels: SettingsLabels, shell: Shell) {
    var name by rememberSaveable { mutableStateOf("") }
    Field(labels.name, name, "new-thermometer") { name = it }
    Tap(labels.addThermometer) { shell.record(Act.AddThermometer(name)) { name = "" } }
}
