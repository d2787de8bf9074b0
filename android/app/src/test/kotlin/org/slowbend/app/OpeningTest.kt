package org.slowbend.app

import androidx.compose.ui.test.junit4.v2.createAndroidComposeRule
import androidx.compose.ui.test.onNodeWithTag
import androidx.test.ext.junit.runners.AndroidJUnit4
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertTrue
import org.junit.Rule
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.annotation.Config
import org.robolectric.annotation.GraphicsMode
import org.slowbend.app.theme.At2m
import slowbend.core.OpeningDoes
import slowbend.core.Place

/** One opening of a pit is one act: what is due is chosen already, one button records all of it, one takes it back. */
@RunWith(AndroidJUnit4::class)
@GraphicsMode(GraphicsMode.Mode.NATIVE)
@Config(sdk = [35], application = TestApp::class, qualifiers = PHONE)
class OpeningTest {
    @get:Rule val rule = createAndroidComposeRule<MainActivity>()

    private val hand by lazy { Fingers(rule) }
    private val opening get() = (hand.model.shown as Shown.Opening).screen

    private fun opened(): Lunch = hand.app.underWay().also {
        hand.go(Place.Now(it.cook))
        hand.go(Place.Opening(it.cook, it.drum))
    }

    @Test
    fun `what is due is recorded by one tap, in one breath, and taken back by one`() {
        val lunch = opened()
        val before = hand.happened(lunch.cook).size
        assertEquals(2, opening.meats.count { meat -> meat.choices.any { it.does == OpeningDoes.WET && it.chosen } })
        hand.tap("opened")
        assertEquals(Place.Now(lunch.cook), hand.model.place)
        val did = hand.happened(lunch.cook).first()
        for (slab in listOf("Slab one", "Slab two")) assertTrue(did, slab in did)
        hand.tap("undo")
        assertTrue(hand.happened(lunch.cook).size > before)
        hand.go(Place.Opening(lunch.cook, lunch.drum))
        assertEquals(2, opening.meats.count { meat -> meat.choices.any { it.does == OpeningDoes.WET && it.chosen } })
    }

    @Test
    fun `what a hand left out stays left out, though the screen says itself anew`() {
        val lunch = opened()
        hand.reach("Slab two/WET")
        hand.wait(1)
        hand.tap("opened")
        val did = hand.happened(lunch.cook).first()
        assertTrue(did, "Slab one" in did)
        assertFalse(did, "Slab two" in did)
    }

    @Test
    fun `of the two answers about the rub one is chosen, and what was tried and noted goes along`() {
        val lunch = opened()
        hand.reach("Butt/RUB_SET")
        hand.reach("Butt/RUB_NOT_YET")
        hand.reach("note-${lunch.meats[2]}")
        hand.type("Butt/note", "Skin is taut.")
        hand.tap("opened")
        val all = hand.happened(lunch.cook).take(4).joinToString("\n")
        assertTrue(all, "Skin is taut." in all)
        assertTrue(all, "Butt · not yet" in all)
    }

    @Test
    fun `gloves can tap what is chosen and the button that records it, which never scrolls away`() {
        opened()
        for (tag in listOf("Slab one/WET", "opened")) {
            val size = rule.onNodeWithTag(tag).fetchSemanticsNode().size
            val least = Measures(rule, rule.activity).millimeters(minOf(size.width, size.height).toFloat())
            assertTrue("$tag: $least mm", least >= At2m.TARGET_MM - 0.05f)
        }
        val box = rule.onNodeWithTag("opened").fetchSemanticsNode().boundsInWindow
        assertTrue("$box", box.height > 0 && box.bottom <= rule.activity.window.decorView.height)
        Measures(rule, rule.activity).run {
            assertLettersAreLarge()
            assertTargets(Measures.FINGER_MM)
            assertContrast()
        }
    }
}
