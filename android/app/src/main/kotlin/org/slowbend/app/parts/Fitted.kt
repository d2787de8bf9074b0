package org.slowbend.app.parts

import androidx.compose.foundation.layout.BoxWithConstraints
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.graphics.Color
import androidx.compose.ui.text.TextStyle
import androidx.compose.ui.text.rememberTextMeasurer
import androidx.compose.ui.text.style.TextGeometricTransform

/** Letters are never narrowed to less than this part of their width; no source. */
private const val NARROWEST = 0.75f

/** Text that is narrowed, never lowered, to stay on one line; where that does not do, it goes on to the next. */
@Composable
fun Fitted(text: String, color: Color, style: TextStyle, modifier: Modifier = Modifier) = BoxWithConstraints {
    val wide = rememberTextMeasurer().measure(text, style, softWrap = false).size.width
    val part = (constraints.maxWidth / wide.coerceAtLeast(1).toFloat()).coerceIn(NARROWEST, 1f)
    Text(text, modifier, color, style = style.copy(textGeometricTransform = TextGeometricTransform(scaleX = part * SURE)))
}

/** A little less, so that rounding never breaks a line that fits. */
private const val SURE = 0.98f
