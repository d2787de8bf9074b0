package org.slowbend.app.night

import android.Manifest
import android.content.Intent
import android.os.Build
import android.os.Bundle
import androidx.activity.ComponentActivity
import androidx.activity.compose.setContent
import androidx.activity.enableEdgeToEdge
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.setValue
import org.slowbend.app.Changed
import org.slowbend.app.MainActivity
import org.slowbend.app.SlowbendApp
import org.slowbend.app.probes.ProbesActivity
import org.slowbend.app.reason
import org.slowbend.app.theme.SlowbendTheme
import slowbend.core.NightScreen

/** Before you sleep. It asks anew each time it is looked at, so that a setting that was mended is seen to be mended. */
class NightActivity : ComponentActivity() {
    private var phone by mutableStateOf(emptyList<PhoneLine>())
    private var night by mutableStateOf<NightScreen?>(null)
    private var trouble by mutableStateOf<String?>(null)
    private val app get() = application as SlowbendApp
    private val changed = Changed { _, _, _ -> app.main.execute { look() } }

    override fun onCreate(savedInstanceState: Bundle?) {
        super.onCreate(savedInstanceState)
        enableEdgeToEdge()
        askToNotify()
        setContent {
            SlowbendTheme {
                Night(
                    phone,
                    night,
                    trouble,
                    app.probes.unheard,
                    onFix = { startActivity(it) },
                    onPit = ::openPit,
                    onProbes = ::openProbes,
                    onTryOut = { app.alarms.tryOut(TRIAL_MS) },
                )
            }
        }
    }

    override fun onResume() {
        super.onResume()
        app.door.listen(changed)
        look()
    }

    override fun onPause() {
        super.onPause()
        app.door.mute(changed)
    }

    private fun look() {
        phone = PhoneCheck(this).lines()
        app.door.ask({ core, viewer, moment -> core.night(viewer, moment) }) { answer ->
            answer.onSuccess { night = it }
            trouble = answer.exceptionOrNull()?.reason
        }
    }

    private fun openProbes() = startActivity(Intent(this, ProbesActivity::class.java))

    private fun openPit() = startActivity(Intent(this, MainActivity::class.java))

    companion object {
        /** Time to lock the phone and put it down. Common practice, no source. */
        const val TRIAL_MS = 15_000L
    }
}

/** From Android 13 on nothing may be shown, and so nothing rings, before its owner was asked. */
fun ComponentActivity.askToNotify() {
    if (Build.VERSION.SDK_INT >= Build.VERSION_CODES.TIRAMISU) {
        requestPermissions(arrayOf(Manifest.permission.POST_NOTIFICATIONS), 0)
    }
}
