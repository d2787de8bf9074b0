package org.slowbend.app.alarms

import android.app.NotificationManager
import android.content.Intent
import android.os.UserManager
import androidx.test.core.app.ApplicationProvider
import androidx.test.ext.junit.runners.AndroidJUnit4
import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.Shadows.shadowOf
import org.robolectric.annotation.Config
import org.slowbend.app.Lunch
import org.slowbend.app.MINUTE
import org.slowbend.app.MORNING
import org.slowbend.app.PHONE
import org.slowbend.app.TestApp
import slowbend.core.Act
import slowbend.core.Trouble
import slowbend.core.Urgency

/** The process dies before any step that would outlive it; the next process makes good what it left. */
@RunWith(AndroidJUnit4::class)
@Config(sdk = [35], application = TestApp::class, qualifiers = PHONE)
class DeathTest {
    private class Death : Error()

    private val app get() = ApplicationProvider.getApplicationContext<TestApp>()
    private val platform by lazy { Platform(app) }

    private lateinit var lunch: Lunch

    private fun fresh() {
        app.die()
        app.filesDir.deleteRecursively()
        app.createDeviceProtectedStorageContext().filesDir.deleteRecursively()
        platform.rings().keys.forEach { app.getSystemService(NotificationManager::class.java).cancel(it, 1) }
        platform.forget()
        app.clock.utcMs = MORNING
        app.born()
        lunch = app.underWay()
        app.calls.clear()
    }

    /** Does [deed] with a process that dies before its [steps]-th step; answers whether it died. */
    private fun dies(steps: Int, deed: () -> Unit): Boolean {
        var left = steps
        app.die { if (left-- <= 0) throw Death() }
        return try {
            app.born()
            deed()
            left < 0
        } catch (thrown: Throwable) {
            if (generateSequence(thrown) { it.cause }.none { it is Death }) throw thrown
            true
        }
    }

    /** The phone goes off and on: the platform forgot its list and its notices, and nobody unlocks it for a while. */
    private fun reboot() {
        platform.forget()
        app.getSystemService(NotificationManager::class.java).cancelAll()
        val user = shadowOf(app.getSystemService(UserManager::class.java))
        app.clock.boot = "${app.clock.boot.toInt() + 1}"
        user.setUserUnlocked(false)
        app.trouble = Trouble.Unreadable("The disk is locked.")
        app.born()
        platform.hear(Intent.ACTION_LOCKED_BOOT_COMPLETED)
        user.setUserUnlocked(true)
        app.trouble = null
        platform.hear(Intent.ACTION_BOOT_COMPLETED)
    }

    private fun everywhere(rebooting: Boolean = false, deed: () -> Unit, after: (Int) -> Unit) {
        var steps = 0
        do {
            fresh()
            val died = dies(steps, deed)
            app.die()
            if (rebooting) reboot() else app.born()
            after(steps)
            steps += 1
        } while (died)
        assertTrue("died at $steps places", steps > 20)
    }

    private fun act() = app.done(Act.Feed(lunch.cook, lunch.drum, "", null)).let { }

    @Test
    fun `while an act is done`() = everywhere(deed = ::act) { steps -> platform.assertEqual("died at step $steps") }

    @Test
    fun `while an act is done, and the phone starts anew`() =
        everywhere(rebooting = true, deed = ::act) { steps -> platform.assertEqual("rebooted at step $steps") }

    @Test
    fun `while it rings, and the phone starts anew`() {
        var wake = ""
        everywhere(rebooting = true, deed = {
            val first = platform.wanted().first { it.urgency == Urgency.WAKE }
            wake = first.thing
            platform.pass(((first.at - app.clock.utcMs) / MINUTE).toInt())
        }) { steps ->
            platform.assertEqual("rebooted at step $steps")
            val rang = "rang" in app.calls || wake in platform.rings()
            platform.pass(60)
            assertTrue("rebooted at step $steps", wake == "" || rang || wake in platform.rings())
        }
    }

    @Test
    fun `while it rings, and it is heard at least once`() {
        var wake = ""
        everywhere(deed = {
            val first = platform.wanted().first { it.urgency == Urgency.WAKE }
            wake = first.thing
            platform.pass(((first.at - app.clock.utcMs) / MINUTE).toInt())
        }) { steps ->
            platform.pass(60)
            assertTrue("died at step $steps", wake == "" || wake in platform.rings())
            platform.assertEqual("died at step $steps")
        }
    }

    @Test
    fun `while a ring is answered, and the answer is told at most once`() {
        everywhere(deed = {
            val first = platform.wanted().first { it.urgency == Urgency.WAKE }
            platform.pass(((first.at - app.clock.utcMs) / MINUTE).toInt())
            platform.press(platform.rings().getValue(first.thing), 0)
        }) { steps ->
            platform.assertEqual("died at step $steps")
            app.calls.clear()
            app.alarms.settle()
            assertEquals("died at step $steps", 0, app.calls.count { it == "answer" })
        }
    }
}
