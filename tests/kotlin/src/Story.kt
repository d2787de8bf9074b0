package slowbend.stories

import kotlinx.serialization.json.Json
import kotlinx.serialization.json.JsonObject
import java.io.File

/** A night told as a file of tests/stories. */
class Story(private val file: File) {
    val name: String = file.nameWithoutExtension

    /** Lives it on phones that [phone] makes; the first step that does not hold is told, with what was there instead. */
    fun live(border: Border, phone: MakePhone, begun: (Night) -> Unit = {}) {
        val story = Json.parseToJsonElement(file.readText()) as JsonObject
        Night(border, story, phone).use { night ->
            begun(night)
            val steps = story.list("steps")
            for ((i, step) in steps.withIndex()) {
                held("tests/stories/${file.name}, step ${i + 1} of ${steps.size}") { night.live(step as JsonObject) }
            }
        }
    }

    private fun held(where: String, live: () -> Unit) = try {
        live()
    } catch (wrong: Wrong) {
        throw Wrong("$where: ${wrong.message}")
    } catch (changed: Changed) {
        throw Wrong("$where: ${changed.message}")
    } catch (other: Throwable) {
        throw Wrong("$where: ${other.stackTraceToString()}")
    }

    companion object {
        /** All stories of [folder], by name. */
        fun all(folder: File): List<Story> {
            val files = folder.listFiles { file -> file.extension == "json" } ?: throw Wrong("there is no folder $folder")
            return files.sortedBy { it.name }.map(::Story)
        }
    }
}
