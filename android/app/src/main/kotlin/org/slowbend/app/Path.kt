package org.slowbend.app

import slowbend.core.Place

/** A place as text, to be kept while the process is not running. */
fun Place.path() = when (this) {
    is Place.Start -> "start"
    is Place.Now -> "now/$cook"
    is Place.Piece -> "piece/$piece"
    is Place.Check -> "check/$piece"
    is Place.Timeline -> "timeline/$cook"
    is Place.Settings -> "settings"
}

/** The place that [path] names; what cannot be read is the first screen. */
fun placeOf(path: String): Place {
    val id = path.substringAfter('/', "")
    return when (path.substringBefore('/')) {
        "now" -> Place.Now(id)
        "piece" -> Place.Piece(id)
        "check" -> Place.Check(id)
        "timeline" -> Place.Timeline(id)
        "settings" -> Place.Settings
        else -> Place.Start
    }
}
