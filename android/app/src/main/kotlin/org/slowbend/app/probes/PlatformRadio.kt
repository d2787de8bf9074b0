package org.slowbend.app.probes

import android.annotation.SuppressLint
import android.bluetooth.BluetoothAdapter
import android.bluetooth.BluetoothDevice
import android.bluetooth.BluetoothManager
import android.bluetooth.le.ScanCallback
import android.bluetooth.le.ScanFilter
import android.bluetooth.le.ScanResult
import android.bluetooth.le.ScanSettings
import android.content.BroadcastReceiver
import android.content.Context
import android.content.Intent
import android.content.IntentFilter
import android.content.pm.PackageManager
import android.location.LocationManager
import android.os.Handler
import android.os.Looper
import android.os.ParcelUuid
import androidx.core.content.ContextCompat
import androidx.core.location.LocationManagerCompat
import slowbend.core.RadioState

/** The phone's own radio. Each call asks it anew: a permission or the radio itself may be gone since the last. */
@SuppressLint("MissingPermission")
class PlatformRadio(private val context: Context) : Radio {
    private val adapter: BluetoothAdapter? by lazy { context.getSystemService(BluetoothManager::class.java)?.adapter }
    private val main = Handler(Looper.getMainLooper())
    private var scan: ScanCallback? = null

    override val state: RadioState
        get() = when {
            adapter == null || !context.packageManager.hasSystemFeature(PackageManager.FEATURE_BLUETOOTH_LE) -> RadioState.MISSING
            !Permissions.toLook(context) -> if (Permissions.wantsLocation) RadioState.LOCATION_REFUSED else RadioState.REFUSED
            adapter?.isEnabled != true -> RadioState.OFF
            Permissions.wantsLocation && !isLocationOn -> RadioState.LOCATION_OFF
            else -> RadioState.READY
        }

    override val isAllowed get() = adapter != null && Permissions.toLink(context)

    override val mayLink get() = isAllowed && adapter?.isEnabled == true

    private val isLocationOn
        get() = context.getSystemService(LocationManager::class.java).let { it != null && LocationManagerCompat.isLocationEnabled(it) }

    /** Looks only for probes that say on the air that they have one of the two services. */
    override fun look(found: (Found) -> Unit) {
        stopLooking()
        val wanted = listOf(Sig.HEALTH_THERMOMETER, Sig.ENVIRONMENTAL_SENSING).map {
            ScanFilter.Builder().setServiceUuid(ParcelUuid(Sig.uuid(it))).build()
        }
        val how = ScanSettings.Builder().setScanMode(ScanSettings.SCAN_MODE_LOW_LATENCY).build()
        val scan = Scan(found)
        adapter?.bluetoothLeScanner?.startScan(wanted, how, scan)
        this.scan = scan
    }

    override fun stopLooking() {
        scan?.let { adapter?.bluetoothLeScanner?.stopScan(it) }
        scan = null
    }

    /** With `autoConnect` the platform waits for the probe, also while the phone sleeps. */
    override fun link(address: String, heard: Heard): AutoCloseable = GattLink(main, heard).open { link ->
        val device = adapter?.getRemoteDevice(address)
        device?.connectGatt(context, true, link, BluetoothDevice.TRANSPORT_LE, BluetoothDevice.PHY_LE_1M_MASK, main)
    }

    override fun watch(changed: () -> Unit): AutoCloseable {
        val receiver = object : BroadcastReceiver() {
            override fun onReceive(context: Context, intent: Intent) = changed()
        }
        val of = IntentFilter(BluetoothAdapter.ACTION_STATE_CHANGED)
        ContextCompat.registerReceiver(context, receiver, of, ContextCompat.RECEIVER_NOT_EXPORTED)
        return AutoCloseable { context.unregisterReceiver(receiver) }
    }

    private class Scan(private val found: (Found) -> Unit) : ScanCallback() {
        override fun onScanResult(callbackType: Int, result: ScanResult) =
            found(Found(result.device.address, result.scanRecord?.deviceName ?: result.device.name.orEmpty()))
    }
}
