package org.slowbend.app.night

import android.app.NotificationManager
import android.content.Intent
import android.media.AudioManager
import android.os.BatteryManager
import android.os.PowerManager
import android.provider.Settings
import androidx.compose.ui.test.hasText
import androidx.compose.ui.test.junit4.v2.createAndroidComposeRule
import androidx.compose.ui.test.onNodeWithTag
import androidx.compose.ui.test.performClick
import androidx.compose.ui.test.performScrollTo
import androidx.lifecycle.Lifecycle
import androidx.test.core.app.ApplicationProvider
import androidx.test.ext.junit.runners.AndroidJUnit4
import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Rule
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.Shadows.shadowOf
import org.robolectric.annotation.Config
import org.robolectric.annotation.GraphicsMode
import org.robolectric.shadows.ShadowAlarmManager
import org.slowbend.app.PHONE
import org.slowbend.app.TestApp
import org.slowbend.app.alarms.Laid
import org.slowbend.app.alarms.Platform
import slowbend.core.Act
import slowbend.core.Stage

/** Before you sleep: what is well, what is red and how it is mended, and a ring for real. */
@RunWith(AndroidJUnit4::class)
@GraphicsMode(GraphicsMode.Mode.NATIVE)
@Config(sdk = [35], application = TestApp::class, qualifiers = PHONE)
class NightTest {
    @get:Rule val rule = createAndroidComposeRule<NightActivity>()

    private val app get() = ApplicationProvider.getApplicationContext<TestApp>()

    private fun look() {
        rule.activityRule.scenario.moveToState(Lifecycle.State.STARTED)
        rule.activityRule.scenario.moveToState(Lifecycle.State.RESUMED)
        rule.waitForIdle()
    }

    private fun sees(text: String) =
        assertTrue(text, rule.onAllNodes(hasText(text, substring = true)).fetchSemanticsNodes().isNotEmpty())

    private fun line(name: String) = PhoneCheck(app).lines().single { it.name == name }

    @Test
    fun `each line that is red has its own fix`() {
        val audio = app.getSystemService(AudioManager::class.java)!!
        ShadowAlarmManager.setCanScheduleExactAlarms(false)
        audio.setStreamVolume(AudioManager.STREAM_ALARM, 1, 0)
        shadowOf(app.getSystemService(NotificationManager::class.java)).setNotificationsEnabled(false)
        app.getSystemService(NotificationManager::class.java)!!.setInterruptionFilter(NotificationManager.INTERRUPTION_FILTER_NONE)
        shadowOf(app.getSystemService(PowerManager::class.java)).setIsPowerSaveMode(true)
        val lines = PhoneCheck(app).lines()
        assertEquals(emptyList<String>(), lines.filter { it.isWell }.map { it.name })
        assertEquals(lines.size, lines.map { it.fix.action }.toSet().size)
        assertEquals(Settings.ACTION_REQUEST_SCHEDULE_EXACT_ALARM, line("Exact alarms").fix.action)
        look()
        rule.onNode(hasText("Mend: Exact alarms")).performScrollTo().performClick()
        assertEquals(Settings.ACTION_REQUEST_SCHEDULE_EXACT_ALARM, shadowOf(app).nextStartedActivity.action)
    }

    @Test
    fun `what is well is not red`() {
        val audio = app.getSystemService(AudioManager::class.java)!!
        audio.setStreamVolume(AudioManager.STREAM_ALARM, audio.getStreamMaxVolume(AudioManager.STREAM_ALARM), 0)
        ShadowAlarmManager.setCanScheduleExactAlarms(true)
        app.sendStickyBroadcast(
            Intent(Intent.ACTION_BATTERY_CHANGED).putExtra(BatteryManager.EXTRA_PLUGGED, BatteryManager.BATTERY_PLUGGED_AC)
                .putExtra(BatteryManager.EXTRA_LEVEL, 80).putExtra(BatteryManager.EXTRA_SCALE, 100),
        )
        for (name in listOf("Alarm volume", "Notifications", "Exact alarms", "Do not disturb", "Charger", "Battery saver")) {
            assertTrue(name, line(name).isWell)
        }
        assertEquals("Plugged in, 80 %", line("Charger").state)
    }

    @Test
    fun `it shows the wakes ahead, the probes, and how long each pit may be left`() {
        val lunch = app.underWay()
        app.done(Act.SetStage(lunch.meats[3], Stage.OnPit(lunch.kettle), null))
        look()
        sees("See to the fire")
        sees("Not left alone")
        sees("1 h")
        app.calls.clear()
        look()
        assertEquals(listOf("night"), app.calls)
    }

    @Test
    fun `the ring that is tried is laid fifteen seconds ahead`() {
        val platform = Platform(app)
        rule.onNodeWithTag("try").performScrollTo().performClick()
        rule.waitForIdle()
        assertEquals(app.clock.utcMs + 15_000, platform.lying()[Laid.TRIAL])
    }

    @Test
    @Config(qualifiers = "+es")
    fun spanish() {
        sees("Antes de dormir")
        sees("Volumen de alarma")
    }
}
