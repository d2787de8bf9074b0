package org.slowbend.app.parts

import androidx.compose.foundation.background
import androidx.compose.foundation.clickable
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.heightIn
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.layout.width
import androidx.compose.material3.HorizontalDivider
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.LocalDensity
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.clearAndSetSemantics
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.semantics.stateDescription
import androidx.compose.ui.text.rememberTextMeasurer
import androidx.compose.ui.text.style.TextDecoration
import androidx.compose.ui.unit.Dp
import androidx.compose.ui.unit.dp
import org.slowbend.app.Shell
import org.slowbend.app.theme.LocalInks
import org.slowbend.app.theme.type
import slowbend.core.SheetDay
import slowbend.core.SheetLine
import slowbend.core.Tone

/** The one job that is next, with what answers it. */
@Composable
fun JobBlock(job: SheetLine, shell: Shell, least: Dp) {
    Block(job.weight, listOf(job.time, job.state).filter { it.isNotEmpty() }.joinToString(" · ")) { ink ->
        Text(job.job, color = ink, style = type.displaySmall)
        if (job.why.isNotEmpty()) Text(job.why, color = ink, style = type.bodyLarge)
    }
    val (main, others) = job.buttons.partition { it.tone == Tone.MAIN }
    main.forEach { button -> Tap(button.label, Modifier.fillMaxWidth(), true, least) { shell.press(button) } }
    Buttons(others, shell, least)
}

/** The jobs of one day, by time; with their buttons where [acts], except those of the job that stands [besides]. */
@Composable
fun Jobs(day: SheetDay, shell: Shell, acts: Boolean = false, besides: SheetLine? = null) {
    Heading(day.heading)
    val measurer = rememberTextMeasurer()
    val wide = day.lines.maxOfOrNull { measurer.measure(it.time, type.titleMedium, softWrap = false).size.width } ?: 0
    val times = with(LocalDensity.current) { wide.toDp() }
    day.lines.forEach { job ->
        JobRow(job, times, shell)
        if (acts && job != besides && job.buttons.isNotEmpty()) Buttons(job.buttons, shell)
    }
}

@Composable
private fun JobRow(job: SheetLine, times: Dp, shell: Shell) {
    val inks = LocalInks.current.of(job.weight)
    val said = listOf(job.state, shell.frame?.said(job.weight).orEmpty()).filter { it.isNotEmpty() }.joinToString(". ")
    val tap = job.link?.let { place -> Modifier.clickable { shell.go(place) } } ?: Modifier
    HorizontalDivider(thickness = 2.dp, color = LocalInks.current.rule)
    Row(
        Modifier.fillMaxWidth().background(inks.ground).then(tap).heightIn(min = 48.dp).padding(vertical = 6.dp, horizontal = 4.dp)
            .testTag("job").semantics(mergeDescendants = true) { stateDescription = said },
    ) {
        val mark = if (job.ticked) "✓" else sign(job.weight)
        Text(mark, Modifier.width(24.dp).clearAndSetSemantics {}, inks.ink, style = type.titleMedium)
        Text(job.time, Modifier.width(times + 10.dp), inks.ink, softWrap = false, style = type.titleMedium)
        Column(Modifier.weight(1f)) {
            val drawn = listOfNotNull(
                TextDecoration.LineThrough.takeIf { job.ticked },
                TextDecoration.Underline.takeIf { job.link != null && !job.ticked },
            )
            Text(job.job, color = inks.ink, style = type.titleMedium.copy(textDecoration = TextDecoration.combine(drawn)))
            if (job.state.isNotEmpty()) Text(job.state, color = inks.ink, style = type.bodyLarge)
            if (job.why.isNotEmpty()) Text(job.why, color = inks.ink, style = type.bodyMedium)
        }
    }
}
