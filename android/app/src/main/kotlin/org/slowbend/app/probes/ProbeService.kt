package org.slowbend.app.probes

import android.app.Notification
import android.app.PendingIntent
import android.app.Service
import android.content.Context
import android.content.Intent
import android.content.pm.ServiceInfo
import android.os.Build
import android.os.IBinder
import android.util.Log
import androidx.core.app.NotificationCompat
import androidx.core.app.ServiceCompat
import org.slowbend.app.R
import org.slowbend.app.alarms.Channel
import slowbend.core.ProbesNotice

/** Keeps the process while probes are heard, and says so in a notice. The listening itself is [Probes]'. */
class ProbeService : Service() {
    override fun onBind(intent: Intent?): IBinder? = null

    /** Killed for want of memory it is started again; [Probes.start] links the probes again. */
    override fun onStartCommand(intent: Intent?, flags: Int, id: Int): Int {
        val probes = Probes.of(this)
        try {
            ServiceCompat.startForeground(this, NOTICE, probesNotice(this, probes.screen?.notice), TYPE)
        } catch (refused: RuntimeException) {
            Log.w("slowbend", "the probes' service may not stay", refused)
            stopSelf()
            return START_NOT_STICKY
        }
        probes.refresh()
        return START_STICKY
    }

    override fun onDestroy() {
        super.onDestroy()
        Probes.of(this).serviceEnded()
    }

    companion object {
        const val NOTICE = 7

        private val TYPE = when {
            Build.VERSION.SDK_INT >= Build.VERSION_CODES.Q -> ServiceInfo.FOREGROUND_SERVICE_TYPE_CONNECTED_DEVICE
            else -> 0
        }
    }
}

/** The notice while probes are heard, as the core wrote it; before the core was asked, only that it begins. */
fun probesNotice(context: Context, says: ProbesNotice?): Notification {
    val lines = says?.lines.orEmpty()
    val open = PendingIntent.getActivity(context, 0, Intent(context, ProbesActivity::class.java), PendingIntent.FLAG_IMMUTABLE)
    return NotificationCompat.Builder(context, Channel.QUIET.id)
        .setSmallIcon(R.drawable.ic_ring)
        .setContentTitle(says?.title ?: context.getString(R.string.probes_begin))
        .setContentText(lines.firstOrNull().orEmpty())
        .setStyle(NotificationCompat.BigTextStyle().bigText(lines.joinToString("\n")))
        .setVisibility(NotificationCompat.VISIBILITY_PUBLIC)
        .setForegroundServiceBehavior(NotificationCompat.FOREGROUND_SERVICE_IMMEDIATE)
        .setOngoing(true).setOnlyAlertOnce(true).setContentIntent(open)
        .build()
}
