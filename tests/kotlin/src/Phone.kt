package slowbend.stories

import kotlinx.serialization.json.JsonObject
import kotlinx.serialization.json.JsonPrimitive
import slowbend.Slowbend
import slowbend.SlowbendInterface
import slowbend.core.Moment
import slowbend.core.Viewer
import slowbend.openSeeded
import kotlin.io.path.createTempDirectory

/** The installation of every phone of a story. */
const val INSTALLATION = "story"

/** The phones of stories live here. */
const val ZONE = "America/Chicago"

/** One device of a story, and the way in which its core is reached. */
interface Phone : AutoCloseable {
    /** Asks the core for something. */
    fun <T> ask(verb: (SlowbendInterface, Viewer, Moment) -> T): T

    /** Has the core do something. */
    fun <T> change(verb: (SlowbendInterface, Viewer, Moment) -> T): T

    /** The app is closed and opened again. */
    fun restart()

    /** All that is due by now rings. */
    fun ring() = change { core, viewer, moment ->
        val due = core.alarms(viewer, moment, ALARMS.toUInt()).alarms.filter { it.at <= moment.utcMs }
        core.rang(due.map { it.id }, moment)
    }

    /** It makes forecasts from now on, and does all the slow work there is. */
    fun forecast() = ask { core, _, moment ->
        core.makeForecasts()
        while (core.work(moment, STEPS)) Unit
    }

    /** The screen [see] was asked for and is [record]: the place for a shell to say what it shows. */
    fun shows(see: String, of: List<String>, record: Any) = Unit
}

/** Makes the phone number [seed] of a story, whose holder reads as [holder] says, when it is [now]. */
fun interface MakePhone {
    fun make(seed: Int, holder: JsonObject, now: () -> Moment): Phone
}

/** The generated binding as it is, no shell around it. */
class BarePhone(private var seed: Int, holder: JsonObject, border: Border, private val now: () -> Moment) : Phone {
    private val folder = createTempDirectory("story").toFile()
    private var core = open()
    private val viewer = border.into("viewer", viewer(holder, core.device())) as Viewer

    private fun open(): Slowbend = openSeeded(folder.path, INSTALLATION, seed.toUByte(), now())

    override fun <T> ask(verb: (SlowbendInterface, Viewer, Moment) -> T) = verb(core, viewer, now())

    override fun <T> change(verb: (SlowbendInterface, Viewer, Moment) -> T) = ask(verb)

    override fun restart() {
        core.suspend()
        core.close()
        seed += RESTART
        core = open()
    }

    override fun close() {
        core.close()
        folder.deleteRecursively()
    }
}

/** How many steps of the slow work are done at once. */
private const val STEPS = 16u

/** By so much the seed of a phone rises when it is opened again. */
const val RESTART = 100

private fun viewer(holder: JsonObject, device: String) =
    JsonObject(holder + mapOf("zone" to JsonPrimitive(ZONE), "device" to JsonPrimitive(device)))
