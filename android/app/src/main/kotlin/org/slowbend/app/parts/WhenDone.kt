package org.slowbend.app.parts

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.FlowRow
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.selected
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.Dp
import androidx.compose.ui.unit.dp
import org.slowbend.app.Shell

/** How long ago the next act was done. It holds for one act, so that nothing is dated back by mistake. */
@Composable
fun WhenDone(shell: Shell, least: Dp = 48.dp) {
    Heading(shell.frame?.whenDone)
    FlowRow(Modifier.fillMaxWidth().padding(vertical = 6.dp), Arrangement.spacedBy(8.dp), Arrangement.spacedBy(8.dp)) {
        shell.frame?.ago.orEmpty().forEach { one ->
            val isIt = one.value == shell.ago
            val tag = Modifier.testTag("ago-${one.value}").semantics { selected = isIt }
            Tap(if (isIt) "✓ ${one.label}" else one.label, tag, main = isIt, least = least) { shell.wasDone(one.value) }
        }
    }
}

/** The same under one button that says what holds now, where room is needed for what is tapped more often. */
@Composable
fun WhenDoneFolded(shell: Shell, least: Dp = 48.dp) {
    val now = shell.frame?.ago.orEmpty().find { it.value == shell.ago }?.label
    Fold(listOfNotNull(shell.frame?.whenDone, now).joinToString(" · "), "when", least) { WhenDone(shell, least) }
}
