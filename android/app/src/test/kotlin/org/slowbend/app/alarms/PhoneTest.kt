package org.slowbend.app.alarms

import android.app.NotificationManager
import android.content.Intent
import android.os.UserManager
import android.os.Vibrator
import androidx.test.core.app.ApplicationProvider
import androidx.test.ext.junit.runners.AndroidJUnit4
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertNotNull
import org.junit.Assert.assertNull
import org.junit.Assert.assertTrue
import org.junit.Before
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.Shadows.shadowOf
import org.robolectric.annotation.Config
import org.robolectric.shadows.ShadowAlarmManager
import org.slowbend.app.MINUTE
import org.slowbend.app.PHONE
import org.slowbend.app.TestApp
import org.slowbend.app.night.PhoneCheck
import slowbend.core.Trouble
import slowbend.core.Urgency

/** The phone starts, is locked, changes its clock, refuses what was asked of it: what is due rings all the same. */
@RunWith(AndroidJUnit4::class)
@Config(sdk = [35], application = TestApp::class, qualifiers = PHONE)
class PhoneTest {
    private val app get() = ApplicationProvider.getApplicationContext<TestApp>()
    private val platform by lazy { Platform(app) }
    private val notices get() = app.getSystemService(NotificationManager::class.java)!!

    @Before
    fun begin() {
        platform.forget()
        app.born()
        app.underWay()
    }

    private fun unlocked(yes: Boolean) = shadowOf(app.getSystemService(UserManager::class.java)).setUserUnlocked(yes)

    private fun until(at: Long) = ((at - app.clock.utcMs) / MINUTE).toInt()

    @Test
    fun `whatever the phone went through, the list is laid again`() {
        for (action in PhoneReceiver.HEARD) {
            platform.forget()
            app.die()
            app.door.listen(app.alarms)
            platform.hear(action)
            platform.assertEqual(action)
            assertTrue(action, platform.lying().isNotEmpty())
        }
    }

    @Test
    fun `a clock that is moved lays the list for the new time`() {
        app.clock.wait(180)
        platform.hear(Intent.ACTION_TIME_CHANGED)
        platform.assertEqual()
        app.clock.wait(-180)
        platform.hear(Intent.ACTION_TIME_CHANGED)
        platform.assertEqual()
    }

    /** The phone started in the night and nobody unlocked it: the core cannot be opened. */
    private fun startsLocked() {
        platform.forget()
        app.die()
        app.clock.boot = "2"
        unlocked(false)
        app.trouble = Trouble.Unreadable("The disk is locked.")
        app.born()
        platform.hear(Intent.ACTION_LOCKED_BOOT_COMPLETED)
    }

    private fun isUnlockedNow() {
        unlocked(true)
        app.trouble = null
        app.calls.clear()
        platform.hear(Intent.ACTION_BOOT_COMPLETED)
    }

    @Test
    fun `before the first unlock the same list lies on the platform`() {
        val before = platform.lying()
        startsLocked()
        assertEquals(before, platform.lying())
        assertNull(platform.notice(3))
    }

    @Test
    fun `a ring that is answered before the first unlock is told to the core after it`() {
        val wake = platform.wanted().first { it.urgency == Urgency.WAKE }
        startsLocked()
        platform.pass(until(wake.at))
        platform.press(platform.rings().getValue(wake.thing), 0)
        assertNull(platform.rings()[wake.thing])
        val shown = platform.rings().keys
        platform.pass(20)
        assertFalse("answered, and silent", wake.thing in platform.rings().keys - shown)
        isUnlockedNow()
        assertTrue("answer" in app.calls && "rang" in app.calls)
        platform.assertEqual()
        assertTrue(platform.wanted().none { it.thing == wake.thing })
        app.calls.clear()
        platform.hear(Intent.ACTION_BOOT_COMPLETED)
        assertFalse("told once", "answer" in app.calls)
    }

