package org.slowbend.app.theme

import androidx.compose.runtime.staticCompositionLocalOf
import androidx.compose.ui.graphics.Color
import slowbend.core.Weight

/** A pair to write with: what is written, and on what. Every pair is 7:1 or better, which a test measures. */
data class Inked(val ground: Color, val ink: Color)

/** Chalk on slate by night, ink on limewash by day. */
data class Inks(
    val page: Inked,
    val raised: Inked,
    val soft: Color,
    val rule: Color,
    val main: Inked,
    val call: Inked,
    val wake: Inked,
    val dark: Boolean,
) {
    /** The pair of a block that asks so much for an eye. The words of the block say it too. */
    fun of(weight: Weight) = when (weight) {
        Weight.WAKE -> wake
        Weight.CALL -> call
        Weight.SOON, Weight.CALM -> page
        Weight.FAINT -> page.copy(ink = soft)
    }
}

val day = Inks(
    page = Inked(Color(0xFFF4F0E2), Color(0xFF14201E)),
    raised = Inked(Color(0xFFFBF9F0), Color(0xFF14201E)),
    soft = Color(0xFF3A4744),
    rule = Color(0xFF6D7874),
    main = Inked(Color(0xFF14201E), Color(0xFFFDF6DC)),
    call = Inked(Color(0xFF14201E), Color(0xFFFFE08A)),
    wake = Inked(Color(0xFF7D1712), Color(0xFFFFF4E8)),
    dark = false,
)

val night = Inks(
    page = Inked(Color(0xFF16211F), Color(0xFFF4EFDF)),
    raised = Inked(Color(0xFF1D2B28), Color(0xFFF4EFDF)),
    soft = Color(0xFFC9D1C9),
    rule = Color(0xFF7F8D87),
    main = Inked(Color(0xFFF4EFDF), Color(0xFF16211F)),
    call = Inked(Color(0xFFFFD75E), Color(0xFF16211F)),
    wake = Inked(Color(0xFFFFB9A8), Color(0xFF2A0A05)),
    dark = true,
)

val LocalInks = staticCompositionLocalOf { day }
