package org.slowbend.app

import androidx.compose.ui.test.junit4.v2.createAndroidComposeRule
import androidx.compose.ui.test.onRoot
import androidx.test.core.app.ApplicationProvider
import androidx.test.ext.junit.runners.AndroidJUnit4
import com.github.takahirom.roborazzi.captureRoboImage
import org.junit.Rule
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.annotation.Config
import org.robolectric.annotation.GraphicsMode
import slowbend.core.Act
import slowbend.core.Place

/**
 * Each screen as a picture, at one moment of the invented regatta lunch. `tests/run android` compares them;
 * `mvn test -Precord` takes them anew, and then they are to be looked at.
 */
@RunWith(AndroidJUnit4::class)
@GraphicsMode(GraphicsMode.Mode.NATIVE)
@Config(sdk = [35], application = TestApp::class, qualifiers = PHONE)
class ScreensTest {
    @get:Rule val rule = createAndroidComposeRule<MainActivity>()

    private val app get() = ApplicationProvider.getApplicationContext<TestApp>()

    private fun shoot(variant: String) {
        val lunch = app.underWay()
        val places = mapOf(
            "start" to Place.Start,
            "now" to Place.Now(lunch.cook),
            "meat" to Place.Piece(lunch.meats.first()),
            "check" to Place.Check(lunch.meats.first()),
            "timeline" to Place.Timeline(lunch.cook),
            "settings" to Place.Settings,
            "write" to Place.Write(lunch.cook),
        )
        for ((name, place) in places) {
            rule.runOnUiThread { rule.activity.model.go(place) }
            rule.waitForIdle()
            rule.onRoot().captureRoboImage("src/test/golden/$name-$variant.png", smallPicture)
        }
    }

    @Test
    fun light() = shoot("light")

    /** The pictures of the project's README: the propped phone by night, and one meat. */
    @Test
    @Config(qualifiers = "+night")
    fun readme() {
        val lunch = app.underWay()
        app.done(Act.AnswerRub(lunch.meats[2], false, null))
        app.clock.wait(1)
        for ((name, place) in mapOf("phone-now" to Place.Now(lunch.cook), "phone-meat" to Place.Piece(lunch.meats.first()))) {
            rule.runOnUiThread { rule.activity.model.go(place) }
            rule.waitForIdle()
            rule.onRoot().captureRoboImage("../../docs/pictures/$name.png", readmePicture)
        }
    }

    @Test
    @Config(qualifiers = "+night")
    fun dark() = shoot("dark")

    @Test
    @Config(qualifiers = "es-rUS-w411dp-h891dp-420dpi")
    fun spanish() = shoot("spanish")

    @Test
    @Config(fontScale = 2.0f)
    fun large() = shoot("large")

    @Test
    @Config(qualifiers = "+land")
    fun landscape() = shoot("landscape")

    @Test
    fun leftHanded() {
        rule.runOnUiThread { rule.activity.model.tapWith(true) }
        shoot("left")
    }
}
