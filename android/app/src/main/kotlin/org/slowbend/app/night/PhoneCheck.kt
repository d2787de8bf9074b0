package org.slowbend.app.night

import android.app.NotificationManager
import android.content.Context
import android.content.Intent
import android.content.IntentFilter
import android.media.AudioManager
import android.os.BatteryManager
import android.os.Build
import android.os.PowerManager
import org.slowbend.app.R
import org.slowbend.app.alarms.Bell
import org.slowbend.app.alarms.Channel

/** One thing about the phone that lets it ring, or not: how it stands, and the setting that mends it. */
data class PhoneLine(val name: String, val state: String, val isWell: Boolean, val fix: Intent)

/** What the platform says of itself, read when it is looked at. */
class PhoneCheck(private val context: Context) {
    private val notices = context.getSystemService(NotificationManager::class.java)!!
    private val audio = context.getSystemService(AudioManager::class.java)!!
    private val power = context.getSystemService(PowerManager::class.java)!!

    fun lines() = listOf(volume(), notifications(), exact(), fullScreen(), quiet(), charger(), saver())

    /** Below half it is red: a sleeper in another room must hear it. Common practice, no source. */
    private fun volume(): PhoneLine {
        val now = audio.getStreamVolume(AudioManager.STREAM_ALARM)
        val most = audio.getStreamMaxVolume(AudioManager.STREAM_ALARM)
        val percent = now * 100 / most.coerceAtLeast(1)
        return line(R.string.night_volume, context.getString(R.string.night_percent, percent), now * 2 >= most, Fixes.sound())
    }

    private fun notifications(): PhoneLine {
        val channel = notices.getNotificationChannel(Channel.WAKE.id)
        val blocked = channel?.importance == NotificationManager.IMPORTANCE_NONE
        val well = notices.areNotificationsEnabled() && !blocked
        return line(R.string.night_notifications, allowed(well), well, Fixes.notifications(context))
    }

    private fun exact(): PhoneLine {
        val well = Bell(context).isExact
        val state = if (well) R.string.night_on_time else R.string.night_an_hour_late
        return line(R.string.night_exact, context.getString(state), well, Fixes.exactAlarms(context))
    }

    private fun fullScreen(): PhoneLine {
        val well = Build.VERSION.SDK_INT < Build.VERSION_CODES.UPSIDE_DOWN_CAKE || notices.canUseFullScreenIntent()
        return line(R.string.night_full_screen, allowed(well), well, Fixes.fullScreen(context))
    }

    /** Total silence mutes alarms; the other kinds let them through, as they come from the factory. */
    private fun quiet(): PhoneLine {
        val well = notices.currentInterruptionFilter != NotificationManager.INTERRUPTION_FILTER_NONE
        val state = if (well) R.string.night_alarms_pass else R.string.night_alarms_muted
        return line(R.string.night_quiet, context.getString(state), well, Fixes.quiet())
    }

    private fun charger(): PhoneLine {
        val battery = context.registerReceiver(null, IntentFilter(Intent.ACTION_BATTERY_CHANGED))
        val plugged = battery?.getIntExtra(BatteryManager.EXTRA_PLUGGED, 0) ?: 0
        val level = battery?.getIntExtra(BatteryManager.EXTRA_LEVEL, 0) ?: 0
        val scale = battery?.getIntExtra(BatteryManager.EXTRA_SCALE, 100) ?: 100
        val state = if (plugged != 0) R.string.night_plugged else R.string.night_unplugged
        return line(R.string.night_charger, context.getString(state, level * 100 / scale.coerceAtLeast(1)), plugged != 0, Fixes.power())
    }

    private fun saver(): PhoneLine {
        val well = !power.isPowerSaveMode
        return line(R.string.night_saver, context.getString(if (well) R.string.night_off else R.string.night_on), well, Fixes.saver())
    }

    private fun allowed(yes: Boolean) = context.getString(if (yes) R.string.night_allowed else R.string.night_refused)

    private fun line(name: Int, state: String, well: Boolean, fix: Intent) = PhoneLine(context.getString(name), state, well, fix)
}
