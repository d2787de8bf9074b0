package org.slowbend.app.probes

import slowbend.core.RadioState

/**
 * The radio, as far as probes need it. [PlatformRadio] is the phone's own; tests give one that does as it is told.
 * It is called, and calls back, on the main thread.
 */
interface Radio {
    /** Whether probes can be looked for. */
    val state: RadioState

    /** Whether the person allows probes to be linked: older versions of Android want the location only for looking. */
    val isAllowed: Boolean

    /** Whether known probes can be linked now: it is allowed and Bluetooth is on. */
    val mayLink: Boolean

    /** Tells each probe that it finds, again and again, until [stopLooking]. */
    fun look(found: (Found) -> Unit)

    fun stopLooking()

    /** Links the probe as soon as it comes near, however long that takes, until it is closed. */
    fun link(address: String, heard: Heard): AutoCloseable

    /** Calls [changed] whenever Bluetooth was switched on or off, until it is closed. */
    fun watch(changed: () -> Unit): AutoCloseable
}

/** A probe that was found; it may not say what it is called. */
data class Found(val address: String, val name: String)

/** What comes of a link. After [gone] and [foreign] it is closed. */
interface Heard {
    /** It is linked and its sensors will speak. */
    fun linked(sensors: List<String>)

    fun word(sensor: String, characteristic: UShort, bytes: ByteArray)

    /** It went away, or could not be reached. */
    fun gone()

    /** It has no sensor that is read here and speaks on its own. */
    fun foreign()
}
