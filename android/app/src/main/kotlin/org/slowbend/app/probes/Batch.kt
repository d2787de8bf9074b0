package org.slowbend.app.probes

import android.os.Handler
import slowbend.core.HeardWord

/**
 * Gathers words, so that the core is called a few times a minute and not at each. The first after a pause goes at once. No
 * clock runs while nothing is heard: a sleeping phone is woken by the probe, and then by nobody else.
 */
class Batch(private val main: Handler, private val sinceBootMs: () -> Long, private val hand: (List<HeardWord>) -> Unit) {
    private var waiting = emptyList<HeardWord>()
    private var handed: Long? = null
    private val later = Runnable { handOver() }

    fun add(word: HeardWord) {
        waiting = (waiting + word).takeLast(MOST)
        val left = handed?.let { it + EVERY_MS - sinceBootMs() } ?: 0
        main.removeCallbacks(later)
        if (left !in 1..EVERY_MS) handOver() else main.postDelayed(later, left)
    }

    /** What could not be written waits for the next word. */
    fun takeBack(words: List<HeardWord>) {
        waiting = (words + waiting).takeLast(MOST)
    }

    fun handOver() {
        main.removeCallbacks(later)
        val words = waiting.ifEmpty { return }
        waiting = emptyList()
        handed = sinceBootMs()
        hand(words)
    }

    private companion object {
        /** Half of the half minute within which the core wants to be called, so that a reading is on disk within one. */
        const val EVERY_MS = 15_000L

        /** So many words wait at most while the database cannot be written; the oldest go first. Common practice, no source. */
        const val MOST = 5_000
    }
}
