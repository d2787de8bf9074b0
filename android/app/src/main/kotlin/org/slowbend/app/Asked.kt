package org.slowbend.app

import androidx.compose.runtime.saveable.mapSaver
import slowbend.core.CardAsk
import slowbend.core.PlanTyped

/** Nothing was said for a plan yet: the core fills in what is known. */
val nothingSaid = PlanTyped(false, 0, "", "", "", false, false, false, "")

/** What is asked of a screen beside where it is. It holds while the person is there, and is gone with the process. */
data class Asked(
    /** The cursor of a page, where there are pages. */
    val before: Long? = null,
    /** How many of the last hours are drawn; none = all. */
    val hours: UInt? = null,
    /** What was said for a plan. */
    val plan: PlanTyped = nothingSaid,
    /** The name of a cut that is looked for. */
    val sought: String = "",
    /** What goes on a card. */
    val card: CardAsk? = null,
    /** The text of a card that was handed over; none = it is still to come. */
    val handed: String? = null,
    /** Students and their hours, a line each. */
    val students: String = "",
)

/** What was typed for a plan, as the platform keeps it while the process is not running. */
val plans = mapSaver<PlanTyped>(
    { said ->
        val texts = mapOf("hands" to said.hands, "from" to said.sleepFrom, "to" to said.sleepTo, "late" to said.late)
        texts + mapOf("later" to said.laterMin, "watched" to said.watched, "cooler" to said.cooler, "oven" to said.oven)
    },
    { kept ->
        fun text(name: String) = kept.getValue(name) as String
        fun isOn(name: String) = kept.getValue(name) as Boolean
        val later = kept.getValue("later") as Long
        PlanTyped(true, later, text("hands"), text("from"), text("to"), isOn("watched"), isOn("cooler"), isOn("oven"), text("late"))
    },
)
