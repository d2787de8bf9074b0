package org.slowbend.app

import android.content.Intent
import android.os.Bundle
import android.view.KeyEvent
import android.view.WindowManager
import androidx.activity.ComponentActivity
import androidx.activity.compose.setContent
import androidx.activity.enableEdgeToEdge
import androidx.activity.viewModels
import androidx.compose.runtime.SideEffect
import androidx.lifecycle.createSavedStateHandle
import androidx.lifecycle.viewmodel.initializer
import androidx.lifecycle.viewmodel.viewModelFactory
import org.slowbend.app.night.askToNotify
import org.slowbend.app.screens.Root
import org.slowbend.app.theme.SlowbendTheme

/** The one window. It shows what [ScreenModel] holds, keeps the screen of the propped phone on, and hears its volume keys. */
class MainActivity : ComponentActivity() {
    val model: ScreenModel by viewModels {
        viewModelFactory { initializer { ScreenModel(application as SlowbendApp, createSavedStateHandle()) } }
    }

    override fun onCreate(savedInstanceState: Bundle?) {
        super.onCreate(savedInstanceState)
        enableEdgeToEdge()
        if (savedInstanceState == null) {
            askToNotify()
            follow(intent)
        }
        setContent {
            SlowbendTheme {
                val propped = model.shown is Shown.Now
                SideEffect { keepOn(propped) }
                Root(model)
            }
        }
    }

    override fun onStart() {
        super.onStart()
        model.seen(true)
    }

    override fun onStop() {
        model.seen(false)
        super.onStop()
    }

    override fun onNewIntent(intent: Intent) {
        super.onNewIntent(intent)
        follow(intent)
    }

    /** A notification that was tapped leads to its cook. */
    private fun follow(intent: Intent) {
        intent.getStringExtra(PLACE)?.let { model.go(placeOf(it)) }
    }

    private fun keepOn(on: Boolean) = when {
        on -> window.addFlags(WindowManager.LayoutParams.FLAG_KEEP_SCREEN_ON)
        else -> window.clearFlags(WindowManager.LayoutParams.FLAG_KEEP_SCREEN_ON)
    }

    /** On the propped phone the volume keys answer: up = did it, down = later. Elsewhere they are the phone's own. */
    override fun onKeyDown(code: Int, event: KeyEvent): Boolean {
        val now = (model.shown as? Shown.Now)?.screen?.now ?: return super.onKeyDown(code, event)
        val button = when (code) {
            KeyEvent.KEYCODE_VOLUME_UP -> now.didIt()
            KeyEvent.KEYCODE_VOLUME_DOWN -> now.later()
            else -> return super.onKeyDown(code, event)
        }
        if (event.repeatCount == 0) model.pressKey(button, now)
        return true
    }

    override fun onKeyUp(code: Int, event: KeyEvent) =
        model.shown is Shown.Now && code in VOLUME || super.onKeyUp(code, event)

    companion object {
        /** Where an intent leads, as [path] writes it. */
        const val PLACE = "place"

        private val VOLUME = setOf(KeyEvent.KEYCODE_VOLUME_UP, KeyEvent.KEYCODE_VOLUME_DOWN)
    }
}
