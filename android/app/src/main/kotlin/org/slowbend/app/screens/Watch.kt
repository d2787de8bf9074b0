package org.slowbend.app.screens

import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.saveable.rememberSaveable
import androidx.compose.runtime.setValue
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.testTag
import org.slowbend.app.Shell
import org.slowbend.app.parts.Buttons
import org.slowbend.app.parts.Field
import org.slowbend.app.parts.LineRow
import org.slowbend.app.parts.Links
import org.slowbend.app.parts.Section
import org.slowbend.app.parts.Sentences
import org.slowbend.app.parts.Tap
import org.slowbend.app.parts.fillIn
import org.slowbend.app.theme.At2m
import org.slowbend.app.theme.mm
import org.slowbend.app.theme.type
import slowbend.core.WatchScreen

/** Who has the watch, and the line with which it is handed over. A line that was changed is not taken from under the hands. */
@Composable
fun Watch(screen: WatchScreen, shell: Shell) = Page(screen.title, shell, least = mm(At2m.TARGET_MM)) {
    val least = mm(At2m.TARGET_MM)
    var typed by rememberSaveable { mutableStateOf<String?>(null) }
    Sentences(screen.held, type.titleLarge)
    Text(screen.lead, style = type.bodyLarge)
    Field(screen.label, typed ?: screen.note, "note", lines = 3) { typed = it }
    Tap(screen.submit, Modifier.fillMaxWidth().testTag("watch"), main = true, least = least) {
        val slip = if (screen.isMine) "watch-line" else "watch"
        shell.fillIn(screen.cook, slip, mapOf("note" to (typed ?: screen.note))) { typed = null }
    }
    screen.pits.forEach { LineRow(it, shell) }
    Buttons(screen.buttons, shell, least)
    Section(screen.pastHeading, screen.past, shell)
    Links(screen.links, shell, least)
}
