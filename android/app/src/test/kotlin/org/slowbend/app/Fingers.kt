package org.slowbend.app

import androidx.compose.ui.test.hasClickAction
import androidx.compose.ui.test.hasText
import androidx.compose.ui.test.junit4.AndroidComposeTestRule
import androidx.compose.ui.test.onNodeWithTag
import androidx.compose.ui.test.performClick
import androidx.compose.ui.test.performScrollTo
import androidx.compose.ui.test.performTextReplacement
import androidx.test.core.app.ApplicationProvider
import org.junit.Assert.assertTrue
import slowbend.core.Button
import slowbend.core.Place
import slowbend.core.Timeline

/** What hands do with the phone, and what eyes find on it. */
class Fingers(private val rule: AndroidComposeTestRule<*, MainActivity>) {
    val app get() = ApplicationProvider.getApplicationContext<TestApp>()
    val model get() = rule.activity.model

    fun go(place: Place, asked: Asked = Asked()) {
        rule.runOnUiThread { model.go(place, asked) }
        rule.waitForIdle()
    }

    fun tap(tag: String) {
        rule.onNodeWithTag(tag).performClick()
        rule.waitForIdle()
    }

    /** Presses [button], and goes on where it asks first. */
    fun does(button: Button) {
        rule.runOnUiThread { model.press(button) }
        rule.waitForIdle()
        if (model.asking != null) tap("yes")
    }

    /** Further down on the page. */
    fun reach(tag: String) {
        rule.onNodeWithTag(tag).performScrollTo()
        tap(tag)
    }

    fun press(label: String) {
        rule.onNode(hasText(label) and hasClickAction()).performScrollTo().performClick()
        rule.waitForIdle()
    }

    fun type(tag: String, text: String) = rule.onNodeWithTag(tag).performScrollTo().performTextReplacement(text)

    fun see(text: String) =
        assertTrue(text, rule.onAllNodes(hasText(text, substring = true)).fetchSemanticsNodes().isNotEmpty())

    fun wait(minutes: Int) {
        app.clock.wait(minutes)
        rule.runOnUiThread { model.refresh() }
        rule.waitForIdle()
    }

    /** What happened in [cook], latest first. */
    fun happened(cook: String): List<String> {
        var screen: Timeline? = null
        app.door.ask({ core, viewer, moment -> core.timeline(viewer, cook, null, moment) }) { screen = it.getOrThrow() }
        return screen!!.lines.map { it.what }
    }
}
