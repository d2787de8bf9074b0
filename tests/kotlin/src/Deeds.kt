package slowbend.stories

import kotlinx.serialization.json.JsonArray
import kotlinx.serialization.json.JsonElement
import kotlinx.serialization.json.JsonNull
import kotlinx.serialization.json.JsonObject
import kotlinx.serialization.json.boolean
import kotlinx.serialization.json.jsonPrimitive
import slowbend.core.Act
import slowbend.core.Outcome
import slowbend.core.Trouble

/** What is done in a story: acts, what they made, and how they are taken back. */
class Deeds(private val border: Border) {
    private val made = mutableMapOf<String, String>()
    private val outcomes = mutableMapOf<String, Outcome>()

    fun id(name: String) = made[name.removePrefix("$")] ?: throw Wrong("nothing was made that is called $name")

    fun act(phone: Phone, told: JsonObject) {
        val act = border.into("act", filled(told.getValue("what"), ::id)) as Act
        val refused = told["refused"]?.text
        val outcome = try {
            taken(phone, act, told["token"]?.text)
        } catch (refusal: Trouble.Refused) {
            if (refused == null || refused !in refusal.reason) throw Wrong("was refused: ${refusal.reason}")
            return
        }
        if (refused != null) throw Wrong("expected a refusal with \"$refused\", but got $outcome")
        keep(told, outcome)
    }

    private fun taken(phone: Phone, act: Act, token: String?) = phone.change { core, viewer, now ->
        if (token == null) core.act(viewer, act, now) else core.actOnce(token, viewer, act, now)
    }

    private fun keep(told: JsonObject, outcome: Outcome) {
        val came = border.out("outcome", outcome)
        val isAsTold = told["said"]?.let { came.find("said").holds(it) } ?: true
        val repeated = told["repeated"]?.jsonPrimitive?.boolean ?: outcome.repeated
        if (!isAsTold || repeated != outcome.repeated) throw Wrong("came out as $came")
        val names = told.list("makes")
        val ids = came.find("made") as JsonArray
        if (names.size > ids.size) throw Wrong("made only $ids")
        names.zip(ids).forEach { (name, one) -> made[name.text!!] = one.find("id").text.orEmpty() }
        call(told, outcome)
    }

    private fun call(told: JsonObject, outcome: Outcome) = told["called"]?.text?.let { outcomes[it] = outcome }

    fun undo(phone: Phone, told: JsonObject) {
        val undo = outcomes[told.must("of")]?.undo ?: throw Wrong("nothing was called so, or it offers no taking back")
        perform(phone, undo.act, told)
    }

    fun press(phone: Phone, screen: JsonElement, told: JsonObject) {
        val act = screen.find(told.must("button") + "/act")
        if (act == JsonNull) throw Wrong("no such button on ${pretty(screen)}")
        perform(phone, border.into("act", act) as Act, told)
    }

    private fun perform(phone: Phone, act: Act, told: JsonObject) {
        val outcome = taken(phone, act, null)
        border.out("outcome", outcome)
        call(told, outcome)
    }
}
