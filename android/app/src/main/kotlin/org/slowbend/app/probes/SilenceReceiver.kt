package org.slowbend.app.probes

import android.content.BroadcastReceiver
import android.content.Context
import android.content.Intent
import org.slowbend.app.SlowbendApp

/** A probe fell silent: what is shown of it is asked anew, and what waits goes to the disk. */
class SilenceReceiver : BroadcastReceiver() {
    override fun onReceive(context: Context, intent: Intent) {
        val app = context.applicationContext as SlowbendApp
        val held = goAsync()
        app.probes.refresh()
        app.door.work()
        app.background.execute { held?.finish() }
    }
}
