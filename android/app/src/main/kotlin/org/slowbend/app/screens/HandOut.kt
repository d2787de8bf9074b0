package org.slowbend.app.screens

import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.saveable.rememberSaveable
import androidx.compose.runtime.setValue
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.testTag
import org.slowbend.app.Asked
import org.slowbend.app.Shell
import org.slowbend.app.parts.Block
import org.slowbend.app.parts.Cautions
import org.slowbend.app.parts.Field
import org.slowbend.app.parts.Fold
import org.slowbend.app.parts.Jobs
import org.slowbend.app.parts.Links
import org.slowbend.app.parts.Points
import org.slowbend.app.parts.Tap
import org.slowbend.app.theme.type
import slowbend.core.HandOutScreen
import slowbend.core.StudentSheet
import slowbend.core.Weight

/** A sheet for each student, counted back from each one's own hour. */
@Composable
fun HandOut(screen: HandOutScreen, shell: Shell) = Page(screen.title, shell) {
    var list by rememberSaveable(screen.typed) { mutableStateOf(screen.typed) }
    Text(screen.lead, style = type.bodyLarge)
    screen.refused?.let { Block(Weight.CALL, it) {} }
    Field(screen.label, list, "students", lines = ROWS) { list = it }
    Text(screen.how, style = type.bodyMedium)
    Tap(screen.make, Modifier.testTag("make"), main = true) { shell.ask(Asked(students = list)) }
    screen.sheets.forEachIndexed { index, sheet -> Student(sheet, index, screen, shell) }
    Links(screen.links, shell)
}

/** So many students are seen at once while they are typed. */
private const val ROWS = 6

@Composable
private fun Student(sheet: StudentSheet, index: Int, screen: HandOutScreen, shell: Shell) =
    Fold("${sheet.name} · ${sheet.serve}", "student-$index") {
        sheet.days.forEach { Jobs(it, shell) }
        Points(screen.minimums)
        Cautions(screen.cautions, shell)
    }
