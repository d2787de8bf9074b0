package org.slowbend.app.probes

import android.app.NotificationManager
import android.content.Intent
import androidx.test.core.app.ApplicationProvider
import androidx.test.ext.junit.runners.AndroidJUnit4
import org.junit.Assert.assertEquals
import org.junit.Assert.assertFalse
import org.junit.Assert.assertNull
import org.junit.Assert.assertTrue
import org.junit.Before
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.Robolectric
import org.robolectric.Shadows.shadowOf
import org.robolectric.annotation.Config
import org.slowbend.app.Lunch
import org.slowbend.app.PHONE
import org.slowbend.app.TestApp
import org.slowbend.app.alarms.Platform
import org.slowbend.app.alarms.text
import org.slowbend.app.alarms.title
import slowbend.core.Act
import slowbend.core.Pitside
import slowbend.core.ProbeCard
import slowbend.core.Weight
import slowbend.core.Where

/** Probes come, speak, go and come back; what they said is shown where they sit, and what they did not say too. */
@RunWith(AndroidJUnit4::class)
@Config(sdk = [35], application = TestApp::class, qualifiers = PHONE)
class ProbesTest {
    private val app get() = ApplicationProvider.getApplicationContext<TestApp>()
    private val radio get() = app.radio
    private lateinit var lunch: Lunch

    @Before
    fun begin() {
        lunch = app.underWay()
        app.bornToHear()
    }

    private fun bind(source: String, place: Where, sensor: String = "1") = app.done(Act.BindProbe(lunch.cook, source, sensor, place, null))

    private fun kept(address: String, name: String = "Club probe", sensor: String = "1") {
        app.probes.keep(address)
        radio.comes(address, sensor)
    }

    private fun inDrum(address: String = BOX) {
        kept(address)
        bind(address, Where.Pit(lunch.drum))
    }

    private fun card(source: String, sensor: String = "1"): ProbeCard =
        app.probes.screen!!.probes.single { it.source == source && it.sensor == sensor }

    private fun now(): Pitside {
        var screen: Pitside? = null
        app.door.ask({ core, viewer, moment -> core.pitside(viewer, lunch.cook, moment) }) { screen = it.getOrThrow() }
        return screen!!
    }

    private fun drum() = now().pits.single { it.name == "Drum" }

    /** Time passes for the core's clock and the phone's. */
    private fun pass(minutes: Int) = repeat(minutes) {
        app.clock.wait(1)
        radio.pass(60_000)
    }

    @Test
    fun `bytes of a notification are a temperature in the pit where the probe sits`() {
        inDrum()
        radio.says(BOX, "1", Sig.TEMPERATURE, *C107)
        assertEquals("225 °F, just now", drum().state)
        assertEquals("225 °F, just now", card(BOX).line.state)
        assertEquals("Drum", card(BOX).line.name)
    }

    @Test
    fun `words are handed over together, a few times a minute`() {
        inDrum()
        radio.says(BOX, "1", Sig.TEMPERATURE, *C107)
        app.calls.clear()
        repeat(10) {
            app.clock.utcMs += 1_000
            radio.says(BOX, "1", Sig.TEMPERATURE, *C107)
        }
        assertFalse("probeWords" in app.calls)
        app.clock.utcMs += 5_000
        radio.pass(15_000)
        assertEquals(1, app.calls.count { it == "probeWords" })
    }

    @Test
    fun `once the probes are quiet the core works once more, and then nothing runs`() {
        inDrum()
        radio.says(BOX, "1", Sig.TEMPERATURE, *C107)
        app.calls.clear()
        radio.pass(Probes.WORK_MS)
        assertEquals(listOf("work"), app.calls.distinct())
        app.calls.clear()
        radio.pass(60 * 60_000)
        assertEquals(emptyList<String>(), app.calls)
    }

    @Test
    fun `a probe that falls silent is told where it sits, in the notice, and rings`() {
        inDrum()
        val platform = Platform(app)
        radio.says(BOX, "1", Sig.TEMPERATURE, *C107)
        assertEquals("Listening to probes", notice().title)
        assertTrue(notice().text, notice().text.startsWith("Drum: 225 °F at "))
        val silentAt = app.probes.screen!!.silentAt!!
        val receiver = SilenceReceiver::class.java.name
        val wakes = platform.alarms().single { shadowOf(it.operation).savedIntent.component!!.className == receiver }
        assertEquals(silentAt, wakes.triggerAtMs)
        app.clock.utcMs = silentAt
        wakes.operation!!.send()
        radio.pass(0)
        assertEquals("A probe is silent", notice().title)
        assertTrue(drum().state, drum().state.startsWith("Silent since "))
        assertEquals(Weight.CALL, card(BOX).line.weight)
    }

