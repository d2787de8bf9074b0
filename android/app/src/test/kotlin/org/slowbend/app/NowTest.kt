package org.slowbend.app

import android.view.KeyEvent
import android.view.WindowManager
import androidx.compose.ui.semantics.SemanticsActions
import androidx.compose.ui.semantics.SemanticsNode
import androidx.compose.ui.semantics.SemanticsProperties
import androidx.compose.ui.semantics.getOrNull
import androidx.compose.ui.test.SemanticsMatcher
import androidx.compose.ui.test.hasAnyAncestor
import androidx.compose.ui.test.hasClickAction
import androidx.compose.ui.test.hasTestTag
import androidx.compose.ui.test.junit4.v2.createAndroidComposeRule
import androidx.compose.ui.test.onNodeWithTag
import androidx.compose.ui.test.performClick
import androidx.compose.ui.text.TextLayoutResult
import androidx.test.core.app.ApplicationProvider
import androidx.test.ext.junit.runners.AndroidJUnit4
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertNull
import org.junit.Assert.assertTrue
import org.junit.Rule
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.annotation.Config
import org.robolectric.annotation.GraphicsMode
import org.slowbend.app.theme.At2m
import org.slowbend.app.theme.capital
import slowbend.core.Act
import slowbend.core.Place
import slowbend.core.Stage

/** Now, the screen of the propped phone: read at two meters, answered with greasy hands. */
@RunWith(AndroidJUnit4::class)
@GraphicsMode(GraphicsMode.Mode.NATIVE)
@Config(sdk = [35], application = TestApp::class, qualifiers = PHONE)
class NowTest {
    @get:Rule val rule = createAndroidComposeRule<MainActivity>()

    private val app get() = ApplicationProvider.getApplicationContext<TestApp>()
    private val model get() = rule.activity.model
    private val now get() = (model.shown as Shown.Now).screen

    private fun go(place: Place) {
        rule.runOnUiThread { model.go(place) }
        rule.waitForIdle()
    }

    private fun press(key: Int) {
        rule.runOnUiThread {
            rule.activity.dispatchKeyEvent(KeyEvent(KeyEvent.ACTION_DOWN, key))
            rule.activity.dispatchKeyEvent(KeyEvent(KeyEvent.ACTION_UP, key))
        }
        rule.waitForIdle()
    }

    private fun millimeters(pixels: Float) = pixels / rule.activity.resources.displayMetrics.xdpi * 25.4f

    private fun SemanticsNode.layout(): TextLayoutResult {
        val found = mutableListOf<TextLayoutResult>()
        config.getOrNull(SemanticsActions.GetTextLayoutResult)?.action?.invoke(found)
        return found.single()
    }

    private fun SemanticsNode.capitalMm() = layout().layoutInput.run { millimeters(with(density) { style.fontSize.toPx() } * capital) }

    private fun texts(within: SemanticsMatcher) =
        rule.onAllNodes(
            SemanticsMatcher.keyIsDefined(SemanticsActions.GetTextLayoutResult) and within,
            useUnmergedTree = true,
        ).fetchSemanticsNodes()

    @Test
    fun `what is read at two meters is large enough`() = measured()

    @Test
    @Config(fontScale = 2.0f)
    fun `and no larger with large type, for it would not fit`() = measured()

    @Test
    @Config(qualifiers = "+land")
    fun `and in landscape`() = measured()

    private fun measured() {
        go(Place.Now(app.underWay().cook))
        for ((tag, least) in mapOf("verb" to At2m.VERB_MM, "when" to At2m.VERB_MM, "what" to At2m.MEAT_MM)) {
            val size = texts(hasTestTag(tag)).single().capitalMm()
            assertTrue("$tag: $size mm", size >= least - 0.05f)
        }
        val meats = texts(hasAnyAncestor(hasTestTag("meats")))
        assertTrue(meats.size >= 6)
        for (text in meats) assertTrue("${text.capitalMm()} mm", text.capitalMm() >= At2m.MEAT_MM - 0.05f)
        for (text in texts(SemanticsMatcher("any") { true })) assertFits(text.layout())
    }

