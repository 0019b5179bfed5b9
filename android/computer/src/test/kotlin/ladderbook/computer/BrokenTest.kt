package ladderbook.computer

import androidx.compose.ui.test.ExperimentalTestApi
import kotlin.test.Test
import kotlin.test.assertContains
import kotlin.test.assertFalse
import kotlin.test.assertTrue

/** A core that breaks in the middle of a tap. The library of the tests has a word that makes it do so. */
@OptIn(ExperimentalTestApi::class)
class BrokenTest {
    @Test
    fun `a core that breaks is told on the screen, the next tap works, the book is whole`() {
        val folder = Program.demoAtCall()
        onPhone(DemoBook(folder)) { hand, shell ->
            goToAMark(hand)
            val broke = hand.say("phone-broke")
            hand.type(hand.say("say-words"), "break on purpose")
            waitUntil(timeoutMillis = PATIENCE) { hand.sees(broke) }
            hand.type(hand.say("say-words"), "Lifted")
            hand.tapFirst(hand.say("rung-failing"))
            assertFalse(hand.sees(broke))
            assertContains(checkNotNull(shell.notice), hand.say("saved"))
            hand.tap(hand.say("say-keep"))
            assertTrue(hand.sees("Lifted"))
        }
        Program.of(folder, "check")
        assertContains(Program.of(folder, "--json", "rebuild"), "\"same\": true")
    }
}
