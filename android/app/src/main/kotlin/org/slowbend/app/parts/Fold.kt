package org.slowbend.app.parts

import androidx.compose.foundation.border
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.ColumnScope
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.saveable.rememberSaveable
import androidx.compose.runtime.setValue
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.collapse
import androidx.compose.ui.semantics.expand
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.Dp
import androidx.compose.ui.unit.dp
import org.slowbend.app.theme.Inked
import org.slowbend.app.theme.LocalInks

/** What is asked for seldom, folded under its [heading]; [content] can close it. */
@Composable
fun Fold(
    heading: String,
    tag: String,
    least: Dp = 48.dp,
    isOpen: Boolean = false,
    content: @Composable (close: () -> Unit) -> Unit,
) {
    var open by rememberSaveable(tag) { mutableStateOf(isOpen) }
    fun turn(): Boolean {
        open = !open
        return true
    }
    val folds = Modifier.semantics { if (open) collapse { turn() } else expand { turn() } }
    Tap("${if (open) "▾" else "▸"} $heading", folds.fillMaxWidth().testTag(tag), main = open, least = least) { turn() }
    if (open) Framed { content { open = false } }
}

/** What belongs together, in a frame. */
@Composable
fun Framed(inks: Inked = LocalInks.current.page, content: @Composable ColumnScope.() -> Unit) = Column(
    Modifier.fillMaxWidth().padding(vertical = 4.dp).border(2.dp, LocalInks.current.rule).padding(12.dp),
    content = content,
)
