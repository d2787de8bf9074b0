package org.slowbend.app.screens

import androidx.activity.compose.BackHandler
import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxSize
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.layout.safeDrawingPadding
import androidx.compose.foundation.rememberScrollState
import androidx.compose.foundation.verticalScroll
import androidx.compose.material3.Surface
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.runtime.key
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.heading
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import org.slowbend.app.Shell
import org.slowbend.app.Shown
import org.slowbend.app.parts.Question
import org.slowbend.app.parts.Tap
import org.slowbend.app.parts.ToldBar
import org.slowbend.app.theme.type

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
        }
        Question(shell)
    }
}

/** The frame of a screen that is read in the hand: heading, content that scrolls, and under it, in sight, what was told. */
@Composable
fun Page(title: String, shell: Shell, content: @Composable () -> Unit) = key(title) {
    Column(Modifier.fillMaxSize()) {
        Column(Modifier.weight(1f).verticalScroll(rememberScrollState()).padding(16.dp)) {
            if (shell.canGoBack) Tap(shell.frame?.back.orEmpty()) { shell.back() }
            Text(title, Modifier.padding(vertical = 8.dp).semantics { heading() }, style = type.headlineMedium)
            content()
        }
        ToldBar(shell.told, shell)
    }
}

/** The database could not be opened: why, and one more try. */
@Composable
private fun Stopped(shell: Shell) = Page(shell.frame?.stopped.orEmpty(), shell) {
    Tap(shell.frame?.again ?: "↻") { shell.refresh() }
}
