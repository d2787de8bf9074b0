package org.slowbend.app.alarms

import android.content.Intent
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
import org.robolectric.annotation.Config
import org.robolectric.shadows.ShadowLooper
import org.slowbend.app.Changed
import org.slowbend.app.MINUTE
import org.slowbend.app.PHONE
import org.slowbend.app.TestApp
import slowbend.core.Act
import slowbend.core.Urgency

/** The platform's list is the core's, what is due rings, and what is answered is silent. */
@RunWith(AndroidJUnit4::class)
@Config(sdk = [35], application = TestApp::class, qualifiers = PHONE)
class AlarmsTest {
    private val app get() = ApplicationProvider.getApplicationContext<TestApp>()
    private val platform by lazy { Platform(app) }

    @Before
    fun begin() {
        platform.forget()
        app.born()
    }

    private fun firstWake() = platform.wanted().first { it.urgency == Urgency.WAKE }

    @Test
    fun `after each act of a cook the platform's list is the core's`() {
        val acts = mutableListOf<Result<Unit>>()
        val checked =
            Changed { _, _, _ ->
                acts += runCatching { platform.assertEqual("after act ${acts.size + 1}") }
            }
        app.door.listen(checked)
        val lunch = app.underWay()
        app.done(Act.Feed(lunch.cook, lunch.drum, "", null))
        app.done(Act.Sleep(app.clock.utcMs + 90 * MINUTE))
        app.done(Act.WakeUp)
        app.done(Act.FinishCook(lunch.cook))
        acts.forEach { it.getOrThrow() }
        assertTrue("${acts.size} acts", acts.size >= 16)
        assertEquals(emptyMap<String, Long>(), platform.lying())
    }

    @Test
    fun `a call rings once and is told to the core`() {
        app.underWay()
        app.alarms.settle()
        val call = platform.wanted().first { it.urgency == Urgency.CALL }
        platform.pass(((call.at - app.clock.utcMs) / MINUTE).toInt())
        val ring = platform.rings().getValue(call.thing)
        assertEquals(call.title, ring.title)
        assertFalse(ring.isInsistent)
        assertTrue(call.speech in app.said)
        assertFalse(call.id in platform.lying())
        platform.assertEqual()
    }

    @Test
    fun `what must wake rings until it is answered, and then no more`() {
        app.underWay()
        val wake = firstWake()
        platform.pass(((wake.at - app.clock.utcMs) / MINUTE).toInt() + 3)
        val ring = platform.rings().getValue(wake.thing)
        assertTrue(ring.isInsistent)
        assertEquals("wake", ring.channelId)
        assertEquals(wake.answers.map { it.label }, ring.actions.map { it.title.toString() })
        platform.press(ring, 0)
        assertNull(platform.rings()[wake.thing])
        platform.assertEqual()
        assertTrue(platform.wanted().none { it.thing == wake.thing })
        val before = platform.rings().keys
        platform.pass(30)
        assertFalse(wake.thing in platform.rings().keys - before)
    }

    @Test
    fun `later takes the ring away and brings it back in time`() {
        app.underWay()
        val wake = firstWake()
        platform.pass(((wake.at - app.clock.utcMs) / MINUTE).toInt())
        platform.press(platform.rings().getValue(wake.thing), wake.answers.lastIndex)
        assertNull(platform.rings()[wake.thing])
        platform.assertEqual()
        val others = platform.rings().keys
        fun again() = platform.rings().filterKeys { it !in others }.values.filter { it.title == wake.title }
        platform.pass(9)
        assertEquals(0, again().size)
        platform.pass(1)
        assertEquals(1, again().size)
    }

    @Test
    fun `what is done on its screen takes its ring away`() {
        val lunch = app.underWay()
        val wake = firstWake()
        platform.pass(((wake.at - app.clock.utcMs) / MINUTE).toInt())
        assertNotNull(platform.rings()[wake.thing])
        app.done(Act.SeeFire(lunch.cook, lunch.drum, null))
        app.done(Act.SeeFire(lunch.cook, lunch.kettle, null))
        assertNull(platform.rings()[wake.thing])
    }

    @Test
    fun `the phone wakes as often as something is due, and at no other time`() {
        app.underWay()
        val until = app.clock.utcMs + 90 * MINUTE
        val wakes = platform.wanted().count { it.urgency == Urgency.WAKE && it.at <= until }
        app.calls.clear()
        platform.pass(90)
        assertTrue("$wakes wakes are due, and calls", platform.woken > wakes && wakes > 0)
        assertEquals("in vain", 0, platform.inVain)
        assertEquals("a ring for each time it woke", platform.woken, app.calls.count { it == "rang" })
        assertEquals("and nothing left", 0, platform.wanted().count { it.at <= app.clock.utcMs })
    }

    @Test
    fun `an alarm that nobody knows any more is silent`() {
        app.underWay()
        val intent = Intent(AlarmReceiver.RING, Bell.named("0".repeat(32)), app, AlarmReceiver::class.java)
        app.sendBroadcast(intent)
        ShadowLooper.idleMainLooper()
        assertEquals(emptySet<String>(), platform.rings().keys)
    }

    @Test
    fun `what comes late says so`() {
        app.underWay()
        val wake = firstWake()
        app.clock.utcMs = wake.at + 20 * MINUTE
        platform.come(platform.alarms().first { it.triggerAtMs == wake.at })
        assertTrue(platform.rings().getValue(wake.thing).text.contains("Late: due at"))
    }

    @Test
    fun `a ring is tried out through the same path, and no act takes it off`() {
        app.alarms.tryOut(15_000)
        val lunch = app.underWay()
        app.clock.utcMs -= 82 * MINUTE
        assertTrue(Laid.TRIAL in platform.lying())
        platform.pass(1)
        val ring = platform.rings().getValue(Laid.TRIAL)
        assertTrue(ring.isInsistent)
        app.done(Act.Feed(lunch.cook, lunch.drum, "", null))
        assertTrue(Laid.TRIAL in platform.rings())
        platform.press(ring, 0)
        assertFalse(Laid.TRIAL in platform.rings())
        assertFalse("answer" in app.calls)
        assertFalse(Laid.TRIAL in platform.lying())
    }
}
