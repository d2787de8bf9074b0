package org.slowbend.app.alarms

import android.app.AlarmManager
import android.app.PendingIntent
import android.content.Context
import android.content.Intent
import android.net.Uri
import android.os.Build
import org.slowbend.app.MainActivity
import slowbend.core.AlarmId
import slowbend.core.Urgency

/**
 * The platform's list of alarms. Each is known by the name that the core gives it, in the data of its intent, so that it
 * can be moved and taken off by a process that did not lay it.
 */
class Bell(private val context: Context, private val step: () -> Unit = {}) {
    private val alarms = context.getSystemService(AlarmManager::class.java)!!

    /** Whether the platform lets alarms be exact: always before Android 12, then by permission. */
    val isExact get() = Build.VERSION.SDK_INT < Build.VERSION_CODES.S || alarms.canScheduleExactAlarms()

    fun lay(one: Laid) = try {
        step()
        if (isExact) exactly(one) else roughly(one)
    } catch (_: SecurityException) {
        roughly(one) // The permission went between the question and the call.
    }

    fun takeOff(id: AlarmId) {
        val ring = ring(id, PendingIntent.FLAG_NO_CREATE) ?: return
        step()
        alarms.cancel(ring)
        ring.cancel()
    }

    /** What must wake is an alarm clock, for which the phone leaves its deep sleep; a call is exact. */
    private fun exactly(one: Laid) = when (one.urgency) {
        Urgency.WAKE -> alarms.setAlarmClock(AlarmManager.AlarmClockInfo(one.at, open()), ring(one.id)!!)
        else -> alarms.setExactAndAllowWhileIdle(AlarmManager.RTC_WAKEUP, one.at, ring(one.id)!!)
    }

    /** Within an hour of its time, never early (Android 12 and later; developer.android.com, "Schedule alarms"). */
    private fun roughly(one: Laid) = alarms.setAndAllowWhileIdle(AlarmManager.RTC_WAKEUP, one.at, ring(one.id)!!)

    private fun ring(id: AlarmId, flag: Int = PendingIntent.FLAG_UPDATE_CURRENT): PendingIntent? {
        val intent = Intent(AlarmReceiver.RING, named(id), context, AlarmReceiver::class.java)
        return PendingIntent.getBroadcast(context, 0, intent, flag or PendingIntent.FLAG_IMMUTABLE)
    }

    private fun open() =
        PendingIntent.getActivity(context, 0, Intent(context, MainActivity::class.java), PendingIntent.FLAG_IMMUTABLE)

    companion object {
        /** The name of an alarm as the data of an intent. */
        fun named(id: AlarmId, part: String? = null): Uri = Uri.fromParts("slowbend", id, part)
    }
}
