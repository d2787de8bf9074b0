package org.slowbend.app.probes

import org.robolectric.shadows.ShadowLooper
import slowbend.core.RadioState
import java.util.concurrent.TimeUnit

/** A radio that does as a test says, and forbids what the platform forbids. */
class FakeRadio : Radio {
    override var state = RadioState.READY
    override val isAllowed get() = state != RadioState.REFUSED && state != RadioState.MISSING
    override val mayLink get() = isAllowed && state != RadioState.OFF

    /** The links that are open, by address, and how often each was asked for. */
    val open = mutableMapOf<String, Heard>()
    val asked = mutableMapOf<String, Int>()
    var refuses = false
    private var found: ((Found) -> Unit)? = null
    private var changed: (() -> Unit)? = null

    val isLooking get() = found != null
    val isWatched get() = changed != null

    override fun look(found: (Found) -> Unit) {
        this.found = found
    }

    override fun stopLooking() {
        found = null
    }

    override fun link(address: String, heard: Heard): AutoCloseable {
        if (refuses) throw SecurityException("Nearby devices")
        check(address !in open) { "two links to $address" }
        asked.merge(address, 1, Int::plus)
        open[address] = heard
        return AutoCloseable { open.remove(address, heard) }
    }

    override fun watch(changed: () -> Unit): AutoCloseable {
        this.changed = changed
        return AutoCloseable { this.changed = null }
    }

    fun finds(address: String, name: String) = found!!(Found(address, name))

    /** The probe came near; it has so many sensors. */
    fun comes(address: String, vararg sensors: String) = open.getValue(address).linked(sensors.toList())

    fun says(address: String, sensor: String, characteristic: Int, vararg bytes: Int) =
        open.getValue(address).word(sensor, characteristic.toUShort(), ByteArray(bytes.size) { bytes[it].toByte() })

    /** It went away. The link made again comes when [pass]ing. */
    fun loses(address: String) = open.remove(address)!!.gone()

    /** Bluetooth is switched off, and every link is lost, or on. */
    fun switches(on: Boolean) {
        state = if (on) RadioState.READY else RadioState.OFF
        if (!on) open.keys.toList().forEach { open.remove(it)!!.gone() }
        changed?.invoke()
    }

    fun pass(ms: Long) = ShadowLooper.idleMainLooper(ms, TimeUnit.MILLISECONDS)
}

/** 225 °F, as a Temperature Measurement in tenths of a degree: 2250 × 10⁻¹, Fahrenheit. */
val F225 = intArrayOf(0x01, 0xCA, 0x08, 0x00, 0xFF)

/** 107.23 °C, which is 225.0 °F, as a Temperature; from the published table of core. */
val C107 = intArrayOf(0xE3, 0x29)
