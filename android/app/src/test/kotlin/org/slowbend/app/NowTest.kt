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
import org.slowbend.app.parts.READ
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
        val meats = texts(hasAnyAncestor(hasTestTag("meat")))
        assertTrue(meats.size >= 2)
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
        val targets = rule.onAllNodes(hasClickAction() and hasAnyAncestor(hasTestTag(READ)).not()).fetchSemanticsNodes()
        assertTrue(targets.size > 8)
        for (target in targets) {
            val (wide, high) = millimeters(target.size.width.toFloat()) to millimeters(target.size.height.toFloat())
            assertTrue("$wide by $high mm: ${target.config}", minOf(wide, high) >= At2m.TARGET_MM - 0.05f)
        }
    }

    private fun rows() = rule.onAllNodes(hasTestTag("meat")).fetchSemanticsNodes().filter { it.boundsInRoot.height > 0 }

    @Test
    fun `upright it shows three meats, worst first, whole and without scrolling, and counts the rest`() = fits(3)

    @Test
    @Config(qualifiers = "+land")
    fun `held across it shows two at least`() = fits(2)

    @Test
    @Config(qualifiers = "es-rUS-w411dp-h891dp-420dpi")
    fun `in Spanish too it shows two at least`() = fits(2)

    private fun fits(least: Int) {
        go(Place.Now(app.underWay().cook))
        val (rows, bottom) = rows() to rule.activity.window.decorView.height
        assertTrue("${rows.size} meats", rows.size >= least)
        for (row in rows) assertTrue("${row.boundsInRoot}", row.positionInRoot.y + row.size.height <= bottom)
        for ((row, meat) in rows.zip(now.meats)) assertTrue("${row.config}", row.heard().startsWith(meat.name))
        val rest = rule.onAllNodes(hasTestTag("rest")).fetchSemanticsNodes()
        assertEquals(if (rows.size < now.meats.size) 1 else 0, rest.size)
        for (one in rest) {
            assertEquals(now.counts[now.meats.size - rows.size - 1], one.heard())
            assertTrue(one.positionInRoot.y + one.size.height <= bottom)
        }
    }

    private fun SemanticsNode.heard() = config[SemanticsProperties.Text].joinToString(" ") { it.text }

    @Test
    fun `a job is not left out, ended for good or put to another stage at one touch`() {
        val lunch = app.underWay()
        go(Place.Now(lunch.cook))
        app.done(Act.AnswerRub(lunch.meats[2], true, null))
        rule.runOnUiThread { model.refresh() }
        val skip = now.now.buttons.filter { it.act is Act.Skip }
        assertTrue(skip.isNotEmpty())
        for (button in skip) assertTrue(button.label, button.confirm!!.contains('?'))
        app.calls.clear()
        rule.runOnUiThread { model.press(skip.first()) }
        rule.waitForIdle()
        assertEquals(emptyList<String>(), app.calls)
        rule.onNodeWithTag("no").performClick()
        rule.waitForIdle()
        assertEquals(emptyList<String>(), app.calls)
    }

    @Test
    fun `what is tapped and what is told is heard`() {
        go(Place.Now(app.underWay().cook))
        for (target in rule.onAllNodes(hasClickAction()).fetchSemanticsNodes()) {
            assertTrue("${target.config}", target.config.getOrNull(SemanticsProperties.Text).orEmpty().any { it.isNotBlank() })
        }
        val lines = rows()
        assertTrue("${lines.size} of ${now.meats.size}", lines.size in 2..now.meats.size)
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
        val heavy = slowbend.core.Button("Take off", Act.SetStage(lunch.meats[0], Stage.Off, null), slowbend.core.Tone.MAIN, "Take off?")
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
