package org.slowbend.app.screens

import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.padding
import androidx.compose.material3.HorizontalDivider
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.saveable.rememberSaveable
import androidx.compose.runtime.setValue
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.testTag
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import org.slowbend.app.Asked
import org.slowbend.app.Shell
import org.slowbend.app.parts.Cautions
import org.slowbend.app.parts.Field
import org.slowbend.app.parts.Heading
import org.slowbend.app.parts.LineRow
import org.slowbend.app.parts.Points
import org.slowbend.app.parts.Tap
import org.slowbend.app.theme.LocalInks
import org.slowbend.app.theme.type
import slowbend.core.CutFact
import slowbend.core.CutScreen
import slowbend.core.CutTest
import slowbend.core.CutsScreen
import slowbend.core.Line
import slowbend.core.Place
import slowbend.core.Weight

/** All cuts, or those that can be meant by what is sought, the nearest first. */
@Composable
fun Cuts(screen: CutsScreen, shell: Shell) = Page(screen.title, shell) {
    var sought by rememberSaveable(screen.sought) { mutableStateOf(screen.sought) }
    Text(screen.lead, style = type.bodyLarge)
    Field(screen.find, sought, "find") { sought = it }
    Tap(screen.search, Modifier.testTag("search"), main = true) { shell.ask(Asked(sought = sought)) }
    screen.none?.let { Text(it, style = type.titleMedium) }
    screen.cuts.forEach { cut ->
        LineRow(Line(cut.name, "", cut.detail, Weight.CALM, Place.Cut(cut.cut)), shell)
    }
    if (screen.sought.isNotEmpty()) Tap(screen.all) { shell.ask(Asked()) }
}

/** One cut: what is known of it, each value with who says so. */
@Composable
fun OneCut(screen: CutScreen, shell: Shell) = Page(screen.title, shell) {
    if (screen.also.isNotEmpty()) Text(screen.also, style = type.bodyMedium)
    Text(screen.about, style = type.bodyLarge)
    screen.facts.forEach { Fact(it) }
    if (screen.tests.isNotEmpty()) Heading(screen.testsHeading)
    screen.tests.forEach { Told(it) }
    Heading(screen.wrongHeading)
    Text(screen.wrong, style = type.bodyLarge)
    Heading(screen.madeOfHeading)
    screen.madeOf.forEach { Fact(it) }
    Cautions(screen.cautions, shell)
    Tap(screen.all) { shell.go(Place.Cuts) }
}

@Composable
private fun Fact(fact: CutFact) {
    HorizontalDivider(color = LocalInks.current.rule)
    Column(Modifier.padding(vertical = 6.dp).semantics(mergeDescendants = true) {}) {
        Text(fact.name, style = type.bodyMedium)
        Text(fact.value, style = type.titleLarge)
        if (fact.how.isNotEmpty()) Text(fact.how, style = type.bodyLarge)
        Text(fact.source, style = type.bodyMedium, color = LocalInks.current.soft)
    }
}

@Composable
private fun Told(test: CutTest) {
    Text(test.name, Modifier.padding(top = 12.dp), style = type.titleMedium)
    Text(test.how, style = type.bodyLarge)
    Points(test.outcomes.map { "${it.label}: ${it.means}" } + test.spots)
}
