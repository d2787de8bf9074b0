package org.slowbend.app.screens

import slowbend.core.OpeningChoice
import slowbend.core.OpeningDoes
import slowbend.core.OpeningMeat
import slowbend.core.OpeningMeatTyped
import slowbend.core.OpeningScreen
import slowbend.core.OpeningTyped
import slowbend.core.SpotTyped

/**
 * What a hand chose and typed on the screen of an opening: by meat and field, apart from what the screen chose already.
 * Serializable, so that it is kept while the process is not running.
 */
data class Doings(
    private val turned: Map<String, Boolean> = emptyMap(),
    private val said: Map<String, String> = emptyMap(),
) : java.io.Serializable {
    fun isOn(meat: OpeningMeat, choice: OpeningChoice) = turned["${meat.piece}/${choice.does}"] ?: choice.chosen

    /** Of the two answers to whether the rub has set, one is chosen. */
    fun turned(meat: OpeningMeat, choice: OpeningChoice, on: Boolean): Doings {
        val others = if (on && choice.does in rub) rub - choice.does else emptySet()
        return copy(turned = turned + ("${meat.piece}/${choice.does}" to on) + others.map { "${meat.piece}/$it" to false })
    }

    fun text(meat: OpeningMeat, field: String) = said["${meat.piece}/$field"].orEmpty()

    fun said(meat: OpeningMeat, field: String, text: String) = copy(said = said + ("${meat.piece}/$field" to text))

    fun isLeftIn(meat: OpeningMeat) = turned["${meat.piece}/left-in"] ?: false

    fun leftIn(meat: OpeningMeat, on: Boolean) = copy(turned = turned + ("${meat.piece}/left-in" to on))

    /** All of it, for the core to read. */
    fun typed(screen: OpeningScreen, thermometer: String?) =
        OpeningTyped(screen.pit, screen.meats.map(::typed), thermometer, null)

    private fun typed(meat: OpeningMeat) = OpeningMeatTyped(
        meat.piece,
        meat.choices.filter { isOn(meat, it) }.map { it.does },
        meat.tests.map { text(meat, it.field) }.filter { it.isNotEmpty() },
        meat.tests.flatMap { it.spots }.map { SpotTyped(it.spot, text(meat, it.field)) },
        isLeftIn(meat),
        text(meat, "note"),
    )

    companion object {
        private val rub = setOf(OpeningDoes.RUB_SET, OpeningDoes.RUB_NOT_YET)
    }
}
