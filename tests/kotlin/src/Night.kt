package slowbend.stories

import kotlinx.serialization.json.Json
import kotlinx.serialization.json.JsonArray
import kotlinx.serialization.json.JsonElement
import kotlinx.serialization.json.JsonObject
import kotlinx.serialization.json.JsonPrimitive
import kotlinx.serialization.json.add
import kotlinx.serialization.json.buildJsonObject
import kotlinx.serialization.json.jsonPrimitive
import kotlinx.serialization.json.long
import kotlinx.serialization.json.put
import kotlinx.serialization.json.putJsonArray
import slowbend.Slowbend
import slowbend.core.HeardWord
import slowbend.core.Hearing
import slowbend.core.Moment
import slowbend.core.SensorReading
import slowbend.screenText

/** The phones of a story, and what each step does to them: the twin of tests/src/stories/night.rs. */
class Night(private val border: Border, story: JsonObject, phone: MakePhone) : AutoCloseable {
    private var utcMs = instant(story.must("starts"))
    private val deeds = Deeds(border)

    /** A radio that is ready and keeps no probe: what a cook knows of probes is shown. */
    private val hearing = border.into("hearing", Json.parseToJsonElement(READY)) as Hearing

    /** By name, and numbered in the order of the names. */
    val phones: Map<String, Phone> = (story.getValue("devices") as JsonObject).toSortedMap().entries.withIndex()
        .associate { (i, device) -> device.key to phone.make(i + 1, whole(device.value as JsonObject), ::now) }

    private fun moment() = buildJsonObject {
        put("utc_ms", utcMs)
        put("zone", ZONE)
        put("boot_id", "boot")
        put("since_boot_ms", utcMs)
    }

    private fun now() = border.into("moment", moment()) as Moment

    override fun close() = phones.values.forEach(Phone::close)

    fun live(step: JsonObject) {
        val (kind, told) = step.entries.single()
        when (kind) {
            "wait" -> utcMs += told.jsonPrimitive.long * MINUTE
            "rang" -> phone(told.text).ring()
            "restart" -> phone(told.text).restart()
            "forecast" -> phone(told.text).forecast()
            "sync" -> sync(told as JsonArray)
            else -> live(kind, told as JsonObject)
        }
    }

    private fun live(kind: String, told: JsonObject) {
        val by = phone(told.must("by"))
        when (kind) {
            "act" -> deeds.act(by, told)
            "undo" -> deeds.undo(by, told)
            "press" -> deeds.press(by, look(by, told), told)
            "reading" -> reading(by, told)
            "word" -> word(by, told)
            "screen" -> screen(by, told)
            "alarms" -> Ringing(look(by, "alarms", emptyList()).find("alarms") as JsonArray, utcMs).mustBe(told)
            "join" -> join(by, phone(told.must("of")))
            else -> throw Wrong("there is no step $kind")
        }
    }

    private fun phone(name: String?) = phones[name] ?: throw Wrong("nobody is called $name")

    private fun reading(by: Phone, told: JsonObject) {
        val heard = buildJsonObject {
            put("source", told.must("source"))
            put("sensor", told.must("sensor"))
            put("at", utcMs)
            put("temp", fromF(told.getValue("f").jsonPrimitive.long))
        }
        val reading = border.into("reading", heard) as SensorReading
        by.change { core, _, now -> core.readings(listOf(reading), now) }
    }

    private fun word(by: Phone, told: JsonObject) {
        val heard = buildJsonObject {
            put("source", told.must("source"))
            put("sensor", told.must("sensor"))
            put("characteristic", told.must("characteristic").toInt(16))
            putJsonArray("bytes") { told.must("hex").split(' ').forEach { add(it.toInt(16)) } }
            put("heard", moment())
        }
        val word = border.into("word", heard) as HeardWord
        val taken = by.change { core, viewer, now -> core.probeWords(viewer, listOf(word), now) }.single()
        border.out("taken", taken)
        val why = JsonPrimitive(taken.whyNone.orEmpty())
        if (!why.holds(told["why_none"] ?: JsonPrimitive(""))) throw Wrong("why there is no reading: $why")
    }

    private fun screen(by: Phone, told: JsonObject) {
        val screen = look(by, told)
        for ((path, value) in told.getValue("shows") as JsonObject) {
            val found = screen.find(path)
            if (!found.holds(value)) throw Wrong("$path should be $value, but is $found, on ${pretty(screen)}")
        }
    }

    private fun look(by: Phone, told: JsonObject) = look(by, told.must("see"), listOfNotNull(told["of"]?.text, told["at"]?.text))

    /** What a page of the catalogue is of is said as it is; a cook, a pit or a meat by the name it was made under. */
    private fun look(by: Phone, see: String, named: List<String>): JsonElement {
        val of = when (see) {
            "cuts", "cut" -> named
            // The class is given as it is.
            "hand_out" -> named.take(1).map(deeds::id) + named.drop(1)
            else -> named.map(deeds::id)
        }
        val (record, canon) = by.ask { core, viewer, now ->
            core.screen(see, of, viewer, now, hearing) to screenText(core as Slowbend, viewer, screenOf(see, of), now)
        }
        by.shows(see, of, record)
        return border.out(see, record, canon)
    }

    private fun join(by: Phone, of: Phone) {
        val log = of.ask { core, _, _ -> core.log() }
        by.change { core, _, now -> core.joinCrew(log, now) }
    }

    private fun sync(names: JsonArray) {
        val met = names.map { phone(it.text) }
        val entries = met.flatMap { one -> one.ask { core, _, _ -> core.entriesAfter(emptyList()) } }
        met.forEach { one -> one.change { core, _, now -> core.absorb(entries, now) } }
    }
}

private const val READY = """{"radio":"ready","asked_in_vain":false,"looking":false,"sources":[]}"""
