package org.slowbend.app.drawn

import slowbend.actFromJson
import slowbend.core.Act
import java.io.File

/** What `tests/peers/src/drawn.rs` made: a database of 20,000 entries, and beside it which cook, from when on, and the tap. */
object History {
    /** As the bench that filled the database calls this installation. */
    const val INSTALLATION = "bench"

    /** Given by `-Ddrawn=FOLDER`. */
    val folder = File(checkNotNull(System.getProperty("drawn")) { "run this by tests/bench drawn" })
    private val lines = File(folder, "drawn.txt").readLines()
    val cook get() = lines[0]
    val until get() = lines[1].toLong()
    val tap: Act get() = actFromJson(lines[2])

    /** Keeps the times, nanoseconds: a line a turn. */
    fun tell(turns: List<Turn>) =
        File(folder, "times.txt").writeText(turns.joinToString("\n") { "${it.ours} ${it.peer} ${it.call} ${it.bare}" })
}

/** What one turn took, nanoseconds: ours, the peer, a call, the bare lines. */
data class Turn(val ours: Long, val peer: Long, val call: Long, val bare: Long)
