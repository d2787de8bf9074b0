package org.slowbend.app.probes

import android.content.Context
import androidx.core.content.edit
import org.json.JSONArray
import org.json.JSONObject

/** A probe that this phone listens to, from one process to the next. */
data class KeptProbe(val address: String, val name: String, val sensors: List<String> = emptyList())

/** The probes that this phone listens to, in ordinary storage: what they say goes into the database, which lies there too. */
class KeptProbes(context: Context) {
    private val file = context.getSharedPreferences("probes", Context.MODE_PRIVATE)

    fun read(): List<KeptProbe> = JSONArray(file.getString(ALL, "[]")).let { all -> List(all.length()) { read(all.getJSONObject(it)) } }

    /** Keeps [probe], instead of what was kept under its address. */
    fun keep(probe: KeptProbe) {
        val all = read()
        if (probe !in all) write(all.filterNot { it.address == probe.address } + probe)
    }

    fun forget(address: String) = write(read().filterNot { it.address == address })

    private fun read(one: JSONObject) = KeptProbe(
        one.getString("address"),
        one.getString("name"),
        one.getJSONArray("sensors").let { sensors -> List(sensors.length(), sensors::getString) },
    )

    private fun write(all: List<KeptProbe>) = file.edit(commit = true) {
        val text = all.map { JSONObject().put("address", it.address).put("name", it.name).put("sensors", JSONArray(it.sensors)) }
        putString(ALL, JSONArray(text).toString())
    }

    private companion object {
        const val ALL = "all"
    }
}
