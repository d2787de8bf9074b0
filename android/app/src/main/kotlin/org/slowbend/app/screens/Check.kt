package org.slowbend.app.screens

import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.saveable.rememberSaveable
import androidx.compose.runtime.setValue
import org.slowbend.app.Shell
import org.slowbend.app.parts.Cautions
import org.slowbend.app.parts.Choice
import org.slowbend.app.parts.Field
import org.slowbend.app.parts.Heading
import org.slowbend.app.parts.Links
import org.slowbend.app.parts.Option
import org.slowbend.app.parts.Switch
import org.slowbend.app.parts.Tap
import org.slowbend.app.parts.Verdict
import org.slowbend.app.theme.type
import slowbend.core.CheckScreen
import slowbend.core.CheckTyped
import slowbend.core.SpotTyped
import slowbend.core.TestForm
import slowbend.core.ThermometerChoice

/** Trying one meat: the tests in order, how each is done, what each outcome means. */
@Composable
fun Check(screen: CheckScreen, shell: Shell) = Page(screen.title, shell) {
    var chosen by rememberSaveable { mutableStateOf(mapOf<String, String>()) }
    var typed by rememberSaveable { mutableStateOf(mapOf<String, String>()) }
    var thermometer by rememberSaveable { mutableStateOf<String?>(null) }
    var leftIn by rememberSaveable { mutableStateOf(false) }
    Cautions(screen.cautions, shell)
    screen.tests.forEach { test ->
        Test(test, chosen[test.field], typed, { chosen = chosen + (test.field to it) }, { spot, text -> typed = typed + (spot to text) })
    }
    WhichThermometer(screen.thermometers, shell, thermometer) { thermometer = it }
    Switch(shell.frame?.leftIn.orEmpty(), leftIn) { leftIn = it }
    Tap(screen.submit, main = true) {
        val spots = screen.tests.flatMap { it.spots }.map { SpotTyped(it.spot, typed[it.field].orEmpty()) }
        val pass = CheckTyped(screen.piece, chosen.values.toList(), spots, thermometer, leftIn)
        shell.recordTyped({ core, viewer, _ -> core.readCheck(viewer, pass) }) { shell.back() }
    }
    Verdict(screen.verdict, shell)
    Links(screen.links, shell)
}

/** The thermometer it was read with, where some are listed. */
@Composable
internal fun WhichThermometer(all: List<ThermometerChoice>, shell: Shell, chosen: String?, onChoose: (String?) -> Unit) {
    if (all.isEmpty()) return
    val listed = all.map { Option<String?>(it.id, it.name, it.detail) }
    val other = Option<String?>(null, shell.frame?.otherThermometer.orEmpty())
    Choice(shell.frame?.thermometer.orEmpty(), listed + other, chosen, onChoose = onChoose)
}

/** One test: how it is done, what can come of it, and where a temperature is read. */
@Composable
internal fun Test(
    test: TestForm,
    chosen: String?,
    typed: Map<String, String>,
    onChoose: (String) -> Unit,
    onType: (String, String) -> Unit,
) {
    Heading(test.name)
    Text(test.how, style = type.bodyLarge)
    Choice("", test.outcomes.map { Option(it.value, it.label, it.means) }, chosen, onChoose = onChoose)
    test.spots.forEach { spot ->
        Field("${spot.name} (${spot.unit})", typed[spot.field].orEmpty(), spot.field, number = true) { onType(spot.field, it) }
    }
}
