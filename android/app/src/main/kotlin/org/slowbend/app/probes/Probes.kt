package org.slowbend.app.probes

import android.content.Context
import android.os.Handler
import android.os.Looper
import androidx.core.os.UserManagerCompat
import org.slowbend.app.Changed
import org.slowbend.app.SlowbendApp
import slowbend.SlowbendInterface
import slowbend.core.HeardSource
import slowbend.core.HeardWord
import slowbend.core.Hearing
import slowbend.core.Moment
import slowbend.core.ProbesScreen
import slowbend.core.Reach
import slowbend.core.Trouble
import slowbend.core.Viewer
import slowbend.core.WordTaken

/**
 * Listens to the probes that this phone keeps, and hands what they say to the core, byte by byte.
 *
 * Start at [settle]: the core says whether a cook is under way; then each kept probe is linked and [ProbeService] keeps the
 * process, else all of them rest. All of it lives on the main thread; what the core is told is [hearing].
 */
class Probes(private val app: SlowbendApp, private val radio: Radio = PlatformRadio(app)) : Changed {
    private val kept = KeptProbes(app)
    private val main = Handler(Looper.getMainLooper())
    private val held = Held(app)
    private val batch = Batch(main, { app.clock.now().sinceBootMs }, ::hand)
    private val all = linkedMapOf<String, OneProbe>()
    private val near = linkedMapOf<String, Found>()
    private val seers = mutableListOf<() -> Unit>()
    private var watching: AutoCloseable? = null
    private var looking = false
    private var askedInVain = false
    private val stop = Runnable { stopLooking() }
    private val work = Runnable { app.door.work() }

    /** What the core made of it last; none before it was asked. */
    var screen: ProbesScreen? = null
        private set

    /** What keeps the probes of this phone from being heard; none where it keeps none. */
    val unheard get() = screen?.trouble?.takeIf { all.isNotEmpty() }

    /** As the core is told; read from its thread too. */
    @Volatile
    private var hearing = Hearing(radio.state, false, false, emptyList())

    private val isUnlocked get() = UserManagerCompat.isUserUnlocked(app)

    /** The process began, or the phone was unlocked. Before that neither the probes nor the database can be read. */
    fun start() {
        if (!isUnlocked) return
        app.door.listen(this)
        kept.read().forEach { all.getOrPut(it.address) { one(it) } }
        refresh()
    }

    /** Asks the core what to show, and whether to listen. */
    fun refresh() {
        hearing = told()
        app.door.ask({ core, viewer, moment -> core.probes(viewer, hearing, moment) }) { answer -> answer.onSuccess(::settle) }
    }

    /** Something was recorded, a reading among it. Called on the core's thread. */
    override fun changed(core: SlowbendInterface, viewer: Viewer, moment: Moment) {
        val screen = core.probes(viewer, hearing, moment)
        app.main.execute { settle(screen) }
    }

    /** [seen] is told of each change while somebody sees the screen of probes; then probes are heard without a cook too. */
    fun show(seen: () -> Unit): AutoCloseable {
        seers += seen
        refresh()
        return AutoCloseable {
            seers -= seen
            if (seers.isEmpty()) stopLooking()
        }
    }

    /** The phone's owner answered; [inVain] where the platform asks no more. */
    fun allowed(inVain: Boolean) {
        askedInVain = inVain
        refresh()
    }

    /** Looks for probes for a while, or stops it. */
    fun lookOrStop() = if (looking) stopLooking() else look()

    fun keep(source: String) {
        val probe = KeptProbe(source, near.remove(source)?.name.orEmpty())
        kept.keep(probe)
        all[source] = one(probe)
        refresh()
    }

    fun forget(source: String) {
        all.remove(source)?.rest()
        kept.forget(source)
        refresh()
    }

    /** The service ended: what was heard is handed over, for the process may end next. Begun again as soon as it may be. */
    fun serviceEnded() {
        batch.handOver()
        held.ended()
    }

    private fun one(probe: KeptProbe) = OneProbe(probe, radio, main, ::word) { now ->
        if (now.address in all) kept.keep(now)
        refresh()
    }

    private fun told(): Hearing {
        val nearby = near.values.filterNot { it.address in all }.map { HeardSource(it.address, it.name, Reach.NEARBY, emptyList(), null) }
        return Hearing(radio.state, askedInVain, looking, all.values.map { it.source } + nearby)
    }

    private fun settle(screen: ProbesScreen) {
        this.screen = screen
        val keeps = screen.listen && all.isNotEmpty()
        if (keeps || seers.isNotEmpty()) listen() else leave()
        if (keeps && radio.isAllowed) held.hold(screen) else held.letGo()
        seers.toList().forEach { it() }
    }

    private fun listen() {
        if (watching == null) watching = radio.watch(::switched)
        all.values.forEach { it.begin() }
    }

    private fun leave() {
        watching?.close()
        watching = null
        batch.handOver()
        all.values.forEach { it.rest() }
    }

    /** Bluetooth was switched off or on: every link is gone, and is made anew. */
    private fun switched() {
        all.values.forEach { it.rest() }
        refresh()
    }

    private fun look() {
        looking = true
        near.clear()
        radio.look(::found)
        main.postDelayed(stop, LOOK_MS)
        refresh()
    }

    private fun stopLooking() {
        main.removeCallbacks(stop)
        if (!looking) return
        looking = false
        radio.stopLooking()
        refresh()
    }

    /** The same probe is found many times over: only what is new is told. */
    private fun found(one: Found) {
        if (near.put(one.address, one) != one) refresh()
    }

    private fun word(source: String, sensor: String, characteristic: UShort, bytes: ByteArray) =
        batch.add(HeardWord(source, sensor, characteristic, bytes, app.clock.now()))

    private fun hand(words: List<HeardWord>) {
        app.door.change({ core, viewer, moment -> core.probeWords(viewer, words, moment) }) { answer ->
            answer.onSuccess(::took).onFailure { if (it !is Trouble.Refused) batch.takeBack(words) }
        }
        main.removeCallbacks(work)
        main.postDelayed(work, WORK_MS)
    }

    private fun took(taken: List<WordTaken>) {
        val news = taken.mapNotNull { one -> all[one.source]?.took(one) }
        if (news.any { it }) refresh()
    }

    companion object {
        /** So long it looks for probes; looking costs much of the battery. Common practice, no source. */
        const val LOOK_MS = 60_000L

        /** Once more after the last word, a little over the half minute after which the core writes readings to the disk. */
        const val WORK_MS = 35_000L

        fun of(context: Context) = (context.applicationContext as SlowbendApp).probes
    }
}
