package org.slowbend.app.stories

import kotlinx.serialization.json.JsonObject
import org.junit.Assert.assertEquals
import org.junit.Assert.assertNull
import org.robolectric.Robolectric
import org.robolectric.android.controller.ActivityController
import org.robolectric.shadows.ShadowLooper
import org.slowbend.app.MainActivity
import org.slowbend.app.Shown
import org.slowbend.app.TestApp
import org.slowbend.app.alarms.Platform
import slowbend.core.AlarmList
import slowbend.core.Moment
import slowbend.core.Place

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
    fun shows(phone: ShellPhone, see: String, of: String?, record: Any) {
        if (record is AlarmList) return if (isListening) keeps() else Unit
        val place = placeOf(see, of) ?: return
        app.hold(phone.door)
        val model = window!!.get().model
        model.go(place)
        ShadowLooper.idleMainLooper()
        assertNull(model.told)
        assertEquals(record, model.shown!!.record)
    }

    private fun keeps() {
        app.alarms.settle()
        platform.assertEqual()
    }
}

/** The place of the shell that a story's screen is; none where the shell has no such screen yet. */
private fun placeOf(see: String, of: String?) = when (see) {
    "start" -> Place.Start
    "settings" -> Place.Settings
    "pitside" -> Place.Now(of!!)
    "piece" -> Place.Piece(of!!)
    "check" -> Place.Check(of!!)
    "timeline" -> Place.Timeline(of!!)
    "write_down" -> Place.Write(of!!)
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
    }
