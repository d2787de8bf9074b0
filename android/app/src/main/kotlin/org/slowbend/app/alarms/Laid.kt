package org.slowbend.app.alarms

import org.json.JSONArray
import org.json.JSONObject
import slowbend.core.Alarm
import slowbend.core.AlarmId
import slowbend.core.Answer
import slowbend.core.CookId
import slowbend.core.Urgency

/** One alarm as it lies on the phone: what rings needs no more than this, so it rings where the core cannot be opened. */
data class Laid(
    val id: AlarmId,
    /** One name for all rings for the same thing: what is shown for it is shown once. */
    val thing: AlarmId,
    val cook: CookId?,
    /** When, milliseconds since 1970. */
    val at: Long,
    val urgency: Urgency,
    val title: String,
    val body: String,
    val speech: String,
    val covers: List<AlarmId>,
    val late: Boolean,
    val silent: Boolean,
    val answers: List<Answer>,
    /** Whether it sounded, and the core does not know yet. */
    val rung: Boolean = false,
) {
    val isTrial get() = id == TRIAL

    /** Whether it is laid on the platform as [other] is. */
    fun liesAs(other: Laid?) = other != null && at == other.at && urgency == other.urgency && rung == other.rung

    fun json(): JSONObject = JSONObject()
        .put("id", id).put("thing", thing).put("cook", cook).put("at", at).put("urgency", urgency.name)
        .put("title", title).put("body", body).put("speech", speech).put("covers", JSONArray(covers))
        .put("late", late).put("silent", silent).put("rung", rung)
        .put("answers", JSONArray(answers.map { JSONObject().put("label", it.label).put("act", it.act).put("again", it.againMinutes) }))

    companion object {
        /** The name of the ring that is tried out before sleep: no alarm of the core has it. */
        const val TRIAL = "trial"

        fun of(json: JSONObject) = Laid(
            id = json.getString("id"),
            thing = json.getString("thing"),
            cook = json.text("cook"),
            at = json.getLong("at"),
            urgency = Urgency.valueOf(json.getString("urgency")),
            title = json.getString("title"),
            body = json.getString("body"),
            speech = json.getString("speech"),
            covers = json.getJSONArray("covers").let { all -> List(all.length(), all::getString) },
            late = json.getBoolean("late"),
            silent = json.getBoolean("silent"),
            rung = json.getBoolean("rung"),
            answers = json.getJSONArray("answers").objects {
                Answer(it.getString("label"), it.getString("act"), if (it.has("again")) it.getLong("again") else null)
            },
        )
    }
}

/** An alarm of the core, to be laid. */
fun Alarm.laid() = Laid(id, thing, cook, at, urgency, title, body, speech, covers, late, silent, answers)

internal fun <T> JSONArray.objects(read: (JSONObject) -> T) = List(length()) { read(getJSONObject(it)) }

internal fun JSONObject.text(name: String): String? = if (has(name)) getString(name) else null
