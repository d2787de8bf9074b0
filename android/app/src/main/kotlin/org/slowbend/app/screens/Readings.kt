package org.slowbend.app.screens

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.FlowRow
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.material3.HorizontalDivider
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.selected
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import org.slowbend.app.Asked
import org.slowbend.app.Shell
import org.slowbend.app.parts.Cautions
import org.slowbend.app.parts.ChartOf
import org.slowbend.app.parts.Fold
import org.slowbend.app.parts.LineRow
import org.slowbend.app.parts.Links
import org.slowbend.app.parts.Points
import org.slowbend.app.parts.Sample
import org.slowbend.app.parts.Tap
import org.slowbend.app.theme.LocalInks
import org.slowbend.app.theme.type
import slowbend.core.Chart
import slowbend.core.Line
import slowbend.core.ReadingsScreen
import slowbend.core.SeriesLine

/** Readings: a line a series in large letters, their chart, and the same in numbers. */
@Composable
fun Readings(screen: ReadingsScreen, shell: Shell) = Page(screen.title, shell) {
    screen.series.forEachIndexed { index, line ->
        Series(line, screen.series.take(index).count { it.stroke == line.stroke }, shell)
    }
    screen.rest?.let { Text(it, style = type.bodyLarge) }
    if (screen.spans.size > 1) Spans(screen, shell)
    screen.chart?.let { chart ->
        ChartOf(chart)
        Legend(chart)
    }
    if (screen.note.isNotEmpty()) Text(screen.note, style = type.bodyLarge)
    if (screen.table.rows.isNotEmpty()) Fold(screen.table.heading, "numbers") { Numbers(screen, shell) }
    if (screen.marks.isNotEmpty()) Fold(screen.marksHeading, "marks") { Points(screen.marks) }
    Cautions(screen.cautions, shell)
    Links(screen.links, shell)
}

/** How much of it is drawn. */
@Composable
private fun Spans(screen: ReadingsScreen, shell: Shell) =
    FlowRow(Modifier.fillMaxWidth().padding(vertical = 6.dp), Arrangement.spacedBy(8.dp), Arrangement.spacedBy(8.dp)) {
        screen.spans.forEach { span ->
            val tag = Modifier.testTag("span-${span.hours ?: "all"}").semantics { selected = span.chosen }
            Tap(if (span.chosen) "✓ ${span.label}" else span.label, tag, main = span.chosen) { shell.ask(Asked(hours = span.hours)) }
        }
    }

@Composable
private fun Series(series: SeriesLine, nth: Int, shell: Shell) {
    val state = listOf(series.state, series.trend).filter { it.isNotEmpty() }.joinToString(" · ")
    val more = listOf(series.extremes).filter { it.isNotEmpty() } + series.gaps + series.doubts
    Row(Modifier.padding(top = 8.dp)) {
        Text("${series.number}", Modifier.padding(end = 8.dp), style = type.titleLarge)
        Sample(series.stroke, nth)
    }
    LineRow(Line(series.name, state, more.joinToString("\n"), series.weight, series.link), shell, state = type.titleMedium)
}

/** What is no curve. */
@Composable
private fun Legend(chart: Chart) = Points(chart.areas.map { it.text } + chart.levels.map { "${it.label}: ${it.text}" })

@Composable
private fun Numbers(screen: ReadingsScreen, shell: Shell) {
    val table = screen.table
    table.rows.forEach { row ->
        HorizontalDivider(color = LocalInks.current.rule)
        Column(Modifier.padding(vertical = 6.dp).semantics(mergeDescendants = true) {}) {
            Text(row.`when`, style = type.titleMedium)
            table.columns.zip(row.cells).forEach { (name, cell) -> Text("$name: $cell", style = type.bodyLarge) }
        }
    }
    table.next?.let { next ->
        Tap(table.earlier) { shell.ask(Asked(before = next, hours = screen.spans.find { it.chosen }?.hours)) }
    }
}
