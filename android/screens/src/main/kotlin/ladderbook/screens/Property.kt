package ladderbook.screens

import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.unit.dp
import ladderbook.core.PropertyState

/** What stands there, who lives there, what else it is called. */
@Composable
fun Property(state: PropertyState, shell: Shell) = Page(
    shell,
    hand = listOf(inHand(shell, state.back)),
    head = { Title(state.address, state.title) },
) {
    state.place.forEach { FoldedForm(shell, it) }
    if (state.also.isNotEmpty()) {
        SectionHeading(state.alsoTitle)
        Rows(shell, state.also)
    }
    SectionHeading(state.peopleTitle)
    state.people.forEach { FoldedForm(shell, it) }
    SectionHeading(state.structuresTitle)
    state.structures.forEach { FoldedForm(shell, it) }
    SectionHeading(state.sameTitle)
    state.joined.forEach { RowWithButton(shell, it.row, it.tap) }
    Fields(shell, state.same)
    state.none?.let { Say(it, Modifier.padding(EDGE, 8.dp)) }
    state.found.forEach { RowWithButton(shell, it.row, it.tap) }
    SectionHeading(state.erase.title)
    Say(state.eraseSays, Modifier.padding(EDGE, 0.dp))
    FoldedForm(shell, state.erase)
}
