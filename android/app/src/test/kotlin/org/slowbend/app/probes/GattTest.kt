package org.slowbend.app.probes

import android.Manifest
import android.bluetooth.BluetoothAdapter
import android.bluetooth.BluetoothGatt
import android.bluetooth.BluetoothGattCharacteristic
import android.bluetooth.BluetoothGattCharacteristic.PROPERTY_INDICATE
import android.bluetooth.BluetoothGattCharacteristic.PROPERTY_NOTIFY
import android.bluetooth.BluetoothGattCharacteristic.PROPERTY_READ
import android.bluetooth.BluetoothGattDescriptor
import android.bluetooth.BluetoothGattService
import android.bluetooth.BluetoothManager
import android.bluetooth.BluetoothProfile
import android.content.Intent
import android.content.pm.PackageManager
import android.location.LocationManager
import android.os.Build
import android.os.Handler
import android.os.Looper
import android.os.ParcelUuid
import androidx.test.core.app.ApplicationProvider
import androidx.test.ext.junit.runners.AndroidJUnit4
import org.junit.After
import org.junit.Assert.assertArrayEquals
import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Before
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.Shadows.shadowOf
import org.robolectric.annotation.Config
import org.robolectric.shadow.api.Shadow
import org.robolectric.shadows.ShadowBluetoothGatt
import org.robolectric.shadows.ShadowBluetoothLeScanner
import org.robolectric.shadows.ShadowLooper
import org.robolectric.util.ReflectionHelpers
import org.slowbend.app.PHONE
import org.slowbend.app.TestApp
import slowbend.core.RadioState

/** The phone's own radio, on the framework's copy of it: services to sensors, wishes to words, states to what they mean. */
@RunWith(AndroidJUnit4::class)
@Config(sdk = [35], application = TestApp::class, qualifiers = PHONE)
class GattTest {
    private val app get() = ApplicationProvider.getApplicationContext<TestApp>()
    private val adapter get() = app.getSystemService(BluetoothManager::class.java)!!.adapter
    private val told = mutableListOf<String>()
    private val heard = object : Heard {
        override fun linked(sensors: List<String>) {
            told += "linked $sensors"
        }

        override fun word(sensor: String, characteristic: UShort, bytes: ByteArray) {
            told += "$sensor %04X ${bytes.joinToString(" ") { "%02X".format(it) }}".format(characteristic.toInt())
        }

        override fun gone() {
            told += "gone"
        }

        override fun foreign() {
            told += "foreign"
        }
    }

    @Before
    fun allow() {
        shadowOf(app).grantPermissions(Manifest.permission.BLUETOOTH_SCAN, Manifest.permission.BLUETOOTH_CONNECT)
        shadowOf(app.packageManager).setSystemFeature(PackageManager.FEATURE_BLUETOOTH_LE, true)
        shadowOf(adapter).setEnabled(true)
    }

    private fun says(number: Int, properties: Int) =
        BluetoothGattCharacteristic(Sig.uuid(number), properties, BluetoothGattCharacteristic.PERMISSION_READ).also {
            it.addDescriptor(BluetoothGattDescriptor(Sig.uuid(Sig.CLIENT_CONFIGURATION), BluetoothGattDescriptor.PERMISSION_WRITE))
        }

    private fun service(number: Int, vararg says: BluetoothGattCharacteristic) =
        BluetoothGattService(Sig.uuid(number), BluetoothGattService.SERVICE_TYPE_PRIMARY).also { says.forEach(it::addCharacteristic) }

    private fun shadow(gatt: BluetoothGatt) = Shadow.extract<ShadowBluetoothGatt>(gatt)

    /**
     * A probe with these services comes near. The framework under test has no class that its shadow of a device needs, so
     * `connectGatt` is not run here; all after it is.
     */
    private fun comes(vararg services: BluetoothGattService): BluetoothGatt {
        val gatt = ShadowBluetoothGatt.newInstance(null)
        val link = GattLink(Handler(Looper.getMainLooper()), heard).open { gatt }
        shadow(gatt).gattCallback = link
        services.forEach { service ->
            shadow(gatt).addDiscoverableService(service)
            service.characteristics.forEach(shadow(gatt)::allowCharacteristicNotification)
        }
        gatt.connect()
        ShadowLooper.idleMainLooper()
        return gatt
    }

    @Test
    fun `a thermometer is asked for its indications, and its bytes come as they were sent`() {
        val measurement = says(Sig.TEMPERATURE_MEASUREMENT, PROPERTY_INDICATE)
        val gatt = comes(service(Sig.HEALTH_THERMOMETER, measurement))
        assertEquals(listOf("linked [1]"), told)
        assertArrayEquals(BluetoothGattDescriptor.ENABLE_INDICATION_VALUE, shadow(gatt).latestWrittenBytes)
        shadow(gatt).gattCallback.onCharacteristicChanged(gatt, measurement, byteArrayOf(0, 0x6C, 1, 0, -1))
        assertEquals("1 2A1C 00 6C 01 00 FF", told.last())
    }

