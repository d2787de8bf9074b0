package org.slowbend.app.night

import android.content.Intent
import android.media.AudioManager
import android.os.BatteryManager
import androidx.compose.ui.test.junit4.v2.createAndroidComposeRule
import androidx.compose.ui.test.onRoot
import androidx.lifecycle.Lifecycle
import androidx.test.core.app.ApplicationProvider
import androidx.test.ext.junit.runners.AndroidJUnit4
import com.github.takahirom.roborazzi.captureRoboImage
import org.junit.Rule
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.annotation.Config
import org.robolectric.annotation.GraphicsMode
import org.robolectric.shadows.ShadowAlarmManager
import org.slowbend.app.Measures
import org.slowbend.app.PHONE
import org.slowbend.app.TestApp
import org.slowbend.app.smallPicture
import slowbend.core.Act
import slowbend.core.Stage

/** Before you sleep, as a picture and measured: a phone off its charger, two pits, the wakes ahead. */
@RunWith(AndroidJUnit4::class)
@GraphicsMode(GraphicsMode.Mode.NATIVE)
@Config(sdk = [35], application = TestApp::class, qualifiers = PHONE)
class NightPicturesTest {
    @get:Rule val rule = createAndroidComposeRule<NightActivity>()

    private val app get() = ApplicationProvider.getApplicationContext<TestApp>()

    private fun begin() {
        val lunch = app.underWay()
        app.done(Act.SetStage(lunch.meats[3], Stage.OnPit(lunch.kettle), null))
        ShadowAlarmManager.setCanScheduleExactAlarms(true)
        val audio = app.getSystemService(AudioManager::class.java)!!
        audio.setStreamVolume(AudioManager.STREAM_ALARM, audio.getStreamMaxVolume(AudioManager.STREAM_ALARM), 0)
        app.sendStickyBroadcast(
            Intent(Intent.ACTION_BATTERY_CHANGED).putExtra(BatteryManager.EXTRA_PLUGGED, 0)
                .putExtra(BatteryManager.EXTRA_LEVEL, 64).putExtra(BatteryManager.EXTRA_SCALE, 100),
        )
        rule.activityRule.scenario.moveToState(Lifecycle.State.STARTED)
        rule.activityRule.scenario.moveToState(Lifecycle.State.RESUMED)
        rule.waitForIdle()
    }

    private fun shoot(variant: String) {
        begin()
        rule.onRoot().captureRoboImage("src/test/golden/night-$variant.png", smallPicture)
    }

    @Test
    fun light() = shoot("light")

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
    fun `it is large, has contrast, and is tapped with a finger`() {
        begin()
        Measures(rule, rule.activity).run {
            assertLettersAreLarge()
            assertTargets(Measures.FINGER_MM)
            assertContrast()
        }
    }
}
