package slowbend.stories

import kotlinx.serialization.json.Json
import kotlinx.serialization.json.JsonArray
import kotlinx.serialization.json.JsonElement
import kotlinx.serialization.json.JsonObject
import kotlinx.serialization.json.JsonPrimitive
import java.time.OffsetDateTime

/** A step did not hold. */
class Wrong(what: String) : Exception(what)

/** How a US phone shows things. */
private val usual = mapOf("locale" to "en-US", "temperature" to "fahrenheit", "weight" to "pound", "hours" to "twelve")

/** What a holder is told to have, and the rest as a US phone has it. */
fun whole(holder: JsonObject) = JsonObject(usual.mapValues { JsonPrimitive(it.value) } + holder)

/** The text of a field that has to be there. */
fun JsonObject.must(field: String) = this[field]?.text ?: throw Wrong("the step lacks \"$field\": $this")

/** The list of a field; where there is none, an empty one. */
fun JsonObject.list(field: String) = this[field] as? JsonArray ?: JsonArray(emptyList())

/** [told] with the id of each `$name`, and with the number that a text stands for. */
fun filled(told: JsonElement, id: (String) -> String): JsonElement = when (told) {
    is JsonObject -> JsonObject(told.mapValues { filled(it.value, id) })
    is JsonArray -> JsonArray(told.map { filled(it, id) })
    is JsonPrimitive -> told.text?.let { if (it.startsWith('$')) JsonPrimitive(id(it)) else number(it) } ?: told
}

private fun number(text: String): JsonPrimitive? {
    if (text.startsWith('@')) return JsonPrimitive(instant(text.drop(1)))
    val degrees = text.removeSuffix(" °F").takeIf { it != text }?.toLongOrNull() ?: return null
    return JsonPrimitive(fromF(degrees))
}

/** Milliseconds since 1970 of a time as RFC 3339 writes it. */
fun instant(text: String) = OffsetDateTime.parse(text).toInstant().toEpochMilli()

/** Whole degrees Fahrenheit in millikelvin, rounded as core rounds. */
fun fromF(degrees: Long) = (degrees * 5_000 + 2_298_350 + 4).floorDiv(9L)

private val lines = Json { prettyPrint = true }

/** [screen] over many lines, for who reads why a step did not hold. */
fun pretty(screen: JsonElement) = lines.encodeToString(JsonElement.serializer(), screen)
