package org.slowbend.app.stories

import kotlinx.serialization.json.JsonObject
import org.junit.Assert.assertEquals
import org.junit.Assert.assertNull
import org.robolectric.Robolectric
import org.robolectric.android.controller.ActivityController
import org.robolectric.shadows.ShadowLooper
import org.slowbend.app.Asked
import org.slowbend.app.MainActivity
import org.slowbend.app.Shown
import org.slowbend.app.TestApp
import org.slowbend.app.alarms.Platform
import org.slowbend.app.nothingSaid
import slowbend.core.AlarmList
import slowbend.core.Cut
import slowbend.core.Moment
import slowbend.core.Place
import slowbend.core.ReadingsOf

/** Holds the phones of a story, one at a time: one process is all of them in turn, each with a door and a database of its own. */
class Hand(private val app: TestApp) {
    private var window: ActivityController<MainActivity>? = null
    private val platform = Platform(app)
    private var isListening = false

    fun phone(seed: Int, holder: JsonObject, now: () -> Moment) = ShellPhone(this, app, seed, holder, now)

    /** Takes the first of [phones] in hand and opens the app; where it is the only one, its alarms lie on the platform. */
    fun begin(phones: List<ShellPhone>) {
        isListening = phones.size == 1
        launch(phones.first())
    }

    private fun launch(phone: ShellPhone) {
        app.hold(phone.door)
        if (isListening) app.born()
        window = Robolectric.buildActivity(MainActivity::class.java).setup()
    }

    /** The process of [phone] ended and begins again. */
    fun restarted(phone: ShellPhone) {
        leave()
        app.die()
        launch(phone)
    }

    fun leave() {
        window?.pause()?.stop()?.destroy()
    }

    /** What is due sounds through the platform; says whether it could. */
    fun rings(): Boolean {
        if (!isListening) return false
        app.alarms.settle()
        platform.alarms().filter { it.triggerAtMs <= app.clock.utcMs }.forEach(platform::come)
        return true
    }

    /** Law: the window shows what the core says, and the platform keeps what must ring. */
    fun shows(phone: ShellPhone, see: String, of: List<String>, record: Any) {
        if (record is AlarmList) return if (isListening) keeps() else Unit
        val place = placeOf(see, of) ?: return
        app.hold(phone.door)
        val model = window!!.get().model
        model.go(place, asked(see, of))
        ShadowLooper.idleMainLooper()
        assertNull(model.told)
        assertEquals(record, model.shown!!.record)
    }

    private fun keeps() {
        app.alarms.settle()
        platform.assertEqual()
    }
}

/** What a story asks of a screen: that there be a plan, a cut of some name, sheets for some students. */
private fun asked(see: String, of: List<String>) = when (see) {
    "plan" -> Asked(plan = nothingSaid.copy(go = true))
    "cuts" -> Asked(sought = of.firstOrNull().orEmpty())
    "hand_out" -> Asked(students = of[1])
    else -> Asked()
}

/** The place of the shell that a story's screen is; none where the shell has no such screen yet. */
private fun placeOf(see: String, of: List<String>) = when (see) {
    "start" -> Place.Start
    "settings" -> Place.Settings
    "thermometers" -> Place.Thermometers
    "pitside" -> Place.Now(of.first())
    "piece" -> Place.Piece(of.first())
    "check" -> Place.Check(of.first())
    "timeline" -> Place.Timeline(of.first())
    "write_down" -> Place.Write(of.first())
    "run_sheet" -> Place.RunSheet(of.first())
    "plan" -> Place.Plan(of.first())
    "dishes" -> Place.Dishes(of.first())
    "kitchen" -> Place.Kitchen(of.first())
    "kitchen_sheet" -> Place.KitchenSheet(of.first())
    "watch" -> Place.Watch(of.first())
    "pits" -> Place.Pits(of.first())
    "readings_of" -> Place.Readings(ReadingsOf.Cook(of.first()))
    "temp_log" -> Place.TempLog(of.first())
    "hand_out" -> Place.HandOut(of.first())
    "card" -> Place.Card(of.first())
    "cuts" -> Place.Cuts
    "again" -> Place.Again(of.first())
    "cut" -> Place.Cut(Cut.valueOf(of.first().uppercase()))
    else -> of.getOrNull(1)?.let { pit -> atPit(see, of.first(), pit) }
}

private fun atPit(see: String, cook: String, pit: String) = when (see) {
    "opening" -> Place.Opening(cook, pit)
    "fire" -> Place.Fire(cook, pit)
    "fire_out" -> Place.FireOut(cook, pit)
    "trouble" -> Place.Trouble(cook, pit)
    else -> null
}

private val Shown.record: Any
    get() = when (this) {
        is Shown.Start -> screen
        is Shown.Now -> screen
        is Shown.Meat -> screen
        is Shown.Check -> screen
        is Shown.Happened -> screen
        is Shown.Writing -> screen
        is Shown.Choices -> screen
        is Shown.Sheet -> screen
        is Shown.Planning -> screen
        is Shown.Fire -> screen
        is Shown.FireOut -> screen
        is Shown.Opening -> screen
        is Shown.Kitchen -> screen
        is Shown.OnPaper -> screen
        is Shown.Amiss -> screen
        is Shown.Watch -> screen
        is Shown.Dishes -> screen
        is Shown.Pits -> screen
        is Shown.Readings -> screen
        is Shown.Thermometers -> screen
        is Shown.TempLog -> screen
        is Shown.HandOut -> screen
        is Shown.Card -> screen
        is Shown.Begin -> screen
        is Shown.Cuts -> screen
        is Shown.OneCut -> screen
        is Shown.TakeCard -> this
    }
