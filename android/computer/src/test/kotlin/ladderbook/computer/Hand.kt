package ladderbook.computer

import androidx.compose.ui.semantics.Role
import androidx.compose.ui.semantics.SemanticsActions
import androidx.compose.ui.semantics.SemanticsProperties
import androidx.compose.ui.test.ComposeUiTest
import androidx.compose.ui.test.ExperimentalTestApi
import androidx.compose.ui.test.SemanticsMatcher
import androidx.compose.ui.test.SemanticsNodeInteraction
import androidx.compose.ui.test.hasClickAction
import androidx.compose.ui.test.hasContentDescription
import androidx.compose.ui.test.hasSetTextAction
import androidx.compose.ui.test.hasText
import androidx.compose.ui.test.isHeading
import androidx.compose.ui.test.onFirst
import androidx.compose.ui.test.onLast
import androidx.compose.ui.test.performClick
import androidx.compose.ui.test.performScrollTo
import androidx.compose.ui.test.performTextReplacement

/** A hand on the screens: it taps and types only what it can see or scroll to, found by its words. */
@OptIn(ExperimentalTestApi::class)
class Hand(private val test: ComposeUiTest, val say: Say) {
    /** Taps what says exactly so. */
    fun tap(label: String) = press(test.onNode(hasText(label) and hasClickAction()))

    /** The same where the words stand on several: the one that comes last. */
    fun tapLast(label: String) = press(test.onAllNodes(hasText(label) and hasClickAction()).onLast())

    fun tapFirst(label: String) = press(test.onAllNodes(hasText(label) and hasClickAction()).onFirst())

    /** Taps what says so beside a name or a question. */
    fun tapBeside(beside: String, label: String) =
        press(test.onAllNodes(besideIt(beside, label)).onFirst())

    private fun besideIt(beside: String, label: String) = hasText(label) and hasClickAction() and standsBeside(beside)

    fun canTap(label: String): Boolean = test.onAllNodes(hasText(label) and hasClickAction()).fetchSemanticsNodes().isNotEmpty()

    fun canTapBeside(beside: String, label: String): Boolean = test.onAllNodes(besideIt(beside, label)).fetchSemanticsNodes().isNotEmpty()

    fun type(label: String, text: String) {
        val field = test.onAllNodes(hasContentDescription(label) and hasSetTextAction()).onFirst()
        field.performScrollTo().performTextReplacement(text)
        test.waitForIdle()
    }

    fun choose(label: String, choice: String) {
        press(test.onAllNodes(hasContentDescription(label) and hasClickAction()).onFirst())
        press(test.onAllNodes(hasText(choice) and isRadio()).onFirst())
    }

    fun sees(text: String): Boolean = test.onAllNodes(hasText(text, substring = true)).fetchSemanticsNodes().isNotEmpty()

    fun hasHeading(text: String): Boolean = test.onAllNodes(hasText(text) and isHeading()).fetchSemanticsNodes().isNotEmpty()

    /** Every text on the screen, scrolled to or not. */
    fun reads(): List<String> = test.onAllNodes(SemanticsMatcher("any") { true }).fetchSemanticsNodes()
        .flatMap { node -> node.config.getOrElse(SemanticsProperties.Text) { emptyList() }.map { it.text } }

    /** Opens everything that is folded. */
    fun unfoldAll() {
        while (true) {
            val folded = test.onAllNodes(SemanticsMatcher.keyIsDefined(SemanticsActions.Expand))
            if (folded.fetchSemanticsNodes().isEmpty()) return
            press(folded.onFirst())
        }
    }

    private fun press(node: SemanticsNodeInteraction) {
        runCatching { node.performScrollTo() }
        node.performClick()
        test.waitForIdle()
    }

    private fun isRadio() = SemanticsMatcher.expectValue(SemanticsProperties.Role, Role.RadioButton)

    /** Whether something with these words stands beside it, and none of its kind between. */
    private fun standsBeside(text: String) = SemanticsMatcher("stands beside $text") { node ->
        node.parent?.children.orEmpty().any { child -> child.config.getOrElse(SemanticsProperties.Text) { emptyList() }.any { it.text == text } }
    }
}
