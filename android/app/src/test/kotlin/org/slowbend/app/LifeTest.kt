package org.slowbend.app

import android.os.Bundle
import androidx.test.core.app.ApplicationProvider
import androidx.test.ext.junit.runners.AndroidJUnit4
import org.junit.Assert.assertEquals
import org.junit.Assert.assertNotEquals
import org.junit.Assert.assertTrue
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.Robolectric
import org.robolectric.android.controller.ActivityController
import org.robolectric.annotation.Config
import org.robolectric.annotation.GraphicsMode
import org.robolectric.shadows.ShadowLooper
import slowbend.core.Place
import slowbend.core.Trouble

/** The process comes and goes; what was recorded and where the person was stay. */
@RunWith(AndroidJUnit4::class)
@GraphicsMode(GraphicsMode.Mode.NATIVE)
@Config(sdk = [35], application = TestApp::class, qualifiers = PHONE)
class LifeTest {
    private val app get() = ApplicationProvider.getApplicationContext<TestApp>()

    private fun launch(saved: Bundle? = null): ActivityController<MainActivity> =
        Robolectric.buildActivity(MainActivity::class.java).run { if (saved == null) setup() else setup(saved) }

    private fun leave(activity: ActivityController<MainActivity>) = Bundle().also {
        activity.saveInstanceState(it).pause().stop().destroy()
    }

    @Test
    fun `each screen is one call of the core`() {
        val lunch = app.underWay()
        val model = launch().get().model
        val places = mapOf(
            Place.Start to "start",
            Place.Now(lunch.cook) to "pitside",
            Place.Piece(lunch.meats[0]) to "piece",
            Place.Check(lunch.meats[0]) to "check",
            Place.Timeline(lunch.cook) to "timeline",
            Place.Settings to "settings",
            Place.Write(lunch.cook) to "writeDown",
        )
        for ((place, verb) in places) {
            app.calls.clear()
            model.go(place)
            ShadowLooper.idleMainLooper()
            assertEquals(listOf(verb), app.calls)
        }
    }

    @Test
    fun `an act is recorded, worked on and shown again once`() {
        val lunch = app.underWay()
        val model = launch().get().model
        model.go(Place.Now(lunch.cook))
        app.calls.clear()
        model.press((model.shown as Shown.Now).screen.now.didIt()!!)
        assertEquals(listOf("act", "pitside"), app.calls.filter { it != "work" })
        assertTrue("work" in app.calls)
    }

    @Test
    fun `nothing is asked while nothing changes, and once when the screen ends`() {
        val lunch = app.underWay()
        val model = launch().get().model
        model.go(Place.Now(lunch.cook))
        val left = model.shown!!.until - app.clock.utcMs
        app.calls.clear()
        ShadowLooper.idleMainLooper(left - 1, java.util.concurrent.TimeUnit.MILLISECONDS)
        assertEquals(emptyList<String>(), app.calls)
        app.clock.utcMs += left
        ShadowLooper.idleMainLooper(1, java.util.concurrent.TimeUnit.MILLISECONDS)
        assertEquals(listOf("pitside"), app.calls)
    }

    @Test
    fun `a process that was killed shows the same again`() {
        val lunch = app.underWay()
        val first = launch()
        first.get().model.go(Place.Now(lunch.cook))
        first.get().model.go(Place.Piece(lunch.meats[1]))
        val shown = first.get().model.shown
        val saved = leave(first)
        app.die()
        val second = launch(saved).get().model
        assertNotEquals(first.get().model, second)
        assertEquals(Place.Piece(lunch.meats[1]), second.place)
        assertEquals(shown, second.shown)
        second.back()
        assertEquals(Place.Now(lunch.cook), second.place)
    }

    @Test
    fun `a turned phone shows the same again`() {
        val lunch = app.underWay()
        val activity = launch()
        activity.get().model.go(Place.Now(lunch.cook))
        val shown = activity.get().model.shown
        activity.recreate()
        assertEquals(shown, activity.get().model.shown)
    }

    @Test
    fun `a cook that is not known here is told, and leaves the rest as it was`() {
        val lunch = app.underWay()
        val model = launch().get().model
        model.go(Place.Now("00000000-0000-0000-0000-000000000000"))
        assertTrue(model.told!!.isTrouble)
        model.go(Place.Now(lunch.cook))
        assertTrue(model.shown is Shown.Now)
    }

    @Test
    fun `a database that another program holds is told, and opens when it is tried again`() {
        app.trouble = Trouble.InUse("Another program holds the database.")
        val model = launch().get().model
        assertEquals("Another program holds the database.", model.told!!.text)
        assertEquals(null, model.shown)
        app.trouble = null
        model.refresh()
        assertTrue(model.shown is Shown.Start)
        assertEquals("Meats", model.frame!!.meats)
    }
}
