package org.slowbend.app.screens

import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import org.slowbend.app.Asked
import org.slowbend.app.Shell
import org.slowbend.app.nothingSaid
import org.slowbend.app.parts.Block
import org.slowbend.app.parts.Buttons
import org.slowbend.app.parts.Cautions
import org.slowbend.app.parts.Fold
import org.slowbend.app.parts.JobBlock
import org.slowbend.app.parts.Jobs
import org.slowbend.app.parts.KeepFile
import org.slowbend.app.parts.LineRow
import org.slowbend.app.parts.Points
import org.slowbend.app.parts.SendText
import org.slowbend.app.parts.Sentences
import org.slowbend.app.parts.Tap
import org.slowbend.app.parts.Taps
import org.slowbend.app.parts.ToPlace
import org.slowbend.app.parts.WhenDoneFolded
import org.slowbend.app.theme.At2m
import org.slowbend.app.theme.mm
import org.slowbend.app.theme.type
import slowbend.core.CookId
import slowbend.core.OtherPlan
import slowbend.core.Place
import slowbend.core.RunSheetScreen
import slowbend.core.SheetFits
import slowbend.core.Weight

/** How much later the guests are who come an hour late: the core names the button for it. */
private const val HOUR_LATER_MIN = 60L

/** The run sheet: what is next, large; then every job by day, crossed off as it is done. */
@Composable
fun RunSheet(screen: RunSheetScreen, shell: Shell) = Page(screen.title, shell) {
    Sentences(screen.about)
    screen.none?.let { Text(it, style = type.titleMedium) }
    screen.fits?.let { Fits(it, shell) { ToPlace(it.see, shell) } }
    screen.next?.let { next ->
        JobBlock(next, shell, mm(At2m.TARGET_MM))
        if (next.buttons.isNotEmpty()) WhenDoneFolded(shell)
    }
    Taps(shell) {
        if (screen.none == null) HourLater(screen.labels.hourLater, screen.cook, shell)
        screen.links.forEach { ToPlace(it, shell) }
    }
    screen.days.forEach { Jobs(it, shell, acts = true, besides = screen.next) }
    screen.other?.let { Other(screen.labels.other, it, shell) }
    if (screen.none == null) HandedOn(screen, shell)
    Buttons(listOfNotNull(screen.drop), shell)
    Cautions(screen.cautions, shell)
}

/** That the sheet no longer fits and why; [see] stands before the button that keeps it. */
@Composable
internal fun Fits(fits: SheetFits, shell: Shell, see: @Composable () -> Unit = {}) {
    Block(Weight.CALL, fits.heading) { ink -> Points(fits.says, ink) }
    Taps(shell) {
        see()
        Tap(fits.keep.label) { shell.press(fits.keep) }
    }
}

/** A plan for guests who come an hour late. */
@Composable
internal fun HourLater(label: String, cook: CookId, shell: Shell) =
    Tap(label) { shell.go(Place.Plan(cook), Asked(plan = nothingSaid.copy(laterMin = HOUR_LATER_MIN))) }

/** The plan that was replaced, and what taking it again would change. */
@Composable
private fun Other(heading: String, other: OtherPlan, shell: Shell) = Fold(heading, "other") {
    Text(other.about, style = type.bodyLarge)
    other.changes.forEach { LineRow(it, shell) }
    Buttons(listOf(other.take), shell)
}

/** The sheet for who is not here: as words to send, as a file for a calendar. */
@Composable
private fun HandedOn(screen: RunSheetScreen, shell: Shell) {
    SendText(screen.labels.text, screen.text)
    KeepFile(screen.labels.calendar, screen.calendarName, "text/calendar", screen.calendar, shell)
    Text(screen.labels.calendarHow, style = type.bodyMedium)
    Tap(screen.labels.handOut) { shell.go(Place.HandOut(screen.cook)) }
    Tap(screen.labels.card) { shell.go(Place.Card(screen.cook)) }
}
