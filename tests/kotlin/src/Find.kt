package slowbend.stories

import kotlinx.serialization.json.JsonArray
import kotlinx.serialization.json.JsonElement
import kotlinx.serialization.json.JsonNull
import kotlinx.serialization.json.JsonObject
import kotlinx.serialization.json.JsonPrimitive

/** What is at [path] of a screen; nothing there is null. The twin of tests/src/stories/find.rs. */
fun JsonElement.find(path: String): JsonElement = path.split('/').fold(this) { at, segment -> at.step(segment) ?: JsonNull }

private fun JsonElement.step(segment: String) = when (this) {
    is JsonObject -> this[segment]
    is JsonArray -> when {
        '=' in segment -> first(segment, '=') { found, text -> found == text }
        '~' in segment -> first(segment, '~') { found, part -> part in found }
        else -> segment.toIntOrNull()?.let(::getOrNull)
    }
    else -> null
}

private fun JsonArray.first(segment: String, divider: Char, fits: (String, String) -> Boolean): JsonElement? {
    val (field, wanted) = segment.split(divider, limit = 2)
    return firstOrNull { one -> (one as? JsonObject)?.get(field)?.text?.let { fits(it, wanted) } ?: false }
}

/** Whether what was found is as [told]: `has`, `lacks`, `count`, `not`, or equal. */
fun JsonElement.holds(told: JsonElement): Boolean {
    val (test, value) = (told as? JsonObject)?.entries?.singleOrNull() ?: return this == told
    return when (test) {
        "has" -> has(value)
        "lacks" -> !has(value)
        "count" -> this is JsonArray && JsonPrimitive(size) == value
        "not" -> this != value
        else -> this == told
    }
}

private fun JsonElement.has(part: JsonElement) = when (this) {
    is JsonArray -> part in this
    else -> text?.let { whole -> part.text?.let { it in whole } } ?: false
}

/** The text of what is a text. */
val JsonElement.text get() = (this as? JsonPrimitive)?.takeIf { it.isString }?.content
