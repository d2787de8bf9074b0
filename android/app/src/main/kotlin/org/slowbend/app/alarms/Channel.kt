package org.slowbend.app.alarms

import android.app.Notification
import android.app.NotificationChannel
import android.app.NotificationManager
import android.content.Context
import android.media.AudioAttributes
import android.media.RingtoneManager
import androidx.annotation.StringRes
import org.slowbend.app.R
import slowbend.core.Urgency

/** How loudly a ring comes: one channel each, so that the phone's owner can set each apart. */
enum class Channel(@get:StringRes val title: Int, @get:StringRes val about: Int, val importance: Int) {
    WAKE(R.string.channel_wake, R.string.channel_wake_about, NotificationManager.IMPORTANCE_HIGH),
    CALL(R.string.channel_call, R.string.channel_call_about, NotificationManager.IMPORTANCE_HIGH),
    QUIET(R.string.channel_quiet, R.string.channel_quiet_about, NotificationManager.IMPORTANCE_LOW),
    ;

    val id = name.lowercase()

    fun make(context: Context) = NotificationChannel(id, context.getString(title), importance).apply {
        description = context.getString(about)
        lockscreenVisibility = Notification.VISIBILITY_PUBLIC
        when (this@Channel) {
            WAKE -> {
                setSound(RingtoneManager.getDefaultUri(RingtoneManager.TYPE_ALARM), asAlarm)
                vibrationPattern = longArrayOf(0, 800, 400, 800, 400)
                setBypassDnd(true)
            }
            CALL -> {
                setSound(RingtoneManager.getDefaultUri(RingtoneManager.TYPE_NOTIFICATION), asAlarm)
                vibrationPattern = longArrayOf(0, 300, 200, 300)
            }
            QUIET -> setSound(null, null)
        }
    }

    companion object {
        /** At the alarm volume, which is what the screen before sleep looks at. */
        private val asAlarm = AudioAttributes.Builder()
            .setUsage(AudioAttributes.USAGE_ALARM).setContentType(AudioAttributes.CONTENT_TYPE_SONIFICATION).build()

        fun of(one: Laid) = when {
            one.silent -> QUIET
            else -> when (one.urgency) {
                Urgency.WAKE -> WAKE
                Urgency.CALL -> CALL
                Urgency.QUIET -> QUIET
            }
        }
    }
}
