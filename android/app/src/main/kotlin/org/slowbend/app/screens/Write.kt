package org.slowbend.app.screens

import androidx.compose.runtime.Composable
import org.slowbend.app.Shell
import org.slowbend.app.parts.Slips
import slowbend.core.WriteScreen

/** What can be written down during a cook: temperatures read by hand, notes, another meat or dish, and the rest. */
@Composable
fun Write(screen: WriteScreen, shell: Shell) = Page(screen.title, shell) { Slips(screen.slips, screen.cook, null, shell) }
