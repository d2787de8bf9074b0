package org.slowbend.app.parts

import android.content.ContentResolver
import android.content.Intent
import android.net.Uri
import androidx.activity.compose.rememberLauncherForActivityResult
import androidx.activity.result.contract.ActivityResultContracts.CreateDocument
import androidx.activity.result.contract.ActivityResultContracts.OpenDocument
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.LocalContext
import androidx.compose.ui.platform.testTag
import org.slowbend.app.Shell

/** Sends [text] by whatever the phone sends words with. */
@Composable
fun SendText(label: String, text: String) {
    val context = LocalContext.current
    Tap(label, Modifier.testTag("send")) {
        val send = Intent(Intent.ACTION_SEND).setType("text/plain").putExtra(Intent.EXTRA_TEXT, text)
        context.startActivity(Intent.createChooser(send, label))
    }
}

/** Keeps [text] as a file [name] where the person says; needs no permission, for they choose it themselves. */
@Composable
fun KeepFile(label: String, name: String, kind: String, text: String, shell: Shell) {
    val files = LocalContext.current.contentResolver
    val choosing = rememberLauncherForActivityResult(CreateDocument(kind)) { place ->
        place?.let { runCatching { files.write(it, text) }.onFailure(shell::stopped) }
    }
    Tap(label, Modifier.testTag("keep")) { choosing.launch(name) }
}

/** Reads a file that the person chooses. */
@Composable
fun TakeFile(label: String, shell: Shell, onRead: (String) -> Unit) {
    val files = LocalContext.current.contentResolver
    val choosing = rememberLauncherForActivityResult(OpenDocument()) { place ->
        place?.let { runCatching { files.read(it) }.onSuccess(onRead).onFailure(shell::stopped) }
    }
    Tap(label, Modifier.testTag("file")) { choosing.launch(arrayOf("application/json", "text/plain", "application/octet-stream")) }
}

/** Longer than any card may be, so that the core says it is too long; a film chosen by mistake is not read to its end. */
private const val LONGEST = 1 shl 20

private fun ContentResolver.read(place: Uri): String {
    val bytes = ByteArray(LONGEST)
    var many = 0
    openInputStream(place)?.use { file ->
        while (many < LONGEST) many += file.read(bytes, many, LONGEST - many).takeIf { it >= 0 } ?: break
    }
    return String(bytes, 0, many)
}

private fun ContentResolver.write(place: Uri, text: String) {
    openOutputStream(place, "wt")?.bufferedWriter()?.use { it.write(text) }
}
