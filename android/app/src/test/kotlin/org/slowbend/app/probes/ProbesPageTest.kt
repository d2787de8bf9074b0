package org.slowbend.app.probes

import android.Manifest
import android.provider.Settings
import androidx.compose.ui.test.hasText
import androidx.compose.ui.test.junit4.v2.createAndroidComposeRule
import androidx.compose.ui.test.onNodeWithTag
import androidx.compose.ui.test.onRoot
import androidx.compose.ui.test.performClick
import androidx.compose.ui.test.performScrollTo
import androidx.lifecycle.Lifecycle
import androidx.test.core.app.ApplicationProvider
import androidx.test.ext.junit.runners.AndroidJUnit4
import com.github.takahirom.roborazzi.RoborazziOptions
import com.github.takahirom.roborazzi.captureRoboImage
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
import slowbend.core.RadioState

/** The screen of probes under a finger: found, kept, placed, heard, forgotten; and each refusal with its fix. */
@RunWith(AndroidJUnit4::class)
@GraphicsMode(GraphicsMode.Mode.NATIVE)
@Config(sdk = [35], application = TestApp::class, qualifiers = PHONE)
class ProbesPageTest {
    @get:Rule val rule = createAndroidComposeRule<ProbesActivity>()

    private val app get() = ApplicationProvider.getApplicationContext<TestApp>()

    private fun tap(text: String) {
        rule.onNode(hasText(text)).performScrollTo().performClick()
        rule.waitForIdle()
    }

    private fun sees(text: String) =
        assertTrue(text, rule.onAllNodes(hasText(text, substring = true)).fetchSemanticsNodes().isNotEmpty())

    private fun begin() {
        app.underWay()
        rule.runOnUiThread { app.bornToHear() }
        rule.activityRule.scenario.moveToState(Lifecycle.State.STARTED)
        rule.activityRule.scenario.moveToState(Lifecycle.State.RESUMED)
        rule.waitForIdle()
    }

    private fun radio(does: FakeRadio.() -> Unit) {
        rule.runOnUiThread { app.radio.does() }
        rule.waitForIdle()
    }

    private fun heard() {
        begin()
        tap("Find probes nearby")
        radio { finds(BOX, "Club probe") }
        tap("Listen to it")
        radio { comes(BOX, "1") }
        radio { says(BOX, "1", Sig.TEMPERATURE, *C107) }
    }

    @Test
    fun `found, kept, placed, and drawn as a temperature`() {
        heard()
        sees("225 °F, just now. No place yet")
        tap("Where does it sit?")
        tap("Drum")
        sees("is in Drum")
        sees("225 °F, just now")
        assertEquals("Drum", app.probes.screen!!.probes.single().line.name)
        rule.onRoot().captureRoboImage("src/test/golden/probes-light.png", small)
        tap("Forget this probe on this phone")
        sees("Not kept on this phone")
    }

    @Test
    @Config(qualifiers = "es-rUS-w411dp-h891dp-420dpi")
    fun spanish() {
        begin()
        radio { switches(on = false) }
        sees("Bluetooth está apagado")
        sees("Abrir los ajustes de Bluetooth")
        rule.onRoot().captureRoboImage("src/test/golden/probes-spanish.png", small)
    }

    @Test
    fun `what is refused is asked for, and once the phone asks no more its settings are opened`() {
        begin()
        radio { state = RadioState.REFUSED }
        rule.runOnUiThread { app.probes.refresh() }
        tap("Allow it")
        val asked = shadowOf(rule.activity).lastRequestedPermission.requestedPermissions.toList()
        assertEquals(listOf(Manifest.permission.BLUETOOTH_SCAN, Manifest.permission.BLUETOOTH_CONNECT), asked)
        rule.runOnUiThread { app.probes.allowed(inVain = true) }
        tap("Open the permissions of Slowbend")
        assertEquals(Settings.ACTION_APPLICATION_DETAILS_SETTINGS, shadowOf(app).nextStartedActivity.action)
    }

    @Test
    fun `Bluetooth that is off has the way to its settings`() {
        begin()
        radio { switches(on = false) }
        rule.onNodeWithTag("mend").performClick()
        assertEquals(Settings.ACTION_BLUETOOTH_SETTINGS, shadowOf(app).nextStartedActivity.action)
    }

    private val small = RoborazziOptions(recordOptions = RoborazziOptions.RecordOptions(resizeScale = 0.25))

    private companion object {
        const val BOX = "C0:FF:EE:00:00:01"
    }
}
