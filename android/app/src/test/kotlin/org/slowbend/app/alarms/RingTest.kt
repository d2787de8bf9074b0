package org.slowbend.app.alarms

import android.content.Intent
import android.view.KeyEvent
import androidx.compose.ui.test.junit4.v2.createEmptyComposeRule
import androidx.compose.ui.test.onNodeWithTag
import androidx.compose.ui.test.onRoot
import androidx.compose.ui.test.performClick
import androidx.test.core.app.ActivityScenario
import androidx.test.core.app.ApplicationProvider
import androidx.test.ext.junit.runners.AndroidJUnit4
import com.github.takahirom.roborazzi.captureRoboImage
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertNotNull
import org.junit.Assert.assertNull
import org.junit.Assert.assertTrue
import org.junit.Before
import org.junit.Rule
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.annotation.Config
import org.robolectric.annotation.GraphicsMode
import org.robolectric.shadows.ShadowLooper
import org.slowbend.app.MINUTE
import org.slowbend.app.MainActivity
import org.slowbend.app.Measures
import org.slowbend.app.PHONE
import org.slowbend.app.TestApp
import org.slowbend.app.smallPicture
import org.slowbend.app.theme.At2m
import slowbend.core.Alarm
import slowbend.core.Urgency
import java.util.concurrent.TimeUnit

/** The ring over the lock screen: read half asleep, answered with a key or a hand, taken back at one touch. */
@RunWith(AndroidJUnit4::class)
@GraphicsMode(GraphicsMode.Mode.NATIVE)
@Config(sdk = [35], application = TestApp::class, qualifiers = PHONE)
class RingTest {
    @get:Rule val rule = createEmptyComposeRule()

    private val app get() = ApplicationProvider.getApplicationContext<TestApp>()
    private val platform by lazy { Platform(app) }
    private lateinit var wake: Alarm
    private lateinit var ring: ActivityScenario<RingActivity>

    @Before
    fun begin() {
        platform.forget()
        app.born()
        app.underWay()
        wake = platform.wanted().first { it.urgency == Urgency.WAKE }
        platform.pass(((wake.at - app.clock.utcMs) / MINUTE).toInt())
        val about = Intent(app, RingActivity::class.java).putExtra(AlarmReceiver.SHOWN, wake.laid().json().toString())
        ring = ActivityScenario.launch(about)
        rule.waitForIdle()
    }

    private fun press(key: Int) {
        ring.onActivity { it.onKeyDown(key, KeyEvent(KeyEvent.ACTION_DOWN, key)) }
        rule.waitForIdle()
    }

    /** How many things are due and not answered. */
    private fun due() = platform.wanted().count { it.at <= app.clock.utcMs } + platform.rings().size

    private fun shoot(variant: String) {
        rule.onRoot().captureRoboImage("src/test/golden/ring-$variant.png", smallPicture)
        press(KeyEvent.KEYCODE_VOLUME_UP)
        rule.onRoot().captureRoboImage("src/test/golden/ring-answered-$variant.png", smallPicture)
    }

    private fun measure() = ring.onActivity {
        Measures(rule, it).run {
            assertLettersAreLarge()
            assertTargets(At2m.TARGET_MM)
            assertContrast()
        }
    }

    @Test
    fun `it is large, has contrast, and is answered with a gloved finger`() {
        measure()
        press(KeyEvent.KEYCODE_VOLUME_UP)
        measure()
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
    fun `volume up is did it, and the undo stands huge for thirty seconds`() {
        press(KeyEvent.KEYCODE_VOLUME_UP)
        assertFalse(wake.thing in platform.rings())
        rule.onNodeWithTag("undo").assertExists()
        ring.onActivity { assertFalse(it.isFinishing) }
        ShadowLooper.idleMainLooper(Answered.SHOWN_MS, TimeUnit.MILLISECONDS)
        ring.onActivity { assertTrue(it.isFinishing) }
    }

    @Test
    fun `what was answered by a slip is taken back there, and rings again`() {
        press(KeyEvent.KEYCODE_VOLUME_UP)
        val left = due()
        rule.onNodeWithTag("undo").performClick()
        rule.waitForIdle()
        assertEquals(left + 1, due())
        platform.assertEqual()
    }

    @Test
    fun `volume down is later`() {
        press(KeyEvent.KEYCODE_VOLUME_DOWN)
        assertFalse(wake.thing in platform.rings())
        platform.pass(10)
        assertTrue(platform.rings().values.any { it.title == wake.title })
    }

    @Test
    fun `what was answered on the lock screen is told when the app is seen next, with thirty seconds to take it back`() {
        platform.press(platform.rings().getValue(wake.thing), 0)
        app.clock.wait(45)
        app.die()
        app.born()
        ActivityScenario.launch(MainActivity::class.java).use { scenario ->
            scenario.onActivity { activity ->
                val told = activity.model.told!!
                assertEquals(app.clock.utcMs + 30_000, told.undo!!.until)
                app.calls.clear()
                activity.model.record(told.undo!!.act)
                assertTrue("act" in app.calls)
                assertTrue(activity.model.told!!.text.isNotEmpty())
            }
        }
        platform.assertEqual()
    }

    @Test
    fun `it is told once`() {
        platform.press(platform.rings().getValue(wake.thing), 0)
        assertNotNull(app.alarms.takeTold())
        assertNull(app.alarms.takeTold())
    }
}
