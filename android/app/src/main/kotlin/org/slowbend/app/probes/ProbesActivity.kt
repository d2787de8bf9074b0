package org.slowbend.app.probes

import android.os.Bundle
import androidx.activity.ComponentActivity
import androidx.activity.compose.setContent
import androidx.activity.enableEdgeToEdge
import androidx.activity.result.contract.ActivityResultContracts.RequestMultiplePermissions
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.setValue
import org.slowbend.app.SlowbendApp
import org.slowbend.app.reason
import org.slowbend.app.theme.SlowbendTheme
import slowbend.core.Act
import slowbend.core.ProbesScreen
import slowbend.core.RadioFix

/** Probes: find one nearby, say where it sits, forget it. It shows what the core wrote and does what is tapped. */
class ProbesActivity : ComponentActivity(), ProbeHands {
    private var screen by mutableStateOf<ProbesScreen?>(null)
    private var told by mutableStateOf("")
    private var seeing: AutoCloseable? = null
    private val app get() = application as SlowbendApp
    private val asking = registerForActivityResult(RequestMultiplePermissions()) { answers ->
        val refused = answers.filterValues { !it }.keys
        app.probes.allowed(inVain = refused.isNotEmpty() && refused.none(::shouldShowRequestPermissionRationale))
    }

    override fun onCreate(savedInstanceState: Bundle?) {
        super.onCreate(savedInstanceState)
        enableEdgeToEdge()
        setContent { SlowbendTheme { ProbesPage(screen, told, this) } }
    }

    override fun onResume() {
        super.onResume()
        seeing = app.probes.show { screen = app.probes.screen }
    }

    override fun onPause() {
        super.onPause()
        seeing?.close()
    }

    override fun mend(fix: RadioFix) = when (val setting = Permissions.setting(this, fix)) {
        null -> asking.launch(Permissions.asked)
        else -> startActivity(setting)
    }

    override fun look() = app.probes.lookOrStop()

    override fun keep(source: String) = app.probes.keep(source)

    override fun forget(source: String) = app.probes.forget(source)

    override fun place(act: Act) = app.door.act(act) { answer -> told = answer.fold({ it.said }, { it.reason }) }
}
