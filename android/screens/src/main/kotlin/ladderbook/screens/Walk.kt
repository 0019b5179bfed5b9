package ladderbook.screens

import androidx.compose.foundation.Canvas
import androidx.compose.foundation.clickable
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.IntrinsicSize
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxHeight
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.height
import androidx.compose.foundation.layout.heightIn
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.layout.width
import androidx.compose.foundation.rememberScrollState
import androidx.compose.runtime.Composable
import androidx.compose.runtime.LaunchedEffect
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableIntStateOf
import androidx.compose.runtime.remember
import androidx.compose.runtime.rememberCoroutineScope
import androidx.compose.runtime.setValue
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.graphics.PathEffect
import androidx.compose.ui.layout.onGloballyPositioned
import androidx.compose.ui.layout.positionInParent
import androidx.compose.ui.semantics.Role
import androidx.compose.ui.semantics.clearAndSetSemantics
import androidx.compose.ui.semantics.isTraversalGroup
import androidx.compose.ui.semantics.selected
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.text.style.TextDecoration
import androidx.compose.ui.unit.dp
import androidx.compose.ui.unit.sp
import kotlinx.coroutines.launch
import ladderbook.core.Here
import ladderbook.core.SpotRow
import ladderbook.core.StopRow
import ladderbook.core.WalkState

/** How much of the ladder is left in sight above the present stop: a fifth of the height. */
private const val ABOVE = 5

/** One tall ladder, climbed from the bottom up; the present stop lies in it, under the thumb. */
@Composable
fun Walk(state: WalkState, shell: Shell) {
    val scroll = rememberScrollState()
    val scope = rememberCoroutineScope()
    var here by remember { mutableIntStateOf(-1) }
    LaunchedEffect(state.here?.title, here >= 0) { if (here >= 0) scroll.scrollTo((here - scroll.viewportSize / ABOVE).coerceAtLeast(0)) }
    Page(
        shell,
        hand = listOf(
            InHand { modifier -> Key(state.say.title, modifier) { scope.launch { scroll.scrollTo(scroll.maxValue) } } },
            inHand(shell, state.shutter),
            inHand(shell, state.undo),
        ),
        sizes = ON_THE_LADDER,
        scroll = scroll,
        head = { Title(state.under, state.title) },
    ) {
        if (state.structures.size > 1) {
            Choices(shell, state.structures)
            Rule(LINE)
        }
        for (stop in state.stops.asReversed()) {
            val present = state.here.takeIf { stop.here }
            Column(Modifier.onGloballyPositioned { if (stop.here) here = it.positionInParent().y.toInt() }) {
                Rung(stop, shell)
                present?.let { HereBlock(it, shell) }
            }
        }
        Fold(state.moreTitle) { Choices(shell, state.more, columns = 1) }
        Fold(state.closeTitle) { Choices(shell, state.close, columns = 1) }
        SectionHeading(state.say.title)
        Fields(shell, state.say)
    }
}

@Composable
private fun Rung(stop: StopRow, shell: Shell) {
    val colours = LocalColours.current
    val slim = wordsAreLarge()
    Row(
        Modifier.fillMaxWidth().height(IntrinsicSize.Min).heightIn(min = 76.dp)
            .clickable(role = Role.Button) { shell.tap(stop.go) }
            .semantics { if (stop.here) selected = true }
            .padding(start = if (slim) 8.dp else 20.dp, end = 8.dp),
        Arrangement.spacedBy(14.dp), Alignment.CenterVertically,
    ) {
        Canvas(Modifier.width(if (slim) 40.dp else 64.dp).fillMaxHeight().clearAndSetSemantics {}) {
            val rail = 9.dp.toPx()
            for (x in listOf(rail / 2, size.width - rail / 2)) drawLine(colours.ink, Offset(x, 0f), Offset(x, size.height), rail)
            val dash = PathEffect.dashPathEffect(floatArrayOf(6.dp.toPx(), 7.dp.toPx())).takeUnless { stop.done || stop.here }
            drawLine(
                if (stop.here) colours.chalk else colours.ink,
                Offset(rail, size.height / 2), Offset(size.width - rail, size.height / 2),
                if (stop.here) 16.dp.toPx() else rail, pathEffect = dash,
            )
        }
        Column(Modifier.weight(1f).padding(0.dp, 6.dp)) {
            Say(
                stop.name, size = 25.sp, bold = true, colour = if (stop.here) colours.chalk else colours.ink,
                line = TextDecoration.Underline.takeIf { stop.here },
            )
            Say(stop.says)
        }
    }
}

@Composable
private fun HereBlock(here: Here, shell: Shell) = Column {
    Rule(4.dp)
    Heading(here.title, Modifier.padding(EDGE, GAP, EDGE, 2.dp), 28.sp)
    here.spots.forEach { Spot(it, shell) }
    Fold(here.notSeenTitle) { Choices(shell, here.notSeen, columns = 1) }
    FoldedForm(shell, here.add)
    here.next?.let { TapButton(shell, it, Modifier.fillMaxWidth().padding(12.dp, 6.dp), main = true) }
    Box(Modifier.height(8.dp))
    Rule(4.dp)
}

/** A part under the thumb: sound with one tap, more with another. */
@Composable
private fun Spot(spot: SpotRow, shell: Shell) = Column(Modifier.semantics { isTraversalGroup = true }) {
    Row(
        Modifier.fillMaxWidth().padding(EDGE, GAP, EDGE, 0.dp).semantics(mergeDescendants = true) {},
        Arrangement.spacedBy(14.dp), Alignment.CenterVertically,
    ) {
        LadderPicture(spot.ladder, 52.dp)
        Column {
            Say(spot.name, bold = true)
            val again = spot.lookAgain
            if (again == null) Say(spot.says) else Say(again, bold = true, colour = LocalColours.current.chalk)
        }
    }
    Choices(shell, listOf(spot.sound, spot.mark))
    Rule(THIN)
}
