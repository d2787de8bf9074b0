package org.slowbend.app.alarms

import android.content.Intent
import android.os.Bundle
import android.view.KeyEvent
import androidx.activity.ComponentActivity
import androidx.activity.compose.setContent
import androidx.activity.enableEdgeToEdge
import androidx.compose.foundation.background
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxSize
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.layout.safeDrawingPadding
import androidx.compose.foundation.rememberScrollState
import androidx.compose.foundation.verticalScroll
import androidx.compose.material3.Text
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.setValue
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.LiveRegionMode
import androidx.compose.ui.semantics.heading
import androidx.compose.ui.semantics.liveRegion
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import org.slowbend.app.SlowbendApp
import org.slowbend.app.Told
import org.slowbend.app.parts.Tap
import org.slowbend.app.parts.Undoing
import org.slowbend.app.theme.At2m
import org.slowbend.app.theme.LocalInks
import org.slowbend.app.theme.SlowbendTheme
import org.slowbend.app.theme.boardOf
import org.slowbend.app.theme.mm
import org.slowbend.app.theme.type

/** What must wake, over the lock screen, with its answers. It holds the one ring that its intent carries, and nothing else. */
class RingActivity : ComponentActivity() {
    private var taken by mutableStateOf<Told?>(null)

    override fun onCreate(savedInstanceState: Bundle?) {
        super.onCreate(savedInstanceState)
        enableEdgeToEdge()
        show()
    }

    override fun onNewIntent(intent: Intent) {
        super.onNewIntent(intent)
        setIntent(intent)
        show()
    }

    private fun show() {
        val one = intent.ring() ?: return finish()
        taken = null
        setContent {
            SlowbendTheme {
                when (val told = taken) {
                    null -> Ringing(one) { answered(one, it) }
                    else -> Taken(told) { undo(told) }
                }
            }
        }
    }

    private fun answered(one: Laid, which: Int) {
        Alarms.of(this).answer(one, which)
        Alarms.of(this).whenTold { if (it == null) finish() else tell(it) }
    }

    /** What came of it stays for as long as it can be taken back at one touch. */
    private fun tell(answered: Answered) {
        val app = application as SlowbendApp
        taken = answered.toldAt(app.clock.now().utcMs)
        window.decorView.postDelayed(::finish, Answered.SHOWN_MS)
    }

    private fun undo(told: Told) {
        told.undo?.let { (application as SlowbendApp).door.act(it.act) }
        finish()
    }

    /** The volume keys answer as on the propped phone: up = did it, down = later. */
    override fun onKeyDown(code: Int, event: KeyEvent): Boolean {
        val one = intent.ring()?.takeIf { taken == null } ?: return super.onKeyDown(code, event)
        val which = when (code) {
            KeyEvent.KEYCODE_VOLUME_UP -> one.answers.indexOfFirst { it.againMinutes == null }
            KeyEvent.KEYCODE_VOLUME_DOWN -> one.answers.indexOfLast { it.againMinutes != null }
            else -> return super.onKeyDown(code, event)
        }
        if (which >= 0 && event.repeatCount == 0) answered(one, which)
        return true
    }
}

/** One ring, to be read and answered half asleep. */
@Composable
fun Ringing(one: Laid, onAnswer: (Int) -> Unit) {
    val inks = LocalInks.current.wake
    Column(
        Modifier.fillMaxSize().background(inks.ground).safeDrawingPadding().verticalScroll(rememberScrollState()).padding(24.dp),
        Arrangement.spacedBy(16.dp),
    ) {
        Text(one.title, Modifier.semantics { heading() }, inks.ink, style = boardOf(At2m.MEAT_MM))
        Text(one.body, color = inks.ink, style = type.titleLarge)
        one.answers.forEachIndexed { which, answer ->
            Tap(answer.label, Modifier.fillMaxWidth(), least = mm(At2m.TARGET_MM), style = type.displaySmall) { onAnswer(which) }
        }
    }
}

/** What was answered, and how to take it back. */
@Composable
fun Taken(told: Told, onUndo: () -> Unit) {
    val inks = LocalInks.current.page
    Column(
        Modifier.fillMaxSize().background(inks.ground).safeDrawingPadding().verticalScroll(rememberScrollState()).padding(24.dp),
        Arrangement.spacedBy(16.dp),
    ) {
        Text(told.text, Modifier.semantics { liveRegion = LiveRegionMode.Polite }, inks.ink, style = boardOf(At2m.MEAT_MM))
        told.undo?.let { Undoing(it.label, onUndo) }
    }
}
