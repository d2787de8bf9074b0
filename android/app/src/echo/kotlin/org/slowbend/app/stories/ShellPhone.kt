package org.slowbend.app.stories

import android.content.ContextWrapper
import kotlinx.serialization.json.JsonObject
import org.slowbend.app.Clock
import org.slowbend.app.Door
import org.slowbend.app.TestApp
import org.slowbend.app.Viewing
import slowbend.Slowbend
import slowbend.SlowbendInterface
import slowbend.core.Moment
import slowbend.core.Viewer
import slowbend.openSeeded
import slowbend.stories.INSTALLATION
import slowbend.stories.Phone
import slowbend.stories.RESTART
import slowbend.stories.ZONE
import slowbend.stories.must
import java.io.File
import java.util.concurrent.Executor

/** A phone of a story whose core is reached through the shell's own [Door], at moments of the app's clock. */
class ShellPhone(
    private val hand: Hand,
    private val app: TestApp,
    private var seed: Int,
    holder: JsonObject,
    private val now: () -> Moment,
) : Phone {
    private val place = File(app.filesDir, "phone-$seed").path
    private val viewing = Viewing(own(seed)) { ZONE }.apply { holder.keys.forEach { choose(it, holder.must(it)) } }
    private var core: Slowbend? = null
    var door = opened()
        private set

    /** The app, with settings that no other phone has. */
    private fun own(phone: Int) = object : ContextWrapper(app) {
        override fun getSharedPreferences(name: String, mode: Int) = super.getSharedPreferences("$name-$phone", mode)
    }

    private fun opened() = Door(::open, Clock(::moment), viewing, Executor(Runnable::run), Executor(Runnable::run))

    private fun open(moment: Moment) = openSeeded(place, INSTALLATION, seed.toUByte(), moment).also { core = it }

    private fun moment(): Moment {
        app.clock.utcMs = now().utcMs
        return app.clock.now()
    }

    override fun <T> ask(verb: (SlowbendInterface, Viewer, Moment) -> T) = answer<T> { door.ask(verb, it) }

    override fun <T> change(verb: (SlowbendInterface, Viewer, Moment) -> T) = answer<T> { door.change(verb, it) }

    private fun <T> answer(ask: ((Result<T>) -> Unit) -> Unit): T {
        var answer: Result<T>? = null
        ask { answer = it }
        return answer!!.getOrThrow()
    }

    override fun ring() {
        if (!hand.rings()) super.ring()
    }

    override fun restart() {
        close()
        seed += RESTART
        door = opened()
        hand.restarted(this)
    }

    override fun close() {
        core?.suspend()
        core?.close()
    }

    override fun shows(see: String, of: List<String>, record: Any) = hand.shows(this, see, of, record)
}