    @Test
    fun `a probe in a meat that falls silent is told on the meat`() {
        kept(BOX)
        bind(BOX, Where.Piece(lunch.meats[2], "center"))
        radio.says(BOX, "1", Sig.TEMPERATURE_MEASUREMENT, *F225)
        pass(16)
        val butt = now().meats.single { it.name == "Butt" }
        assertTrue("$butt", "A probe in it is silent since" in butt.state + butt.detail)
    }

    @Test
    fun `a probe that went away is reached again, with longer and longer pauses`() {
        inDrum()
        radio.says(BOX, "1", Sig.TEMPERATURE, *C107)
        val pauses = listOf(0L, 1_000, 2_000, 4_000, 8_000, 16_000, 32_000, 60_000, 60_000)
        for (pause in pauses) {
            radio.loses(BOX)
            assertTrue(card(BOX).line.detail, "Not reached now" in card(BOX).line.detail)
            if (pause > 0) {
                radio.pass(pause - 1)
                assertFalse("after less than $pause", BOX in radio.open)
            }
            radio.pass(if (pause > 0) 1 else 0)
            assertTrue("after $pause", BOX in radio.open)
        }
        radio.comes(BOX, "1")
        radio.says(BOX, "1", Sig.TEMPERATURE, *C107)
        radio.loses(BOX)
        radio.pass(0)
        assertTrue("a word makes it patient again", BOX in radio.open)
    }

    @Test
    fun `Bluetooth off is told with its fix, and on again every probe is linked anew`() {
        inDrum()
        radio.switches(on = false)
        assertEquals(0, radio.open.size)
        assertEquals("Open the Bluetooth settings", app.probes.screen!!.trouble!!.label)
        assertTrue(notice().text.startsWith("Bluetooth is off"))
        radio.pass(120_000)
        assertEquals(0, radio.open.size)
        radio.switches(on = true)
        radio.pass(0)
        assertTrue(BOX in radio.open)
        radio.comes(BOX, "1")
        radio.says(BOX, "1", Sig.TEMPERATURE, *C107)
        assertEquals("225 °F, just now", drum().state)
        assertNull(app.probes.screen!!.trouble)
    }

    @Test
    fun `a permission taken away while it links is survived, and given again it links`() {
        radio.refuses = true
        app.probes.keep(BOX)
        assertFalse(BOX in radio.open)
        radio.refuses = false
        app.probes.allowed(inVain = false)
        assertTrue(BOX in radio.open)
    }

    @Test
    fun `a probe without the two services is told as such and let go`() {
        app.probes.keep(BOX)
        radio.open.remove(BOX)!!.foreign()
        radio.pass(120_000)
        val card = app.probes.screen!!.probes.single()
        assertTrue(card.line.detail, "Has neither service" in card.line.detail)
        assertEquals(1, radio.asked[BOX])
    }

    @Test
    fun `bad bytes are told beside the probe, take nothing away, and are forgotten at the next good word`() {
        inDrum()
        radio.says(BOX, "1", Sig.TEMPERATURE, *C107)
        pass(1)
        radio.says(BOX, "1", Sig.TEMPERATURE, 0xE3)
        assertTrue(card(BOX).line.detail, "1 bytes instead of 2" in card(BOX).line.detail)
        assertEquals("225 °F, 1 min ago", drum().state)
        pass(1)
        radio.says(BOX, "1", Sig.TEMPERATURE, *C107)
        assertFalse("instead of" in card(BOX).line.detail)
    }

    @Test
    fun `two probes and two channels of one are told apart`() {
        inDrum()
        app.probes.keep(PAIR)
        radio.comes(PAIR, "1", "2")
        bind(PAIR, Where.Piece(lunch.meats[2], "center"), "1")
        radio.says(BOX, "1", Sig.TEMPERATURE, *C107)
        radio.says(PAIR, "1", Sig.TEMPERATURE, 0x88, 0x13)
        radio.says(PAIR, "2", Sig.TEMPERATURE, 0xC4, 0x09)
        pass(1)
        assertEquals("225 °F, 1 min ago", card(BOX).line.state)
        assertEquals("122 °F, 1 min ago", card(PAIR, "1").line.state)
        assertTrue(card(PAIR, "2").line.state, card(PAIR, "2").line.state.startsWith("77 °F, 1 min ago. No place yet"))
    }

