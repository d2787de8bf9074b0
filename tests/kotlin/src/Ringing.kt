package slowbend.stories

import kotlinx.serialization.json.JsonElement
import kotlinx.serialization.json.JsonObject
import kotlinx.serialization.json.int
import kotlinx.serialization.json.jsonPrimitive
import kotlinx.serialization.json.long

/** Milliseconds of a minute. */
const val MINUTE = 60_000L

/** The alarms that a phone keeps, as they are when it is [now], in milliseconds since 1970. */
class Ringing(private val alarms: List<JsonElement>, private val now: Long) {
    /** Law: for each of `rings` there is an alarm that it fits, for each of `silent` there is none. */
    fun mustBe(told: JsonObject) {
        told.list("rings").find { !rings(it as JsonObject) }?.let { throw Wrong("nothing rings as $it among:\n$short") }
        told.list("silent").find { rings(it as JsonObject) }?.let { throw Wrong("something rings as $it among:\n$short") }
    }

    private fun rings(told: JsonObject) = alarms.any { fits(told, it) }

    private fun fits(told: JsonObject, alarm: JsonElement): Boolean {
        val minutes = told.list("minutes").map { it.jsonPrimitive.int * MINUTE }
        val isInTime = minutes.isEmpty() || ahead(alarm) in minutes[0]..minutes[1]
        return isInTime && listOf("title", "urgency").all { field -> told[field]?.let { alarm.find(field).holds(it) } ?: true }
    }

    private fun ahead(alarm: JsonElement) = alarm.find("at").jsonPrimitive.long - now

    /** A line for each alarm, for who reads why a step did not hold. */
    private val short
        get() = alarms.joinToString("\n") { "  in ${ahead(it).floorDiv(MINUTE)} min, ${it.find("urgency").text}: ${it.find("title").text}" }
}
