package org.slowbend.app.screens

import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.material3.HorizontalDivider
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.text.style.TextDecoration
import androidx.compose.ui.unit.dp
import org.slowbend.app.Asked
import org.slowbend.app.Shell
import org.slowbend.app.parts.Buttons
import org.slowbend.app.parts.Links
import org.slowbend.app.parts.Tap
import org.slowbend.app.theme.LocalInks
import org.slowbend.app.theme.type
import slowbend.core.Happened
import slowbend.core.Timeline

/** What happened in a cook, latest first. */
@Composable
fun Happened(screen: Timeline, shell: Shell) = Page(screen.title, shell) {
    Links(screen.links, shell)
    screen.lines.forEach { Entry(it, shell) }
    screen.next?.let { next -> Tap(shell.frame?.earlier.orEmpty()) { shell.ask(Asked(before = next)) } }
}

@Composable
private fun Entry(entry: Happened, shell: Shell) {
    HorizontalDivider(color = LocalInks.current.rule)
    Column(Modifier.fillMaxWidth().padding(vertical = 8.dp)) {
        val struck = if (entry.standing.isEmpty()) null else TextDecoration.LineThrough
        Column(Modifier.semantics(mergeDescendants = true) {}) {
            Text(entry.`when`, style = type.titleMedium)
            Text(entry.what, style = type.bodyLarge.copy(textDecoration = struck))
            listOf(entry.standing, entry.who).filter { it.isNotEmpty() }.forEach {
                Text(it, style = type.bodyMedium, color = LocalInks.current.soft)
            }
        }
        entry.undo?.let { Buttons(listOf(it), shell) }
    }
}