    @Test
    fun `a probe that is found many times over is offered once, and not once it is kept`() {
        app.probes.lookOrStop()
        repeat(5) { radio.finds(BOX, "Club probe") }
        assertEquals(listOf("Club probe"), app.probes.screen!!.nearby.map { it.name })
        app.probes.keep(BOX)
        repeat(5) { radio.finds(BOX, "Club probe") }
        assertEquals(emptyList<String>(), app.probes.screen!!.nearby.map { it.name })
        assertEquals("Club probe", card(BOX, "").line.name)
        assertEquals(1, radio.asked[BOX])
        radio.pass(Probes.LOOK_MS)
        assertFalse(radio.isLooking)
    }

    @Test
    fun `a process that was killed hears its probes again, and what was handed over is there`() {
        inDrum()
        radio.says(BOX, "1", Sig.TEMPERATURE, *C107)
        app.clock.wait(1)
        radio.pass(Probes.WORK_MS)
        app.die()
        app.bornToHear()
        assertEquals(1, app.radio.open.size)
        assertEquals("225 °F, 1 min ago", card(BOX).line.state)
        assertEquals("Not reached now; tried again on its own", card(BOX).line.detail.substringAfterLast(" · "))
        radio.comes(BOX, "1")
        app.clock.wait(1)
        radio.says(BOX, "1", Sig.TEMPERATURE, *C107)
        assertEquals("225 °F, just now", drum().state)
    }

    @Test
    fun `after a start of the phone the service begins again`() {
        inDrum()
        app.die()
        app.newProbes()
        shadowOf(app).clearStartedServices()
        Platform(app).hear(Intent.ACTION_BOOT_COMPLETED)
        assertEquals(ProbeService::class.java.name, shadowOf(app).nextStartedService.component!!.className)
        assertTrue(BOX in radio.open)
    }

    @Test
    fun `before the first unlock nothing is linked and nothing asked`() {
        inDrum()
        app.die()
        app.newProbes()
        shadowOf(app.getSystemService(android.os.UserManager::class.java)).setUserUnlocked(false)
        app.calls.clear()
        app.probes.start()
        assertEquals(0, radio.open.size)
        assertEquals(emptyList<String>(), app.calls)
    }

    @Test
    fun `the service shows its notice at once, and killed and started again it listens`() {
        inDrum()
        val service = Robolectric.buildService(ProbeService::class.java).create().startCommand(0, 0)
        val shown = shadowOf(service.get())
        assertEquals(ProbeService.NOTICE, shown.lastForegroundNotificationId)
        assertEquals("Listening to probes", shown.lastForegroundNotification.title)
        shadowOf(app).clearStartedServices()
        service.destroy()
        app.probes.refresh()
        assertEquals(ProbeService::class.java.name, shadowOf(app).nextStartedService.component!!.className)
        Robolectric.buildService(ProbeService::class.java).create().startCommand(0, 0)
        assertTrue(BOX in radio.open)
    }

    @Test
    fun `without a cook nothing is listened to, and the service ends`() {
        inDrum()
        assertTrue(radio.isWatched)
        app.done(Act.FinishCook(lunch.cook))
        assertEquals(0, radio.open.size)
        assertFalse(radio.isWatched)
        assertEquals(ProbeService::class.java.name, shadowOf(app).nextStoppedService.component!!.className)
    }

    @Test
    fun `what was forgotten is not linked again`() {
        inDrum()
        app.probes.forget(BOX)
        assertEquals(0, radio.open.size)
        app.die()
        app.bornToHear()
        assertEquals(0, radio.open.size)
        assertNull(card(BOX).forget)
    }

    private fun notice() =
        app.getSystemService(NotificationManager::class.java)!!.activeNotifications.single { it.id == ProbeService.NOTICE }.notification

    private companion object {
        const val BOX = "C0:FF:EE:00:00:01"
        const val PAIR = "C0:FF:EE:00:00:02"
    }
}
