package org.slowbend.app

import slowbend.core.Act
import slowbend.core.Button
import slowbend.core.Headline
import slowbend.core.Tone

/** Whether the core has it asked about first: what a slip of a greasy hand must not do. */
val Button.isAsked get() = confirm != null

/** What the upper volume key does: all that is due in this opening was done. */
fun Headline.didIt() = buttons.firstOrNull { it.tone == Tone.MAIN }

/** What the lower volume key does: all of it later. */
fun Headline.later() = buttons.firstOrNull { it.act is Act.Later }
