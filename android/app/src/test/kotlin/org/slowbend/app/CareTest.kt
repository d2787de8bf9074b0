package org.slowbend.app

import androidx.compose.ui.test.hasContentDescription
import androidx.compose.ui.test.junit4.v2.createAndroidComposeRule
import androidx.test.ext.junit.runners.AndroidJUnit4
import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Rule
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.annotation.Config
import org.robolectric.annotation.GraphicsMode
import slowbend.core.Act
import slowbend.core.Place
import slowbend.core.ReadingsOf

/** The kitchen, the dishes, the watch, the pits, thermometers and readings: filled in with the phone in the hand. */
@RunWith(AndroidJUnit4::class)
@GraphicsMode(GraphicsMode.Mode.NATIVE)
@Config(sdk = [35], application = TestApp::class, qualifiers = PHONE)
class CareTest {
    @get:Rule val rule = createAndroidComposeRule<MainActivity>()

    private val hand by lazy { Fingers(rule) }

    @Test
    fun `what is reckoned in the kitchen comes of what was written down there`() {
        val lunch = hand.app.toPlan()
        hand.go(Place.Kitchen(lunch.cook))
        val part = (hand.model.shown as Shown.Kitchen).screen.parts.first { it.slips.isNotEmpty() }
        hand.reach("slip-${part.slips.first().slip}")
        hand.reach("${part.slips.first().slip}/submit")
        val now = (hand.model.shown as Shown.Kitchen).screen.parts.first { it.part == part.part }
        assertTrue("${hand.model.told}", now.by.isNotEmpty())
        assertTrue(now.groups.flatMap { it.lines }.isNotEmpty())
        hand.see(now.groups.flatMap { it.lines }.first().amount)
    }

    @Test
    fun `a dish is added, ready, written about and called otherwise`() {
        val lunch = hand.app.toPlan()
        hand.go(Place.Dishes(lunch.cook))
        fun dishes() = (hand.model.shown as Shown.Dishes).screen.dishes
        hand.reach("add")
        hand.type("dish", "Slaw")
        hand.press((hand.model.shown as Shown.Dishes).screen.labels.cold)
        hand.reach("dish/submit")
        assertEquals(setOf("Beans", "Slaw"), dishes().map { it.name }.toSet())
        val beans = dishes().first { it.name == "Beans" }
        hand.does(beans.buttons.first())
        hand.reach("note-${beans.dish}")
        hand.type("Beans/note", "Lid on.")
        hand.reach("Beans/note/submit")
        hand.reach("name-${beans.dish}")
        hand.type("Beans/name", "Red beans")
        hand.reach("Beans/name/submit")
        val red = dishes().first { it.dish == beans.dish }
        assertEquals("Red beans", red.name)
        assertTrue(red.notes.any { "Lid on." in it.name || "Lid on." in it.state || "Lid on." in it.detail })
        assertTrue(red.buttons.none { it.label == beans.buttons.first().label })
    }

    @Test
    fun `the watch is taken with the line as it was changed`() {
        val lunch = hand.app.underWay()
        hand.go(Place.Watch(lunch.cook))
        hand.type("note", "Drum holds, wind from the lake.")
        hand.wait(1)
        hand.reach("watch")
        val watch = (hand.model.shown as Shown.Watch).screen
        assertTrue(watch.isMine)
        assertTrue("$watch", "wind from the lake" in "${watch.held} ${watch.past} ${watch.note}")
    }

    @Test
    fun `a meat goes to another level by one tap and to another pit by one choice`() {
        val lunch = hand.app.underWay()
        hand.go(Place.Pits(lunch.cook))
        fun pit(id: String) = (hand.model.shown as Shown.Pits).screen.pits.first { it.pit == id }
        val spot = pit(lunch.drum).spots.first()
        hand.reach("where-${lunch.drum}")
        hand.reach("Slab one/$spot")
        hand.reach("moves")
        assertEquals(spot, pit(lunch.drum).meats.first { it.name == "Slab one" }.spot)
    }

    @Test
    fun `what a thermometer showed in ice is made something of`() {
        val app = hand.app
        app.done(Act.AddThermometer("Red one"))
        hand.go(Place.Thermometers)
        hand.type("read", "34")
        hand.reach("record")
        val one = (hand.model.shown as Shown.Thermometers).screen.thermometers.single()
        assertEquals(1, one.checks.size)
        assertEquals(1, app.calls.count { it == "readBath" })
    }

    @Test
    fun `readings are drawn as many hours as are asked for, and said in one sentence`() {
        val app = hand.app
        val lunch = app.underWay()
        app.probed(lunch)
        repeat(40) {
            app.clock.wait(5)
            app.heard(240 + it % 7)
            app.heard(60 + 2 * it, "2")
        }
        hand.go(Place.Readings(ReadingsOf.Cook(lunch.cook)))
        val screen = (hand.model.shown as Shown.Readings).screen
        assertEquals(2, screen.series.size)
        rule.onNode(hasContentDescription(screen.chart!!.says)).assertExists()
        val hours = screen.spans.mapNotNull { it.hours }.min()
        hand.reach("span-$hours")
        assertEquals(hours, (hand.model.shown as Shown.Readings).screen.spans.single { it.chosen }.hours)
    }
}
