package org.slowbend.app

import slowbend.SlowbendInterface
import slowbend.core.Act
import slowbend.core.Button
import slowbend.core.Frame
import slowbend.core.Moment
import slowbend.core.Outcome
import slowbend.core.Place
import slowbend.core.Trouble
import slowbend.core.Viewer

/** What a screen can do; [ScreenModel] does it, tests may do otherwise. */
interface Shell {
    val shown: Shown?
    val frame: Frame?
    val told: Told?

    /** The button that waits for yes or no. */
    val asking: Button?
    val leftHanded: Boolean

    /** How long ago the next act was done: a value of `Frame.ago`. It holds for one act. */
    val ago: String
    val canGoBack: Boolean

    /** A screen was asked for and has not come yet. */
    val isWaiting: Boolean

    fun go(place: Place, asked: Asked = Asked())

    fun back()

    /** The same screen, asked for otherwise: another page of it, more hours, another plan. */
    fun ask(asked: Asked)

    fun refresh()

    /** Does what the button stands for, after a question where it must be asked; [then] once it is recorded. */
    fun press(button: Button, then: (Outcome) -> Unit = {})

    fun answer(yes: Boolean)

    fun wasDone(ago: String)

    fun record(act: Act, then: (Outcome) -> Unit = {})

    /** Records the act that the core reads out of what was typed. */
    fun recordTyped(read: (SlowbendInterface, Viewer, Moment) -> Act, then: (Outcome) -> Unit = {})

    /** One choice of how this phone reads. */
    fun choose(field: String, value: String)

    fun tapWith(left: Boolean)

    /** What the platform did not do is told. */
    fun stopped(trouble: Throwable)

    /** What was told has been read. */
    fun heard()
}

/** The sentence to show of what went wrong. */
val Throwable.reason: String
    get() = when (this) {
        is Trouble.Refused -> reason
        is Trouble.InUse -> reason
        is Trouble.CannotWrite -> reason
        is Trouble.Newer -> reason
        is Trouble.Unreadable -> reason
        else -> toString()
    }