    @Test
    fun `each temperature of environmental sensing is a sensor, and whatever else is there is passed over`() {
        val first = says(Sig.TEMPERATURE, PROPERTY_NOTIFY)
        val second = says(Sig.TEMPERATURE, PROPERTY_NOTIFY)
        val humidity = says(0x2A6F, PROPERTY_NOTIFY)
        val battery = service(0x180F, says(0x2A19, PROPERTY_NOTIFY))
        val speakers = speakersOf(listOf(battery, service(Sig.ENVIRONMENTAL_SENSING, first, humidity, second)))
        assertEquals(listOf("1" to first, "2" to second), speakers.map { it.sensor to it.says })
    }

    @Test
    fun `the finished and the running temperature of one thermometer are one sensor`() {
        val finished = says(Sig.TEMPERATURE_MEASUREMENT, PROPERTY_INDICATE)
        val running = says(Sig.INTERMEDIATE_TEMPERATURE, PROPERTY_NOTIFY)
        val both = service(Sig.HEALTH_THERMOMETER, finished, running)
        assertEquals(listOf("1" to 0x2A1C, "1" to 0x2A1E), speakersOf(listOf(both)).map { it.sensor to it.number })
    }

    @Test
    fun `without the two services, or without a word of its own, it is foreign and let go`() {
        val gatt = comes(service(0x180F, says(0x2A19, PROPERTY_NOTIFY)))
        assertEquals(listOf("foreign"), told)
        assertTrue(shadow(gatt).isClosed)
        assertEquals(emptyList<Speaker>(), speakersOf(listOf(service(Sig.ENVIRONMENTAL_SENSING, says(Sig.TEMPERATURE, PROPERTY_READ)))))
    }

    @Test
    fun `a link that is lost is closed, told once, and not heard any more`() {
        val measurement = says(Sig.TEMPERATURE_MEASUREMENT, PROPERTY_INDICATE)
        val gatt = comes(service(Sig.HEALTH_THERMOMETER, measurement))
        val callback = shadow(gatt).gattCallback
        repeat(2) { callback.onConnectionStateChange(gatt, 8, BluetoothProfile.STATE_DISCONNECTED) }
        callback.onCharacteristicChanged(gatt, measurement, byteArrayOf(0, 0x6C, 1, 0, -1))
        assertEquals(listOf("linked [1]", "gone"), told)
        assertTrue(shadow(gatt).isClosed)
    }

    @Test
    fun `the numbers of the SIG in full`() {
        assertEquals("00001809-0000-1000-8000-00805f9b34fb", Sig.uuid(Sig.HEALTH_THERMOMETER).toString())
        assertEquals(0x2A6E, Sig.number(Sig.uuid(0x2A6E)))
        assertEquals(null, Sig.number(java.util.UUID(0x2A6E00001000L, 1)))
    }

    @Test
    fun `it looks for the two services only, and stops when told`() {
        val radio = PlatformRadio(app)
        radio.look {}
        val scanner = Shadow.extract<ShadowBluetoothLeScanner>(adapter.bluetoothLeScanner)
        val wanted = scanner.activeScans.single().scanFilters()!!.map { it!!.serviceUuid }
        assertEquals(listOf(0x1809, 0x181A).map { ParcelUuid(Sig.uuid(it)) }, wanted)
        radio.stopLooking()
        assertEquals(0, scanner.activeScans.size)
    }

    @Test
    fun `each state of the phone is told for what it is`() {
        val radio = PlatformRadio(app)
        assertEquals(RadioState.READY to true, radio.state to radio.mayLink)
        shadowOf(adapter).setEnabled(false)
        assertEquals(RadioState.OFF to false, radio.state to radio.mayLink)
        shadowOf(app).denyPermissions(Manifest.permission.BLUETOOTH_SCAN, Manifest.permission.BLUETOOTH_CONNECT)
        assertEquals(RadioState.REFUSED, radio.state)
        shadowOf(app.packageManager).setSystemFeature(PackageManager.FEATURE_BLUETOOTH_LE, false)
        assertEquals(RadioState.MISSING, radio.state)
    }

    @Test
    fun `before Android 12 looking wants the location, linking does not`() {
        ReflectionHelpers.setStaticField(Build.VERSION::class.java, "SDK_INT", Build.VERSION_CODES.R)
        val radio = PlatformRadio(app)
        assertEquals(RadioState.LOCATION_REFUSED to true, radio.state to radio.mayLink)
        shadowOf(app).grantPermissions(Manifest.permission.ACCESS_FINE_LOCATION)
        shadowOf(app.getSystemService(LocationManager::class.java)!!).setLocationEnabled(false)
        assertEquals(RadioState.LOCATION_OFF to true, radio.state to radio.mayLink)
        shadowOf(app.getSystemService(LocationManager::class.java)!!).setLocationEnabled(true)
        assertEquals(RadioState.READY, radio.state)
    }

    @Test
    fun `switching Bluetooth is heard until it is no longer wanted`() {
        var heard = 0
        val watch = PlatformRadio(app).watch { heard += 1 }
        repeat(2) {
            app.sendBroadcast(Intent(BluetoothAdapter.ACTION_STATE_CHANGED))
            ShadowLooper.idleMainLooper()
            if (it == 0) watch.close()
        }
        assertEquals(1, heard)
    }

    @After
    fun thisVersion() = ReflectionHelpers.setStaticField(Build.VERSION::class.java, "SDK_INT", 35)
}
