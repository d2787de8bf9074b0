package org.slowbend.app.screens

import android.content.res.Configuration.ORIENTATION_LANDSCAPE
import androidx.activity.compose.BackHandler
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.FlowRow
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxHeight
import androidx.compose.foundation.layout.fillMaxSize
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.layout.safeDrawingPadding
import androidx.compose.foundation.layout.width
import androidx.compose.foundation.rememberScrollState
import androidx.compose.foundation.verticalScroll
import androidx.compose.material3.LinearProgressIndicator
import androidx.compose.material3.Surface
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.runtime.key
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.LocalConfiguration
import androidx.compose.ui.semantics.heading
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.Dp
import androidx.compose.ui.unit.dp
import org.slowbend.app.Shell
import org.slowbend.app.Shown
import org.slowbend.app.parts.Question
import org.slowbend.app.parts.Tap
import org.slowbend.app.parts.ToldBar
import org.slowbend.app.parts.Undoing
import org.slowbend.app.theme.At2m
import org.slowbend.app.theme.mm
import org.slowbend.app.theme.type
import slowbend.core.Undo

/** Whatever is shown, with what was told above it and the question over it. */
@Composable
fun Root(shell: Shell) = Surface(Modifier.fillMaxSize()) {
    BackHandler(shell.canGoBack) { shell.back() }
    Box(Modifier.safeDrawingPadding()) {
        when (val shown = shell.shown) {
            null -> shell.told?.let { Stopped(shell) }
            is Shown.Start -> Start(shown.screen, shell)
            is Shown.Now -> Now(shown.screen, shell)
            is Shown.Meat -> Meat(shown.screen, shell)
            is Shown.Check -> Check(shown.screen, shell)
            is Shown.Happened -> Happened(shown.screen, shell)
            is Shown.Writing -> Write(shown.screen, shell)
            is Shown.Choices -> Choices(shown.screen, shell)
            is Shown.Sheet -> RunSheet(shown.screen, shell)
            is Shown.Planning -> Plan(shown.screen, shell)
            is Shown.Fire -> Fire(shown.screen, shell)
            is Shown.FireOut -> FireOut(shown.screen, shell)
            is Shown.Opening -> Opening(shown.screen, shell)
            is Shown.Kitchen -> Kitchen(shown.screen, shell)
            is Shown.OnPaper -> OnPaper(shown.screen, shell)
            is Shown.Amiss -> Amiss(shown.screen, shell)
            is Shown.Watch -> Watch(shown.screen, shell)
            is Shown.Dishes -> Dishes(shown.screen, shell)
            is Shown.Pits -> Pits(shown.screen, shell)
            is Shown.Readings -> Readings(shown.screen, shell)
            is Shown.Thermometers -> Thermometers(shown.screen, shell)
            is Shown.TempLog -> TempLog(shown.screen, shell)
            is Shown.HandOut -> HandOut(shown.screen, shell)
            is Shown.Card -> Card(shown.screen, shell)
            is Shown.TakeCard -> TakeCard(shell)
            is Shown.Begin -> Begin(shown.screen, shell)
            is Shown.Cuts -> Cuts(shown.screen, shell)
            is Shown.OneCut -> OneCut(shown.screen, shell)
        }
        Question(shell)
    }
}

/**
 * The frame of a screen that is read in the hand: heading, content that scrolls, and under it, in sight, what was told and
 * [foot]. A screen that knows of the last act itself hands over its [undo]; one for gloves, how large a finger is.
 */
@Composable
fun Page(
    title: String,
    shell: Shell,
    undo: Undo? = null,
    least: Dp = FINGER,
    foot: (@Composable () -> Unit)? = null,
    content: @Composable () -> Unit,
) = key(title) {
    val isAcross = LocalConfiguration.current.orientation == ORIENTATION_LANDSCAPE
    val side = @Composable { if (isAcross && foot != null) Side(foot) }
    Row(Modifier.fillMaxSize()) {
        if (shell.leftHanded) side()
        Column(Modifier.weight(1f).fillMaxHeight()) {
            Column(Modifier.weight(1f).verticalScroll(rememberScrollState()).padding(16.dp)) {
                Top(title, shell, least)
                content()
            }
            if (shell.isWaiting) LinearProgressIndicator(Modifier.fillMaxWidth())
            ToldBar(shell.told?.copy(undo = null), shell)
            (undo ?: shell.told?.undo)?.let { Undoing(it.label) { shell.record(it.act) } }
            if (!isAcross) foot?.invoke()
        }
        if (!shell.leftHanded) side()
    }
}

/** Held across, what is always in sight stands on the side of the hand, for there is little room below. */
@Composable
private fun Side(foot: @Composable () -> Unit) =
    Box(Modifier.width(mm(At2m.TARGET_MM * 1.5f)).fillMaxHeight(), Alignment.Center) { foot() }

/** The way back, and the heading; beside each other where the way back is as large as a glove, for the first sight is dear. */
@Composable
private fun Top(title: String, shell: Shell, least: Dp) = FlowRow(
    Modifier.fillMaxWidth(),
    Arrangement.spacedBy(12.dp),
    itemVerticalAlignment = Alignment.CenterVertically,
    maxItemsInEachRow = if (least > FINGER) 2 else 1,
) {
    if (shell.canGoBack) Tap(shell.frame?.back.orEmpty(), least = least) { shell.back() }
    Text(title, Modifier.padding(vertical = 8.dp).semantics { heading() }, style = type.headlineMedium)
}

/** A bare finger: 48 dp. Common practice, no source. */
private val FINGER = 48.dp

/** The database could not be opened: why, and one more try. */
@Composable
private fun Stopped(shell: Shell) = Page(shell.frame?.stopped.orEmpty(), shell) {
    Tap(shell.frame?.again ?: "↻") { shell.refresh() }
}
