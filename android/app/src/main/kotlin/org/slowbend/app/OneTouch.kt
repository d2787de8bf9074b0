package org.slowbend.app

import slowbend.core.Act
import slowbend.core.Button
import slowbend.core.Headline
import slowbend.core.Place
import slowbend.core.Tone

/** Acts that a slip of a greasy hand must not do: they change a stage, end a cook or throw something away. */
private fun Act.isHeavy() = when (this) {
    is Act.SetStage, is Act.FinishCook, is Act.Erase, is Act.Split, is Act.Join -> true
    else -> false
}

/** Whether the button is asked about first: where the core says so, and on the propped phone whatever is heavy. */
fun Button.isAsked(at: Place) = confirm != null || at is Place.Now && act.isHeavy()

/** What the upper volume key does: all that is due in this opening was done. */
fun Headline.didIt() = buttons.firstOrNull { it.tone == Tone.MAIN }

/** What the lower volume key does: all of it later. */
fun Headline.later() = buttons.firstOrNull { it.act is Act.Later }
