package ladderbook.screens

import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.unit.dp
import ladderbook.core.EdgeRow
import ladderbook.core.RoofState

/** The plan, and measuring it. */
@Composable
fun Roof(state: RoofState, shell: Shell) = Page(
    shell,
    hand = listOf(inHand(shell, state.back), inHand(shell, state.leak, main = true)),
    head = { Title(state.under, state.title) },
) {
    if (state.structures.size > 1) {
        Choices(shell, state.structures)
        Rule(LINE)
    }
    state.none?.let { Say(it, Modifier.padding(EDGE)) }
    state.plan?.let { Plan(it) }
    Rows(shell, state.numbers)
    if (state.planes.isNotEmpty()) {
        SectionHeading(state.planesTitle)
        Rows(shell, state.planes)
        state.untied?.let { Say(it, Modifier.padding(EDGE)) }
        SectionHeading(state.linesTitle)
        Rows(shell, state.lines)
    }
    if (state.edges.isNotEmpty()) {
        SectionHeading(state.edgesTitle)
        state.edges.forEach { Edge(it, shell) }
    }
    if (state.standing.isNotEmpty()) {
        SectionHeading(state.standingTitle)
        Choices(shell, state.standing)
    }
    if (state.pitches.isNotEmpty()) {
        SectionHeading(state.pitchesTitle)
        Rows(shell, state.pitches)
    }
    state.laid?.let { laid ->
        Fold(laid.title) {
            Plan(laid.drawn)
            Rows(shell, laid.numbers)
        }
    }
    SectionHeading(state.measureTitle)
    state.forms.forEach { FoldedForm(shell, it) }
    if (state.files.isNotEmpty()) {
        SectionHeading(state.filesTitle)
        for (file in state.files) {
            Key(file.label, Modifier.fillMaxWidth().padding(12.dp, 5.dp)) { shell.sharePlan(state.structure, file.file) }
        }
    }
}

@Composable
private fun Edge(edge: EdgeRow, shell: Shell) = Fold(edge.name) {
    Choices(shell, edge.`is`)
    Say(edge.form.title, Modifier.padding(0.dp, GAP), LocalSizes.current.word, bold = true)
    Fields(shell, edge.form, edge = 0)
}
