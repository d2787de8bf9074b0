package org.slowbend.app

import org.junit.Assert.assertEquals
import org.junit.Test
import slowbend.core.Cut
import slowbend.core.Place
import slowbend.core.ReadingsOf

/** Where the person is, kept while the process is not running. */
class PathTest {
    private val all = listOf(
        Place.Start, Place.Settings, Place.Thermometers, Place.Cuts, Place.Cards, Place.Cut(Cut.SPARE_RIBS),
        Place.Now("a"), Place.Timeline("a"), Place.Write("a"), Place.Pits("a"), Place.Dishes("a"), Place.Kitchen("a"),
        Place.KitchenSheet("a"), Place.Watch("a"), Place.RunSheet("a"), Place.Plan("a"), Place.TempLog("a"), Place.HandOut("a"),
        Place.Card("a"), Place.Again("a"), Place.Piece("b"), Place.Check("b"), Place.Opening("a", "c"), Place.Fire("a", "c"),
        Place.Trouble("a", "c"), Place.FireOut("a", "c"), Place.Readings(ReadingsOf.Cook("a")), Place.Readings(ReadingsOf.Piece("b")),
        Place.Readings(ReadingsOf.Pit("a", "c")),
    )

    @Test
    fun `each place is written as text and read again`() {
        for (place in all) assertEquals(place, placeOf(place.path()))
        val known = Place::class.java.declaredClasses.filter { Place::class.java.isAssignableFrom(it) }.map { it.simpleName }
        assertEquals(known.toSet(), all.map { it::class.java.simpleName }.toSet())
    }
}
