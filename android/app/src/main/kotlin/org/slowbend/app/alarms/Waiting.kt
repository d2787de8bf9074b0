package org.slowbend.app.alarms

import org.json.JSONArray
import org.json.JSONObject
import slowbend.core.AlarmId
import slowbend.core.Moment

/** What happened on the phone and waits to be told to the core, with the moment at which it happened. */
sealed interface Waiting {
    val moment: Moment

    fun json(): JSONObject

    /** These sounded. */
    data class Rang(val ids: List<AlarmId>, override val moment: Moment) : Waiting {
        override fun json() = moment.json().put("rang", JSONArray(ids))
    }

    /** A ring was answered; [token] sees to it that the core records it once, whenever the process dies. */
    data class Answered(val act: String, val token: String, override val moment: Moment) : Waiting {
        override fun json() = moment.json().put("act", act).put("token", token)
    }

    companion object {
        fun of(json: JSONObject): Waiting {
            val moment = Moment(json.getLong("utc"), json.getString("zone"), json.getString("boot"), json.getLong("since"))
            val act = json.text("act") ?: return Rang(json.getJSONArray("rang").let { List(it.length(), it::getString) }, moment)
            return Answered(act, json.getString("token"), moment)
        }
    }
}

private fun Moment.json() = JSONObject().put("utc", utcMs).put("zone", zone).put("boot", bootId).put("since", sinceBootMs)
