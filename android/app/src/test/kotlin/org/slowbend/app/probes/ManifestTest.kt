package org.slowbend.app.probes

import org.junit.Assert.assertEquals
import org.junit.Test
import org.w3c.dom.Element
import java.io.File
import javax.xml.parsers.DocumentBuilderFactory

/** What the merged manifest asks and promises for probes: nothing else in these tests enforces it. */
class ManifestTest {
    private val root = DocumentBuilderFactory.newInstance().newDocumentBuilder()
        .parse(File(System.getProperty("merged.manifest")!!)).documentElement

    private fun all(tag: String) = root.getElementsByTagName(tag).let { list -> List(list.length) { list.item(it) as Element } }

    private fun Element.says(name: String): String = getAttribute("android:$name")

    private fun asked(name: String) = all("uses-permission").single { it.says("name") == "android.permission.$name" }

    @Test
    fun `the service is of the type of a device that is linked, and nobody else may start it`() {
        val service = all("service").single { it.says("name") == "org.slowbend.app.probes.ProbeService" }
        assertEquals("connectedDevice" to "false", service.says("foregroundServiceType") to service.says("exported"))
        assertEquals("", asked("FOREGROUND_SERVICE_CONNECTED_DEVICE").says("maxSdkVersion"))
    }

    @Test
    fun `what is found tells no place, and the location is asked for only where looking needs it`() {
        assertEquals("neverForLocation", asked("BLUETOOTH_SCAN").says("usesPermissionFlags"))
        assertEquals("", asked("BLUETOOTH_CONNECT").says("maxSdkVersion"))
        for (old in listOf("BLUETOOTH", "BLUETOOTH_ADMIN", "ACCESS_COARSE_LOCATION", "ACCESS_FINE_LOCATION")) {
            assertEquals(old, "30", asked(old).says("maxSdkVersion"))
        }
    }

    @Test
    fun `a phone without Bluetooth can have it all the same`() {
        val feature = all("uses-feature").single { it.says("name") == "android.hardware.bluetooth_le" }
        assertEquals("false", feature.says("required"))
    }
}