    @Test
    fun `later before the first unlock rings again in ten minutes`() {
        val wake = platform.wanted().first { it.urgency == Urgency.WAKE }
        startsLocked()
        platform.pass(until(wake.at))
        platform.press(platform.rings().getValue(wake.thing), wake.answers.lastIndex)
        platform.pass(9)
        assertNull(platform.rings()[wake.thing])
        platform.pass(1)
        assertNotNull(platform.rings()[wake.thing])
    }

    @Test
    fun `without exact alarms they are laid all the same, with a warning, until the permission comes`() {
        ShadowAlarmManager.setCanScheduleExactAlarms(false)
        platform.forget()
        platform.hear("android.app.action.SCHEDULE_EXACT_ALARM_PERMISSION_STATE_CHANGED")
        assertEquals(platform.wanted().associate { it.id to it.at }, platform.lying())
        assertTrue(platform.alarms().all { it.isAllowWhileIdle && it.alarmClockInfo == null })
        assertTrue(platform.notice(4)!!.text.contains("an hour late"))
        ShadowAlarmManager.setCanScheduleExactAlarms(true)
        platform.hear("android.app.action.SCHEDULE_EXACT_ALARM_PERMISSION_STATE_CHANGED")
        platform.assertEqual()
        assertNull(platform.notice(4))
    }

    @Test
    fun `without notifications the phone shakes, and nothing else breaks`() {
        shadowOf(notices).setNotificationsEnabled(false)
        val wake = platform.wanted().first { it.urgency == Urgency.WAKE }
        platform.pass(until(wake.at))
        assertTrue(shadowOf(app.getSystemService(Vibrator::class.java)).isVibrating)
        assertTrue("rang" in app.calls)
        platform.assertEqual()
    }

    @Test
    fun `with every permission refused it still shakes in time, is answered, and says what is missing`() {
        ShadowAlarmManager.setCanScheduleExactAlarms(false)
        shadowOf(notices).setNotificationsEnabled(false)
        platform.forget()
        platform.hear("android.app.action.SCHEDULE_EXACT_ALARM_PERMISSION_STATE_CHANGED")
        assertFalse(notices.canUseFullScreenIntent())
        val wake = platform.wanted().first { it.urgency == Urgency.WAKE }
        assertEquals(platform.wanted().associate { it.id to it.at }, platform.lying())
        platform.pass(until(wake.at))
        assertTrue(shadowOf(app.getSystemService(Vibrator::class.java)).isVibrating)
        val red = PhoneCheck(app).lines().filterNot { it.isWell }.map { it.name }
        assertTrue("$red", red.containsAll(listOf("Notifications", "Exact alarms", "Over the lock screen")))
        app.alarms.answer(wake.laid(), 0)
        assertTrue(platform.wanted().none { it.thing == wake.thing })
    }

    @Test
    fun `a full screen that is refused leaves the notice`() {
        val wake = platform.wanted().first { it.urgency == Urgency.WAKE }
        assertFalse(notices.canUseFullScreenIntent())
        platform.pass(until(wake.at))
        assertNull(platform.rings().getValue(wake.thing).fullScreenIntent)
    }

    @Test
    fun `a database that is in use leaves the list as it was, says so, and rings`() {
        val before = platform.lying()
        val wake = platform.wanted().first { it.urgency == Urgency.WAKE }
        app.die()
        platform.forget()
        app.trouble = Trouble.InUse("Another program is using this database.")
        app.born()
        assertEquals(before, platform.lying())
        assertEquals("Another program is using this database.", platform.notice(3)!!.text)
        platform.pass(until(wake.at))
        platform.press(platform.rings().getValue(wake.thing), 0)
        assertNull(platform.rings()[wake.thing])
        app.trouble = null
        app.alarms.settle()
        assertNull(platform.notice(3))
        platform.assertEqual()
        assertTrue(platform.wanted().none { it.thing == wake.thing })
    }
}
