package org.slowbend.app

import android.content.Context
import android.os.SystemClock
import android.provider.Settings
import slowbend.core.Moment
import java.util.TimeZone

/** When it is. The only place of the shell that asks the platform for it; tests give their own. */
fun interface Clock {
    fun now(): Moment
}

/** The phone's clocks: the wall, and the time since boot, which counts sleep and which nobody can set. */
class PlatformClock(private val context: Context) : Clock {
    override fun now() = Moment(
        utcMs = System.currentTimeMillis(),
        zone = TimeZone.getDefault().id,
        bootId = Settings.Global.getInt(context.contentResolver, Settings.Global.BOOT_COUNT, 0).toString(),
        sinceBootMs = SystemClock.elapsedRealtime(),
    )
}
