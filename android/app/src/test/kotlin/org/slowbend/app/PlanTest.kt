package org.slowbend.app

import androidx.compose.ui.test.junit4.v2.createAndroidComposeRule
import androidx.test.ext.junit.runners.AndroidJUnit4
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertNotEquals
import org.junit.Assert.assertNotNull
import org.junit.Assert.assertNull
import org.junit.Assert.assertTrue
import org.junit.Rule
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.annotation.Config
import org.robolectric.annotation.GraphicsMode
import org.slowbend.app.alarms.Platform
import slowbend.core.Place

/** So late that nothing of the morning was begun in time. */
private const val LATE_MS = 3 * 3_600_000L

/** A plan is asked for, accepted and followed on the phone alone. */
@RunWith(AndroidJUnit4::class)
@GraphicsMode(GraphicsMode.Mode.NATIVE)
@Config(sdk = [35], application = TestApp::class, qualifiers = PHONE)
class PlanTest {
    @get:Rule val rule = createAndroidComposeRule<MainActivity>()

    private val hand by lazy { Fingers(rule) }
    private val sheet get() = (hand.model.shown as Shown.Sheet).screen
    private val plan get() = (hand.model.shown as Shown.Planning).screen

    @Test
    fun `from the sheet that is not there to the alarms of its jobs`() {
        val app = hand.app
        val lunch = app.toPlan()
        app.born()
        val platform = Platform(app)
        hand.go(Place.Now(lunch.cook))
        hand.press("Run sheet")
        assertNotNull(sheet.none)
        hand.press(sheet.links.first().label)
        hand.type("hands", "2")
        hand.reach("go")
        val chosen = plan.proposals.first()
        hand.reach("accept-0")
        assertEquals(Place.RunSheet(lunch.cook), hand.model.place)
        assertEquals(chosen.days.flatMap { it.lines }.map { it.job }, sheet.days.flatMap { it.lines }.map { it.job })
        assertTrue(hand.model.told!!.text, "Plan accepted" in hand.model.told!!.text)
        platform.assertEqual("after the plan")
        val first = sheet.days.flatMap { it.lines }.first { !it.ticked }
        assertTrue("${first.time} ${first.job}", first.at in platform.lying().values)
        hand.tap("undo")
        assertNotNull(sheet.none)
        assertFalse(first.at in platform.lying().values)
    }

    @Test
    fun `what is next is done from its line, and the one after it is next`() {
        val lunch = hand.app.toPlan()
        hand.app.planned(lunch)
        hand.go(Place.RunSheet(lunch.cook))
        val first = sheet.next!!
        hand.app.clock.utcMs = first.at
        hand.wait(0)
        hand.does(sheet.next!!.buttons.first())
        assertNotEquals(first.job, sheet.next!!.job)
        assertTrue(sheet.days.flatMap { it.lines }.first { it.job == first.job }.ticked)
    }

    @Test
    fun `guests who come an hour late are planned for with one touch, and leaving records nothing`() {
        val lunch = hand.app.toPlan()
        hand.app.planned(lunch)
        hand.go(Place.RunSheet(lunch.cook))
        val before = hand.happened(lunch.cook)
        hand.press(sheet.labels.hourLater)
        assertTrue(plan.proposals.first().serve, "3:00" in plan.proposals.first().serve)
        assertTrue(plan.proposals.first().changes.isNotEmpty())
        hand.press(plan.labels.refuse)
        assertEquals(before, hand.happened(lunch.cook))
        hand.go(Place.Plan(lunch.cook))
        assertEquals("what was said of guests belongs to one visit", 0L, plan.typed.laterMin)
    }

    @Test
    fun `a sheet that no longer fits says so with the way to a new one, and kept it is silent`() {
        val lunch = hand.app.toPlan()
        hand.app.planned(lunch)
        hand.go(Place.RunSheet(lunch.cook))
        assertNull(sheet.fits)
        hand.app.clock.utcMs += LATE_MS
        hand.wait(0)
        hand.see(sheet.fits!!.heading)
        hand.press(sheet.fits!!.see.label)
        hand.see(plan.fits!!.heading)
        hand.does(plan.fits!!.keep)
        hand.go(Place.RunSheet(lunch.cook))
        assertNull(sheet.fits)
    }

    @Test
    fun `what cannot be planned is told with what would make a plan, and what was typed stays`() {
        val lunch = hand.app.regatta()
        hand.go(Place.Plan(lunch.cook))
        hand.type("late", "5")
        hand.reach("go")
        assertTrue(plan.refused.size > 1)
        hand.see(plan.refused.first())
        assertEquals("5", plan.typed.late)
        hand.see("5")
    }
}
