package org.slowbend.app.alarms

import android.content.Intent
import android.os.Bundle
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
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.heading
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import org.slowbend.app.parts.Tap
import org.slowbend.app.theme.At2m
import org.slowbend.app.theme.LocalInks
import org.slowbend.app.theme.SlowbendTheme
import org.slowbend.app.theme.mm
import org.slowbend.app.theme.type

/** What must wake, over the lock screen, with its answers. It holds the one ring that its intent carries, and nothing else. */
class RingActivity : ComponentActivity() {
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
        setContent { SlowbendTheme { Ringing(one) { answered(one, it) } } }
    }

    private fun answered(one: Laid, which: Int) {
        Alarms.of(this).answer(one, which)
        finish()
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
        Text(one.title, Modifier.semantics { heading() }, inks.ink, style = type.displaySmall)
        Text(one.body, color = inks.ink, style = type.titleLarge)
        one.answers.forEachIndexed { which, answer ->
            Tap(answer.label, Modifier.fillMaxWidth(), least = mm(At2m.TARGET_MM)) { onAnswer(which) }
        }
    }
}
