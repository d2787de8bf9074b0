package org.slowbend.app.probes

import android.app.AlarmManager
import android.app.NotificationManager
import android.app.PendingIntent
import android.content.Context
import android.content.Intent
import android.util.Log
import androidx.core.content.ContextCompat
import slowbend.core.ProbesNotice
import slowbend.core.ProbesScreen

/** Keeps the process by [ProbeService] while probes are to be heard, its notice as the core wrote it, and one alarm ahead. */
class Held(private val context: Context) {
    private val notices = context.getSystemService(NotificationManager::class.java)!!
    private val alarms = context.getSystemService(AlarmManager::class.java)!!
    private var holds = false
    private var shown: ProbesNotice? = null

    fun hold(screen: ProbesScreen) {
        if (!holds) holds = begin()
        if (holds && screen.notice != shown) {
            notices.notify(ProbeService.NOTICE, probesNotice(context, screen.notice))
            shown = screen.notice
        }
        wakeAt(screen.silentAt)
    }

    fun letGo() {
        if (holds) context.stopService(Intent(context, ProbeService::class.java))
        holds = false
        shown = null
        wakeAt(null)
    }

    /** The service is no longer there. */
    fun ended() {
        holds = false
        shown = null
    }

    /** From the background it may be refused; then it begins when the app is opened, or at the next start of the phone. */
    private fun begin() = try {
        ContextCompat.startForegroundService(context, Intent(context, ProbeService::class.java))
        true
    } catch (refused: RuntimeException) {
        Log.w("slowbend", "the probes' service may not start now", refused)
        false
    }

    /** When a probe will have fallen silent the notice and the screens say so; a word before that moves it on. */
    private fun wakeAt(at: Long?) {
        val come = PendingIntent.getBroadcast(context, 0, Intent(context, SilenceReceiver::class.java), PendingIntent.FLAG_IMMUTABLE)
        if (at == null) alarms.cancel(come) else alarms.setAndAllowWhileIdle(AlarmManager.RTC_WAKEUP, at, come)
    }
}
