package org.slowbend.app.speech

import android.content.Context
import android.speech.tts.TextToSpeech

/** Says in the phone's voice what the core wrote. What is said first waits until the voice is ready; only the latest waits. */
class Speaker(context: Context) {
    private var waiting: String? = null
    private var ready = false
    private val voice = TextToSpeech(context, ::started)

    fun say(text: String) {
        waiting = text
        if (ready) speak()
    }

    private fun started(status: Int) {
        ready = status == TextToSpeech.SUCCESS
        if (ready) speak()
    }

    private fun speak() {
        val text = waiting ?: return
        waiting = null
        voice.speak(text, TextToSpeech.QUEUE_FLUSH, null, "told")
    }
}
