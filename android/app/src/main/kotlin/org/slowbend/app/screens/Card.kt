package org.slowbend.app.screens

import androidx.compose.foundation.Canvas
import androidx.compose.foundation.background
import androidx.compose.foundation.layout.aspectRatio
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.layout.widthIn
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.saveable.rememberSaveable
import androidx.compose.runtime.setValue
import androidx.compose.ui.Modifier
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.geometry.Size
import androidx.compose.ui.graphics.Color
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import org.slowbend.app.Asked
import org.slowbend.app.Shell
import org.slowbend.app.parts.Cautions
import org.slowbend.app.parts.Field
import org.slowbend.app.parts.Fold
import org.slowbend.app.parts.Heading
import org.slowbend.app.parts.KeepFile
import org.slowbend.app.parts.Points
import org.slowbend.app.parts.Section
import org.slowbend.app.parts.SendText
import org.slowbend.app.parts.Sentences
import org.slowbend.app.parts.Switch
import org.slowbend.app.parts.Tap
import org.slowbend.app.theme.type
import slowbend.core.CardAsk
import slowbend.core.CardScreen
import slowbend.core.Qr

/** The card of a cook: its code to be scanned from this phone, then the ways to send it, then what is on it. */
@Composable
fun Card(screen: CardScreen, shell: Shell) = Page(screen.title, shell) {
    val labels = screen.labels
    Sentences(screen.about)
    screen.qr?.let { Code(it, labels.code) }
    Text(screen.how, style = type.bodyLarge)
    SendText(labels.text, screen.text)
    SendText(labels.words, screen.words)
    KeepFile(labels.file, screen.fileName, "application/json", screen.file, shell)
    Fold(labels.asked, "asked") { Ask(screen, shell) }
    Section(shell.frame?.meats, screen.meats, shell)
    Section(shell.frame?.pits, screen.pits, shell)
    Section(labels.dishes, screen.dishes, shell)
    if (screen.notes.isNotEmpty()) Heading(labels.notes)
    Points(screen.notes)
    Points(screen.minimums)
    Cautions(screen.cautions, shell)
}

/** Black on white with the bright edge of four squares, by day and by night: a camera reads nothing else for sure. */
@Composable
private fun Code(qr: Qr, label: String) = Canvas(
    Modifier.padding(vertical = 8.dp).widthIn(max = 360.dp).aspectRatio(1f).background(Color.White).semantics {
        contentDescription = label
    },
) {
    val square = size.minDimension / (qr.side + 2 * EDGE)
    qr.rows.forEachIndexed { y, row ->
        row.forEachIndexed { x, letter ->
            if (letter == '1') drawRect(Color.Black, Offset((x + EDGE) * square, (y + EDGE) * square), Size(square + SEAM, square + SEAM))
        }
    }
}

private const val EDGE = 4

/** Half a pixel more, so that no bright seam runs between two dark squares. */
private const val SEAM = 0.5f

/** What goes along, asked for: who wrote it, and whether the notes do. */
@Composable
private fun Ask(screen: CardScreen, shell: Shell) {
    var by by rememberSaveable { mutableStateOf("") }
    var notes by rememberSaveable { mutableStateOf(false) }
    Field(screen.labels.by, by, "by") { by = it }
    Switch(screen.labels.withNotes, notes) { notes = it }
    Tap(screen.labels.make, Modifier.testTag("make"), main = true) { shell.ask(Asked(card = CardAsk(by, notes))) }
}
