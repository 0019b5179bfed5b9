package ladderbook.screens

import androidx.compose.foundation.ScrollState
import androidx.compose.foundation.background
import androidx.compose.foundation.border
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.BoxWithConstraints
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.ColumnScope
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxHeight
import androidx.compose.foundation.layout.fillMaxSize
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.height
import androidx.compose.foundation.layout.heightIn
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.layout.width
import androidx.compose.foundation.rememberScrollState
import androidx.compose.foundation.shape.RoundedCornerShape
import androidx.compose.foundation.verticalScroll
import androidx.compose.runtime.Composable
import androidx.compose.runtime.CompositionLocalProvider
import androidx.compose.runtime.getValue
import androidx.compose.runtime.movableContentOf
import androidx.compose.runtime.remember
import androidx.compose.runtime.rememberUpdatedState
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.LocalDensity
import androidx.compose.ui.semantics.LiveRegionMode
import androidx.compose.ui.semantics.isTraversalGroup
import androidx.compose.ui.semantics.liveRegion
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.Dp
import androidx.compose.ui.unit.dp
import androidx.compose.ui.unit.sp

/** Words this much larger than usual stand below each other instead of side by side. */
private const val LARGE = 1.3f

/** Whether words are so large that two things no longer fit side by side. */
@Composable
fun wordsAreLarge() = LocalDensity.current.fontScale > LARGE

/** One thing at the bottom, which is the hand's; the main one is wider. */
class InHand(val main: Boolean = false, val tall: Boolean = false, val draw: @Composable (Modifier) -> Unit)

/**
 * A page: its heading, what it holds, and the bottom, which is the hand's. Held lying, the hand moves to the right edge and the shutter with it.
 * With large words the heading and what was done scroll along.
 */
@Composable
fun Page(
    shell: Shell,
    hand: List<InHand>,
    sizes: Sizes = AT_THE_TAILGATE,
    scroll: ScrollState = rememberScrollState(),
    head: @Composable ColumnScope.() -> Unit,
    body: @Composable ColumnScope.() -> Unit,
) = CompositionLocalProvider(LocalSizes provides sizes) {
    val top by rememberUpdatedState(head)
    val rest by rememberUpdatedState(body)
    // What is unfolded and half typed stays so when the phone is turned.
    val content = remember(shell, scroll) {
        movableContentOf<Modifier> { modifier ->
            Column(modifier.semantics { isTraversalGroup = true }) {
                Told(shell)
                Column(Modifier.fillMaxSize().verticalScroll(scroll)) {
                    Column(Modifier.fillMaxWidth().padding(EDGE, 12.dp, EDGE, GAP)) { top() }
                    Rule(LINE)
                    rest()
                    Box(Modifier.height(EDGE))
                }
            }
        }
    }
    BoxWithConstraints(Modifier.fillMaxSize().background(LocalColours.current.paper)) {
        if (maxWidth > maxHeight && maxHeight < 500.dp) {
            Row {
                content(Modifier.weight(1f).fillMaxHeight())
                Box(Modifier.width(4.dp).fillMaxHeight().background(LocalColours.current.ink))
                Lying(hand)
            }
        } else {
            Column {
                content(Modifier.weight(1f))
                Rule(4.dp)
                Upright(hand)
            }
        }
    }
}

@Composable
private fun Lying(hand: List<InHand>) = Column(
    Modifier.width(if (wordsAreLarge()) 240.dp else 176.dp).fillMaxHeight().verticalScroll(rememberScrollState()).padding(8.dp).semantics { isTraversalGroup = true },
    Arrangement.spacedBy(GAP, Alignment.Bottom),
) {
    hand.forEach { it.draw(Modifier.fillMaxWidth()) }
}

@Composable
private fun Upright(hand: List<InHand>) {
    val modifier = Modifier.fillMaxWidth().padding(12.dp, GAP, 12.dp, 12.dp).semantics { isTraversalGroup = true }
    val main = hand.filter { it.main }
    // Beside one other it is twice as wide; beside two their words need room too.
    val mainIs = if (hand.size > 2) 1.4f else 2f
    val tall = Modifier.heightIn(min = if (hand.any { it.tall }) 84.dp else 72.dp)
    if (wordsAreLarge() && main.isEmpty()) {
        Column(modifier, Arrangement.spacedBy(GAP)) { hand.forEach { it.draw(tall.fillMaxWidth()) } }
    } else if (wordsAreLarge() && hand.size > 1) {
        Column(modifier, Arrangement.spacedBy(GAP)) {
            Row(horizontalArrangement = Arrangement.spacedBy(GAP)) { hand.filterNot { it.main }.forEach { it.draw(tall.weight(1f)) } }
            main.forEach { it.draw(Modifier.fillMaxWidth()) }
        }
    } else {
        Row(modifier, Arrangement.spacedBy(GAP)) {
            hand.forEach { it.draw(tall.weight(if (it.main) mainIs else 1f)) }
        }
    }
}

/** What the last tap did, or why it did not; and how far long work is. */
@Composable
private fun Told(shell: Shell) {
    val colours = LocalColours.current
    shell.notice?.let {
        Column(Modifier.semantics { liveRegion = LiveRegionMode.Polite }) {
            Say("✓ $it", Modifier.padding(EDGE, 8.dp), 20.sp, bold = true)
            Rule(LINE)
        }
    }
    shell.trouble?.let {
        Box(
            Modifier.fillMaxWidth().padding(12.dp).border(6.dp, colours.ink, RoundedCornerShape(CORNER)).padding(14.dp)
                .semantics { liveRegion = LiveRegionMode.Assertive },
        ) { Say(it, size = 22.sp, bold = true) }
    }
    shell.work?.let { work ->
        Column(Modifier.padding(EDGE, GAP).semantics { liveRegion = LiveRegionMode.Polite }, Arrangement.spacedBy(GAP)) {
            Say(work.says, size = 20.sp, bold = true)
            Box(Modifier.fillMaxWidth().height(14.dp).border(LINE, colours.ink)) {
                Box(Modifier.fillMaxWidth(work.share).fillMaxHeight().background(colours.chalk))
            }
            shell.words?.let { Key(it.giveUp, Modifier.fillMaxWidth()) { shell.giveUp() } }
        }
        Rule(LINE)
    }
}

@Composable
fun Rule(thick: Dp) = Box(Modifier.fillMaxWidth().height(thick).background(LocalColours.current.ink))

/** The usual heading: a small line over a large one. */
@Composable
fun ColumnScope.Title(under: String, title: String) {
    if (under.isNotEmpty()) Say(under, size = 18.sp, bold = true)
    Heading(title, size = 30.sp)
}
