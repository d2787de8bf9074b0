package org.slowbend.app.theme

import android.graphics.Typeface
import androidx.compose.foundation.isSystemInDarkTheme
import androidx.compose.foundation.shape.RoundedCornerShape
import androidx.compose.material3.ColorScheme
import androidx.compose.material3.MaterialTheme
import androidx.compose.material3.Shapes
import androidx.compose.material3.Typography
import androidx.compose.material3.darkColorScheme
import androidx.compose.material3.lightColorScheme
import androidx.compose.runtime.Composable
import androidx.compose.runtime.CompositionLocalProvider
import androidx.compose.ui.text.TextStyle
import androidx.compose.ui.text.font.FontFamily
import androidx.compose.ui.text.font.FontWeight
import androidx.compose.ui.text.style.Hyphens
import androidx.compose.ui.unit.dp
import androidx.compose.ui.unit.sp

/** The face of verbs, names and clocks: the phone's own condensed bold. */
val boardFace: Typeface = Typeface.create("sans-serif-condensed", Typeface.BOLD)
private val board = FontFamily(boardFace)

private fun head(size: Int) = TextStyle(
    fontFamily = board,
    fontWeight = FontWeight.Bold,
    fontSize = size.sp,
    lineHeight = (size * 1.15f).sp,
    hyphens = Hyphens.Auto,
)

private fun text(size: Int) = TextStyle(fontSize = size.sp, lineHeight = (size * 1.4f).sp, fontFeatureSettings = "tnum, lnum")

val type = Typography(
    displaySmall = head(34),
    headlineMedium = head(28),
    titleLarge = head(22),
    titleMedium = head(20),
    labelLarge = head(20),
    bodyLarge = text(18),
    bodyMedium = text(16),
)

@Composable
fun SlowbendTheme(content: @Composable () -> Unit) {
    val inks = if (isSystemInDarkTheme()) night else day
    CompositionLocalProvider(LocalInks provides inks) {
        MaterialTheme(inks.scheme(), Shapes(small = RoundedCornerShape(3.dp), medium = RoundedCornerShape(3.dp)), type, content)
    }
}

private fun Inks.scheme(): ColorScheme {
    val base = if (dark) darkColorScheme() else lightColorScheme()
    return base.copy(
        primary = main.ground,
        onPrimary = main.ink,
        background = page.ground,
        onBackground = page.ink,
        surface = page.ground,
        onSurface = page.ink,
        onSurfaceVariant = soft,
        surfaceContainerHigh = raised.ground,
        outline = rule,
        error = wake.ground,
        onError = wake.ink,
        secondaryContainer = call.ground,
        onSecondaryContainer = call.ink,
    )
}
