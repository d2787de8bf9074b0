package org.slowbend.app

import org.slowbend.app.alarms.Alarms
import org.slowbend.app.probes.FakeRadio
import org.slowbend.app.probes.Probes
import slowbend.Slowbend
import slowbend.SlowbendInterface
import slowbend.core.Act
import slowbend.core.Cadence
import slowbend.core.Cut
import slowbend.core.Form
import slowbend.core.Moment
import slowbend.core.NewMeat
import slowbend.core.Outcome
import slowbend.core.PitKind
import slowbend.core.PlanScreen
import slowbend.core.PlanTyped
import slowbend.core.Serve
import slowbend.core.Stage
import slowbend.core.Subject
import slowbend.core.Trouble
import java.lang.reflect.InvocationTargetException
import java.lang.reflect.Proxy
import java.util.concurrent.Executor

/** Saturday 2026-06-13 07:00 in Chicago: the day of the invented regatta lunch. */
const val MORNING = 1_781_352_000_000
const val MINUTE = 60_000L
private const val DAY = 86_400_000L
const val ZONE = "America/Chicago"

/** A clock that stands until a test moves it; the phone was started the day before. */
class TestClock : Clock {
    var utcMs = MORNING
    var boot = "1"
    override fun now() = Moment(utcMs, ZONE, boot, utcMs - MORNING + DAY)

    fun wait(minutes: Int) {
        utcMs += minutes * MINUTE
    }
}

/** The app over the real core, with a clock of the test's, on the test's own thread, counting the calls of the core. */
class TestApp : SlowbendApp() {
    override val clock = TestClock()
    override val background = Executor(Runnable::run)
    override val main = Executor(Runnable::run)

    /** Pictures are the same each time, and no test waits for what it does not look at; stories ask for forecasts themselves. */
    override val foretells = false

    /** The verbs that were called, in order. */
    val calls = mutableListOf<String>()

    /** What was said aloud, in order. */
    val said = mutableListOf<String>()
    override fun say(text: String) {
        said += text
    }

    private var made: Door? = null
    override val door get() = made ?: makeDoor().also { made = it }
    private var laying: Alarms? = null
    override val alarms get() = laying ?: Alarms(this).also { laying = it }

    /** The radio of this process, and what listens by it. */
    var radio = FakeRadio()
        private set
    private var hearing: Probes? = null
    override val probes get() = hearing ?: newProbes()

    fun newProbes(): Probes {
        radio = FakeRadio()
        return Probes(this, radio).also { hearing = it }
    }

    /** Tests of probes begin the listening themselves. */
    fun bornToHear() {
        newProbes()
        alarms.start()
        probes.start()
    }

    /** Tests of what rings begin it themselves, by [born]. */
    override fun start() = Unit
    fun born() = alarms.start()
    private var core: Slowbend? = null

    /** What opening the database answers instead, while set. */
    var trouble: Trouble? = null

    /** From now on the app reaches its core through [door]. */
    fun hold(door: Door) {
        made = door
    }

    /** The process ends and starts again: whatever was not on disk is gone. The next one calls [step] before each step. */
    fun die(step: () -> Unit = {}) {
        core?.close()
        made = null
        laying = Alarms(this, step)
    }

    override fun open(moment: Moment): SlowbendInterface {
        trouble?.let { throw it }
        val core = super.open(moment) as Slowbend
        this.core = core
        return Proxy.newProxyInstance(javaClass.classLoader, arrayOf(SlowbendInterface::class.java)) { _, method, args ->
            calls += method.name.substringBefore('-')
            try {
                method.invoke(core, *args.orEmpty())
            } catch (thrown: InvocationTargetException) {
                throw thrown.targetException
            }
        } as SlowbendInterface
    }

    fun done(act: Act): Outcome {
        var answer: Result<Outcome>? = null
        door.act(act) { answer = it }
        return answer!!.getOrThrow()
    }

    /**
     * A drum, a kettle, and the regatta lunch for fourteen at two o'clock. Invented. Each thing is made a second after the
     * other, for names rise with time, and things of one time stand in the order of their random names.
     */
    fun regatta(): Lunch = lunch(
        { drum, _ -> NewMeat("Slab one", Cut.SPARE_RIBS, Form.INTACT, 1_600, mop, drum) },
        { drum, _ -> NewMeat("Slab two", Cut.SPARE_RIBS, Form.INTACT, 1_500, mop, drum) },
        { drum, _ -> NewMeat("Butt", Cut.PORK_BUTT, Form.INTACT, 3_600, null, drum) },
        { _, kettle -> NewMeat("Breast", Cut.TURKEY_BREAST, Form.INTACT, 2_500, null, kettle) },
    )

    /** The same without the butt, which could not be ready by two: a lunch that is planned, with beans beside it. */
    fun toPlan(): Lunch = lunch(
        { drum, _ -> NewMeat("Slab one", Cut.SPARE_RIBS, Form.INTACT, 1_600, mop, drum) },
        { drum, _ -> NewMeat("Slab two", Cut.SPARE_RIBS, Form.INTACT, 1_500, mop, drum) },
        { _, kettle -> NewMeat("Breast", Cut.TURKEY_BREAST, Form.INTACT, 2_500, null, kettle) },
    ).also {
        clock.utcMs += 1_000
        done(Act.AddDish(it.cook, "Beans", true))
    }

    private val mop = Cadence.Mop(30)

    private fun lunch(vararg meats: (drum: String, kettle: String) -> NewMeat): Lunch {
        fun made(act: Act) = done(act).made.also { clock.utcMs += 1_000 }
        val drum = made(Act.AddPit("Drum", PitKind.DRUM, 2_600, null)).firstNotNullOf { (it as? Subject.Pit)?.v1 }
        val kettle = made(Act.AddPit("Kettle", PitKind.KETTLE, 2_300, 60)).firstNotNullOf { (it as? Subject.Pit)?.v1 }
        val serve = Serve(MORNING + 7 * 60 * MINUTE, ZONE)
        val cook = made(Act.StartCook("Regatta lunch", serve, 14, emptyList(), false)).firstNotNullOf { (it as? Subject.Cook)?.v1 }
        val pieces = meats.map { meat -> made(Act.AddMeat(cook, meat(drum, kettle))).firstNotNullOf { (it as? Subject.Piece)?.v1 } }
        return Lunch(cook, pieces, drum, kettle)
    }

    /** The same an hour and a half in: the slabs are due for their second mop. */
    fun underWay(): Lunch {
        val lunch = regatta()
        for (meat in lunch.meats.take(3)) {
            done(Act.SetStage(meat, Stage.Rubbed, null))
            done(Act.SetStage(meat, Stage.OnPit(lunch.drum), null))
        }
        clock.wait(50)
        for (slab in lunch.meats.take(2)) done(Act.AnswerRub(slab, true, null))
        done(Act.Open(lunch.drum, lunch.meats.take(2), emptyList(), emptyList(), null))
        clock.wait(32)
        return lunch
    }
}

/** What [TestApp.regatta] made. */
data class Lunch(val cook: String, val meats: List<String>, val drum: String, val kettle: String)

/** The plan that is proposed first for [lunch] is accepted. */
fun TestApp.planned(lunch: Lunch) {
    var screen: PlanScreen? = null
    val asked = PlanTyped(true, 0, "1", "", "", false, true, false, "30")
    door.ask({ core, viewer, moment -> core.plan(viewer, lunch.cook, asked, moment) }) { screen = it.getOrThrow() }
    done(screen!!.proposals.first().accept.act)
}
