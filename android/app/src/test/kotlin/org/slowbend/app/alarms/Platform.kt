package org.slowbend.app.alarms

import android.app.AlarmManager
import android.app.Notification
import android.app.NotificationManager
import android.content.Intent
import org.junit.Assert.assertEquals
import org.robolectric.Shadows.shadowOf
import org.robolectric.shadows.ShadowAlarmManager
import org.robolectric.shadows.ShadowAlarmManager.ScheduledAlarm
import org.robolectric.shadows.ShadowLooper
import org.slowbend.app.MINUTE
import org.slowbend.app.TestApp
import slowbend.core.Alarm
import slowbend.core.Urgency

/** The platform as a test sees it: the alarms that lie on it, the notices it shows, and time that passes. */
class Platform(private val app: TestApp) {
    private val manager = app.getSystemService(AlarmManager::class.java)!!
    private val notices = app.getSystemService(NotificationManager::class.java)!!

    /** So many alarms woke the phone, and so many of them when nothing was due. */
    var woken = 0
    var inVain = 0

    init {
        ShadowAlarmManager.setCanScheduleExactAlarms(true)
    }

    fun alarms(): List<ScheduledAlarm> = shadowOf(manager).scheduledAlarms

    fun lying() = alarms().associate { name(it) to it.triggerAtMs }

    fun wanted(): List<Alarm> {
        var list: List<Alarm>? = null
        app.door.ask({ core, viewer, moment -> core.alarms(viewer, moment, 60u).alarms }) { list = it.getOrThrow() }
        return list!!
    }

    /** Law: the platform's list is the core's; what must wake is an alarm clock, the rest is exact. */
    fun assertEqual(why: String = "") {
        val wanted = wanted()
        assertEquals(why, wanted.associate { it.id to it.at }.toSortedMap(), lying().toSortedMap())
        val clocks = alarms().filter { it.alarmClockInfo != null }.map(::name).toSet()
        assertEquals(why, wanted.filter { it.urgency == Urgency.WAKE }.map { it.id }.toSet(), clocks)
    }

    /** What happens at a restart of the phone, or where the app is stopped by force. */
    fun forget() = alarms().toList().forEach { manager.cancel(it.operation!!) }

    /** Time passes; what comes due comes. */
    fun pass(minutes: Int) {
        val until = app.clock.utcMs + minutes * MINUTE
        while (true) {
            val next = alarms().filter { it.triggerAtMs <= until }.minByOrNull { it.triggerAtMs } ?: break
            app.clock.utcMs = maxOf(app.clock.utcMs, next.triggerAtMs)
            come(next)
        }
        app.clock.utcMs = until
    }

    fun come(one: ScheduledAlarm) {
        woken += 1
        if (app.trouble == null && wanted().none { it.at <= app.clock.utcMs }) inVain += 1
        manager.cancel(one.operation!!)
        one.operation!!.send()
        ShadowLooper.idleMainLooper()
    }

    fun hear(action: String) {
        app.sendBroadcast(Intent(action).setPackage(app.packageName))
        ShadowLooper.idleMainLooper()
    }

    fun rings(): Map<String, Notification> = notices.activeNotifications.filter { it.id == 1 }.associate { it.tag to it.notification }

    fun notice(id: Int): Notification? = notices.activeNotifications.find { it.tag == null && it.id == id }?.notification

    fun press(ring: Notification, which: Int) {
        ring.actions[which].actionIntent.send()
        ShadowLooper.idleMainLooper()
    }

    private fun name(one: ScheduledAlarm) = shadowOf(one.operation).savedIntent.data!!.schemeSpecificPart
}

val Notification.title get() = extras.getCharSequence(Notification.EXTRA_TITLE).toString()
val Notification.text get() = extras.getCharSequence(Notification.EXTRA_TEXT).toString()
val Notification.isInsistent get() = flags and Notification.FLAG_INSISTENT != 0
