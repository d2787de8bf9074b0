package org.slowbend.app

import androidx.compose.ui.graphics.Color
import androidx.compose.ui.graphics.luminance
import org.junit.Assert.assertTrue
import org.junit.Test
import org.slowbend.app.theme.Inked
import org.slowbend.app.theme.day
import org.slowbend.app.theme.night

/** WCAG 2.2, 1.4.6 (from memory): text stands out 7 to 1 or better; 1.4.11: rules and borders 3 to 1. */
class ContrastTest {
    private fun ratio(a: Color, b: Color): Double {
        val (low, high) = listOf(a.luminance(), b.luminance()).sorted()
        return (high + 0.05) / (low + 0.05)
    }

    @Test
    fun `every pair is seven to one`() {
        for (inks in listOf(day, night)) {
            val soft = listOf(inks.page, inks.raised).map { Inked(it.ground, inks.soft) }
            for (pair in listOf(inks.page, inks.raised, inks.main, inks.call, inks.wake) + soft) {
                assertTrue("$pair", ratio(pair.ground, pair.ink) >= 7)
            }
            assertTrue(ratio(inks.page.ground, inks.rule) >= 3)
        }
    }
}
