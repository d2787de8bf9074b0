package slowbend.stories

import slowbend.Screen
import slowbend.SlowbendInterface
import slowbend.core.CardAsk
import slowbend.core.Cut
import slowbend.core.Hearing
import slowbend.core.Moment
import slowbend.core.PlanTyped
import slowbend.core.ReadingsOf
import slowbend.core.Viewer

/** So many alarms a phone is asked to keep. */
const val ALARMS = 60

/**
 * The screen that a story calls [see], of a cook or a meat where it is of one, and at a pit where it is at one: [of]. The
 * method of that name is found on the one door, so that a new screen needs no line here: a page that could be asked for is the first one.
 */
fun SlowbendInterface.screen(see: String, of: List<String>, viewer: Viewer, moment: Moment, hearing: Hearing): Any {
    val name = camel(see)
    // Where a number without a sign is taken, Kotlin adds a mark to the name.
    val method = SlowbendInterface::class.java.methods.find { it.name.substringBefore('-') == name }
        ?: throw Wrong("there is no screen $see")
    val names = of.iterator()
    fun first() = of.firstOrNull() ?: throw Wrong("of what is $see?")
    val arguments = method.parameterTypes.map { type ->
        when (type) {
            Viewer::class.java -> viewer
            Moment::class.java -> moment
            Hearing::class.java -> hearing
            CardAsk::class.java -> CardAsk("", false)
            PlanTyped::class.java -> PlanTyped(true, 0, "", "", "", false, false, false, "")
            String::class.java -> if (names.hasNext()) names.next() else throw Wrong("of what is $see?")
            Cut::class.java -> Cut.valueOf(first().uppercase())
            Int::class.java -> ALARMS
            ReadingsOf::class.java -> ReadingsOf.Cook(first())
            else -> null
        }
    }
    return method.answer(this, *arguments.toTypedArray())!!
}

/** The same screen as `screen_text` names it. */
fun screenOf(see: String, of: List<String>): Screen {
    val name = camel(see).replaceFirstChar(Char::uppercase)
    val variant = Screen::class.java.declaredClasses.find { it.simpleName == name }
        ?: throw Wrong("screen_text has no $see: bindings/src/echo/screens.rs lacks a line")
    val single = variant.fields.find { it.name == "INSTANCE" }?.get(null)
    return (single ?: variant.constructors.first { it.parameterCount == of.size }.newInstance(*of.toTypedArray())) as Screen
}
