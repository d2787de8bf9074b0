package org.slowbend.app.drawn

import androidx.activity.ComponentActivity
import androidx.activity.compose.setContent
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.text.BasicText
import androidx.compose.runtime.mutableStateOf
import androidx.test.core.app.ApplicationProvider
import androidx.test.ext.junit.runners.AndroidJUnit4
import org.junit.Assert.assertEquals
import org.junit.Assert.assertNotEquals
import org.junit.Assert.assertTrue
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.Robolectric
import org.robolectric.annotation.Config
import org.robolectric.annotation.GraphicsMode
import org.slowbend.app.MINUTE
import org.slowbend.app.MainActivity
import org.slowbend.app.PHONE
import slowbend.core.Place

/**
 * From the call of the core to the drawn screen, after a tap at a pit whose database holds 20,000 entries. In turns, who
 * goes first alternating: ours; the same screen of the same kind of record without the call; and as many bare lines, all
 * of them another text. `tests/bench drawn` makes the database, runs it and reads the times.
 */
@RunWith(AndroidJUnit4::class)
@GraphicsMode(GraphicsMode.Mode.NATIVE)
@Config(sdk = [35], application = BenchApp::class, qualifiers = PHONE)
class DrawnBench {
    private val app = ApplicationProvider.getApplicationContext<BenchApp>()
    private var taps = 0

    @Test
    fun `from the core to the picture`() {
        app.clock.utcMs = History.until
        val activity = Robolectric.buildActivity(MainActivity::class.java).setup().get()
        val (window, model) = Window(activity) to activity.model
        window.drawn { model.go(Place.Now(History.cook)) }
        val bare = Bare(window.texts().size)

        fun ours(): Long {
            tap()
            return told(window, model::refresh)
        }

        fun peer(): Long {
            tap()
            prepare()
            return told(window, model::refresh).also { app.held.record = null }
        }
        val turns = (0 until WARM + TURNS).map { turn ->
            val first = if (turn % 2 == 0) ours() else null
            val peer = peer()
            Turn(first ?: ours(), peer, app.held.call, bare.drawn())
        }
        holdsWithoutTheCall(window, model::refresh)
        History.tell(turns.drop(WARM))
    }

    private fun tap() {
        taps += 1
        app.clock.utcMs = History.until + taps * MINUTE
        var failed: Throwable? = null
        app.door.ask({ core, viewer, moment -> core.act(viewer, History.tap, moment) }) { failed = it.exceptionOrNull() }
        failed?.let { throw it }
    }

    /** Asks for the record that is drawn next without the call. */
    private fun prepare() = app.door.ask({ core, viewer, moment -> core.pitside(viewer, History.cook, moment) }) {
        app.held.record = it.getOrThrow()
    }

    /** Every turn has to change the picture, or nothing was drawn. */
    private fun told(window: Window, deed: () -> Unit): Long {
        val before = window.print()
        return window.drawn(deed).also { assertNotEquals(before, window.print()) }
    }

    /** The peer draws what ours draws. */
    private fun holdsWithoutTheCall(window: Window, refresh: () -> Unit) {
        tap()
        window.drawn(refresh)
        val called = window.print()
        prepare()
        window.drawn { }
        window.drawn(refresh)
        assertEquals(called, window.print())
        assertTrue(window.texts().size > 20)
    }

    /** As many lines as ours shows, with no call and nothing but the text. */
    private class Bare(private val lines: Int) {
        private val turn = mutableStateOf(0)
        private val window = Robolectric.buildActivity(ComponentActivity::class.java).create().also { controller ->
            controller.get().setContent {
                Column { repeat(lines) { BasicText("Slab $it was mopped ${turn.value} minutes ago") } }
            }
        }.start().resume().visible().get().let(::Window)

        fun drawn() = window.drawn { turn.value += 1 }
    }

    private companion object {
        const val WARM = 30
        const val TURNS = 101
    }
}
