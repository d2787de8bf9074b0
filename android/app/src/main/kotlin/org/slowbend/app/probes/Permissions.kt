package org.slowbend.app.probes

import android.Manifest
import android.content.Context
import android.content.Intent
import android.content.pm.PackageManager
import android.net.Uri
import android.os.Build
import android.provider.Settings
import slowbend.core.RadioFix

/** What the platform must allow before probes can be heard, by its version, and where the phone's owner changes it. */
object Permissions {
    private val isNew get() = Build.VERSION.SDK_INT >= Build.VERSION_CODES.S

    /** What is asked for: from Android 12 on "nearby devices", which tells no place; before it, the location. */
    val asked: Array<String>
        get() = when {
            isNew -> arrayOf(Manifest.permission.BLUETOOTH_SCAN, Manifest.permission.BLUETOOTH_CONNECT)
            else -> arrayOf(Manifest.permission.ACCESS_FINE_LOCATION)
        }

    /** Before Android 12 looking needs the location, not only its permission. */
    val wantsLocation get() = !isNew

    fun toLook(context: Context) = asked.all { context.has(it) }

    fun toLink(context: Context) = !isNew || context.has(Manifest.permission.BLUETOOTH_CONNECT)

    /** The setting that mends it; none where the person is to be asked instead. */
    fun setting(context: Context, fix: RadioFix): Intent? = when (fix) {
        RadioFix.ALLOW -> null
        RadioFix.OPEN_PERMISSIONS ->
            Intent(Settings.ACTION_APPLICATION_DETAILS_SETTINGS, Uri.fromParts("package", context.packageName, null))
        RadioFix.OPEN_LOCATION -> Intent(Settings.ACTION_LOCATION_SOURCE_SETTINGS)
        RadioFix.SWITCH_ON -> Intent(Settings.ACTION_BLUETOOTH_SETTINGS)
    }

    private fun Context.has(permission: String) = checkSelfPermission(permission) == PackageManager.PERMISSION_GRANTED
}
