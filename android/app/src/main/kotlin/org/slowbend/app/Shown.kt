package org.slowbend.app

import slowbend.SlowbendInterface
import slowbend.core.BeginScreen
import slowbend.core.CardScreen
import slowbend.core.CheckScreen
import slowbend.core.CutScreen
import slowbend.core.CutsScreen
import slowbend.core.DishesScreen
import slowbend.core.FireOutScreen
import slowbend.core.FireScreen
import slowbend.core.HandOutScreen
import slowbend.core.KitchenScreen
import slowbend.core.KitchenSheet
import slowbend.core.Moment
import slowbend.core.OpeningScreen
import slowbend.core.PieceScreen
import slowbend.core.PitsScreen
import slowbend.core.Pitside
import slowbend.core.Place
import slowbend.core.PlanScreen
import slowbend.core.ReadingsScreen
import slowbend.core.RunSheetScreen
import slowbend.core.Settings
import slowbend.core.StartScreen
import slowbend.core.TempLogScreen
import slowbend.core.ThermometersScreen
import slowbend.core.Timeline
import slowbend.core.TroubleScreen
import slowbend.core.Viewer
import slowbend.core.WatchScreen
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
    data class Sheet(val screen: RunSheetScreen, override val until: Long = screen.until) : Shown
    data class Planning(val screen: PlanScreen, override val until: Long = screen.until) : Shown
    data class Fire(val screen: FireScreen, override val until: Long = screen.until) : Shown
    data class FireOut(val screen: FireOutScreen, override val until: Long = screen.until) : Shown
    data class Opening(val screen: OpeningScreen, override val until: Long = screen.until) : Shown
    data class Kitchen(val screen: KitchenScreen, override val until: Long = screen.until) : Shown
    data class OnPaper(val screen: KitchenSheet, override val until: Long = screen.until) : Shown
    data class Amiss(val screen: TroubleScreen, override val until: Long = screen.until) : Shown
    data class Watch(val screen: WatchScreen, override val until: Long = screen.until) : Shown
    data class Dishes(val screen: DishesScreen, override val until: Long = screen.until) : Shown
    data class Pits(val screen: PitsScreen, override val until: Long = screen.until) : Shown
    data class Readings(val screen: ReadingsScreen, override val until: Long = screen.until) : Shown
    data class Thermometers(val screen: ThermometersScreen, override val until: Long = screen.until) : Shown
    data class TempLog(val screen: TempLogScreen, override val until: Long = screen.until) : Shown
    data class HandOut(val screen: HandOutScreen, override val until: Long = screen.until) : Shown
    data class Card(val screen: CardScreen, override val until: Long = screen.until) : Shown
    data class Begin(val screen: BeginScreen, override val until: Long = screen.until) : Shown
    data class Cuts(val screen: CutsScreen, override val until: Long = screen.until) : Shown
    data class OneCut(val screen: CutScreen, override val until: Long = screen.until) : Shown

    /** Where a card is handed in; nothing is known of it yet. */
    data object TakeCard : Shown {
        override val until = Long.MAX_VALUE
    }
}

/** The screen of [place], by one call, as [asked]. */
fun SlowbendInterface.show(place: Place, asked: Asked, viewer: Viewer, moment: Moment): Shown = when (place) {
    is Place.Start -> Shown.Start(start(viewer, asked.before, moment))
    is Place.Now -> Shown.Now(pitside(viewer, place.cook, moment))
    is Place.Piece -> Shown.Meat(piece(viewer, place.piece, moment))
    is Place.Check -> Shown.Check(check(viewer, place.piece, moment))
    is Place.Timeline -> Shown.Happened(timeline(viewer, place.cook, asked.before, moment))
    is Place.Write -> Shown.Writing(writeDown(viewer, place.cook, moment))
    is Place.Settings -> Shown.Choices(settings(viewer, moment))
    is Place.RunSheet -> Shown.Sheet(runSheet(viewer, place.cook, moment))
    is Place.Plan -> Shown.Planning(plan(viewer, place.cook, asked.plan, moment))
    is Place.Fire -> Shown.Fire(fire(viewer, place.cook, place.pit, moment))
    is Place.FireOut -> Shown.FireOut(fireOut(viewer, place.cook, place.pit, moment))
    is Place.Opening -> Shown.Opening(opening(viewer, place.cook, place.pit, moment))
    is Place.Kitchen -> Shown.Kitchen(kitchen(viewer, place.cook, moment))
    is Place.KitchenSheet -> Shown.OnPaper(kitchenSheet(viewer, place.cook, moment))
    is Place.Trouble -> Shown.Amiss(trouble(viewer, place.cook, place.pit, moment))
    is Place.Watch -> Shown.Watch(watch(viewer, place.cook, moment))
    is Place.Dishes -> Shown.Dishes(dishes(viewer, place.cook, moment))
    is Place.Pits -> Shown.Pits(pits(viewer, place.cook, moment))
    is Place.Readings -> Shown.Readings(readingsOf(viewer, place.of, asked.hours, asked.before, moment))
    is Place.Thermometers -> Shown.Thermometers(thermometers(viewer, moment))
    is Place.TempLog -> Shown.TempLog(tempLog(viewer, place.cook, moment))
    is Place.HandOut -> Shown.HandOut(handOut(viewer, place.cook, asked.students, moment))
    is Place.Card -> Shown.Card(card(viewer, place.cook, asked.card, moment))
    is Place.Again -> Shown.Begin(again(viewer, place.cook, moment))
    is Place.Cards -> asked.handed?.let { Shown.Begin(readCard(viewer, it, moment)) } ?: Shown.TakeCard
    is Place.Cuts -> Shown.Cuts(cuts(viewer, asked.sought, moment))
    is Place.Cut -> Shown.OneCut(cut(viewer, place.cut, moment))
}
