package org.slowbend.app.alarms

import org.json.JSONArray
import org.json.JSONObject
import org.slowbend.app.Told
import slowbend.core.Act
import slowbend.core.EntryKey
import slowbend.core.Outcome
import slowbend.core.Undo

/** What came of an answer that was given where a ring stood, to be told, and taken back, where somebody can see it. */
data class Answered(val said: String, val label: String, val targets: List<EntryKey>) {
    /** Told from [now] on, with as long to take it back as after a tap. */
    fun toldAt(now: Long) = Told(said, if (targets.isEmpty()) null else Undo(label, Act.Undo(targets), now + SHOWN_MS))

    fun json(): JSONObject = JSONObject().put("said", said).put("label", label).put("targets", JSONArray(targets))

    companion object {
        /** As long as the core shows an act huge to be taken back: 30 s. Common practice, no source. */
        const val SHOWN_MS = 30_000L

        fun of(outcome: Outcome): Answered {
            val undo = outcome.undo
            return Answered(outcome.said, undo?.label.orEmpty(), (undo?.act as? Act.Undo)?.targets.orEmpty())
        }

        fun of(json: JSONObject) = Answered(
            json.getString("said"),
            json.getString("label"),
            json.getJSONArray("targets").let { all -> List(all.length(), all::getString) },
        )
    }
}
