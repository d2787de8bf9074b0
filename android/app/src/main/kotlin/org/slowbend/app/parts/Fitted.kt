package org.slowbend.app.parts

import androidx.compose.foundation.layout.BoxWithConstraints
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.graphics.Color
import androidx.compose.ui.layout.layout
import androidx.compose.ui.text.TextStyle
import androidx.compose.ui.text.rememberTextMeasurer
import androidx.compose.ui.text.style.TextGeometricTransform
import kotlin.math.roundToInt

/** Letters are never narrowed to less than this part of their width; no source. */
internal const val NARROWEST = 0.75f

/** Text that is narrowed, never lowered, to stay on one line; where that does not do, it goes on to the next. */
@Composable
fun Fitted(text: String, color: Color, style: TextStyle, modifier: Modifier = Modifier) = BoxWithConstraints {
    val wide = rememberTextMeasurer().measure(text, style, softWrap = false).size.width
    val part = (constraints.maxWidth / wide.coerceAtLeast(1).toFloat()).coerceIn(NARROWEST, 1f)
    val narrow = style.copy(textGeometricTransform = TextGeometricTransform(scaleX = part * SURE))
    Text(text, modifier.tight(style), color, style = narrow)
}

/** The first line as high as those after it: the room that a face keeps above and below all its letters is given away. */
@Composable
internal fun Modifier.tight(style: TextStyle): Modifier {
    val high = rememberTextMeasurer().measure("H", style, softWrap = false).size.height
    return layout { text, constraints ->
        val placed = text.measure(constraints)
        val spare = (high - style.lineHeight.toPx().roundToInt()).coerceAtLeast(0)
        layout(placed.width, placed.height - spare) { placed.placeRelative(0, -spare / 2) }
    }
}

/** A little less, so that rounding never breaks a line that fits. */
internal const val SURE = 0.98f
