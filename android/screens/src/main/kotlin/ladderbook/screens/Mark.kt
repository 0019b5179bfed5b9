package ladderbook.screens

import androidx.compose.foundation.background
import androidx.compose.foundation.border
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.shape.RoundedCornerShape
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.isTraversalGroup
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import ladderbook.core.DefectRow
import ladderbook.core.MarkState
import ladderbook.core.QuestionRow
import ladderbook.core.Row as Line

/** One part. */
@Composable
fun Mark(state: MarkState, shell: Shell) = Page(
    shell,
    hand = listOf(inHand(shell, state.back), inHand(shell, state.shutter), inHand(shell, state.undo)),
    sizes = ON_THE_LADDER,
    head = { Title(state.under, state.title) },
) {
    state.then?.let { ThenStrip(it) }
    Choices(shell, state.rungs)
    state.named.forEach { Named(it, shell) }
    SectionHeading(state.defectsTitle)
    Choices(shell, state.defects, columns = 1)
    SectionHeading(state.familiesTitle)
    Choices(shell, state.families)
    state.questions.forEach { Asked(it, shell) }
    if (state.seen.isNotEmpty()) {
        SectionHeading(state.seenTitle)
        Choices(shell, state.seen)
    }
    Fold(state.notSeenTitle) { Choices(shell, state.notSeen, columns = 1) }
    Facts(state.facts)
    Pictures(shell, state.pictures)
    state.forms.forEach { FoldedForm(shell, it) }
}

@Composable
private fun ThenStrip(then: Line) {
    Row(
        Modifier.fillMaxWidth().background(LocalColours.current.mist).padding(EDGE, GAP).semantics(mergeDescendants = true) {},
        Arrangement.spacedBy(14.dp), Alignment.CenterVertically,
    ) {
        then.ladder?.let { LadderPicture(it, 40.dp) }
        Column {
            Say(then.title, bold = true)
            Say(then.says)
        }
    }
    Rule(LINE)
}

/** A defect that is named: what it is, how far it reaches, what to advise. */
@Composable
private fun Named(row: DefectRow, shell: Shell) = Column(
    Modifier.fillMaxWidth().padding(12.dp, 6.dp).border(LINE, LocalColours.current.chalk, RoundedCornerShape(CORNER)).padding(bottom = 6.dp)
        .semantics { isTraversalGroup = true },
) {
    SectionHeading(row.name)
    Say(row.what, Modifier.padding(EDGE, 0.dp, EDGE, 6.dp))
    Say(row.photo, Modifier.padding(EDGE, 0.dp, EDGE, 6.dp))
    Choices(shell, row.extents + row.remove)
    if (row.advise.isNotEmpty()) Fold(row.adviseTitle) { Choices(shell, row.advise, columns = 1) }
}

@Composable
private fun Asked(question: QuestionRow, shell: Shell) = Column(Modifier.semantics { isTraversalGroup = true }) {
    Say(question.asks, Modifier.padding(EDGE, GAP, EDGE, 0.dp), LocalSizes.current.word, bold = true)
    Choices(shell, question.answers)
    Rule(THIN)
}
