package org.slowbend.app

import androidx.compose.ui.test.junit4.v2.createAndroidComposeRule
import androidx.compose.ui.test.onRoot
import androidx.test.ext.junit.runners.AndroidJUnit4
import com.github.takahirom.roborazzi.captureRoboImage
import org.junit.Rule
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.annotation.Config
import org.robolectric.annotation.GraphicsMode
import slowbend.core.Act
import slowbend.core.FuelUnit
import slowbend.core.Place
import slowbend.core.ReadingsOf

/** The screens of the work at the pit and in the kitchen as pictures, at two moments of the invented regatta lunch. */
@RunWith(AndroidJUnit4::class)
@GraphicsMode(GraphicsMode.Mode.NATIVE)
@Config(sdk = [35], application = TestApp::class, qualifiers = PHONE)
class WorkPicturesTest {
    @get:Rule val rule = createAndroidComposeRule<MainActivity>()

    private val hand by lazy { Fingers(rule) }

    private fun shoot(name: String, variant: String, place: Place, asked: Asked = Asked()) {
        hand.go(place, asked)
        rule.onRoot().captureRoboImage("src/test/golden/$name-$variant.png", smallPicture)
    }

    /** Before the fire is lit. */
    private fun ahead(variant: String) {
        val lunch = hand.app.toPlan()
        shoot("plan", variant, Place.Plan(lunch.cook), Asked(plan = nothingSaid.copy(go = true, hands = "1", cooler = true, late = "30")))
        hand.app.planned(lunch)
        shoot("sheet", variant, Place.RunSheet(lunch.cook))
        shoot("kitchen", variant, Place.Kitchen(lunch.cook))
        shoot("dishes", variant, Place.Dishes(lunch.cook))
    }

    /** An hour and a half in, and the drum has fallen below its band. */
    private fun atThePit(variant: String) {
        val lunch = hand.app.underWay()
        hand.app.fell(lunch)
        for ((name, place) in pit(lunch)) shoot(name, variant, place)
    }

    private fun pit(lunch: Lunch) = mapOf(
        "fire" to Place.Fire(lunch.cook, lunch.drum),
        "fire-out" to Place.FireOut(lunch.cook, lunch.drum),
        "opening" to Place.Opening(lunch.cook, lunch.drum),
        "trouble" to Place.Trouble(lunch.cook, lunch.drum),
        "watch" to Place.Watch(lunch.cook),
        "pits" to Place.Pits(lunch.cook),
        "readings" to Place.Readings(ReadingsOf.Cook(lunch.cook)),
        "thermometers" to Place.Thermometers,
    )

    @Test
    fun aheadLight() = ahead("light")

    @Test
    @Config(qualifiers = "es-rUS-w411dp-h891dp-420dpi")
    fun aheadSpanish() = ahead("spanish")

    @Test
    @Config(fontScale = 2.0f)
    fun aheadLarge() = ahead("large")

    @Test
    fun pitLight() = atThePit("light")

    @Test
    @Config(qualifiers = "es-rUS-w411dp-h891dp-420dpi")
    fun pitSpanish() = atThePit("spanish")

    @Test
    @Config(fontScale = 2.0f)
    fun pitLarge() = atThePit("large")

    @Test
    @Config(qualifiers = "+night")
    fun byNight() {
        val lunch = hand.app.toPlan()
        hand.app.planned(lunch)
        shoot("sheet", "dark", Place.RunSheet(lunch.cook))
        shoot("fire", "dark", Place.Fire(lunch.cook, lunch.drum))
    }

    @Test
    @Config(qualifiers = "+land")
    fun held() {
        val lunch = hand.app.underWay()
        shoot("fire", "landscape", Place.Fire(lunch.cook, lunch.drum))
        shoot("opening", "landscape", Place.Opening(lunch.cook, lunch.drum))
    }

    @Test
    fun leftHanded() {
        rule.runOnUiThread { hand.model.tapWith(true) }
        val lunch = hand.app.underWay()
        shoot("fire", "left", Place.Fire(lunch.cook, lunch.drum))
    }
}

/** The drum was fed once, then fell out of its band; a probe in the butt was heard meanwhile, and a thermometer was tried. Invented. */
fun TestApp.fell(lunch: Lunch) {
    done(Act.AddThermometer("Red one"))
    done(Act.FeedUnits(lunch.cook, lunch.drum, FuelUnit.CHIMNEY, 2, null))
    probed(lunch)
    repeat(24) {
        clock.wait(5)
        heard(if (it < 12) 240 + it % 7 else 246 - (it - 11) * 5)
        heard(60 + 2 * it, "2")
    }
}
