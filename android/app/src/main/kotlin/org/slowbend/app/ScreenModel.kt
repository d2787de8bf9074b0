package org.slowbend.app

import android.os.Handler
import android.os.Looper
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.setValue
import androidx.lifecycle.SavedStateHandle
import androidx.lifecycle.ViewModel
import slowbend.SlowbendInterface
import slowbend.core.Act
import slowbend.core.Button
import slowbend.core.Frame
import slowbend.core.Headline
import slowbend.core.Moment
import slowbend.core.Outcome
import slowbend.core.Place
import slowbend.core.Undo
import slowbend.core.Viewer

/**
 * Where the person is, and what is shown there. It holds no model of a cook: it asks the core for the whole screen after
 * each act, when something else was recorded, and when the screen's `until` has come; it never polls.
 */
class ScreenModel(private val app: SlowbendApp, private val saved: SavedStateHandle) : ViewModel(), Shell {
    override var shown by mutableStateOf<Shown?>(null)
        private set
    override var frame by mutableStateOf<Frame?>(null)
        private set
    override var told by mutableStateOf<Told?>(null)
        private set
    override var asking by mutableStateOf<Button?>(null)
        private set
    override var leftHanded by mutableStateOf(app.viewing.leftHanded)
        private set

    override var ago by mutableStateOf(JUST_NOW)
        private set
    override var isWaiting by mutableStateOf(false)
        private set

    /** Whether it is looked at: what was answered elsewhere is told only then. */
    var isSeen = false
        private set

    private var path: ArrayList<String>
        get() = saved["path"] ?: arrayListOf(Place.Start.path())
        set(value) {
            saved["path"] = value
        }
    private var asked = Asked()
    private var afterwards: (Outcome) -> Unit = {}
    private val handler = Handler(Looper.getMainLooper())
    private val again = Runnable {
        // Forecasts alone are slow work that comes by the clock; all else comes by what was recorded.
        if (app.foretells) app.door.work()
        refresh()
    }
    private val changed = Changed { _, _, _ -> app.main.execute { refresh() } }

    val place get() = placeOf(path.last())

    init {
        app.door.listen(changed)
        translate()
    }

    override fun onCleared() {
        handler.removeCallbacks(again)
        app.door.mute(changed)
    }

    override val canGoBack get() = path.size > 1

    override fun go(place: Place, asked: Asked) {
        leave(asked)
        path = if (place is Place.Start) arrayListOf(place.path()) else ArrayList(path - place.path() + place.path())
        refresh()
    }

    override fun back() {
        leave(Asked())
        path = ArrayList(path.dropLast(1).ifEmpty { listOf(Place.Start.path()) })
        refresh()
    }

    /** What was told, and the time that holds for one act, belong to the screen that is left. */
    private fun leave(next: Asked) {
        told = null
        ago = JUST_NOW
        asked = next
    }

    override fun ask(asked: Asked) {
        this.asked = asked
        isWaiting = true
        refresh()
    }

    override fun refresh() {
        val (place, asked) = place to asked
        app.door.ask({ core, viewer, moment -> core.show(place, asked, viewer, moment) to moment.utcMs }) { answer ->
            isWaiting = false
            answer.onSuccess { (screen, now) ->
                shown = screen
                if (frame == null) translate()
                tellAnswer(now)
                told = told?.takeIf { it.until > now }
                wake(minOf(screen.until, told?.until ?: Long.MAX_VALUE) - now)
            }.onFailure { told = Told.trouble(it) }
        }
    }

    /** It is looked at, or no longer. */
    fun seen(yes: Boolean) {
        isSeen = yes
        if (yes) refresh()
    }

    /** What a ring was answered with where nobody could see what came of it: told now, and 30 s to take it back. */
    private fun tellAnswer(now: Long) {
        if (!isSeen) return
        app.alarms.takeTold()?.let { told = it.toldAt(now) }
    }

    /** Asks again once what is shown is no longer true; at the latest in a day, for the screen may say "never". */
    private fun wake(inMs: Long) {
        handler.removeCallbacks(again)
        handler.postDelayed(again, inMs.coerceIn(SOON_MS, DAY_MS))
    }

    private fun translate() = app.door.ask({ core, viewer, _ -> core.frame(viewer) }) { it.onSuccess { words -> frame = words } }

    override fun press(button: Button, then: (Outcome) -> Unit) {
        if (!button.isAsked) return record(button.act, then)
        asking = button
        afterwards = then
    }

    /** A volume key was pressed. One press never does what is asked about; it says what is to be done instead. */
    fun pressKey(button: Button?, now: Headline) {
        if (button == null || button.isAsked) app.say(now.speech) else record(button.act)
    }

    override fun answer(yes: Boolean) {
        val act = asking?.act
        asking = null
        if (yes && act != null) record(act, afterwards)
    }

    override fun wasDone(ago: String) {
        this.ago = ago
    }

    override fun record(act: Act, then: (Outcome) -> Unit) = recordTyped({ _, _, _ -> act }, then)

    override fun recordTyped(read: (SlowbendInterface, Viewer, Moment) -> Act, then: (Outcome) -> Unit) {
        val minutes = ago.toLong()
        app.door.change({ core, viewer, moment ->
            val act = read(core, viewer, moment)
            core.act(viewer, if (minutes == 0L) act else core.doneAgo(act, minutes, moment), moment)
        }) { tell(it, then) }
    }

    private fun tell(answer: Result<Outcome>, then: (Outcome) -> Unit) {
        answer.onSuccess { outcome ->
            ago = JUST_NOW
            then(outcome)
            told = Told(outcome.said, outcome.undo)
        }.onFailure { told = Told.trouble(it) }
        told?.let { app.say(it.text) }
    }

    override fun choose(field: String, value: String) {
        app.viewing.choose(field, value)
        translate()
        refresh()
    }

    override fun tapWith(left: Boolean) {
        app.viewing.tapWith(left)
        leftHanded = left
    }

    override fun stopped(trouble: Throwable) {
        told = Told.trouble(trouble)
    }

    override fun heard() {
        told = null
    }

    private companion object {
        const val SOON_MS = 1_000L
        const val DAY_MS = 86_400_000L
        const val JUST_NOW = "0"
    }
}

/** What came of the last act: said back, with how to take it back, or why it was not done. */
data class Told(val text: String, val undo: Undo? = null, val isTrouble: Boolean = false) {
    /** What can no longer be taken back at one touch is told no longer. */
    val until get() = undo?.until ?: Long.MAX_VALUE

    companion object {
        fun trouble(error: Throwable) = Told(error.reason, isTrouble = true)
    }
}
