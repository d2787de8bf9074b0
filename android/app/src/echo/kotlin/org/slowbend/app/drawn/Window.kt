package org.slowbend.app.drawn

import android.app.Activity
import android.graphics.Bitmap
import android.graphics.Canvas
import android.view.View
import android.view.ViewGroup
import androidx.compose.ui.node.RootForTest
import androidx.compose.ui.semantics.SemanticsProperties
import androidx.compose.ui.semantics.getAllSemanticsNodes
import androidx.compose.ui.semantics.getOrNull
import org.robolectric.shadows.ShadowLooper
import java.util.concurrent.TimeUnit

/** A window, and the picture that it is drawn into. */
class Window(activity: Activity) {
    private val view: View = activity.window.decorView
    private val picture = Bitmap.createBitmap(view.width, view.height, Bitmap.Config.ARGB_8888)
    private val canvas = Canvas(picture)

    /** How long [deed] takes with all that follows until the picture shows it: composed, laid out, drawn. Nanoseconds. */
    fun drawn(deed: () -> Unit): Long {
        val start = System.nanoTime()
        deed()
        ShadowLooper.idleMainLooper(FRAME_MS, TimeUnit.MILLISECONDS)
        view.draw(canvas)
        return System.nanoTime() - start
    }

    /** The picture as a number that is another one for another picture. */
    fun print() = IntArray(picture.width * picture.height).also {
        picture.getPixels(it, 0, picture.width, 0, 0, picture.width, picture.height)
    }.contentHashCode()

    /** The texts that it shows, in order. */
    fun texts(): List<String> = roots(view).flatMap { it.semanticsOwner.getAllSemanticsNodes(mergingEnabled = false) }
        .flatMap { it.config.getOrNull(SemanticsProperties.Text).orEmpty() }.map { it.text }

    private fun roots(view: View): List<RootForTest> = when (view) {
        is RootForTest -> listOf(view)
        is ViewGroup -> (0 until view.childCount).flatMap { roots(view.getChildAt(it)) }
        else -> emptyList()
    }

    private companion object {
        /** A frame at sixty a second. */
        const val FRAME_MS = 17L
    }
}
