package org.slowbend.app

import android.content.Context
import android.text.format.DateFormat
import androidx.core.content.edit
import androidx.core.text.util.LocalePreferences
import slowbend.core.DeviceId
import slowbend.core.HourCycle
import slowbend.core.Locale
import slowbend.core.TemperatureUnit
import slowbend.core.Viewer
import slowbend.core.WeightUnit
import java.util.TimeZone

/** How this phone's owner reads: what they chose in the settings, and else what the phone is set to. */
class Viewing(private val context: Context, private val zone: () -> String = { TimeZone.getDefault().id }) {
    private val chosen = context.getSharedPreferences("viewer", Context.MODE_PRIVATE)

    /** Which hand taps; the buttons of the propped phone stand on its side. */
    val leftHanded get() = chosen.getBoolean("left_handed", false)

    fun viewer(device: DeviceId) = Viewer(
        locale = when (said("locale") { language() }) {
            in SPANISH -> Locale.ES_US else -> Locale.EN_US
        },
        temperature = when (said("temperature") { LocalePreferences.getTemperatureUnit() }) {
            "celsius" -> TemperatureUnit.CELSIUS
            else -> TemperatureUnit.FAHRENHEIT
        },
        weight = when (said("weight") { usualWeight() }) {
            "kilogram" -> WeightUnit.KILOGRAM else -> WeightUnit.POUND
        },
        hours = when (said("hours") { usualHours() }) {
            "twentyfour" -> HourCycle.TWENTY_FOUR else -> HourCycle.TWELVE
        },
        zone = zone(),
        device = device,
    )

    /** Keeps one choice, under the names that the settings screen gives it. */
    fun choose(field: String, value: String) = chosen.edit { putString(field, value) }

    fun tapWith(left: Boolean) = chosen.edit { putBoolean("left_handed", left) }

    private fun said(field: String, usual: () -> String) = chosen.getString(field, null) ?: usual()

    private fun language() = context.resources.configuration.locales[0].language

    private fun usualWeight() =
        if (LocalePreferences.getTemperatureUnit() == "celsius") "kilogram" else "pound"

    private fun usualHours() = if (DateFormat.is24HourFormat(context)) "twentyfour" else "twelve"

    private companion object {
        val SPANISH = setOf("es", "es-US")
    }
}
