package org.slowbend.app.screens

import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import org.slowbend.app.Shell
import org.slowbend.app.parts.Block
import org.slowbend.app.parts.Buttons
import org.slowbend.app.parts.Cautions
import org.slowbend.app.parts.LineRow
import org.slowbend.app.parts.Links
import org.slowbend.app.parts.OpenSlip
import org.slowbend.app.parts.Points
import org.slowbend.app.parts.Sentences
import org.slowbend.app.theme.At2m
import org.slowbend.app.theme.mm
import org.slowbend.app.theme.type
import slowbend.core.FireOutMeat
import slowbend.core.FireOutScreen

/** The fire went out: what to do with each meat, worst first, and one form for what is read now. */
@Composable
fun FireOut(screen: FireOutScreen, shell: Shell) = Page(screen.title, shell, least = mm(At2m.TARGET_MM)) {
    LineRow(screen.state, shell)
    Sentences(screen.lead)
    if (screen.none.isNotEmpty()) Text(screen.none, style = type.titleMedium)
    screen.meats.forEach { Answer(it, shell) }
    screen.slips.forEach { OpenSlip(it, screen.cook, shell) }
    Points(screen.rule)
    Cautions(screen.cautions, shell)
    Links(screen.links, shell, mm(At2m.TARGET_MM))
}

@Composable
private fun Answer(meat: FireOutMeat, shell: Shell) {
    Block(meat.weight, meat.name) { ink ->
        Text(meat.answer, color = ink, style = type.headlineMedium)
        if (meat.then.isNotEmpty()) Text(meat.then, color = ink, style = type.titleMedium)
        Points(meat.read, ink)
        Text(meat.why, color = ink, style = type.bodyMedium)
    }
    Buttons(meat.buttons, shell, mm(At2m.TARGET_MM))
}
