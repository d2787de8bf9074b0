package org.slowbend.app.parts

import androidx.compose.foundation.background
import androidx.compose.foundation.border
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.graphics.Color
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.LiveRegionMode
import androidx.compose.ui.semantics.heading
import androidx.compose.ui.semantics.liveRegion
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.text.TextStyle
import androidx.compose.ui.unit.Dp
import androidx.compose.ui.unit.dp
import org.slowbend.app.Shell
import org.slowbend.app.Told
import org.slowbend.app.theme.At2m
import org.slowbend.app.theme.LocalInks
import org.slowbend.app.theme.mm
import org.slowbend.app.theme.type
import slowbend.core.Caution
import slowbend.core.Notice
import slowbend.core.VerdictText
import slowbend.core.Weight

/** Cautions, each with who says so, and the button that puts away what is told once. */
@Composable
fun Cautions(cautions: List<Caution>, shell: Shell) = cautions.forEach { caution ->
    Column(Modifier.fillMaxWidth().padding(vertical = 6.dp).border(2.dp, LocalInks.current.rule).padding(10.dp)) {
        Text(caution.text, style = type.bodyMedium)
        Text(caution.source, style = type.bodyMedium, color = LocalInks.current.soft)
        caution.dismiss?.let { Buttons(listOf(it), shell, modifier = Modifier.testTag(READ)) }
    }
}

/** The button that puts a caution away: for a bare finger, so that no glove does it by mistake. */
const val READ = "read"

/** What is to be told once, with the button that puts it away. */
@Composable
fun Notices(notices: List<Notice>, shell: Shell, least: Dp = 48.dp) = notices.forEach { notice ->
    Column(Modifier.fillMaxWidth().padding(vertical = 6.dp).border(2.dp, LocalInks.current.page.ink).padding(10.dp)) {
        Text(notice.text, style = type.bodyLarge)
        notice.dismiss?.let { Buttons(listOf(it), shell, least) }
    }
}

/** What came of the last act, or why it was not done. */
@Composable
fun ToldBar(told: Told?, shell: Shell) {
    told ?: return
    val inks = LocalInks.current.run { if (told.isTrouble) wake else raised }
    Column(
        Modifier.fillMaxWidth().background(inks.ground).border(2.dp, inks.ink).padding(10.dp)
            .semantics { liveRegion = LiveRegionMode.Polite },
    ) {
        if (told.isTrouble) Text(shell.frame?.stopped.orEmpty(), color = inks.ink, style = type.titleMedium)
        Text(told.text, color = inks.ink, style = type.bodyLarge)
        told.undo?.let { undo -> Undoing(undo.label) { shell.record(undo.act) } }
    }
}

/** Takes the last act back: huge, for a hand that slipped. */
@Composable
fun Undoing(label: String, onTap: () -> Unit) = Tap(
    label,
    Modifier.fillMaxWidth().padding(vertical = 4.dp).testTag("undo"),
    least = mm(At2m.TARGET_MM),
    style = type.displaySmall,
    onTap = onTap,
)

/** A verdict in words. */
@Composable
fun Verdict(verdict: VerdictText, shell: Shell) {
    val inks = LocalInks.current.of(verdict.weight)
    Column(Modifier.fillMaxWidth().padding(vertical = 8.dp).background(inks.ground).border(2.dp, inks.ink).padding(12.dp)) {
        Text(verdict.headline, Modifier.semantics { heading() }, inks.ink, style = type.headlineMedium)
        Text(verdict.safety, color = inks.ink, style = type.titleMedium)
        (verdict.reasons + verdict.doubts).forEach { Text("• $it", color = inks.ink, style = type.bodyLarge) }
        verdict.next?.let { Text("${shell.frame?.checkNext.orEmpty()} $it", color = inks.ink, style = type.titleMedium) }
    }
}

/** Sentences, each on a line of its own. */
@Composable
fun Sentences(all: List<String>, style: TextStyle = type.bodyLarge) = all.forEach { Text(it, style = style) }

/** Sentences of one list. */
@Composable
fun Points(all: List<String>, ink: Color = LocalInks.current.page.ink) = all.forEach { Marked("•", it, ink) }

/** Steps in their order. */
@Composable
fun Steps(all: List<String>, ink: Color = LocalInks.current.page.ink) =
    all.forEachIndexed { index, step -> Marked("${index + 1}.", step, ink) }

@Composable
private fun Marked(mark: String, text: String, ink: Color) = Row(Modifier.padding(vertical = 3.dp)) {
    Text(mark, Modifier.padding(end = 8.dp), ink, style = type.bodyLarge)
    Text(text, color = ink, style = type.bodyLarge)
}

/** What must be read: in the inks of its weight, under its sign. */
@Composable
fun Block(weight: Weight, heading: String, content: @Composable (ink: Color) -> Unit) {
    val inks = LocalInks.current.of(weight)
    Column(Modifier.fillMaxWidth().padding(vertical = 6.dp).background(inks.ground).border(2.dp, inks.ink).padding(12.dp)) {
        Text("${sign(weight)} $heading", Modifier.semantics { heading() }, inks.ink, style = type.titleLarge)
        content(inks.ink)
    }
}
