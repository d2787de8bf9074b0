package org.slowbend.app.probes

import android.bluetooth.BluetoothGattCharacteristic
import android.bluetooth.BluetoothGattCharacteristic.PROPERTY_INDICATE
import android.bluetooth.BluetoothGattCharacteristic.PROPERTY_NOTIFY
import android.bluetooth.BluetoothGattService
import java.util.UUID

/** The numbers that the Bluetooth SIG gives; what the bytes of a characteristic mean is the core's matter. */
object Sig {
    const val HEALTH_THERMOMETER = 0x1809
    const val ENVIRONMENTAL_SENSING = 0x181A
    const val TEMPERATURE_MEASUREMENT = 0x2A1C
    const val INTERMEDIATE_TEMPERATURE = 0x2A1E
    const val TEMPERATURE = 0x2A6E

    /** Where a client writes that it wants to hear of changes. */
    const val CLIENT_CONFIGURATION = 0x2902

    /** The full form of a 16-bit number. */
    fun uuid(number: Int): UUID = UUID(number.toLong() shl 32 or 0x1000, -0x7fffff7fa064cb05L)

    /** The 16-bit number of a full form; none where it is not the SIG's. */
    fun number(uuid: UUID): Int? = (uuid.mostSignificantBits ushr 32).toInt().takeIf { it in 0..0xFFFF && uuid(it) == uuid }
}

/** A characteristic that says the temperature of a sensor on its own. */
data class Speaker(val sensor: String, val says: BluetoothGattCharacteristic, val number: Int)

/**
 * The sensors of a probe, counted from 1 in the order in which the probe lists them, so that every phone counts alike: each
 * Health Thermometer service is one, each temperature of an Environmental Sensing service is one.
 */
fun speakersOf(services: List<BluetoothGattService>): List<Speaker> {
    val sensors = services.flatMap { service ->
        when (Sig.number(service.uuid)) {
            Sig.HEALTH_THERMOMETER -> listOf(service.those(Sig.TEMPERATURE_MEASUREMENT, Sig.INTERMEDIATE_TEMPERATURE))
            Sig.ENVIRONMENTAL_SENSING -> service.those(Sig.TEMPERATURE).map(::listOf)
            else -> emptyList()
        }
    }
    return sensors.filter { it.isNotEmpty() }.flatMapIndexed { index, all ->
        all.map { Speaker("${index + 1}", it, Sig.number(it.uuid)!!) }
    }.filter { it.says.properties and (PROPERTY_NOTIFY or PROPERTY_INDICATE) != 0 }
}

private fun BluetoothGattService.those(vararg numbers: Int) = characteristics.filter { one ->
    Sig.number(one.uuid)?.let(numbers::contains) ==
        true
}
