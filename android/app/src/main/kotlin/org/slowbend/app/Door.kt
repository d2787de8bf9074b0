package org.slowbend.app

import android.util.Log
import slowbend.SlowbendInterface
import slowbend.core.Act
import slowbend.core.Moment
import slowbend.core.Outcome
import slowbend.core.Viewer
import java.util.concurrent.CopyOnWriteArraySet
import java.util.concurrent.Executor

/** What happened was recorded: screens are asked anew, the platform's alarms are made equal again. Called on [Door]'s executor. */
fun interface Changed {
    fun changed(core: SlowbendInterface, viewer: Viewer, moment: Moment)
}

/**
 * The one object of the core, for the life of the app. Every call runs on one background executor, in the order asked;
 * what it answers is handed to the main thread. The core is opened by the first call, so that nothing touches the disk
 * before the phone is unlocked.
 */
class Door(
    private val open: (Moment) -> SlowbendInterface,
    private val clock: Clock,
    private val viewing: Viewing,
    private val background: Executor,
    private val main: Executor,
) {
    private val core: SlowbendInterface by lazy { open(clock.now()) }
    private val device by lazy { core.device() }
    private val listeners = CopyOnWriteArraySet<Changed>()

    /** Runs [verb] on the executor and hands what came of it to [then] on the main thread. */
    fun <T> ask(verb: (SlowbendInterface, Viewer, Moment) -> T, then: (Result<T>) -> Unit = {}) = background.execute {
        val answer = runCatching { verb(core, viewing.viewer(device), clock.now()) }
        main.execute { then(answer) }
    }

    /** Records [act]; on disk when [then] hears of it. */
    fun act(act: Act, then: (Result<Outcome>) -> Unit = {}) =
        change({ core, viewer, moment -> core.act(viewer, act, moment) }, then)

    /** As [ask], for what changes something: whoever [listen]s is told, and the slow part is gone on with. */
    fun <T> change(verb: (SlowbendInterface, Viewer, Moment) -> T, then: (Result<T>) -> Unit = {}) {
        ask(
            { core, viewer, moment ->
                verb(core, viewer, moment).also { tell(core, viewer, moment) }
            },
            then,
        )
        work()
    }

    /** What was recorded stays recorded, and is answered so, whatever a listener makes of it. */
    private fun tell(core: SlowbendInterface, viewer: Viewer, moment: Moment) = listeners.forEach { listener ->
        runCatching { listener.changed(core, viewer, moment) }.onFailure { Log.e("slowbend", "after a change", it) }
    }

    /** Does the slow part in steps, other calls in between. */
    fun work() {
        background.execute {
            val more = runCatching { core.work(clock.now(), STEPS) }.getOrDefault(false)
            if (more) work()
        }
    }

    /** Tells [listener] of every change from now on, until [mute]. */
    fun listen(listener: Changed) = listeners.add(listener)

    fun mute(listener: Changed) = listeners.remove(listener)

    private companion object {
        /** Steps of work between two calls: so few that no tap waits for a forecast, whose steps take some milliseconds each. */
        const val STEPS = 2u
    }
}
