package org.slowbend.app.alarms

import android.app.NotificationManager
import androidx.test.core.app.ApplicationProvider
import androidx.test.ext.junit.runners.AndroidJUnit4
import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.annotation.Config
import org.slowbend.app.Lunch
import org.slowbend.app.MINUTE
import org.slowbend.app.MORNING
import org.slowbend.app.PHONE
import org.slowbend.app.TestApp
import slowbend.core.Act
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

    private fun everywhere(deed: () -> Unit, after: (Int) -> Unit) {
        var steps = 0
        do {
            fresh()
            val died = dies(steps, deed)
            app.die()
            app.born()
            after(steps)
            steps += 1
        } while (died)
        assertTrue("died at $steps places", steps > 20)
    }

    @Test
    fun `while an act is done`() = everywhere({ app.done(Act.Feed(lunch.cook, lunch.drum, "", null)) }) { steps ->
        platform.assertEqual("died at step $steps")
    }

    @Test
    fun `while it rings, and it is heard at least once`() {
        var wake = ""
        everywhere({
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
        everywhere({
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
