package org.slowbend.app.screens

import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import org.slowbend.app.Shell
import org.slowbend.app.parts.Buttons
import org.slowbend.app.parts.Cautions
import org.slowbend.app.parts.Heading
import org.slowbend.app.parts.Links
import org.slowbend.app.parts.Section
import org.slowbend.app.parts.Slips
import org.slowbend.app.parts.Verdict
import org.slowbend.app.parts.WhenDone
import org.slowbend.app.theme.type
import slowbend.core.PieceScreen

/** One meat: where it is, what is next, what was found, where it can go. */
@Composable
fun Meat(screen: PieceScreen, shell: Shell) = Page(screen.title, shell) {
    Text(screen.about, style = type.bodyLarge)
    Text(screen.state, style = type.titleLarge)
    Section(shell.frame?.next, screen.next, shell)
    screen.ahead?.let { Ahead(it, shell) }
    Verdict(screen.verdict, shell)
    Section(screen.safetyHeading, screen.safety, shell)
    Links(screen.links, shell)
    Buttons(screen.buttons, shell)
    if (screen.buttons.isNotEmpty()) WhenDone(shell)
    Cautions(screen.cautions, shell)
    Section(shell.frame?.facts, screen.facts, shell)
    Section(shell.frame?.checks, screen.checks, shell)
    if (screen.slips.isNotEmpty()) Heading(shell.frame?.moreOfIt)
    Slips(screen.slips, screen.cook, screen.piece, shell)
}
