package org.slowbend.app.night

import android.content.Context
import android.content.Intent
import android.net.Uri
import android.os.Build
import android.provider.Settings

/** The settings of the phone that mend what would keep Slowbend from ringing. */
object Fixes {
    fun notifications(context: Context) = Intent(Settings.ACTION_APP_NOTIFICATION_SETTINGS)
        .putExtra(Settings.EXTRA_APP_PACKAGE, context.packageName).fresh()

    fun exactAlarms(context: Context) = since(Build.VERSION_CODES.S, context, Settings.ACTION_REQUEST_SCHEDULE_EXACT_ALARM)

    fun fullScreen(context: Context) =
        since(Build.VERSION_CODES.UPSIDE_DOWN_CAKE, context, Settings.ACTION_MANAGE_APP_USE_FULL_SCREEN_INTENT)

    fun sound() = Intent(Settings.ACTION_SOUND_SETTINGS).fresh()

    fun quiet() = Intent(Settings.ACTION_ZEN_MODE_PRIORITY_SETTINGS).fresh()

    fun saver() = Intent(Settings.ACTION_BATTERY_SAVER_SETTINGS).fresh()

    fun power() = Intent(Intent.ACTION_POWER_USAGE_SUMMARY).fresh()

    /** A setting of this app that came with a version of the platform; before it, the app's own page. */
    private fun since(version: Int, context: Context, setting: String): Intent {
        val action = if (Build.VERSION.SDK_INT >= version) setting else Settings.ACTION_APPLICATION_DETAILS_SETTINGS
        return Intent(action, Uri.fromParts("package", context.packageName, null)).fresh()
    }

    private fun Intent.fresh() = addFlags(Intent.FLAG_ACTIVITY_NEW_TASK)
}
