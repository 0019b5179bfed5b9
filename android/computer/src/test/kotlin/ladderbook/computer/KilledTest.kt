package ladderbook.computer

import androidx.compose.ui.test.ExperimentalTestApi
import androidx.compose.ui.test.hasSetTextAction
import androidx.compose.ui.test.hasText
import java.io.File
import kotlin.test.Test
import kotlin.test.assertFalse
import kotlin.test.assertTrue

/** A phone ends a process whenever it likes. */
@OptIn(ExperimentalTestApi::class)
class KilledTest {
    @Test
    fun `a process killed in the middle of a mark comes back to it with the half-typed words`() {
        val folder = Program.demoAtCall()
        onPhone(DemoBook(folder), placesWhenKilled(folder)) { hand, _ ->
            assertTrue(hand.hasHeading(hand.say("mark-title")))
            hand.tapFirst(hand.say("say-it"))
            onNode(hasText(HALF_TYPED) and hasSetTextAction()).assertExists()
            hand.tap(hand.say("say-keep"))
            assertTrue(hand.sees(HALF_TYPED))
            hand.tapFirst(hand.say("back-walk"))
            assertTrue(hand.sees(hand.say("walk-mark")), "the way back is there too")
        }
    }

    @Test
    fun `an address that is gone leads to where a day begins, and says so`() {
        val gone = "/doorstep/00000000-0000-7000-8000-000000000000"
        onPhone(DemoBook(Program.demoAtCall()), listOf(gone)) { hand, shell ->
            assertTrue(hand.hasHeading(hand.say("arrive-title")))
            assertTrue(hand.sees(checkNotNull(shell.trouble)))
            assertFalse(gone in shell.places)
        }
    }

    /** Runs the other process until it waits, and kills it. */
    private fun placesWhenKilled(folder: File): List<String> {
        val classes = System.getProperty("surefire.test.class.path") ?: System.getProperty("java.class.path")
        val java = File(System.getProperty("java.home"), "bin/java").path
        val process = ProcessBuilder(
            java, "-Djava.awt.headless=true", "-Djna.library.path=${System.getProperty("jna.library.path")}",
            "-classpath", classes, "ladderbook.computer.OnAMarkKt", folder.path,
        ).redirectError(ProcessBuilder.Redirect.INHERIT).start()
        val told = process.inputStream.bufferedReader().lineSequence().first { it.startsWith("came by ") }
        process.destroyForcibly().waitFor()
        return told.removePrefix("came by ").split(' ')
    }
}
