package org.slowbend.app.alarms

import android.content.Context
import android.util.AtomicFile
import org.json.JSONArray
import org.json.JSONException
import org.json.JSONObject
import slowbend.core.AlarmId
import slowbend.core.Moment
import java.io.File
import java.io.FileNotFoundException

/**
 * The platform's list as this phone knows it, and what waits to be told to the core. Each change is a pure function of it.
 *
 * Law: whatever lies on the platform is named in [laid] or in [leaving], at every instant, so that a process that dies
 * between any two steps can make the platform's list equal again.
 */
data class Kept(
    val laid: List<Laid> = emptyList(),
    val leaving: Set<AlarmId> = emptySet(),
    val waiting: List<Waiting> = emptyList(),
    /** What came of the last answer, until somebody saw it. */
    val answered: Answered? = null,
) {
    /** The core wants [wanted]. What sounded and was not told yet is not laid again; a ring that is tried out stays. */
    fun wanting(wanted: List<Laid>): Kept {
        val sounded = waiting.filterIsInstance<Waiting.Rang>().flatMap { it.ids }.toSet()
        val trial = laid.filter { it.isTrial && !it.rung }
        return becoming(wanted.map { it.copy(rung = it.id in sounded) } + trial)
    }

    /** [one] sounded at [moment]. */
    fun rang(one: Laid, moment: Moment) = copy(
        laid = laid.map { if (it.id == one.id) it.copy(rung = true) else it },
        waiting = if (one.isTrial) waiting else waiting + Waiting.Rang(one.covers, moment),
    )

    /**
     * [one] was answered at [moment]: nothing rings for its thing any more, or, where the answer was "later", not before
     * then. The core says more exactly as soon as it can be asked.
     */
    fun answered(one: Laid, answer: Int, token: String, moment: Moment): Kept {
        val how = one.answers[answer]
        val again = how.againMinutes?.let { moment.utcMs + it * MINUTE_MS }
        val (same, others) = laid.partition { it.thing == one.thing }
        val later = again?.let { at -> same.filter { it.at > at && it.id != one.id } + one.copy(at = at, rung = false) }
        val told = if (one.isTrial) waiting else waiting + Waiting.Answered(how.act, token, moment)
        return becoming(others + later.orEmpty()).copy(waiting = told)
    }

    /** Whatever left has been taken off the platform. */
    fun swept() = copy(leaving = emptySet())

    private fun becoming(next: List<Laid>) =
        copy(laid = next, leaving = leaving + laid.map { it.id } - next.filterNot { it.rung }.map { it.id }.toSet())

    fun json(): String = JSONObject()
        .put("laid", JSONArray(laid.map { it.json() }))
        .put("leaving", JSONArray(leaving))
        .put("waiting", JSONArray(waiting.map { it.json() }))
        .put("answered", answered?.json())
        .toString()

    companion object {
        private const val MINUTE_MS = 60_000L

        fun of(text: String) = JSONObject(text).run {
            Kept(
                laid = getJSONArray("laid").objects(Laid::of),
                leaving = getJSONArray("leaving").let { all -> List(all.length(), all::getString) }.toSet(),
                waiting = getJSONArray("waiting").objects(Waiting::of),
                answered = optJSONObject("answered")?.let { Answered.of(it) },
            )
        }
    }
}

/** Keeps it in device-protected storage, which can be read before the first unlock. A change is on disk when it returns. */
class KeptFile(context: Context, private val step: () -> Unit) {
    private val file = AtomicFile(File(context.createDeviceProtectedStorageContext().filesDir, "alarms.json"))
    private var now: Kept? = null

    @Synchronized
    fun read(): Kept = now ?: load().also { now = it }

    /** Answers what it was before. */
    @Synchronized
    fun change(how: (Kept) -> Kept): Kept {
        val before = read()
        val after = how(before)
        if (after != before) write(after)
        return before
    }

    private fun write(kept: Kept) {
        step()
        val stream = file.startWrite()
        stream.write(kept.json().toByteArray())
        file.finishWrite(stream)
        now = kept
    }

    /** A file that cannot be read is as good as none: the core, asked next, names all that must ring. */
    private fun load() = try {
        Kept.of(file.readFully().decodeToString())
    } catch (_: FileNotFoundException) {
        Kept()
    } catch (_: JSONException) {
        Kept()
    }
}
