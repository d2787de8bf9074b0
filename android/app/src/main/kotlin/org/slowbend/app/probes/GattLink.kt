package org.slowbend.app.probes

import android.annotation.SuppressLint
import android.bluetooth.BluetoothGatt
import android.bluetooth.BluetoothGatt.GATT_SUCCESS
import android.bluetooth.BluetoothGattCallback
import android.bluetooth.BluetoothGattCharacteristic
import android.bluetooth.BluetoothGattCharacteristic.PROPERTY_NOTIFY
import android.bluetooth.BluetoothGattCharacteristic.PROPERTY_READ
import android.bluetooth.BluetoothGattDescriptor
import android.bluetooth.BluetoothProfile
import android.os.Build
import android.os.Handler

/**
 * One link to one probe. A probe is asked one thing at a time, for the platform loses the second of two.
 */
@SuppressLint("MissingPermission")
class GattLink(private val main: Handler, private val heard: Heard) : BluetoothGattCallback(), AutoCloseable {
    private var gatt: BluetoothGatt? = null
    private var speakers = emptyList<Speaker>()
    private val toDo = ArrayDeque<(BluetoothGatt) -> Boolean>()

    /** Opened as [connect] does it; a radio that is off at that instant opens nothing. */
    fun open(connect: (GattLink) -> BluetoothGatt?) = apply {
        gatt = connect(this)
        if (gatt == null) main.post(::lose)
    }

    override fun close() {
        val was = gatt
        gatt = null
        was?.disconnect()
        was?.close()
    }

    override fun onConnectionStateChange(gatt: BluetoothGatt, status: Int, state: Int) = ours(gatt) {
        when {
            status == GATT_SUCCESS && state == BluetoothProfile.STATE_CONNECTED -> if (!gatt.discoverServices()) lose()
            state == BluetoothProfile.STATE_DISCONNECTED || status != GATT_SUCCESS -> lose()
        }
    }

    override fun onServicesDiscovered(gatt: BluetoothGatt, status: Int) = ours(gatt) {
        speakers = speakersOf(gatt.services)
        when {
            status != GATT_SUCCESS -> lose()
            speakers.isEmpty() -> {
                close()
                heard.foreign()
            }
            else -> {
                toDo.clear()
                speakers.forEach { one -> toDo += { it.wants(one.says) } }
                speakers.filter { it.says.properties and PROPERTY_READ != 0 }.forEach { one -> toDo += { it.readCharacteristic(one.says) } }
                heard.linked(speakers.map { it.sensor }.distinct())
                next(gatt)
            }
        }
    }

    override fun onDescriptorWrite(gatt: BluetoothGatt, descriptor: BluetoothGattDescriptor, status: Int) = ours(gatt) {
        if (status == GATT_SUCCESS) next(gatt) else lose()
    }

    override fun onCharacteristicRead(gatt: BluetoothGatt, said: BluetoothGattCharacteristic, value: ByteArray, status: Int) =
        ours(gatt) {
            if (status == GATT_SUCCESS) hear(said, value)
            next(gatt)
        }

    override fun onCharacteristicChanged(gatt: BluetoothGatt, said: BluetoothGattCharacteristic, value: ByteArray) =
        ours(gatt) { hear(said, value) }

    /** The same before Android 13, which calls only this one. */
    @Deprecated("Deprecated in Java")
    override fun onCharacteristicChanged(gatt: BluetoothGatt, said: BluetoothGattCharacteristic) =
        ours(gatt) { hear(said, old(said)) }

    /** The same before Android 13, which calls only this one. */
    @Deprecated("Deprecated in Java")
    override fun onCharacteristicRead(gatt: BluetoothGatt, said: BluetoothGattCharacteristic, status: Int) =
        onCharacteristicRead(gatt, said, old(said), status)

    @Suppress("DEPRECATION")
    private fun old(said: BluetoothGattCharacteristic) = said.value ?: ByteArray(0)

    /** What a link says after it was closed is not heard. */
    private fun ours(gatt: BluetoothGatt, then: () -> Unit) {
        if (gatt === this.gatt) then()
    }

    private fun hear(said: BluetoothGattCharacteristic, value: ByteArray) {
        val one = speakers.find { it.says === said || it.says.uuid == said.uuid && it.says.instanceId == said.instanceId } ?: return
        heard.word(one.sensor, one.number.toUShort(), value)
    }

    private fun next(gatt: BluetoothGatt) {
        val one = toDo.removeFirstOrNull() ?: return
        if (!one(gatt)) lose()
    }

    private fun lose() {
        close()
        heard.gone()
    }

    /** Asks to hear whatever [says] says from now on. */
    private fun BluetoothGatt.wants(says: BluetoothGattCharacteristic): Boolean {
        val how = when {
            says.properties and PROPERTY_NOTIFY != 0 -> BluetoothGattDescriptor.ENABLE_NOTIFICATION_VALUE
            else -> BluetoothGattDescriptor.ENABLE_INDICATION_VALUE
        }
        val wish = says.getDescriptor(Sig.uuid(Sig.CLIENT_CONFIGURATION)) ?: return false
        return setCharacteristicNotification(says, true) && write(wish, how)
    }

    @Suppress("DEPRECATION")
    private fun BluetoothGatt.write(wish: BluetoothGattDescriptor, how: ByteArray) = when {
        Build.VERSION.SDK_INT >= Build.VERSION_CODES.TIRAMISU -> writeDescriptor(wish, how) == GATT_SUCCESS
        else -> {
            wish.value = how
            writeDescriptor(wish)
        }
    }
}