    /** No line is wider than the room it has: nothing is cut. */
    private fun assertFits(layout: TextLayoutResult) {
        for (line in 0 until layout.lineCount) {
            val width = layout.getLineRight(line) - layout.getLineLeft(line)
            assertTrue(layout.layoutInput.text.text, width <= layout.layoutInput.constraints.maxWidth + 1)
            assertFalse(layout.layoutInput.text.text, layout.isLineEllipsized(line))
        }
    }

    @Test
    fun `what is tapped is as large as a gloved finger`() {
        go(Place.Now(app.underWay().cook))
        val targets = rule.onAllNodes(hasClickAction()).fetchSemanticsNodes()
        assertTrue(targets.size > 8)
        for (target in targets) {
            val (wide, high) = millimeters(target.size.width.toFloat()) to millimeters(target.size.height.toFloat())
            assertTrue("$wide by $high mm: ${target.config}", minOf(wide, high) >= At2m.TARGET_MM - 0.05f)
        }
    }

    @Test
    fun `what is tapped and what is told is heard`() {
        go(Place.Now(app.underWay().cook))
        for (target in rule.onAllNodes(hasClickAction()).fetchSemanticsNodes()) {
            assertTrue("${target.config}", target.config.getOrNull(SemanticsProperties.Text).orEmpty().any { it.isNotBlank() })
        }
        val lines = rule.onAllNodes(hasAnyAncestor(hasTestTag("meats")) and hasClickAction()).fetchSemanticsNodes()
        assertEquals(now.meats.size, lines.size)
        for (line in lines) assertFalse(line.config[SemanticsProperties.StateDescription].isBlank())
    }

    @Test
    fun `up is did it, down is later, and both are said`() {
        go(Place.Now(app.underWay().cook))
        val due = now.now.verb
        press(KeyEvent.KEYCODE_VOLUME_DOWN)
        assertTrue(model.told!!.text.isNotEmpty())
        assertEquals(model.told!!.text, app.said.last())
        rule.onNodeWithTag("undo").performClick()
        rule.waitForIdle()
        assertEquals(due, now.now.verb)
        press(KeyEvent.KEYCODE_VOLUME_UP)
        assertTrue(now.undo!!.act is Act.Undo)
        assertEquals(model.told!!.text, app.said.last())
    }

    @Test
    fun `undo goes after thirty seconds`() {
        go(Place.Now(app.underWay().cook))
        press(KeyEvent.KEYCODE_VOLUME_UP)
        val until = now.undo!!.until
        assertEquals(app.clock.utcMs + 30_000, until)
        assertTrue(now.until <= until)
        app.clock.utcMs = until
        rule.runOnUiThread { model.refresh() }
        assertNull(now.undo)
    }

    @Test
    fun `one touch of a key or a button changes no stage and ends no cook`() {
        val lunch = app.underWay()
        go(Place.Now(lunch.cook))
        val heavy = slowbend.core.Button("Take off", Act.SetStage(lunch.meats[0], Stage.Off, null), slowbend.core.Tone.MAIN, null)
        app.calls.clear()
        rule.runOnUiThread { model.pressKey(heavy, now.now) }
        assertEquals(now.now.speech, app.said.last())
        rule.runOnUiThread { model.press(heavy) }
        rule.waitForIdle()
        assertEquals(emptyList<String>(), app.calls)
        rule.onNodeWithTag("no").performClick()
        rule.waitForIdle()
        assertEquals(emptyList<String>(), app.calls)
        rule.runOnUiThread { model.press(heavy) }
        rule.onNodeWithTag("yes").performClick()
        rule.waitForIdle()
        assertTrue("act" in app.calls)
    }

    @Test
    fun `the screen stays on only here`() {
        fun isKeptOn() = rule.activity.window.attributes.flags and WindowManager.LayoutParams.FLAG_KEEP_SCREEN_ON != 0
        val lunch = app.underWay()
        assertFalse(isKeptOn())
        go(Place.Now(lunch.cook))
        assertTrue(isKeptOn())
        go(Place.Settings)
        assertFalse(isKeptOn())
    }
}
