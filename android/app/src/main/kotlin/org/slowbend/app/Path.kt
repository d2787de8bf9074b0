package org.slowbend.app

import slowbend.core.Cut
import slowbend.core.Place
import slowbend.core.ReadingsOf

/** A place as text, to be kept while the process is not running. */
fun Place.path() = when (this) {
    is Place.Start -> "start"
    is Place.Now -> "now/$cook"
    is Place.Piece -> "piece/$piece"
    is Place.Check -> "check/$piece"
    is Place.Timeline -> "timeline/$cook"
    is Place.Write -> "write/$cook"
    is Place.Settings -> "settings"
    is Place.Pits -> "pits/$cook"
    is Place.Dishes -> "dishes/$cook"
    is Place.Kitchen -> "kitchen/$cook"
    is Place.KitchenSheet -> "kitchen-sheet/$cook"
    is Place.Watch -> "watch/$cook"
    is Place.RunSheet -> "sheet/$cook"
    is Place.Plan -> "plan/$cook"
    is Place.Opening -> "opening/$cook/$pit"
    is Place.Fire -> "fire/$cook/$pit"
    is Place.Trouble -> "trouble/$cook/$pit"
    is Place.FireOut -> "fire-out/$cook/$pit"
    is Place.TempLog -> "log/$cook"
    is Place.Readings -> of.path()
    is Place.Thermometers -> "thermometers"
    is Place.HandOut -> "hand-out/$cook"
    is Place.Card -> "card/$cook"
    is Place.Again -> "again/$cook"
    is Place.Cards -> "cards"
    is Place.Cuts -> "cuts"
    is Place.Cut -> "cut/$cut"
}

private fun ReadingsOf.path() = when (this) {
    is ReadingsOf.Cook -> "readings/$cook"
    is ReadingsOf.Piece -> "meat-readings/$piece"
    is ReadingsOf.Pit -> "pit-readings/$cook/$pit"
}

/** The place that [path] names; what cannot be read is the first screen. */
fun placeOf(path: String): Place {
    val id = path.substringAfter('/', "")
    return when (path.substringBefore('/')) {
        "now" -> Place.Now(id)
        "piece" -> Place.Piece(id)
        "check" -> Place.Check(id)
        "timeline" -> Place.Timeline(id)
        "write" -> Place.Write(id)
        "settings" -> Place.Settings
        "readings" -> Place.Readings(ReadingsOf.Cook(id))
        "meat-readings" -> Place.Readings(ReadingsOf.Piece(id))
        "pit-readings" -> Place.Readings(ReadingsOf.Pit(id.substringBefore('/'), id.substringAfter('/')))
        "thermometers" -> Place.Thermometers
        "pits" -> Place.Pits(id)
        "dishes" -> Place.Dishes(id)
        "kitchen" -> Place.Kitchen(id)
        "kitchen-sheet" -> Place.KitchenSheet(id)
        "watch" -> Place.Watch(id)
        "sheet" -> Place.RunSheet(id)
        "plan" -> Place.Plan(id)
        "opening" -> Place.Opening(id.substringBefore('/'), id.substringAfter('/'))
        "fire" -> Place.Fire(id.substringBefore('/'), id.substringAfter('/'))
        "trouble" -> Place.Trouble(id.substringBefore('/'), id.substringAfter('/'))
        "fire-out" -> Place.FireOut(id.substringBefore('/'), id.substringAfter('/'))
        "log" -> Place.TempLog(id)
        "hand-out" -> Place.HandOut(id)
        "card" -> Place.Card(id)
        "again" -> Place.Again(id)
        "cards" -> Place.Cards
        "cuts" -> Place.Cuts
        "cut" -> Cut.entries.find { it.name == id }?.let { Place.Cut(it) } ?: Place.Cuts
        else -> Place.Start
    }
}
