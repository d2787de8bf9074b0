package org.slowbend.app

import org.junit.Assert.assertEquals
import org.junit.Test
import org.w3c.dom.Element
import java.io.File
import javax.xml.parsers.DocumentBuilderFactory

/** The merged manifest: what the app may do and what of it others can reach. Nothing enforces these in a test. */
class ManifestTest {
    private val manifest = DocumentBuilderFactory.newInstance().newDocumentBuilder()
        .parse(File(System.getProperty("merged.manifest"))).documentElement

    private fun all(tag: String) = manifest.getElementsByTagName(tag).run { (0 until length).map { item(it) as Element } }

    private fun Element.named(name: String = "name"): String = getAttribute("android:$name")

    @Test
    fun `it asks for what it uses and no more`() {
        val asked = all("uses-permission").map { it.named() }.filter { it.startsWith("android.") }
        val asks = listOf(
            "ACCESS_COARSE_LOCATION",
            "ACCESS_FINE_LOCATION",
            "BLUETOOTH",
            "BLUETOOTH_ADMIN",
            "BLUETOOTH_CONNECT",
            "BLUETOOTH_SCAN",
            "FOREGROUND_SERVICE",
            "FOREGROUND_SERVICE_CONNECTED_DEVICE",
            "POST_NOTIFICATIONS",
            "RECEIVE_BOOT_COMPLETED",
            "SCHEDULE_EXACT_ALARM",
            "USE_EXACT_ALARM",
            "USE_FULL_SCREEN_INTENT",
            "VIBRATE",
        )
        assertEquals(asks.map { "android.permission.$it" }, asked.sorted())
    }

    @Test
    fun `only the window and what the platform alone may call are open to others`() {
        val open = listOf("activity", "service", "receiver", "provider").flatMap(::all).filter { it.named("exported") == "true" }
        val reachable = open.filter { it.named("permission").isEmpty() }.map { it.named() }
        assertEquals(listOf("org.slowbend.app.MainActivity"), reachable)
    }

    @Test
    fun `it is not backed up, for a restored database would be a second device under one name`() {
        assertEquals("false", all("application").single().named("allowBackup"))
    }

    @Test
    fun `it runs from Android 8 on`() {
        val sdk = all("uses-sdk").single()
        assertEquals("26" to "35", sdk.named("minSdkVersion") to sdk.named("targetSdkVersion"))
    }
}
