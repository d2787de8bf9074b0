package org.slowbend.app.probes

import android.content.Intent
import androidx.compose.ui.test.hasText
import androidx.compose.ui.test.junit4.v2.createAndroidComposeRule
import androidx.compose.ui.test.performClick
import androidx.compose.ui.test.performScrollTo
import androidx.lifecycle.Lifecycle
import androidx.test.core.app.ApplicationProvider
import androidx.test.ext.junit.runners.AndroidJUnit4
import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Rule
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.Shadows.shadowOf
import org.robolectric.annotation.Config
import org.robolectric.annotation.GraphicsMode
import org.slowbend.app.PHONE
import org.slowbend.app.TestApp
import org.slowbend.app.night.NightActivity
import slowbend.core.Act
import slowbend.core.Where

/** Before you sleep: whether each probe is alive, and the way to mend what is not. */
@RunWith(AndroidJUnit4::class)
@GraphicsMode(GraphicsMode.Mode.NATIVE)
@Config(sdk = [35], application = TestApp::class, qualifiers = PHONE)
class SleepTest {
    @get:Rule val rule = createAndroidComposeRule<NightActivity>()

    private val app get() = ApplicationProvider.getApplicationContext<TestApp>()

    private fun sees(text: String) =
        assertTrue(text, rule.onAllNodes(hasText(text, substring = true)).fetchSemanticsNodes().isNotEmpty())

    private fun look() {
        rule.activityRule.scenario.moveToState(Lifecycle.State.STARTED)
        rule.activityRule.scenario.moveToState(Lifecycle.State.RESUMED)
        rule.waitForIdle()
    }

    @Test
    fun `a probe that is alive is well, one that is silent is red with the way to the probes`() {
        val lunch = app.underWay()
        rule.runOnUiThread {
            app.bornToHear()
            app.probes.keep(BOX)
            app.radio.comes(BOX, "1")
            app.done(Act.BindProbe(lunch.cook, BOX, "1", Where.Piece(lunch.meats[2], "center"), null))
            app.radio.says(BOX, "1", Sig.TEMPERATURE, 0x88, 0x13)
        }
        look()
        sees("Butt · middle of the thickest part")
        sees("122 °F, just now")
        app.clock.wait(16)
        look()
        sees("Silent since")
        rule.onNode(hasText("Mend: Probes")).performScrollTo().performClick()
        assertEquals(ProbesActivity::class.java.name, shadowOf(app).nextStartedActivityTo(ProbesActivity::class.java.name))
    }

    @Test
    fun `Bluetooth that is off is red where a probe is kept`() {
        app.underWay()
        rule.runOnUiThread {
            app.bornToHear()
            app.probes.keep(BOX)
            app.radio.switches(on = false)
        }
        look()
        sees("Bluetooth is off, so no probe is heard")
    }

    private fun org.robolectric.shadows.ShadowApplication.nextStartedActivityTo(name: String): String? =
        generateSequence<Intent> { nextStartedActivity }.mapNotNull { it.component?.className }.firstOrNull { it == name }

    private companion object {
        const val BOX = "C0:FF:EE:00:00:01"
    }
}
