package org.slowbend.app.alarms

import android.content.BroadcastReceiver
import android.content.Context
import android.content.Intent
import org.json.JSONObject
import org.slowbend.app.SlowbendApp

/** An alarm came, or a ring was answered on the lock screen. Held awake until the core has been told. */
class AlarmReceiver : BroadcastReceiver() {
    override fun onReceive(context: Context, intent: Intent) {
        val app = context.applicationContext as SlowbendApp
        val held = goAsync()
        when (intent.action) {
            RING -> app.alarms.ring(intent.data!!.schemeSpecificPart)
            ANSWER -> app.alarms.answer(intent.ring()!!, intent.getIntExtra(WHICH, 0))
        }
        app.background.execute { held?.finish() }
    }

    companion object {
        const val RING = "org.slowbend.app.RING"
        const val ANSWER = "org.slowbend.app.ANSWER"

        /** Which answer of the ring's. */
        const val WHICH = "which"

        /** The ring that is shown: it may be on no list any more when it is answered. */
        const val SHOWN = "shown"
    }
}

/** The ring that an intent of a notification is about. */
fun Intent.ring() = getStringExtra(AlarmReceiver.SHOWN)?.let { Laid.of(JSONObject(it)) }
