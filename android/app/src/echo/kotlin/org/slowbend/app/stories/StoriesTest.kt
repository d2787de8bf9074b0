package org.slowbend.app.stories

import androidx.test.core.app.ApplicationProvider
import org.junit.Test
import org.junit.runner.RunWith
import org.robolectric.ParameterizedRobolectricTestRunner
import org.robolectric.ParameterizedRobolectricTestRunner.Parameters
import org.robolectric.annotation.Config
import org.robolectric.annotation.GraphicsMode
import org.slowbend.app.PHONE
import org.slowbend.app.TestApp
import slowbend.stories.Border
import slowbend.stories.Story
import java.io.File

/**
 * Every story file through the shell's own door: what a step says of a screen holds for what the activity shows, and where
 * there is one phone, what it says of alarms holds for what lies on the platform.
 */
@RunWith(ParameterizedRobolectricTestRunner::class)
@GraphicsMode(GraphicsMode.Mode.NATIVE)
@Config(sdk = [35], application = TestApp::class, qualifiers = PHONE)
class StoriesTest(private val name: String) {
    private val app get() = ApplicationProvider.getApplicationContext<TestApp>()

    @Test
    fun lives() {
        val hand = Hand(app)
        val story = Story.all(stories).first { it.name == name }
        story.live(Border(), hand::phone) { night -> hand.begin(night.phones.values.map { it as ShellPhone }) }
        hand.leave()
    }

    companion object {
        private val stories = File("../../tests/stories")

        @JvmStatic
        @Parameters(name = "{0}")
        fun names() = Story.all(stories).map { arrayOf(it.name) }
    }
}
