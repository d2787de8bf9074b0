package org.slowbend.app.drawn

import org.slowbend.app.SlowbendApp
import org.slowbend.app.TestClock
import slowbend.SlowbendInterface
import slowbend.core.CookId
import slowbend.core.Moment
import slowbend.core.Pitside
import slowbend.core.Viewer
import slowbend.openSeeded
import java.util.concurrent.Executor

/** The core, or the record that it gave before: then [pitside] crosses no border. */
class Held(private val core: SlowbendInterface) : SlowbendInterface by core {
    var record: Pitside? = null

    /** How long the last call that crossed took, nanoseconds. */
    var call = 0L
        private set

    override fun pitside(viewer: Viewer, cook: CookId, moment: Moment) = record ?: asked(viewer, cook, moment)

    private fun asked(viewer: Viewer, cook: CookId, moment: Moment): Pitside {
        val start = System.nanoTime()
        return core.pitside(viewer, cook, moment).also { call = System.nanoTime() - start }
    }
}

/** The app over the database of the bench, all on the thread that is timed. */
class BenchApp : SlowbendApp() {
    override val clock = TestClock()
    override val background = Executor(Runnable::run)
    override val main = Executor(Runnable::run)
    lateinit var held: Held

    override fun start() = Unit

    override fun say(text: String) = Unit

    override fun open(moment: Moment): SlowbendInterface =
        openSeeded(History.folder.path, History.INSTALLATION, 9u, moment).let(::Held).also { held = it }
}
