package org.slowbend.app.night

import android.content.Context
import android.content.Intent
import androidx.compose.foundation.background
import androidx.compose.foundation.layout.Column
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
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.LocalContext
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.res.stringResource
import androidx.compose.ui.semantics.heading
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.Dp
import androidx.compose.ui.unit.dp
import org.slowbend.app.R
import org.slowbend.app.parts.Heading
import org.slowbend.app.parts.Tap
import org.slowbend.app.theme.LocalInks
import org.slowbend.app.theme.type
import slowbend.core.Line
import slowbend.core.NightScreen
import slowbend.core.RadioTrouble
import slowbend.core.Weight

/** What lets you sleep: the phone, the probes, what will wake you. What is red has its fix beside it. */
@Composable
fun Night(
    phone: List<PhoneLine>,
    night: NightScreen?,
    trouble: String?,
    unheard: RadioTrouble?,
    onFix: (Intent) -> Unit,
    onPit: () -> Unit,
    onProbes: () -> Unit,
    onTryOut: () -> Unit,
) = Surface(Modifier.fillMaxSize()) {
    Column(Modifier.safeDrawingPadding().verticalScroll(rememberScrollState()).padding(16.dp)) {
        Text(stringResource(R.string.night_title), Modifier.semantics { heading() }, style = type.headlineMedium)
        trouble?.let { Standing(it, "", isWell = false) }
        Text(stringResource(R.string.night_try_how), style = type.bodyLarge)
        Tap(stringResource(R.string.night_try), Modifier.testTag("try"), main = true, onTap = onTryOut)
        Heading(stringResource(R.string.night_phone))
        phone.forEach { line ->
            Standing(line.name, line.state, line.isWell)
            if (!line.isWell) Tap(stringResource(R.string.night_fix, line.name)) { onFix(line.fix) }
        }
        Pits(night?.pits.orEmpty(), onPit)
        Probes(night?.probes.orEmpty(), unheard, onProbes)
        Lines(R.string.night_wakes, night?.wakes.orEmpty(), R.string.night_no_wakes)
        Lines(R.string.night_alone, night?.alone.orEmpty(), R.string.night_no_pits)
    }
}

/** The pits as their probes tell; one that is not well is mended at the pit. */
@Composable
private fun Pits(pits: List<Line>, onPit: () -> Unit) {
    Heading(stringResource(R.string.night_probes))
    if (pits.isEmpty()) Text(stringResource(R.string.night_no_pits), style = type.bodyLarge)
    pits.forEach { pit ->
        val well = pit.weight == Weight.CALM
        Standing(pit.name, listOf(pit.state, pit.detail).filter { it.isNotEmpty() }.joinToString(" · "), well)
        if (!well) Tap(stringResource(R.string.night_see_pit, pit.name), onTap = onPit)
    }
}

/** Whether each probe is alive, and what keeps all of them from being heard; both are mended on the screen of probes. */
@Composable
private fun Probes(probes: List<Line>, unheard: RadioTrouble?, onProbes: () -> Unit) {
    unheard?.let { Standing(it.text, "", isWell = false) }
    probes.forEach { Standing(it.name, it.state, it.weight == Weight.CALM) }
    val isWell = unheard == null && probes.all { it.weight == Weight.CALM }
    if (!isWell) Tap(stringResource(R.string.night_fix, stringResource(R.string.night_probes)), onTap = onProbes)
}

@Composable
private fun Lines(title: Int, lines: List<Line>, none: Int) {
    Heading(stringResource(title))
    if (lines.isEmpty()) Text(stringResource(none), style = type.bodyLarge)
    lines.forEach { line ->
        Standing(line.name, listOf(line.detail, line.state).filter { it.isNotEmpty() }.joinToString(" · "), isWell = true)
    }
}

/** One line; the mark and the words say what the color says. */
@Composable
private fun Standing(name: String, state: String, isWell: Boolean) {
    val inks = LocalInks.current.run { if (isWell) page else wake }
    HorizontalDivider(thickness = 2.dp, color = LocalInks.current.rule)
    Column(Modifier.fillMaxWidth().background(inks.ground).padding(8.dp).semantics(mergeDescendants = true) {}) {
        Text(if (isWell) name else "‼ $name", color = inks.ink, style = type.titleLarge)
        if (state.isNotEmpty()) Text(state, color = inks.ink, style = type.bodyLarge)
    }
}

/** The way here. */
@Composable
fun ToNight(least: Dp = 48.dp) {
    val context: Context = LocalContext.current
    Tap(stringResource(R.string.night_title), Modifier.testTag("night"), least = least) {
        context.startActivity(Intent(context, NightActivity::class.java))
    }
}
