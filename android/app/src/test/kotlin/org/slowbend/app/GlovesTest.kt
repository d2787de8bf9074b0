package org.slowbend.app

import android.view.KeyEvent
import androidx.compose.ui.test.junit4.v2.createAndroidComposeRule
import androidx.test.core.app.ApplicationProvider
import androidx.test.ext.junit.runners.AndroidJUnit4
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertNotEquals
import org.junit.Assert.assertNotNull
import org.junit.Assert.assertTrue
import org.junit.Rule
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.annotation.Config
import org.robolectric.annotation.GraphicsMode
import slowbend.core.Place
import slowbend.core.Timeline
import slowbend.core.Weight

/** A whole cook from the second mop to the table, answered with the two volume keys and nothing else. */
@RunWith(AndroidJUnit4::class)
@GraphicsMode(GraphicsMode.Mode.NATIVE)
@Config(sdk = [35], application = TestApp::class, qualifiers = PHONE)
class GlovesTest {
    @get:Rule val rule = createAndroidComposeRule<MainActivity>()

    private val app get() = ApplicationProvider.getApplicationContext<TestApp>()
    private val model get() = rule.activity.model
    private val now get() = (model.shown as Shown.Now).screen

    private fun press(key: Int) {
        rule.runOnUiThread {
            rule.activity.dispatchKeyEvent(KeyEvent(KeyEvent.ACTION_DOWN, key))
            rule.activity.dispatchKeyEvent(KeyEvent(KeyEvent.ACTION_UP, key))
        }
        rule.waitForIdle()
    }

    private fun wait(minutes: Int) {
        app.clock.wait(minutes)
        rule.runOnUiThread { model.refresh() }
        rule.waitForIdle()
    }

    /** Where each meat is, without since when. */
    private fun stages(lunch: Lunch) = lunch.meats.map { meat ->
        var state = ""
        app.door.ask({ core, viewer, moment -> core.piece(viewer, meat, moment).state }) { state = it.getOrThrow() }
        state.substringBeforeLast(", ")
    }

    private fun happened(cook: String): List<String> {
        var screen: Timeline? = null
        app.door.ask({ core, viewer, moment -> core.timeline(viewer, cook, null, moment) }) { screen = it.getOrThrow() }
        return screen!!.lines.map { it.what }
    }

    @Test
    fun `up is did it, down is later, each is said back, and no key changes a stage or leaves anything out`() {
        val lunch = app.underWay()
        val began = stages(lunch)
        rule.runOnUiThread { model.go(Place.Now(lunch.cook)) }
        rule.waitForIdle()
        var (did, later) = 0 to 0
        repeat(70) {
            wait(5)
            val due = now.now
            if (due.weight != Weight.WAKE && due.weight != Weight.CALL) return@repeat
            press(KeyEvent.KEYCODE_VOLUME_UP)
            if (due.didIt() == null) {
                assertEquals("what only hands can do is said", due.speech, app.said.last())
                assertEquals(due, now.now)
                press(KeyEvent.KEYCODE_VOLUME_DOWN)
                later += 1
            } else {
                did += 1
            }
            assertNotEquals(due, now.now)
            assertEquals(model.told!!.text, app.said.last())
            assertNotNull(now.undo)
            assertEquals(began, stages(lunch))
        }
        assertTrue("did $did, later $later", did >= 8 && later >= 2)
        val all = happened(lunch.cook).joinToString("\n")
        for (never in listOf("Not this time", "Ended the cook")) assertFalse(all, never in all)
    }

    @Test
    fun `what is due in one opening is done by one press`() {
        val lunch = app.underWay()
        rule.runOnUiThread { model.go(Place.Now(lunch.cook)) }
        while (now.now.verb != "Mop") {
            press(KeyEvent.KEYCODE_VOLUME_DOWN)
            wait(0)
        }
        press(KeyEvent.KEYCODE_VOLUME_UP)
        val opened = happened(lunch.cook).first()
        for (slab in listOf("Slab one", "Slab two")) assertTrue(opened, slab in opened)
    }
}
