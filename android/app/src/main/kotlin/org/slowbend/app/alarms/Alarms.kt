package org.slowbend.app.alarms

import android.content.Context
import androidx.core.os.UserManagerCompat
import org.slowbend.app.Changed
import org.slowbend.app.R
import org.slowbend.app.SlowbendApp
import org.slowbend.app.reason
import slowbend.SlowbendInterface
import slowbend.core.Answer
import slowbend.core.Moment
import slowbend.core.Trouble
import slowbend.core.Urgency
import slowbend.core.Viewer
import java.util.UUID

/**
 * Makes the platform's list equal to the core's, rings, and takes answers.
 *
 * Start at [settle]: what waits is told to the core, then the list is laid. Where the core cannot be asked, because the
 * phone was not unlocked since it started or because the database is in trouble, what was laid last is laid again.
 *
 * [step] is called before each thing that outlives the process, so that tests can let it die between any two.
 */
class Alarms(private val app: SlowbendApp, step: () -> Unit = {}) : Changed {
    private val kept = KeptFile(app, step)
    private val bell = Bell(app, step)
    private val rings = RingNotices(app, step)

    /** The platform may have forgotten everything: at the start of this process, of the phone, of a new version. */
    @Volatile private var anew = true

    private val isUnlocked get() = UserManagerCompat.isUserUnlocked(app)

    /** The process began. */
    fun start() {
        rings.makeChannels()
        app.door.listen(this)
        settle()
    }

    /** The platform's list may be gone or late: all of it is laid again. */
    fun layAnew() {
        anew = true
        rings.makeChannels()
        settle()
    }

    fun settle() = if (isUnlocked) app.door.change(::tell) { it.onFailure(::goOnWithout) } else layKept()

    /** Something was recorded: called by the door after every act. What was recorded stays recorded, whatever happens here. */
    override fun changed(core: SlowbendInterface, viewer: Viewer, moment: Moment) {
        runCatching { lay(core, viewer, moment) }.onFailure(::goOnWithout)
    }

    /** The alarm [id] has come. One that is no longer due, or has sounded, is silent. */
    fun ring(id: String) {
        val one = kept.read().laid.find { it.id == id && !it.rung } ?: return settle()
        val moment = app.clock.now()
        rings.show(one, moment.utcMs)
        kept.change { it.rang(one, moment) }
        if (isUnlocked && !one.silent) app.say(one.speech)
        settle()
    }

    /** [one] was answered with its [answer]-th answer: durable at once, told to the core as soon as it can be. */
    fun answer(one: Laid, answer: Int) {
        val token = UUID.randomUUID().toString()
        kept.change { it.answered(one, answer, token, app.clock.now()) }
        rings.withdraw(one.thing)
        layKept()
        if (isUnlocked) settle()
    }

    /** Rings once for real in [inMs], through all that an alarm goes through. */
    fun tryOut(inMs: Long) {
        val text = app.getString(R.string.trial_text)
        val trial = Laid(
            Laid.TRIAL, Laid.TRIAL, null, app.clock.now().utcMs + inMs, Urgency.WAKE, app.getString(R.string.trial_title), text,
            text, emptyList(), late = false, silent = false, answers = listOf(Answer(app.getString(R.string.trial_heard), "", null)),
        )
        kept.change { it.copy(laid = it.laid.filterNot(Laid::isTrial) + trial, leaving = it.leaving - Laid.TRIAL) }
        bell.lay(trial)
    }

    /** Tells the core what waits, oldest first. What it refuses is told to the person; what it cannot write goes on waiting. */
    private fun tell(core: SlowbendInterface, viewer: Viewer, now: Moment) = kept.read().waiting.forEach { one ->
        val answered = try {
            when (one) {
                is Waiting.Rang -> null.also { core.rang(one.ids, one.moment) }
                is Waiting.Answered -> Answered.of(core.answer(one.token, viewer, one.act, one.moment))
            }
        } catch (refused: Trouble.Refused) {
            null.also { rings.tell(refused.reason, now.utcMs) }
        }
        kept.change { it.copy(waiting = it.waiting - one, answered = answered ?: it.answered) }
        answered?.let { app.main.execute { app.say(it.said) } }
    }

    /** What came of the last answer to a ring; whoever takes it shows it. */
    fun takeTold(): Answered? = kept.change { it.copy(answered = null) }.answered

    /** Hands what came of the answers so far to [then] on the main thread; nothing where the core cannot be asked. */
    fun whenTold(then: (Answered?) -> Unit) =
        if (isUnlocked) app.door.ask({ _, _, _ -> takeTold() }) { then(it.getOrNull()) } else then(null)

    private fun lay(core: SlowbendInterface, viewer: Viewer, moment: Moment) {
        val wanted = core.alarms(viewer, moment, LIMIT).alarms.map { it.laid() }
        val before = kept.change { it.wanting(wanted) }.laid.associateBy { it.id }
        val all = anew.also { anew = false }
        sweep()
        kept.read().laid.filter { !it.rung && (all || !it.liesAs(before[it.id])) }.forEach(bell::lay)
        val shown = rings.shown()
        if (shown.isNotEmpty()) rings.keepOnly(core.standing(shown, moment).toSet())
        rings.warnOfLateness(!bell.isExact)
        rings.troubleIsOver()
    }

    private fun layKept() {
        sweep()
        kept.read().laid.filterNot { it.rung }.forEach(bell::lay)
        rings.warnOfLateness(!bell.isExact)
    }

    private fun sweep() {
        kept.read().leaving.forEach(bell::takeOff)
        kept.change { it.swept() }
    }

    private fun goOnWithout(error: Throwable) {
        layKept()
        rings.warnOfTrouble(error.reason)
    }

    companion object {
        /** So many alarms are laid: well under what a platform allows; the core's last slot says "open Slowbend" if cut. */
        const val LIMIT = 60u

        fun of(context: Context) = (context.applicationContext as SlowbendApp).alarms
    }
}
