package ladderbook.screens

import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import ladderbook.core.ArriveState

/** Find the address, or who to see today. */
@Composable
fun Arrive(state: ArriveState, shell: Shell) = Page(
    shell,
    hand = state.doors.map { inHand(shell, it) },
    head = { Title(state.firm, state.title) },
) {
    Fields(shell, state.search)
    state.none?.let { Say(it, Modifier.padding(EDGE)) }
    Rows(shell, state.found)
    state.add?.let { FoldedForm(shell, it) }
    if (state.open.isNotEmpty()) {
        SectionHeading(state.openTitle)
        Rows(shell, state.open)
    }
    if (state.today.isNotEmpty()) {
        SectionHeading(state.todayTitle)
        Rows(shell, state.today)
    }
    shell.words?.let { DayAndDusk(shell, it) }
}
