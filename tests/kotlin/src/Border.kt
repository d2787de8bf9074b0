package slowbend.stories

import kotlinx.serialization.json.Json
import kotlinx.serialization.json.JsonElement
import java.lang.reflect.InvocationTargetException
import java.lang.reflect.Method

/** A record did not come back as it went. */
class Changed(what: String) : Exception(what)

/**
 * The border between Kotlin and Rust: every record that crosses it is compared byte for byte.
 *
 * Law: JSON -> record -> Kotlin -> record -> JSON gives the bytes that Rust writes of the same value when nothing crosses.
 * The three functions of a kind are found by their names, so that a kind that is added to `bindings/src/echo` counts as
 * missing here until a story carries it.
 */
class Border {
    /** How many of each kind were compared. */
    val crossed = sortedMapOf<String, Int>()

    /** The kinds that no story carried so far. */
    val missing get() = kinds - crossed.keys

    /** The record of the JSON [value], once it is known to come back unchanged. */
    fun into(kind: String, value: JsonElement): Any {
        val text = value.toString()
        val record = call("${kind}_from_json", text)
        same(kind, call("${kind}_canon", text) as String, record)
        return record
    }

    /** The JSON of a record that Rust gave, once it is known to come back unchanged; [canon] is what Rust writes. */
    fun out(kind: String, record: Any, canon: String? = null): JsonElement {
        val text = call("${kind}_json", record) as String
        same(kind, canon ?: call("${kind}_canon", text) as String, record)
        val again = call("${kind}_from_json", text)
        if (again != record) throw Changed("$kind: $record came back as $again")
        return Json.parseToJsonElement(text)
    }

    private fun same(kind: String, canon: String, record: Any) {
        val text = call("${kind}_json", record)
        if (text != canon) throw Changed("$kind: $canon came back as $text")
        crossed.merge(kind, 1, Int::plus)
    }

    private fun call(name: String, argument: Any): Any {
        val function = functions[camel(name)] ?: throw Wrong("the bindings have no $name: bindings/src/echo lacks a line")
        return function.answer(null, argument)!!
    }

    private companion object {
        val functions: Map<String, Method> = Class.forName("slowbend.SlowbendKt").methods.associateBy { it.name }
        val kinds = functions.keys.filter { it.endsWith("FromJson") }.map { snake(it.removeSuffix("FromJson")) }.toSet()
    }
}

/** Calls it; what it throws is thrown as it is. */
internal fun Method.answer(on: Any?, vararg arguments: Any?): Any? = try {
    invoke(on, *arguments)
} catch (thrown: InvocationTargetException) {
    throw thrown.targetException
}

/** A name of Rust as Kotlin has it. */
internal fun camel(name: String) = name.replace(Regex("_(.)")) { it.groupValues[1].uppercase() }

private fun snake(name: String) = name.replace(Regex("[A-Z]")) { "_" + it.value.lowercase() }
