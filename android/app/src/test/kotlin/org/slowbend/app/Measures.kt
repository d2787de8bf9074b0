package org.slowbend.app

import android.app.Activity
import android.graphics.Bitmap
import android.graphics.Canvas
import androidx.compose.ui.graphics.Color
import androidx.compose.ui.graphics.luminance
import androidx.compose.ui.semantics.SemanticsActions
import androidx.compose.ui.semantics.SemanticsNode
import androidx.compose.ui.semantics.SemanticsProperties
import androidx.compose.ui.semantics.getOrNull
import androidx.compose.ui.test.SemanticsMatcher
import androidx.compose.ui.test.hasAnyAncestor
import androidx.compose.ui.test.hasClickAction
import androidx.compose.ui.test.hasTestTag
import androidx.compose.ui.test.junit4.ComposeTestRule
import androidx.compose.ui.text.TextLayoutResult
import org.junit.Assert.assertTrue
import org.slowbend.app.parts.READ

/** What is drawn, measured: size of letters and targets, contrast of the pixels, and what is heard. */
class Measures(private val rule: ComposeTestRule, private val activity: Activity) {
    private val screen = activity.resources.displayMetrics

    fun millimeters(pixels: Float) = pixels / screen.xdpi * 25.4f

    private val texts = SemanticsMatcher.keyIsDefined(SemanticsActions.GetTextLayoutResult)

    private fun seen(matcher: SemanticsMatcher, unmerged: Boolean = false) = rule.onAllNodes(matcher, unmerged).fetchSemanticsNodes()
        .filter { it.boundsInWindow.run { width > 0 && height > 0 } }

    private fun SemanticsNode.layout(): TextLayoutResult {
        val found = mutableListOf<TextLayoutResult>()
        config.getOrNull(SemanticsActions.GetTextLayoutResult)?.action?.invoke(found)
        return found.single()
    }

    /** Letters that are read in the hand: 16 sp at the least. Common practice, no source. */
    fun assertLettersAreLarge() = seen(texts, unmerged = true).map { it.layout().layoutInput }.forEach {
        assertTrue("${it.text}: ${it.style.fontSize}", it.style.fontSize.value >= 16f)
    }

    /** Each thing to be tapped is [least] millimeters high and wide, and is heard by a name; but what puts a caution away. */
    fun assertTargets(least: Float) {
        val targets = seen(hasClickAction() and hasAnyAncestor(hasTestTag(READ)).not())
        assertTrue(targets.isNotEmpty())
        for (target in targets) {
            val size = minOf(target.size.width, target.size.height)
            assertTrue("${millimeters(size.toFloat())} mm: ${target.config}", millimeters(size.toFloat()) >= least - 0.05f)
            val named = target.config.getOrNull(SemanticsProperties.Text).orEmpty().any { it.isNotBlank() } ||
                SemanticsProperties.EditableText in target.config
            assertTrue("${target.config}", named)
        }
    }

    /** The lightest and the darkest pixel of each text that is in sight stand 7 to 1 apart or better (WCAG 2.2, 1.4.6, from memory). */
    fun assertContrast() {
        val view = activity.window.decorView
        val drawn = Bitmap.createBitmap(view.width, view.height, Bitmap.Config.ARGB_8888).also { view.draw(Canvas(it)) }
        var measured = 0
        for (text in seen(texts, unmerged = true)) {
            val box = text.boundsInWindow
            // A line that stands cut at the edge shows no whole letter.
            if (box.height < text.size.height - 1) continue
            if (text.layout().layoutInput.text.isBlank() || box.bottom > view.height || box.top < 0) continue
            val lights = (box.top.toInt() until box.bottom.toInt()).flatMap { y ->
                (box.left.toInt() until box.right.toInt()).map { x -> Color(drawn.getPixel(x, y)).luminance() }
            }
            val ratio = (lights.max() + 0.05) / (lights.min() + 0.05)
            assertTrue("${text.layout().layoutInput.text}: $ratio", ratio >= 7)
            measured += 1
        }
        assertTrue("texts in sight: $measured", measured >= 2)
    }

    companion object {
        /** 48 dp, for a bare finger. Common practice, no source. */
        const val FINGER_MM = 48f / 160f * 25.4f
    }
}
