package ladderbook.screens

import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import ladderbook.core.RemindersState

/** What to come back to. */
@Composable
fun Reminders(state: RemindersState, shell: Shell) = Page(
    shell,
    hand = listOf(
        inHand(shell, state.back),
        InHand(main = true) { modifier -> Key(state.calendar, modifier, main = true) { shell.shareCalendar() } },
    ),
    head = { Title("", state.title) },
) {
    state.none?.let { Say(it, Modifier.padding(EDGE)) }
    state.rows.forEach { RowWithButton(shell, it.row, it.done) }
}
