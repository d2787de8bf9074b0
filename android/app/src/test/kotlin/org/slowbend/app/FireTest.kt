package org.slowbend.app

import androidx.compose.ui.test.junit4.v2.createAndroidComposeRule
import androidx.test.ext.junit.runners.AndroidJUnit4
import org.junit.Assert.assertEquals
import org.junit.Assert.assertNotNull
import org.junit.Assert.assertNull
import org.junit.Assert.assertTrue
import org.junit.Rule
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.annotation.Config
import org.robolectric.annotation.GraphicsMode
import org.slowbend.app.alarms.Platform
import org.slowbend.app.theme.At2m
import slowbend.core.Act
import slowbend.core.Place
import slowbend.core.SensorReading
import slowbend.core.Where

/** The fire, with gloves: logged by one tap, fed when somebody said so, and what to do when it went out. */
@RunWith(AndroidJUnit4::class)
@GraphicsMode(GraphicsMode.Mode.NATIVE)
@Config(sdk = [35], application = TestApp::class, qualifiers = PHONE)
class FireTest {
    @get:Rule val rule = createAndroidComposeRule<MainActivity>()

    private val hand by lazy { Fingers(rule) }
    private val fire get() = (hand.model.shown as Shown.Fire).screen

    @Test
    fun `fuel is logged by one tap, said back, and taken back by one`() {
        val lunch = hand.app.underWay()
        hand.go(Place.Fire(lunch.cook, lunch.drum))
        val put = fire.feed.buttons.first()
        hand.press(put.label)
        assertTrue(hand.happened(lunch.cook).first(), put.label in hand.happened(lunch.cook).first())
        assertTrue(fire.feed.state, put.label in fire.feed.state)
        assertEquals(hand.model.told!!.text, hand.app.said.last())
        hand.tap("undo")
        assertTrue(hand.happened(lunch.cook).first().startsWith("Took back"))
    }

    @Test
    fun `what was put on ten minutes ago is dated back by one more tap`() {
        val lunch = hand.app.underWay()
        hand.go(Place.Fire(lunch.cook, lunch.drum))
        hand.reach("when")
        hand.reach("ago-10")
        hand.press(fire.feed.buttons.first().label)
        assertTrue(fire.feed.state, "10 min" in fire.feed.state)
        assertEquals("0", hand.model.ago)
    }

    @Test
    fun `the time to feed next rings once it is accepted, and only then`() {
        val app = hand.app
        val lunch = app.underWay()
        app.born()
        val platform = Platform(app)
        app.probed(lunch)
        app.heard(250)
        hand.go(Place.Fire(lunch.cook, lunch.drum))
        hand.press(fire.feed.buttons.first().label)
        app.clock.wait(40)
        app.heard(249)
        hand.wait(0)
        hand.press(fire.feed.buttons.first().label)
        hand.wait(1)
        val accept = fire.accept!!
        val due = (accept.act as Act.PlanFeed).due
        assertTrue(due !in platform.lying().values)
        hand.press(accept.label)
        assertNull(fire.accept)
        assertTrue(due in platform.lying().values)
        platform.assertEqual()
    }

    @Test
    fun `the fire went out is answered meat by meat, and a reading is written on the same screen`() {
        val lunch = hand.app.underWay()
        hand.go(Place.Trouble(lunch.cook, lunch.drum))
        hand.press((hand.model.shown as Shown.Amiss).screen.links.first().label)
        val screen = (hand.model.shown as Shown.FireOut).screen
        assertEquals(3, screen.meats.size)
        hand.see(screen.meats.first().answer)
        val slip = screen.slips.single { it.slip == "reading" }
        hand.type("${slip.slip}/temp", "150")
        hand.reach("${slip.slip}/submit")
        assertTrue(hand.happened(lunch.cook).first(), "150 °F" in hand.happened(lunch.cook).first())
        assertNotNull(hand.model.told!!.undo)
    }

    @Test
    fun `all that is tapped at the fire is as large as a gloved finger`() {
        val lunch = hand.app.underWay()
        val places = listOf(Place.Fire(lunch.cook, lunch.drum), Place.Trouble(lunch.cook, lunch.drum), Place.Pits(lunch.cook))
        for (place in places) {
            hand.go(place)
            Measures(rule, rule.activity).run {
                assertTargets(At2m.TARGET_MM)
                assertLettersAreLarge()
                assertContrast()
            }
        }
    }
}

/** A probe sits in the drum and one in the butt. */
fun TestApp.probed(lunch: Lunch) {
    done(Act.BindProbe(lunch.cook, "box", "1", Where.Pit(lunch.drum), null))
    done(Act.BindProbe(lunch.cook, "box", "2", Where.Piece(lunch.meats[2], "center"), null))
}

/** One of them says so many degrees Fahrenheit. */
fun TestApp.heard(fahrenheit: Int, sensor: String = "1") {
    val reading = SensorReading("box", sensor, clock.utcMs, mk(fahrenheit))
    door.change({ core, _, moment -> core.readings(listOf(reading), moment) })
}

/** Millikelvin, as the core keeps them. */
fun mk(fahrenheit: Int) = ((fahrenheit - 32) * 5_000L) / 9 + 273_150
