package org.slowbend.app.screens

import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.padding
import androidx.compose.material3.HorizontalDivider
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import org.slowbend.app.Shell
import org.slowbend.app.parts.KeepFile
import org.slowbend.app.parts.Links
import org.slowbend.app.parts.Sentences
import org.slowbend.app.theme.LocalInks
import org.slowbend.app.theme.type
import slowbend.core.TempLogRow
import slowbend.core.TempLogScreen

/** The temperatures that were read in a cook and what was done about them, to be shown or kept as a file. */
@Composable
fun TempLog(screen: TempLogScreen, shell: Shell) = Page(screen.title, shell) {
    Sentences(screen.about)
    if (screen.none.isNotEmpty()) Text(screen.none, style = type.titleMedium)
    if (screen.rows.isNotEmpty()) KeepFile(screen.download, screen.fileName, "text/csv", screen.csv, shell)
    screen.rows.forEach { Logged(it) }
    Links(screen.links, shell)
}

@Composable
private fun Logged(row: TempLogRow) {
    HorizontalDivider(color = LocalInks.current.rule)
    Column(Modifier.padding(vertical = 6.dp).semantics(mergeDescendants = true) {}) {
        Text(listOf(row.`when`, row.temperature).filter { it.isNotEmpty() }.joinToString(" · "), style = type.titleMedium)
        Text(row.item, style = type.bodyLarge)
        listOf(row.action, row.thermometer, row.who).filter { it.isNotEmpty() }.forEach {
            Text(it, style = type.bodyMedium, color = LocalInks.current.soft)
        }
    }
}
