package ladderbook.screens

import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import ladderbook.core.LeakState

/** The suspects, the likeliest first. */
@Composable
fun Leak(state: LeakState, shell: Shell) = Page(
    shell,
    hand = listOf(inHand(shell, state.back)),
    head = { Title(state.under, state.title) },
) {
    state.how?.let { Say(it, Modifier.padding(EDGE)) }
    state.ask?.let { Fields(shell, it) }
    state.plan?.let { Plan(it) }
    if (state.suspects.isNotEmpty()) SectionHeading(state.suspectsTitle)
    for (suspect in state.suspects) {
        Rows(shell, listOf(suspect.row))
        Facts(suspect.why)
    }
    state.caution?.let { Danger(it) }
    state.again?.let { FoldedForm(shell, it) }
}
