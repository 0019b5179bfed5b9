package ladderbook.screens

import androidx.compose.foundation.border
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.shape.RoundedCornerShape
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.LiveRegionMode
import androidx.compose.ui.semantics.isTraversalGroup
import androidx.compose.ui.semantics.liveRegion
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import ladderbook.core.CheckRow
import ladderbook.core.LadderCheck
import ladderbook.core.Row
import ladderbook.core.SafetyState

/** May he climb at all. */
@Composable
fun Safety(state: SafetyState, shell: Shell) = Page(
    shell,
    hand = listOf(inHand(shell, state.back), inHand(shell, state.main, main = true)),
    sizes = ON_THE_LADDER,
    head = { Title(state.address, state.title) },
) {
    state.dangers.forEach { Danger(it) }
    state.stops.forEach { Stop(it) }
    state.checks.forEach { Check(it, shell) }
    SectionHeading(state.skyTitle)
    Choices(shell, state.sky)
    FoldedForm(shell, state.temperature)
    LadderStands(state.ladder, shell)
    SectionHeading(state.reachTitle)
    for (reach in state.reach) {
        Heading(reach.structure, Modifier.padding(EDGE, 8.dp, EDGE, 0.dp))
        Choices(shell, reach.ways)
    }
    Say(state.always, Modifier.padding(EDGE, 12.dp))
}

/** What forbids climbing now. */
@Composable
private fun Stop(stop: Row) = Column(
    Modifier.fillMaxWidth().padding(12.dp, 6.dp).border(4.dp, LocalColours.current.ink, RoundedCornerShape(CORNER)).padding(12.dp, 8.dp)
        .semantics(mergeDescendants = true) { liveRegion = LiveRegionMode.Polite },
) {
    Say(stop.title, size = LocalSizes.current.word, bold = true)
    Say(stop.says)
}

/** The caution first, then what the rule says, then what to measure. */
@Composable
private fun LadderStands(check: LadderCheck, shell: Shell) {
    Say(check.caution, Modifier.padding(EDGE, 10.dp))
    check.says.forEach { Say(it, Modifier.padding(EDGE, 4.dp), LocalSizes.current.word, bold = true) }
    FoldedForm(shell, check.form)
}

@Composable
private fun Check(check: CheckRow, shell: Shell) = Column(Modifier.semantics { isTraversalGroup = true }) {
    Say(check.asks, Modifier.padding(EDGE, 10.dp, EDGE, 0.dp), LocalSizes.current.word, bold = true)
    Choices(shell, listOf(check.yes, check.no))
    Rule(THIN)
}
