package org.slowbend.app.probes

import android.content.Intent
import androidx.compose.foundation.background
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.FlowRow
import androidx.compose.foundation.layout.fillMaxSize
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.layout.safeDrawingPadding
import androidx.compose.foundation.rememberScrollState
import androidx.compose.foundation.verticalScroll
import androidx.compose.material3.HorizontalDivider
import androidx.compose.material3.Surface
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.saveable.rememberSaveable
import androidx.compose.runtime.setValue
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.LocalContext
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.LiveRegionMode
import androidx.compose.ui.semantics.heading
import androidx.compose.ui.semantics.liveRegion
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.Dp
import androidx.compose.ui.unit.dp
import org.slowbend.app.parts.Heading
import org.slowbend.app.parts.Tap
import org.slowbend.app.theme.LocalInks
import org.slowbend.app.theme.type
import slowbend.core.Act
import slowbend.core.NearbyProbe
import slowbend.core.ProbeCard
import slowbend.core.ProbesScreen
import slowbend.core.RadioFix
import slowbend.core.RadioTrouble
import slowbend.core.Tone
import slowbend.core.Weight

/** What can be done on the screen of probes. */
interface ProbeHands {
    fun mend(fix: RadioFix)

    fun look()

    fun keep(source: String)

    fun forget(source: String)

    fun place(act: Act)
}

/** The known probes, what keeps them from being heard, and what is found nearby. */
@Composable
fun ProbesPage(screen: ProbesScreen?, told: String, hands: ProbeHands) = Surface(Modifier.fillMaxSize()) {
    screen ?: return@Surface
    Column(Modifier.safeDrawingPadding().verticalScroll(rememberScrollState()).padding(16.dp)) {
        Text(screen.title, Modifier.semantics { heading() }, style = type.headlineMedium)
        if (told.isNotEmpty()) Text(told, Modifier.semantics { liveRegion = LiveRegionMode.Polite }, style = type.titleMedium)
        screen.trouble?.let { Stands(it, hands) }
        screen.probes.forEach { Card(it, hands) }
        Tap(screen.look, Modifier.fillMaxWidth().testTag("find"), main = true) { hands.look() }
        screen.nearbyNone?.let { Text(it, style = type.bodyLarge) }
        if (screen.nearby.isNotEmpty()) Heading(screen.nearbyHeading)
        screen.nearby.forEach { Nearby(it, hands) }
        Text(screen.lead, Modifier.padding(top = 16.dp), style = type.bodyMedium)
    }
}

@Composable
private fun Stands(trouble: RadioTrouble, hands: ProbeHands) {
    val inks = LocalInks.current.wake
    Column(Modifier.fillMaxWidth().background(inks.ground).padding(10.dp)) {
        Text("‼ ${trouble.text}", color = inks.ink, style = type.titleMedium)
        trouble.fix?.let { fix -> Tap(trouble.label, Modifier.testTag("mend")) { hands.mend(fix) } }
    }
}

/** One sensor. Its places come up once they are asked for; a probe without a place asks by itself. */
@Composable
private fun Card(card: ProbeCard, hands: ProbeHands) {
    var open by rememberSaveable(card.source, card.sensor) { mutableStateOf(false) }
    val inks = LocalInks.current.of(card.line.weight)
    HorizontalDivider(thickness = 2.dp, color = LocalInks.current.rule)
    Column(Modifier.fillMaxWidth().background(inks.ground).padding(8.dp)) {
        Column(Modifier.semantics(mergeDescendants = true) {}) {
            val mark = if (card.line.weight == Weight.CALM) "" else "● "
            Text(mark + card.line.name, color = inks.ink, style = type.titleLarge)
            Text(card.line.state, color = inks.ink, style = type.titleMedium)
            Text(card.line.detail, color = inks.ink, style = type.bodyMedium)
        }
        if (card.places.isNotEmpty()) Tap(card.ask, Modifier.testTag("where")) { open = !open }
        if (open) Places(card, hands) { open = false }
        card.forget?.let { label -> Tap(label) { hands.forget(card.source) } }
    }
}

@Composable
private fun Places(card: ProbeCard, hands: ProbeHands, done: () -> Unit) =
    FlowRow(Modifier.fillMaxWidth(), Arrangement.spacedBy(12.dp), Arrangement.spacedBy(12.dp)) {
        card.places.forEach { place ->
            Tap(place.label, main = place.tone == Tone.MAIN) {
                hands.place(place.act)
                done()
            }
        }
    }

@Composable
private fun Nearby(probe: NearbyProbe, hands: ProbeHands) = Column(Modifier.fillMaxWidth().padding(vertical = 8.dp)) {
    Text(probe.name, style = type.titleLarge)
    Text(probe.detail, style = type.bodyMedium)
    Tap(probe.keep) { hands.keep(probe.source) }
}

/** The way here, under the word that the core has for it. */
@Composable
fun ToProbes(label: String?, least: Dp = 48.dp) {
    val context = LocalContext.current
    if (label != null) {
        Tap(label, Modifier.testTag("probes"), least = least) { context.startActivity(Intent(context, ProbesActivity::class.java)) }
    }
}
