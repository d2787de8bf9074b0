package org.slowbend.app.alarms

import android.content.BroadcastReceiver
import android.content.Context
import android.content.Intent
import org.slowbend.app.SlowbendApp

/**
 * The phone started, was unlocked for the first time, changed its clock, zone or language, got a new version of the app,
 * or the permission for exact alarms was given: each may have cost alarms, or changed when or how they ring.
 */
class PhoneReceiver : BroadcastReceiver() {
    override fun onReceive(context: Context, intent: Intent) {
        if (intent.action !in HEARD) return
        val app = context.applicationContext as SlowbendApp
        val held = goAsync()
        app.alarms.layAnew()
        app.probes.start()
        app.background.execute { held?.finish() }
    }

    companion object {
        val HEARD = setOf(
            Intent.ACTION_LOCKED_BOOT_COMPLETED,
            Intent.ACTION_BOOT_COMPLETED,
            Intent.ACTION_MY_PACKAGE_REPLACED,
            Intent.ACTION_TIME_CHANGED,
            Intent.ACTION_TIMEZONE_CHANGED,
            Intent.ACTION_LOCALE_CHANGED,
            "android.app.action.SCHEDULE_EXACT_ALARM_PERMISSION_STATE_CHANGED",
        )
    }
}
