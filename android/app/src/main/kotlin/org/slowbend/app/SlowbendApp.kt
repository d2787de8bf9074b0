package org.slowbend.app

import android.app.Application
import android.os.Handler
import android.os.Looper
import org.slowbend.app.alarms.Alarms
import org.slowbend.app.probes.Probes
import org.slowbend.app.speech.Speaker
import slowbend.Slowbend
import slowbend.SlowbendInterface
import slowbend.core.Moment
import java.io.File
import java.util.UUID
import java.util.concurrent.Executor
import java.util.concurrent.Executors

/** What lives as long as the process: the one door to the core, its clock and its executor, and the voice. */
open class SlowbendApp : Application() {
    open val clock: Clock by lazy { PlatformClock(this) }
    open val background: Executor by lazy { Executors.newSingleThreadExecutor { Thread(it, "core") } }
    open val main: Executor by lazy { Handler(Looper.getMainLooper()).let { Executor(it::post) } }
    val viewing by lazy { Viewing(this) { clock.now().zone } }
    private val speaker by lazy { Speaker(this) }
    open val door by lazy { makeDoor() }

    open val alarms by lazy { Alarms(this) }
    open val probes by lazy { Probes(this) }

    override fun onCreate() {
        super.onCreate()
        start()
    }

    /** The process began: what must ring is laid, where the phone was unlocked already, and the probes are heard again. */
    open fun start() {
        alarms.start()
        probes.start()
    }

    protected fun makeDoor() = Door(::open, clock, viewing, background, main)

    /** Says aloud what the core wrote. */
    open fun say(text: String) = speaker.say(text)

    /** Whether forecasts are made beside all else. Their dice follow the names of things, which are made of chance. */
    open val foretells = true

    /** Opens the database. The name of this installation lies outside backups, so that a copied database is noticed. */
    open fun open(moment: Moment): SlowbendInterface =
        Slowbend.open(File(filesDir, "slowbend").path, installId(), moment).also { if (foretells) it.makeForecasts() }

    private fun installId(): String {
        val file = File(noBackupFilesDir, "install_id")
        if (!file.exists()) file.writeText(UUID.randomUUID().toString())
        return file.readText()
    }
}
