package org.slowbend.app.parts

import androidx.compose.foundation.BorderStroke
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.FlowRow
import androidx.compose.foundation.layout.PaddingValues
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.layout.sizeIn
import androidx.compose.foundation.shape.RoundedCornerShape
import androidx.compose.material3.AlertDialog
import androidx.compose.material3.Button
import androidx.compose.material3.ButtonDefaults
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.semantics.toggleableState
import androidx.compose.ui.state.ToggleableState
import androidx.compose.ui.text.TextStyle
import androidx.compose.ui.text.style.TextAlign
import androidx.compose.ui.unit.Dp
import androidx.compose.ui.unit.dp
import org.slowbend.app.Shell
import org.slowbend.app.theme.Inked
import org.slowbend.app.theme.LocalInks
import org.slowbend.app.theme.type
import slowbend.core.Link
import slowbend.core.Tone
import slowbend.core.Button as CoreButton

/** Something to tap, at least [least] high and wide. */
@Composable
fun Tap(
    label: String,
    modifier: Modifier = Modifier,
    main: Boolean = false,
    least: Dp = 48.dp,
    inks: Inked = LocalInks.current.run { if (main) this.main else raised },
    style: TextStyle = type.labelLarge,
    onTap: () -> Unit,
) = Button(
    onTap,
    modifier.padding(vertical = 2.dp).sizeIn(minWidth = least, minHeight = least),
    shape = RoundedCornerShape(3.dp),
    colors = ButtonDefaults.buttonColors(inks.ground, inks.ink),
    border = BorderStroke(2.dp, inks.ink),
    contentPadding = PaddingValues(horizontal = 12.dp, vertical = 8.dp),
) { Text(label, style = style, textAlign = TextAlign.Center) }

/** The buttons of a screen, each with the act it stands for; on the left where the left hand taps. */
@Composable
fun Buttons(buttons: List<CoreButton>, shell: Shell, least: Dp = 48.dp, modifier: Modifier = Modifier) = Taps(shell, modifier) {
    buttons.forEach { button ->
        Tap(button.label, main = button.tone == Tone.MAIN, least = least) { shell.press(button) }
    }
}

/** Where else to go. */
@Composable
fun Links(links: List<Link>, shell: Shell, least: Dp = 48.dp) = Taps(shell) {
    links.forEach { ToPlace(it, shell, least) }
}

/** One way to go. */
@Composable
fun ToPlace(link: Link, shell: Shell, least: Dp = 48.dp) = Tap(link.label, least = least) { shell.go(link.place) }

/** What is tapped, on the side of the hand that taps. */
@Composable
fun Taps(shell: Shell, modifier: Modifier = Modifier, content: @Composable () -> Unit) = FlowRow(
    modifier.fillMaxWidth().padding(vertical = 6.dp),
    Arrangement.spacedBy(12.dp, if (shell.leftHanded) Alignment.Start else Alignment.End),
    Arrangement.spacedBy(12.dp),
) { content() }

/** The question before an act that must be asked about. */
@Composable
fun Question(shell: Shell) {
    val button = shell.asking ?: return
    AlertDialog(
        onDismissRequest = { shell.answer(false) },
        text = { Text(button.confirm ?: button.label, style = type.titleLarge) },
        confirmButton = {
            Tap(shell.frame?.goOn.orEmpty(), Modifier.testTag("yes"), main = true) { shell.answer(true) }
        },
        dismissButton = { Tap(shell.frame?.leaveIt.orEmpty(), Modifier.testTag("no")) { shell.answer(false) } },
        containerColor = LocalInks.current.raised.ground,
        textContentColor = LocalInks.current.raised.ink,
    )
}

/** Something that is done or not, as large as a gloved finger: marked by a sign and by its inks, and said. */
@Composable
fun Target(label: String, isOn: Boolean, modifier: Modifier = Modifier, least: Dp = 48.dp, onTap: () -> Unit) = Tap(
    if (isOn) "✓ $label" else label,
    modifier.semantics { toggleableState = ToggleableState(isOn) },
    main = isOn,
    least = least,
    onTap = onTap,
)
