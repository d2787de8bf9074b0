package org.slowbend.app

import org.junit.Assert.assertEquals
import org.junit.Assert.assertTrue
import org.junit.Test
import java.io.File

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
            if (artifact == "org.jetbrains.kotlin:kotlin-gradle-plugin") continue
            val found = listOf("", "-android", "-jvm").firstNotNullOfOrNull { named[artifact + it] }
            assertEquals(artifact, listOf(versions.getValue(ref)), found?.distinct())
        }
    }

    @Test
    fun `the catalog builds with what the AARs ask for`() {
        val asked = File("../libs/target/aar-main").walk().filter { it.name == "aar-metadata.properties" }
            .flatMap { it.readLines() }.map { it.substringBefore('=') to it.substringAfter('=') }.toList()
        fun most(key: String) = asked.filter { it.first == key }.maxOf { number(it.second) }
        assertTrue(asked.size > 50)
        assertTrue(number(versions.getValue("sdk-compile")) >= most("minCompileSdk"))
        assertTrue(number(versions.getValue("agp")) >= most("minAndroidGradlePluginVersion"))
    }

    /** A version as a number that sorts: three parts of up to three digits. */
    private fun number(version: String) =
        (version.split('.').map { it.toInt() } + listOf(0, 0)).take(3).fold(0L) { sum, part -> sum * 1_000 + part }

    @Test
    fun `the sdk and the compiler are the same`() {
        for ((ours, theirs) in mapOf("sdk-min" to "sdk.min", "sdk-target" to "sdk.target", "kotlin" to "kotlin.version")) {
            assertEquals(ours, versions[ours], properties[theirs])
        }
    }

    @Test
    fun `the stories are lived with the same`() {
        val stories = File("../../tests/kotlin/pom.xml").readText()
        fun said(name: String) = Regex("<$name>([^<]+)</$name>").find(stories)?.groupValues?.get(1)
        assertEquals(properties["kotlin.version"], said("kotlin"))
        assertEquals(properties["jna.version"], said("jna"))
        assertEquals(named["org.jetbrains.kotlinx:kotlinx-serialization-json-jvm"], listOf(said("json")))
    }
}
