package org.slowbend.app.alarms

import android.app.Notification
import android.app.NotificationManager
import android.app.PendingIntent
import android.content.Context
import android.content.Intent
import android.os.Build
import android.text.format.DateFormat
import androidx.core.app.NotificationCompat
import androidx.core.os.bundleOf
import org.slowbend.app.MainActivity
import org.slowbend.app.R
import org.slowbend.app.night.Fixes
import org.slowbend.app.path
import slowbend.core.AlarmId
import slowbend.core.Place
import java.util.Date

/** What is shown, and heard, of rings. A ring is tagged with the name of its thing, so that ringing again replaces it. */
class RingNotices(private val context: Context, private val step: () -> Unit) {
    private val notices = context.getSystemService(NotificationManager::class.java)!!
    private val loud = Loud(context)

    fun makeChannels() = notices.createNotificationChannels(Channel.entries.map { it.make(context) })

    /** Shows [one] with its sound; where notifications are refused, it at least sounds and shakes. */
    fun show(one: Laid, now: Long) {
        step()
        notices.notify(one.thing, RING, made(one, now))
        if (!notices.areNotificationsEnabled() && !one.silent) loud.sound()
    }

    fun withdraw(thing: AlarmId) {
        step()
        notices.cancel(thing, RING)
    }

    /** The names that the rings on show answer for. */
    fun shown(): List<AlarmId> = onShow().flatMap { names(it.notification) }

    /** Takes away what stands no longer. A ring that is tried out stays until it is answered. */
    fun keepOnly(standing: Set<AlarmId>) = onShow()
        .filter { names(it.notification).none(standing::contains) }
        .forEach { withdraw(it.tag) }

    private fun onShow() = notices.activeNotifications.filter { it.id == RING && it.tag != Laid.TRIAL }

    private fun names(notice: Notification) = notice.extras.getStringArray(COVERS).orEmpty().toList()

    /** Says once, without a sound, what became of an answer that was not taken. */
    fun tell(text: String, at: Long) = notices.notify("told", TOLD, quiet(text, openApp()).setWhen(at).build())

    fun warnOfTrouble(text: String) = notices.notify(TROUBLE, quiet(text, openApp()).build())

    fun troubleIsOver() = notices.cancel(TROUBLE)

    /** Warns while alarms may come late, with the way to the setting. */
    fun warnOfLateness(late: Boolean) = if (late) {
        val fix = PendingIntent.getActivity(context, 0, Fixes.exactAlarms(context), PendingIntent.FLAG_IMMUTABLE)
        notices.notify(LATENESS, quiet(context.getString(R.string.alarms_inexact), fix).setOngoing(true).setOnlyAlertOnce(true).build())
    } else {
        notices.cancel(LATENESS)
    }

    private fun quiet(text: String, tap: PendingIntent) = NotificationCompat.Builder(context, Channel.QUIET.id)
        .setSmallIcon(R.drawable.ic_ring).setContentTitle(context.getString(R.string.app_name)).setContentText(text)
        .setStyle(NotificationCompat.BigTextStyle().bigText(text)).setContentIntent(tap).setAutoCancel(true)

    private fun made(one: Laid, now: Long): Notification {
        val channel = Channel.of(one)
        val wakes = channel == Channel.WAKE
        val body = listOf(one.body, lateness(one, now)).filter { it.isNotEmpty() }.joinToString("\n")
        val builder = NotificationCompat.Builder(context, channel.id)
            .setSmallIcon(R.drawable.ic_ring).setContentTitle(one.title).setContentText(body)
            .setStyle(NotificationCompat.BigTextStyle().bigText(body))
            .setCategory(NotificationCompat.CATEGORY_ALARM).setPriority(NotificationCompat.PRIORITY_MAX)
            .setVisibility(NotificationCompat.VISIBILITY_PUBLIC).setWhen(one.at).setShowWhen(true)
            .setOngoing(wakes).setAutoCancel(!wakes).setContentIntent(openApp(one))
            .addExtras(bundleOf(COVERS to (one.covers + one.id).toTypedArray()))
        one.answers.forEachIndexed { which, answer -> builder.addAction(0, answer.label, answered(one, which)) }
        if (wakes && mayFill()) builder.setFullScreenIntent(fullScreen(one), true)
        return builder.build().apply { if (wakes) flags = flags or Notification.FLAG_INSISTENT }
    }

    /** Said here, for the text was laid before its time; the core has said it where it knew. */
    private fun lateness(one: Laid, now: Long) = when {
        one.late || now - one.at < LATE_MS -> ""
        else -> context.getString(R.string.ring_late, DateFormat.getTimeFormat(context).format(Date(one.at)))
    }

    private fun mayFill() =
        Build.VERSION.SDK_INT < Build.VERSION_CODES.UPSIDE_DOWN_CAKE || notices.canUseFullScreenIntent()

    private fun answered(one: Laid, which: Int) = PendingIntent.getBroadcast(
        context,
        0,
        about(one, AlarmReceiver::class.java, "$which").setAction(AlarmReceiver.ANSWER).putExtra(AlarmReceiver.WHICH, which),
        FLAGS,
    )

    private fun fullScreen(one: Laid) = PendingIntent.getActivity(context, 0, about(one, RingActivity::class.java), FLAGS)

    private fun about(one: Laid, to: Class<*>, part: String? = null) =
        Intent(context, to).setData(Bell.named(one.id, part)).putExtra(AlarmReceiver.SHOWN, one.json().toString())

    private fun openApp(one: Laid? = null): PendingIntent {
        val place = one?.cook?.let { Place.Now(it).path() }
        val intent = Intent(context, MainActivity::class.java).setData(Bell.named(one?.id ?: "", "open"))
        return PendingIntent.getActivity(context, 0, intent.putExtra(MainActivity.PLACE, place), FLAGS)
    }

    private companion object {
        const val RING = 1
        const val TOLD = 2
        const val TROUBLE = 3
        const val LATENESS = 4
        const val COVERS = "covers"
        const val FLAGS = PendingIntent.FLAG_UPDATE_CURRENT or PendingIntent.FLAG_IMMUTABLE

        /** From a minute on it is called late, as the core does. */
        const val LATE_MS = 60_000L
    }
}
