package org.slowbend.app.probes

import android.os.Handler
import slowbend.core.HeardSource
import slowbend.core.Reach
import slowbend.core.WordTaken

/**
 * One kept probe and the link to it, made again whenever it was lost: at once the first time, then after 1, 2, 4 … at most
 * 60 seconds. Only a word makes it patient again, so that a probe that links and falls off does not flap.
 */
class OneProbe(
    private var kept: KeptProbe,
    private val radio: Radio,
    private val main: Handler,
    private val onWord: (source: String, sensor: String, characteristic: UShort, bytes: ByteArray) -> Unit,
    private val onChange: (KeptProbe) -> Unit,
) : Heard {
    private var reach = Reach.REACHING
    private var open: AutoCloseable? = null
    private var trouble: String? = null
    private var failures = 0
    private var told = kept
    private var begun = false
    private val again = Runnable { link() }

    /** As the core is told of it. */
    val source get() = HeardSource(kept.address, kept.name, reach, kept.sensors, trouble)

    /** Begins to reach it; where that has begun nothing changes. */
    fun begin() {
        if (begun || !radio.mayLink) return
        begun = true
        link()
    }

    /** Lets go of it, until [begin]. */
    fun rest() {
        main.removeCallbacks(again)
        open?.close()
        open = null
        begun = false
        failures = 0
        be(Reach.REACHING)
    }

    private fun link() {
        open = try {
            radio.link(kept.address, this)
        } catch (_: SecurityException) {
            begun = false
            null
        }
    }

    override fun linked(sensors: List<String>) {
        kept = kept.copy(sensors = sensors)
        be(Reach.LINKED)
    }

    override fun word(sensor: String, characteristic: UShort, bytes: ByteArray) {
        failures = 0
        onWord(kept.address, sensor, characteristic, bytes)
    }

    override fun gone() {
        open = null
        main.postDelayed(again, waitMs(failures))
        failures += 1
        be(Reach.REACHING)
    }

    override fun foreign() {
        open = null
        be(Reach.FOREIGN)
    }

    /** What became of a word; answers whether something else is to be told of it now. */
    fun took(taken: WordTaken): Boolean {
        val before = trouble
        trouble = taken.whyNone
        return trouble != before
    }

    private fun be(now: Reach) {
        if (now == reach && kept == told) return
        reach = now
        told = kept
        onChange(kept)
    }

    companion object {
        private const val SECOND_MS = 1_000L
        private const val MOST_MS = 60_000L

        /** How long to wait before the next try, after so many that came to nothing. Common practice, no source. */
        fun waitMs(failures: Int) = if (failures == 0) 0 else (SECOND_MS shl (failures - 1).coerceAtMost(6)).coerceAtMost(MOST_MS)
    }
}
