package org.slowbend.app

import android.view.KeyEvent
import androidx.compose.ui.test.assertIsDisplayed
import androidx.compose.ui.test.hasClickAction
import androidx.compose.ui.test.hasText
import androidx.compose.ui.test.junit4.v2.createAndroidComposeRule
import androidx.compose.ui.test.onNodeWithTag
import androidx.compose.ui.test.onNodeWithText
import androidx.compose.ui.test.performClick
import androidx.compose.ui.test.performScrollTo
import androidx.compose.ui.test.performTextInput
import androidx.test.core.app.ApplicationProvider
import androidx.test.ext.junit.runners.AndroidJUnit4
import org.junit.Assert.assertTrue
import org.junit.Rule
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.annotation.Config
import org.robolectric.annotation.GraphicsMode
import slowbend.core.Place

/** A whole cook with hands and keys, through the real activity over the real core. */
@RunWith(AndroidJUnit4::class)
@GraphicsMode(GraphicsMode.Mode.NATIVE)
@Config(sdk = [35], application = TestApp::class, qualifiers = PHONE)
class CookTest {
    @get:Rule val rule = createAndroidComposeRule<MainActivity>()

    private val app get() = ApplicationProvider.getApplicationContext<TestApp>()
    private val model get() = rule.activity.model

    private fun tap(label: String) {
        rule.onNode(hasText(label) and hasClickAction()).performScrollTo().performClick()
        rule.waitForIdle()
    }

    private fun type(tag: String, text: String) = rule.onNodeWithTag(tag).performScrollTo().performTextInput(text)

    private fun see(text: String) =
        assertTrue(text, rule.onAllNodes(hasText(text, substring = true)).fetchSemanticsNodes().isNotEmpty())

    private fun wait(minutes: Int) {
        app.clock.wait(minutes)
        rule.runOnUiThread { model.refresh() }
        rule.waitForIdle()
    }

    private fun press(key: Int) {
        rule.runOnUiThread {
            rule.activity.dispatchKeyEvent(KeyEvent(KeyEvent.ACTION_DOWN, key))
            rule.activity.dispatchKeyEvent(KeyEvent(KeyEvent.ACTION_UP, key))
        }
        rule.waitForIdle()
    }

    private fun beginWithRibs() {
        tap("Settings")
        type("new-pit", "The drum")
        tap("Drum")
        tap("Add a pit")
        tap("Back")
        type("name", "Regatta lunch")
        type("serve", "2 pm")
        type("people", "14")
        tap("Spare ribs")
        type("weight-0", "3.5")
        tap("The drum")
        tap("Start the cook")
    }

    @Test
    fun `a slab goes from the form to done`() {
        beginWithRibs()
        assertTrue(model.place is Place.Now)
        see("On the table 2:00 PM")
        tap("Spare ribs")
        tap("Rub is on")
        tap("Put on The drum")
        tap("Now")
        rule.onNodeWithText("Has it set?").assertIsDisplayed()
        wait(50)
        tap("Yes, it has set")
        wait(31)
        press(KeyEvent.KEYCODE_VOLUME_UP)
        rule.onNodeWithTag("undo").assertExists()
        wait(180)
        tap("Spare ribs")
        tap("Check it")
        rule.onNode(hasText("crack", substring = true, ignoreCase = true) and hasClickAction()).performScrollTo().performClick()
        type("temperature-between_bones", "198")
        tap("Record the check")
        see("Done")
    }
}
