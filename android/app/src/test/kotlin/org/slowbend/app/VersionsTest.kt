package org.slowbend.app

import java.io.File
import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Test

/** The version catalog of Gradle and the poms of Maven say the same. */
class VersionsTest {
    private val catalog = File("../gradle/libs.versions.toml").readText()
    private val root = File("../pom.xml").readText()
    private val poms = root + File("../libs/pom.xml").readText() + File("pom.xml").readText()

    private val versions = Regex("""(?m)^([\w-]+) = "([^"]+)"$""").findAll(catalog).associate { it.groupValues[1] to it.groupValues[2] }
    private val properties = Regex("""<([\w.-]+)>([^<$]+)</\1>""").findAll(root).associate { it.groupValues[1] to it.groupValues[2] }

    /** What the poms name: artifact to version, properties filled in. */
    private val named = Regex("""<groupId>([^<]+)</groupId>\s*<artifactId>([^<]+)</artifactId>\s*<version>([^<]+)</version>""")
        .findAll(poms).groupBy({ "${it.groupValues[1]}:${it.groupValues[2]}" }, { filled(it.groupValues[3]) })

    private fun filled(version: String) = Regex("""\$\{([^}]+)}""").replace(version) { properties[it.groupValues[1]] ?: it.value }

    @Test
    fun `every library of the catalog is in the poms with the same version`() {
        val libraries = Regex("""module = "([^"]+)", version\.ref = "([^"]+)"""").findAll(catalog).toList()
        assertTrue(libraries.size > 10)
        for (library in libraries) {
            val (artifact, ref) = library.destructured
            val found = listOf("", "-android", "-jvm").firstNotNullOfOrNull { named[artifact + it] }
            assertEquals(artifact, listOf(versions.getValue(ref)), found?.distinct())
        }
    }

    @Test
    fun `the sdk and the compiler are the same`() {
        for ((ours, theirs) in mapOf("sdk-min" to "sdk.min", "sdk-target" to "sdk.target", "kotlin" to "kotlin.version")) {
            assertEquals(ours, versions[ours], properties[theirs])
        }
    }
}
