package org.slowbend.app.screens

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.FlowRow
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.saveable.rememberSaveable
import androidx.compose.runtime.setValue
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.unit.dp
import org.slowbend.app.Shell
import org.slowbend.app.parts.Block
import org.slowbend.app.parts.Cautions
import org.slowbend.app.parts.Field
import org.slowbend.app.parts.Fold
import org.slowbend.app.parts.Heading
import org.slowbend.app.parts.LineRow
import org.slowbend.app.parts.Links
import org.slowbend.app.parts.Steps
import org.slowbend.app.parts.Switch
import org.slowbend.app.parts.Tap
import org.slowbend.app.parts.Target
import org.slowbend.app.parts.WhenDoneFolded
import org.slowbend.app.parts.sign
import org.slowbend.app.theme.At2m
import org.slowbend.app.theme.mm
import org.slowbend.app.theme.type
import slowbend.core.OpeningMeat
import slowbend.core.OpeningScreen
import slowbend.core.Weight

/**
 * One opening of a pit: what is due of each meat is chosen already, and one button, always in sight, records all of it.
 * What a hand chose stays chosen, whatever the screen says anew; what it did not touch follows the screen.
 */
@Composable
fun Opening(screen: OpeningScreen, shell: Shell) {
    var done by rememberSaveable(screen.pit) { mutableStateOf(Doings()) }
    var thermometer by rememberSaveable(screen.pit) { mutableStateOf<String?>(null) }
    val least = mm(At2m.TARGET_MM)
    val submit = @Composable {
        Tap(screen.labels.submit, Modifier.fillMaxWidth().padding(4.dp).testTag("opened"), true, least) {
            val typed = done.typed(screen, thermometer)
            shell.recordTyped({ core, viewer, _ -> core.readOpening(viewer, typed) }) { shell.back() }
        }
    }
    Page(screen.title, shell, least = least, foot = submit.takeIf { screen.meats.isNotEmpty() }) {
        LineRow(screen.state, shell, least = least)
        Text(screen.lead, style = type.titleMedium)
        screen.meats.forEach { OneMeat(it, screen, shell, done) { changed -> done = changed } }
        if (screen.order.isNotEmpty()) Heading(screen.labels.order)
        Steps(screen.order)
        screen.after?.let { Text(it, style = type.titleMedium) }
        if (screen.meats.any { it.isRead() }) WhichThermometer(screen.thermometers, shell, thermometer) { thermometer = it }
        if (screen.meats.isNotEmpty()) WhenDoneFolded(shell, least)
        Cautions(screen.cautions, shell)
        Links(screen.links, shell, least)
    }
}

private fun OpeningMeat.isRead() = tests.any { it.spots.isNotEmpty() }

@Composable
private fun OneMeat(meat: OpeningMeat, screen: OpeningScreen, shell: Shell, done: Doings, onChange: (Doings) -> Unit) {
    Block(meat.weight, meat.name) { ink ->
        Text(meat.state, color = ink, style = type.titleMedium)
        if (meat.detail.isNotEmpty()) Text(meat.detail, color = ink, style = type.bodyMedium)
    }
    FlowRow(Modifier.fillMaxWidth(), Arrangement.spacedBy(8.dp), Arrangement.spacedBy(8.dp)) {
        meat.choices.forEach { choice ->
            val isOn = done.isOn(meat, choice)
            val tag = Modifier.testTag("${meat.name}/${choice.does.name}")
            Target(choice.label, isOn, tag, mm(At2m.TARGET_MM)) { onChange(done.turned(meat, choice, !isOn)) }
        }
    }
    if (meat.tests.isNotEmpty()) {
        val label = if (meat.testsDue) "${sign(Weight.CALL)} ${screen.labels.tests}" else screen.labels.tests
        Fold(label, "tests-${meat.piece}", mm(At2m.TARGET_MM)) { Tried(meat, screen, done, onChange) }
    }
    Fold(screen.labels.note, "note-${meat.piece}", mm(At2m.TARGET_MM)) {
        Field(screen.labels.note, done.text(meat, "note"), "${meat.name}/note") { onChange(done.said(meat, "note", it)) }
    }
}

/** What is tried of a meat while it is open, as on its own screen. */
@Composable
private fun Tried(meat: OpeningMeat, screen: OpeningScreen, done: Doings, onChange: (Doings) -> Unit) {
    val typed = meat.tests.flatMap { it.spots }.associate { it.field to done.text(meat, it.field) }
    meat.tests.forEach { test ->
        Test(test, done.text(meat, test.field), typed, { onChange(done.said(meat, test.field, it)) }) { spot, text ->
            onChange(done.said(meat, spot, text))
        }
    }
    if (meat.isRead()) Switch(screen.labels.leftIn, done.isLeftIn(meat)) { onChange(done.leftIn(meat, it)) }
}
