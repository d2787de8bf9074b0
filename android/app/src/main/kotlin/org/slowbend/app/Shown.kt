package org.slowbend.app

import slowbend.SlowbendInterface
import slowbend.core.CheckScreen
import slowbend.core.Moment
import slowbend.core.PieceScreen
import slowbend.core.Pitside
import slowbend.core.Place
import slowbend.core.ReadingsOf
import slowbend.core.Settings
import slowbend.core.StartScreen
import slowbend.core.Timeline
import slowbend.core.Viewer
import slowbend.core.WriteScreen

/** What is on the screen: a record of the core, as it came. */
sealed interface Shown {
    /** Until when it is true, milliseconds since 1970. */
    val until: Long

    data class Start(val screen: StartScreen, override val until: Long = screen.until) : Shown
    data class Now(val screen: Pitside, override val until: Long = screen.until) : Shown
    data class Meat(val screen: PieceScreen, override val until: Long = screen.until) : Shown
    data class Check(val screen: CheckScreen, override val until: Long = screen.until) : Shown
    data class Happened(val screen: Timeline, override val until: Long = screen.until) : Shown
    data class Writing(val screen: WriteScreen, override val until: Long = screen.until) : Shown
    data class Choices(val screen: Settings, override val until: Long = screen.until) : Shown
}

/** The screen of [place], by one call. [before] is the cursor of a page where there are pages. */
fun SlowbendInterface.show(place: Place, before: Long?, viewer: Viewer, moment: Moment): Shown = when (place) {
    is Place.Start -> Shown.Start(start(viewer, before, moment))
    is Place.Now -> Shown.Now(pitside(viewer, place.cook, moment))
    is Place.Piece -> Shown.Meat(piece(viewer, place.piece, moment))
    is Place.Check -> Shown.Check(check(viewer, place.piece, moment))
    is Place.Timeline -> Shown.Happened(timeline(viewer, place.cook, before, moment))
    is Place.Write -> Shown.Writing(writeDown(viewer, place.cook, moment))
    is Place.Settings -> Shown.Choices(settings(viewer, moment))
    // Until they have views of their own here, the screen of the cook stands for them.
    is Place.Opening -> Shown.Now(pitside(viewer, place.cook, moment))
    is Place.Fire -> Shown.Now(pitside(viewer, place.cook, moment))
    is Place.Trouble -> Shown.Now(pitside(viewer, place.cook, moment))
    is Place.FireOut -> Shown.Now(pitside(viewer, place.cook, moment))
    is Place.TempLog -> Shown.Happened(timeline(viewer, place.cook, before, moment))
    is Place.Pits -> Shown.Now(pitside(viewer, place.cook, moment))
    is Place.Dishes -> Shown.Now(pitside(viewer, place.cook, moment))
    is Place.Kitchen -> Shown.Now(pitside(viewer, place.cook, moment))
    is Place.KitchenSheet -> Shown.Now(pitside(viewer, place.cook, moment))
    is Place.Watch -> Shown.Now(pitside(viewer, place.cook, moment))
    is Place.RunSheet -> Shown.Now(pitside(viewer, place.cook, moment))
    is Place.Plan -> Shown.Now(pitside(viewer, place.cook, moment))
    // Until charts and baths are drawn here: the nearest screen that holds the same.
    is Place.Readings -> nearest(place.of, viewer, moment)
    is Place.Thermometers -> Shown.Choices(settings(viewer, moment))
}

private fun SlowbendInterface.nearest(of: ReadingsOf, viewer: Viewer, moment: Moment): Shown = when (of) {
    is ReadingsOf.Cook -> Shown.Now(pitside(viewer, of.cook, moment))
    is ReadingsOf.Piece -> Shown.Meat(piece(viewer, of.piece, moment))
    is ReadingsOf.Pit -> Shown.Now(pitside(viewer, of.cook, moment))
}
