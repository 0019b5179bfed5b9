package ladderbook.screens

import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.unit.dp
import ladderbook.core.OutcomeState
import ladderbook.core.Told

/** What came of the letter, and what to come back to. */
@Composable
fun Outcome(state: OutcomeState, shell: Shell) = Page(
    shell,
    hand = listOf(inHand(shell, state.back)),
    head = { Title(state.under, state.title) },
) {
    SectionHeading(state.record.title)
    Fields(shell, state.record)
    state.told.forEach { Came(it, shell) }
    SectionHeading(state.remindersTitle)
    state.reminders.forEach { RowWithButton(shell, it.row, it.done) }
    FoldedForm(shell, state.remind)
}

@Composable
private fun Came(told: Told, shell: Shell) = Column {
    Rows(shell, listOf(told.row))
    Pictures(shell, told.pictures)
    told.shutter?.let { shutter -> Key(shutter.label, Modifier.fillMaxWidth().padding(EDGE, 4.dp)) { shell.shoot(shutter) } }
}
