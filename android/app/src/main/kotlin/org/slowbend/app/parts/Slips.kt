package org.slowbend.app.parts

import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.padding
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.key
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.saveable.rememberSaveable
import androidx.compose.runtime.setValue
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.unit.Dp
import androidx.compose.ui.unit.dp
import org.slowbend.app.Shell
import org.slowbend.app.theme.type
import slowbend.core.CookId
import slowbend.core.FieldFilled
import slowbend.core.PieceId
import slowbend.core.Slip
import slowbend.core.SlipField
import slowbend.core.SlipFilled
import slowbend.core.SlipKind

/** Slips of the core, each folded under its heading. The core reads what was filled in; nothing here knows what it means. */
@Composable
fun Slips(slips: List<Slip>, cook: CookId, piece: PieceId?, shell: Shell, least: Dp = 48.dp) = slips.forEach { slip ->
    key(slip.slip) { Folded(slip, SlipFilled(cook, piece, slip.slip, emptyList()), shell, least) }
}

@Composable
private fun Folded(slip: Slip, blank: SlipFilled, shell: Shell, least: Dp) =
    Fold(slip.heading, "slip-${slip.slip}", least) { close -> FillIn(slip, blank, shell, close) }

/** A slip that stands open, for a screen that is about filling it in. */
@Composable
fun OpenSlip(slip: Slip, cook: CookId, shell: Shell) = key(slip.slip) {
    Heading(slip.heading)
    FillIn(slip, SlipFilled(cook, null, slip.slip, emptyList()), shell) {}
}

/** Records the slip [slip] of [cook], of which the screen has the fields; the core reads them. */
fun Shell.fillIn(cook: CookId, slip: String, fields: Map<String, String>, then: () -> Unit = {}) {
    val filled = SlipFilled(cook, null, slip, fields.map { (field, text) -> FieldFilled(field, text) })
    recordTyped({ core, viewer, moment -> core.readSlip(viewer, filled, moment) }) { then() }
}

@Composable
private fun FillIn(slip: Slip, blank: SlipFilled, shell: Shell, onDone: () -> Unit) {
    var filled by rememberSaveable { mutableStateOf(mapOf<String, List<String>>()) }
    if (slip.how.isNotEmpty()) Text(slip.how, style = type.bodyLarge)
    slip.fields.forEach { field ->
        OneField("${slip.slip}/${field.field}", field, filled[field.field] ?: field.first(), shell) {
            filled = filled + (field.field to it)
        }
    }
    Tap(slip.submit, Modifier.testTag("${slip.slip}/submit"), main = true) {
        val fields = slip.fields.flatMap { field ->
            (filled[field.field] ?: field.first()).map { FieldFilled(field.field, it) }
        }
        shell.recordTyped({ core, viewer, moment -> core.readSlip(viewer, blank.copy(fields = fields), moment) }) { onDone() }
    }
}

private fun SlipField.first() = if (kind == SlipKind.SOME) emptyList() else listOf(usual)

@Composable
private fun OneField(tag: String, field: SlipField, chosen: List<String>, shell: Shell, onChange: (List<String>) -> Unit) {
    val text = chosen.firstOrNull().orEmpty()
    when (field.kind) {
        SlipKind.WORDS -> Field(field.label, text, tag) { onChange(listOf(it)) }
        SlipKind.NUMBER -> Field(field.label, text, tag, number = true) { onChange(listOf(it)) }
        SlipKind.TIME -> Field("${field.label}. ${shell.frame?.serveHow.orEmpty()}", text, tag) { onChange(listOf(it)) }
        SlipKind.ONE -> Choice(field.label, field.options.map { Option(it.value, it.label) }, text) { onChange(listOf(it)) }
        SlipKind.SOME -> Column {
            Text(field.label, Modifier.padding(top = 8.dp), style = type.titleMedium)
            field.options.forEach { one ->
                Switch(one.label, one.value in chosen) { on -> onChange(if (on) chosen + one.value else chosen - one.value) }
            }
        }
    }
}
