package slowbend.stories

import slowbend.actFromJson
import slowbend.core.Trouble
import java.io.File
import kotlin.system.exitProcess

/**
 * Lives every story file of a folder through the generated Kotlin, or those named after it. Ends as cargo's tests do.
 * `tests/run kotlin` runs it; with `STORIES="one another"` only those.
 */
fun main(args: Array<String>) {
    val asked = args.drop(1)
    val border = Border()
    val phone = MakePhone { seed, holder, now -> BarePhone(seed, holder, border, now) }
    val stories = Story.all(File(args[0])).filter { asked.isEmpty() || it.name in asked }
    val results = stories.map { story ->
        tells(story.name, story.name) { story.live(border, phone) }
    } + if (asked.isEmpty()) laws(border) else emptyList()
    println("compared byte for byte: " + border.crossed.entries.joinToString { "${it.key} ${it.value}" })
    val failed = results.count { !it }
    println("test result: ${if (failed > 0) "FAILED" else "ok"}. ${results.size - failed} passed; $failed failed; 0 ignored")
    exitProcess(if (failed > 0 || results.isEmpty()) 1 else 0)
}

private fun laws(border: Border) = listOf(
    tells("all_kinds_crossed") {
        if (border.missing.isNotEmpty()) throw Wrong("no story carries a ${border.missing.joinToString(", a ")} over the border")
    },
    tells("trouble_crosses_with_its_reason") {
        val reason = try {
            actFromJson("{}")
            throw Wrong("an act of nothing was taken")
        } catch (refusal: Trouble.Refused) {
            refusal.reason
        }
        if ("act" !in reason) throw Wrong("the reason is $reason")
    },
)

/** Whether [deed] holds, said as cargo says it; [story] is the one to live again, none where all are needed. */
private fun tells(name: String, story: String? = null, deed: () -> Unit): Boolean {
    val wrong = runCatching(deed).exceptionOrNull()
    println("test $name ... ${if (wrong == null) "ok" else "FAILED"}")
    if (wrong == null) return true
    val again = (story?.let { "STORIES=$it " } ?: "") + "tests/run kotlin"
    System.err.println("${(wrong as? Wrong)?.message ?: wrong.stackTraceToString()}\nto see it again: $again")
    return false
}
