package org.slowbend.app.alarms

import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Test
import org.w3c.dom.Element
import java.io.File
import javax.xml.parsers.DocumentBuilderFactory

/** What the merged manifest asks of the platform and promises it: nothing enforces it in these tests but this. */
class ManifestTest {
    private val root = DocumentBuilderFactory.newInstance().newDocumentBuilder()
        .parse(File(System.getProperty("merged.manifest")!!)).documentElement

    private fun Element.all(tag: String) = getElementsByTagName(tag).let { list -> List(list.length) { list.item(it) as Element } }

    private fun Element.says(name: String): String = getAttribute("android:$name")

    private fun named(tag: String, name: String) = root.all(tag).single { it.says("name") == "org.slowbend.app.alarms.$name" }

    @Test
    fun `both receivers work before the first unlock, and no other app reaches them`() {
        for (name in listOf("AlarmReceiver", "PhoneReceiver")) {
            assertEquals("true", named("receiver", name).says("directBootAware"))
            assertEquals("false", named("receiver", name).says("exported"))
        }
    }

    @Test
    fun `all that may cost alarms is heard`() =
        assertEquals(PhoneReceiver.HEARD, named("receiver", "PhoneReceiver").all("action").map { it.says("name") }.toSet())

    @Test
    fun `the ring comes over the lock screen, also before the first unlock`() {
        val ring = named("activity", "RingActivity")
        for (name in listOf("directBootAware", "showWhenLocked", "turnScreenOn")) assertEquals(name, "true", ring.says(name))
        assertEquals("false", ring.says("exported"))
    }

    @Test
    fun `exact alarms are asked for in the way of each version of the platform`() {
        val asked = root.all("uses-permission")
            .associate { it.says("name").removePrefix("android.permission.") to it.says("maxSdkVersion") }
        assertEquals("32", asked["SCHEDULE_EXACT_ALARM"])
        assertEquals("", asked["USE_EXACT_ALARM"])
        val others = setOf("POST_NOTIFICATIONS", "USE_FULL_SCREEN_INTENT", "RECEIVE_BOOT_COMPLETED", "VIBRATE")
        assertTrue("$asked", asked.keys.containsAll(others))
    }

    @Test
    fun `each foreground service says of what type it is, and may be`() {
        val permissions = root.all("uses-permission").map { it.says("name") }
        for (service in root.all("service").filter { it.says("name").startsWith("org.slowbend") }) {
            val type = service.says("foregroundServiceType")
            assertTrue(service.says("name"), type.isNotEmpty())
            val constant = type.replace(Regex("([A-Z])"), "_$1").uppercase()
            assertTrue(constant, "android.permission.FOREGROUND_SERVICE_$constant" in permissions)
        }
    }
}
