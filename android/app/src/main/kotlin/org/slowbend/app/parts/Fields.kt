package org.slowbend.app.parts

import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.heightIn
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.selection.selectable
import androidx.compose.foundation.selection.selectableGroup
import androidx.compose.foundation.selection.toggleable
import androidx.compose.foundation.text.KeyboardOptions
import androidx.compose.material3.Checkbox
import androidx.compose.material3.OutlinedTextField
import androidx.compose.material3.RadioButton
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.Role
import androidx.compose.ui.text.input.KeyboardType
import androidx.compose.ui.unit.Dp
import androidx.compose.ui.unit.dp
import org.slowbend.app.theme.LocalInks
import org.slowbend.app.theme.type

/** A labeled field for text. */
@Composable
fun Field(
    label: String,
    value: String,
    tag: String = label,
    number: Boolean = false,
    lines: Int = 1,
    onChange: (String) -> Unit,
) = OutlinedTextField(
    value,
    onChange,
    Modifier.fillMaxWidth().padding(vertical = 4.dp).testTag(tag),
    textStyle = type.bodyLarge,
    label = { Text(label, style = type.bodyMedium) },
    singleLine = lines == 1,
    minLines = lines,
    keyboardOptions = KeyboardOptions(keyboardType = if (number) KeyboardType.Number else KeyboardType.Text),
)

/** One of several: what was chosen is marked by the button's dot, and said. */
@Composable
fun <T> Choice(
    label: String,
    options: List<Option<T>>,
    chosen: T?,
    least: Dp = 48.dp,
    onChoose: (T) -> Unit,
) = Column(Modifier.selectableGroup()) {
    if (label.isNotEmpty()) Text(label, Modifier.padding(top = 8.dp), style = type.titleMedium)
    options.forEach { option ->
        val taken = option.value == chosen
        Row(
            Modifier.fillMaxWidth().selectable(taken, role = Role.RadioButton) { onChoose(option.value) }
                .heightIn(min = least).padding(vertical = 4.dp),
            verticalAlignment = Alignment.CenterVertically,
        ) {
            RadioButton(taken, null, Modifier.padding(end = 8.dp))
            Column {
                Text(option.label, style = type.bodyLarge)
                if (option.detail.isNotEmpty()) Text(option.detail, style = type.bodyMedium, color = LocalInks.current.soft)
            }
        }
    }
}

/** Something to choose. */
data class Option<T>(val value: T, val label: String, val detail: String = "")

/** Yes or no. */
@Composable
fun Switch(label: String, on: Boolean, onChange: (Boolean) -> Unit) = Row(
    Modifier.fillMaxWidth().toggleable(on, role = Role.Checkbox, onValueChange = onChange).heightIn(min = 48.dp),
    verticalAlignment = Alignment.CenterVertically,
) {
    Checkbox(on, null, Modifier.padding(end = 8.dp))
    Text(label, style = type.bodyLarge)
}
