package org.slowbend.app

import android.app.Activity
import android.content.Intent
import android.net.Uri
import androidx.compose.ui.test.hasContentDescription
import androidx.compose.ui.test.junit4.v2.createAndroidComposeRule
import androidx.test.ext.junit.runners.AndroidJUnit4
import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Rule
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.Shadows.shadowOf
import org.robolectric.annotation.Config
import org.robolectric.annotation.GraphicsMode
import slowbend.core.Act
import slowbend.core.Place
import slowbend.core.Where
import java.io.ByteArrayOutputStream

/** What goes from this phone to others and comes from them: sheets, files, cards; and what is looked up. */
@RunWith(AndroidJUnit4::class)
@GraphicsMode(GraphicsMode.Mode.NATIVE)
@Config(sdk = [35], application = TestApp::class, qualifiers = PHONE)
class HandedOnTest {
    @get:Rule val rule = createAndroidComposeRule<MainActivity>()

    private val hand by lazy { Fingers(rule) }
    private val started get() = shadowOf(rule.activity).nextStartedActivityForResult.intent

    @Test
    fun `a sheet is sent as words and kept as a calendar file where the person says`() {
        val lunch = hand.app.toPlan()
        hand.app.planned(lunch)
        hand.go(Place.RunSheet(lunch.cook))
        val sheet = (hand.model.shown as Shown.Sheet).screen
        hand.reach("send")
        val sent = started.getParcelableExtra(Intent.EXTRA_INTENT, Intent::class.java)!!
        assertEquals(sheet.text, sent.getStringExtra(Intent.EXTRA_TEXT))
        hand.reach("keep")
        val asked = started
        assertEquals(Intent.ACTION_CREATE_DOCUMENT, asked.action)
        assertEquals(sheet.calendarName, asked.getStringExtra(Intent.EXTRA_TITLE))
        val (place, file) = Uri.parse("content://files/sheet.ics") to ByteArrayOutputStream()
        shadowOf(rule.activity.contentResolver).registerOutputStream(place, file)
        rule.runOnUiThread { shadowOf(rule.activity).receiveResult(asked, Activity.RESULT_OK, Intent().setData(place)) }
        assertEquals(sheet.calendar, file.toString())
    }

    @Test
    fun `a card is shown as a code, and another cook begins from its text`() {
        val lunch = hand.app.toPlan()
        hand.go(Place.Timeline(lunch.cook))
        hand.press((hand.model.shown as Shown.Happened).screen.links.first().label)
        val card = (hand.model.shown as Shown.Card).screen
        rule.onNode(hasContentDescription(card.labels.code)).assertExists()
        hand.go(Place.Start)
        hand.press("From a card")
        hand.type("card", "{ half a card")
        hand.reach("read")
        assertTrue(hand.model.told!!.isTrouble)
        assertEquals(Shown.TakeCard, hand.model.shown)
        hand.type("card", card.text)
        hand.reach("read")
        hand.type("name", "Second lunch")
        hand.type("serve", "6 pm")
        hand.reach("begin")
        val now = (hand.model.shown as Shown.Now).screen
        assertEquals("Second lunch", now.title)
        assertEquals(3, now.meats.size + now.others.size)
    }

    @Test
    fun `a card of a pit that is not known here adds it once all else can be read`() {
        val lunch = hand.app.toPlan()
        var text = ""
        hand.app.door.ask({ core, viewer, moment -> core.card(viewer, lunch.cook, null, moment).text }) { text = it.getOrThrow() }
        hand.go(Place.Cards, Asked(handed = text.replace("drum", "ceramic").replace("Drum", "Egg")))
        val begin = (hand.model.shown as Shown.Begin).screen
        val new = begin.newPits.single()
        hand.type("people", "many")
        hand.reach("begin")
        assertTrue(hand.model.told!!.isTrouble)
        assertTrue(pits().none { it == new.name })
        hand.type("people", "12")
        hand.reach("begin")
        assertEquals(1, pits().count { it == new.name })
    }

    private fun pits(): List<String> {
        var names = emptyList<String>()
        hand.app.door.ask({ core, viewer, moment -> core.settings(viewer, moment).pits.map { it.name } }) { names = it.getOrThrow() }
        return names
    }

    @Test
    fun `a cut is found by another name, and each value says who says so`() {
        hand.go(Place.Cuts)
        hand.type("find", "baby backs")
        hand.reach("search")
        val found = (hand.model.shown as Shown.Cuts).screen.cuts.first()
        hand.press(found.name)
        val cut = (hand.model.shown as Shown.OneCut).screen
        assertEquals(found.cut, cut.cut)
        hand.see(cut.facts.first().source)
    }

    @Test
    fun `each student has a sheet of their own, and what was read lies in the log`() {
        val lunch = hand.app.toPlan()
        hand.app.planned(lunch)
        hand.go(Place.HandOut(lunch.cook))
        hand.type("students", "Cleo, 12:30 PM")
        hand.reach("make")
        assertEquals(listOf("Cleo"), (hand.model.shown as Shown.HandOut).screen.sheets.map { it.name })
        hand.reach("student-0")
        hand.app.done(Act.Read(lunch.cook, Where.Piece(lunch.meats[0], "center"), null, mk(150), null))
        hand.go(Place.TempLog(lunch.cook))
        hand.see("150 °F")
    }

    @Test
    fun `what is read in the hand is large, has contrast, and is tapped with a finger`() {
        val lunch = hand.app.toPlan()
        hand.app.planned(lunch)
        val cook = lunch.cook
        val lists = listOf(Place.RunSheet(cook), Place.Plan(cook), Place.Kitchen(cook), Place.KitchenSheet(cook), Place.Dishes(cook))
        val more = listOf(Place.Watch(cook), Place.Thermometers, Place.Cuts, Place.Card(cook), Place.Cards, Place.HandOut(cook))
        for (place in lists + more) {
            hand.go(place)
            Measures(rule, rule.activity).run {
                assertLettersAreLarge()
                assertTargets(Measures.FINGER_MM)
                assertContrast()
            }
        }
    }
}
