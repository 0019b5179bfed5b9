package ladderbook.computer

import androidx.compose.ui.test.ExperimentalTestApi
import androidx.compose.ui.test.v2.runComposeUiTest
import kotlinx.coroutines.CoroutineScope
import kotlinx.coroutines.Dispatchers
import ladderbook.core.Book
import ladderbook.core.Screen
import ladderbook.screens.Screens
import ladderbook.screens.Shell
import ladderbook.screens.Theme
import java.io.File
import kotlin.test.Test
import kotlin.test.assertContains
import kotlin.test.assertEquals
import kotlin.test.assertTrue
import kotlin.time.Duration.Companion.milliseconds

/** The main story on the phone, from the call to the letter, by taps alone; then the desk is asked what it makes of the same book. */
@OptIn(ExperimentalTestApi::class)
class MainStoryTest {
    private val say = Say("en")

    @Test
    fun `the whole visit by taps, and the verdict that the desk reads`() {
        val folder = Program.demoAtCall()
        val demo = DemoBook(folder)
        val onPhone = demo.open().use { book -> visit(demo, book) }
        val onDesk = Program.of(folder, "verdict", "318 lamplighter").lines().map(::letters).filter { it.isNotEmpty() }
        assertTrue(onDesk.size > 60, "the desk says a verdict: $onDesk")
        val phone = letters(onPhone.said.joinToString(""))
        assertEquals(emptyList(), onDesk.filterNot { it in phone }, "what the desk says and the phone does not")
        val desk = onDesk.joinToString("")
        assertEquals(emptyList(), (onPhone.said - onPhone.taps).filterNot { letters(it) in desk }, "what the phone says and the desk does not")
        assertContains(Program.of(folder, "--json", "rebuild"), "\"same\": true")
    }

    /** What a verdict says, without the marks by which page, phone and paper set it differently. */
    private fun letters(text: String) = text.filter { it.isLetterOrDigit() }

    /** All that the phone says of the verdict, structure by structure, and the words on it that are there to tap. */
    private class Verdict(val said: List<String>, val taps: Set<String>)

    private fun visit(demo: DemoBook, book: Book): Verdict {
        var verdict = Verdict(emptyList(), emptySet())
        runComposeUiTest(testTimeout = PATIENCE.milliseconds) {
            val shell = demo.shell(book, CoroutineScope(Dispatchers.Unconfined), Dispatchers.Unconfined)
            shell.begin()
            setContent { Theme(shell.dusk, ATKINSON) { Screens(shell) } }
            val hand = Hand(this, say)

            hand.type(say("arrive-find"), "318 lamplighter")
            hand.tap(say("arrive-find-button"))
            hand.tapFirst("318 Lamplighter Ln")
            ask(hand)
            safety(hand)
            Visit(hand).walk(VISIT.all("structures"))
            picture(demo, hand)
            hand.tap(say("walk-close"))
            hand.tapFirst(say("close-not-reached"))
            assertTrue(hand.hasHeading(say("then-and-now-title")))
            hand.tap(say("verdict-title"))
            verdict = readVerdict(hand, shell)
            hand.tapFirst(say("verdict-letter"))
            hand.tap(say("letter-write-english"))
            waitUntil(timeoutMillis = PATIENCE) { shell.work == null && hand.sees(say("letter-open")) }
            hand.tap(say("letter-open"))
            assertTrue(File(demo.phone.opened.single()).readBytes().decodeToString(0, 5) == "%PDF-")
            assertContains(demo.phone.felt, say("saved-letter"))
        }
        return verdict
    }

    private fun ask(hand: Hand) {
        val request = VISIT.getAsJsonObject("visit").getAsJsonObject("request")
        val asked = request.all("asks").single()
        hand.type(say("request-words"), checkNotNull(request.text("words")))
        hand.choose(say("request-kind"), say("kind-${asked.text("kind")}"))
        hand.choose(say("request-remedy"), say("remedy-${asked.text("remedy")}"))
        hand.choose(say("request-leaking"), say("answer-${request.text("leaking")}"))
        hand.type(say("request-room"), checkNotNull(request.text("room")))
        hand.choose(say("request-scope"), say("scope-${VISIT.getAsJsonObject("visit").text("scope")}"))
        hand.tap(say("doorstep-open-button"))
        hand.tap(say("back-doorstep"))
        assertTrue(hand.sees(say("doorstep-contradicts")), "what they ask goes against what was said")
        hand.tap(say("doorstep-safety"))
    }

    private fun safety(hand: Hand) {
        for (check in VISIT.getAsJsonObject("visit").all("safety")) {
            hand.tapBeside(say("safety-${check.text("check")}"), say("answer-${check.text("holds")}"))
        }
        for (structure in VISIT.all("structures")) {
            hand.tapBeside(structure.text("name") ?: say("structure-${structure.text("kind")}"), say("reach-${structure.text("reached")}"))
        }
        hand.tap(say("safety-up"))
    }

    /** A picture from the walk, through the tray, to its part. */
    private fun picture(demo: DemoBook, hand: Hand) {
        demo.phone.before = File("../docs/pictures/walk.png").readBytes()
        hand.tap(say("shutter"))
        assertEquals(say("saved-picture"), demo.phone.felt.last())
        hand.tap(say("walk-more"))
        hand.tap(say("tray-title"))
        hand.tap(say("tray-tie"))
        val cheek = say("part-which", "kind" to say("kind-sidewall-flashing"), "which" to "dormer, left cheek")
        hand.tapFirst(cheek)
        assertTrue(hand.sees(say("tray-empty")))
        hand.tap(say("back-walk"))
    }

    private fun readVerdict(hand: Hand, shell: Shell): Verdict {
        val structures = (shell.shown?.screen as Screen.Verdict).state.structures.map { it.label }
        val said = structures.flatMap { structure ->
            hand.tapFirst(structure)
            hand.unfoldAll()
            hand.reads()
        }
        val folds = structures.flatMap { structure ->
            hand.tapFirst(structure)
            val state = (shell.shown?.screen as Screen.Verdict).state
            state.steps.mapNotNull { it.whyMore } + listOf(state.main, state.back, state.offer).map { it.label }
        }
        return Verdict(said, (structures + folds).toSet())
    }
}
