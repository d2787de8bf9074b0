package org.slowbend.app

import androidx.compose.ui.test.hasClickAction
import androidx.compose.ui.test.hasText
import androidx.compose.ui.test.junit4.v2.createAndroidComposeRule
import androidx.compose.ui.test.onNodeWithTag
import androidx.compose.ui.test.performClick
import androidx.compose.ui.test.performScrollTo
import androidx.compose.ui.test.performTextInput
import androidx.test.core.app.ApplicationProvider
import androidx.test.ext.junit.runners.AndroidJUnit4
import org.junit.Assert.assertEquals
import org.junit.Assert.assertNull
import org.junit.Assert.assertTrue
import org.junit.Rule
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.annotation.Config
import org.robolectric.annotation.GraphicsMode
import slowbend.core.Place
import slowbend.core.Timeline

/** What is read and filled in with the phone in the hand. */
@RunWith(AndroidJUnit4::class)
@GraphicsMode(GraphicsMode.Mode.NATIVE)
@Config(sdk = [35], application = TestApp::class, qualifiers = PHONE)
class HandTest {
    @get:Rule val rule = createAndroidComposeRule<MainActivity>()

    private val app get() = ApplicationProvider.getApplicationContext<TestApp>()
    private val model get() = rule.activity.model

    private fun go(place: Place) {
        rule.runOnUiThread { model.go(place) }
        rule.waitForIdle()
    }

    private fun tap(tag: String) {
        rule.onNodeWithTag(tag).performScrollTo().performClick()
        rule.waitForIdle()
    }

    private fun type(tag: String, text: String) = rule.onNodeWithTag(tag).performScrollTo().performTextInput(text)

    private fun choose(label: String) =
        rule.onNode(hasText(label) and hasClickAction()).performScrollTo().performClick()

    private fun happened(cook: String): List<String> {
        var screen: Timeline? = null
        app.door.ask({ core, viewer, moment -> core.timeline(viewer, cook, null, moment) }) { screen = it.getOrThrow() }
        return screen!!.lines.map { it.what }
    }

    @Test
    fun `what is read in the hand is large, has contrast, and is tapped with a finger`() {
        val lunch = app.underWay()
        val meat = lunch.meats.first()
        val lists = listOf(Place.Start, Place.Timeline(lunch.cook), Place.Settings)
        for (place in lists + Place.Piece(meat) + Place.Check(meat) + Place.Write(lunch.cook)) {
            go(place)
            Measures(rule, rule.activity).run {
                assertLettersAreLarge()
                assertTargets(Measures.FINGER_MM)
                assertContrast()
            }
        }
    }

    @Test
    fun `a temperature read by hand is written down, said back, and can be taken back`() {
        val lunch = app.underWay()
        go(Place.Write(lunch.cook))
        tap("slip-reading")
        choose("Slab one · between two middle bones, touching neither")
        type("reading/temp", "162")
        tap("reading/submit")
        assertTrue(happened(lunch.cook).first(), "162 °F" in happened(lunch.cook).first())
        assertEquals(model.told!!.text, app.said.last())
        rule.onNodeWithTag("undo").performClick()
        rule.waitForIdle()
        assertTrue(happened(lunch.cook).first().startsWith("Took back"))
    }

    @Test
    fun `a note, a dish and another meat are written down`() {
        val lunch = app.underWay()
        go(Place.Write(lunch.cook))
        tap("slip-note")
        type("note/text", "Wind from the lake.")
        tap("note/submit")
        tap("slip-dish")
        type("dish/name", "Beans")
        tap("dish/submit")
        tap("slip-meat")
        type("meat/find", "baby back ribs")
        type("meat/name", "Late slab")
        tap("meat/submit")
        val told = happened(lunch.cook).take(3).joinToString()
        for (what in listOf("Wind from the lake.", "Beans", "Late slab")) assertTrue(told, what in told)
    }

    @Test
    fun `what cannot be read is told in sight, and nothing that was typed is lost`() {
        val lunch = app.underWay()
        go(Place.Write(lunch.cook))
        tap("slip-reading")
        type("reading/temp", "warm")
        val before = happened(lunch.cook)
        tap("reading/submit")
        assertTrue(model.told!!.isTrouble)
        assertEquals(before, happened(lunch.cook))
        rule.onNode(hasText("warm")).assertExists()
    }

    @Test
    fun `a fact of a meat is set on its own screen`() {
        val lunch = app.underWay()
        go(Place.Piece(lunch.meats.first()))
        tap("slip-pull")
        type("pull/pull", "198")
        tap("pull/submit")
        assertTrue((model.shown as Shown.Meat).screen.facts.any { "198" in it.state })
    }

    @Test
    fun `the rule of a meat and its clocks stand on its screen, each with who says so`() {
        val lunch = app.underWay()
        go(Place.Piece(lunch.meats.first()))
        val safety = (model.shown as Shown.Meat).screen.safety
        assertTrue(safety.isNotEmpty())
        for (line in safety) rule.onNode(hasText(line.state, substring = true) and hasText(line.name, substring = true)).assertExists()
    }

    @Test
    fun `an act is dated back by one choice, and the next one is not`() {
        val lunch = app.underWay()
        go(Place.Piece(lunch.meats.first()))
        tap("ago-20")
        val wrap = (model.shown as Shown.Meat).screen.buttons.first { "Wrap" in it.label }
        rule.runOnUiThread { model.press(wrap) }
        rule.waitForIdle()
        assertTrue((model.shown as Shown.Meat).screen.state, "20 min" in (model.shown as Shown.Meat).screen.state)
        assertEquals("0", model.ago)
    }

    @Test
    fun `what can no longer be taken back is told no longer`() {
        val lunch = app.underWay()
        go(Place.Piece(lunch.meats.first()))
        rule.runOnUiThread { model.press((model.shown as Shown.Meat).screen.buttons.first { "Did it" in it.label }) }
        app.clock.utcMs = model.told!!.until
        rule.runOnUiThread { model.refresh() }
        assertNull(model.told)
    }
}
