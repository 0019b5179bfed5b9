package ladderbook.computer

import androidx.compose.ui.test.ComposeUiTest
import androidx.compose.ui.test.ExperimentalTestApi
import androidx.compose.ui.test.v2.runComposeUiTest
import kotlinx.coroutines.CoroutineScope
import kotlinx.coroutines.Dispatchers
import ladderbook.screens.Screens
import ladderbook.screens.Shell
import ladderbook.screens.Theme
import java.io.File
import kotlin.time.Duration.Companion.milliseconds

/** A busy computer is no fault of the screens: how long a test waits, in milliseconds, before it takes something for stuck. */
const val PATIENCE = 1_800_000L

/** What was half typed when the process ended. */
const val HALF_TYPED = "The lower course lifts, and under it"

/** Shows the screens of a demo's book, come by these addresses, to a hand. */
@OptIn(ExperimentalTestApi::class)
fun onPhone(demo: DemoBook, came: List<String> = emptyList(), then: ComposeUiTest.(Hand, Shell) -> Unit) = demo.open().use { book ->
    runComposeUiTest(testTimeout = PATIENCE.milliseconds) {
        val shell = demo.shell(book, CoroutineScope(Dispatchers.Unconfined), Dispatchers.Unconfined, came)
        shell.begin()
        setContent { Theme(shell.dusk, ATKINSON) { Screens(shell) } }
        then(Hand(this, Say("en")), shell)
    }
}

/** From the call to the first part of the walk. */
fun goToAMark(hand: Hand) {
    val say = hand.say
    hand.type(say("arrive-find"), "318 lamplighter")
    hand.tap(say("arrive-find-button"))
    hand.tapFirst("318 Lamplighter Ln")
    hand.tap(say("doorstep-open-button"))
    hand.tap(say("safety-up"))
    hand.tapFirst(say("walk-mark"))
    hand.tapFirst(say("say-it"))
}

/** A process of its own, to be killed: half types words on a Mark, tells the addresses that a phone would have kept, and waits. */
@OptIn(ExperimentalTestApi::class)
fun main(asked: Array<String>) = onPhone(DemoBook(File(asked[0]))) { hand, shell ->
    goToAMark(hand)
    hand.type(hand.say("say-words"), HALF_TYPED)
    // Longer than half-typed words wait before they are kept.
    Thread.sleep(1_000)
    println(shell.places.joinToString(" ", prefix = "came by "))
    Thread.sleep(Long.MAX_VALUE)
}
