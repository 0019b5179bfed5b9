package ladderbook.screens

import androidx.compose.foundation.background
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import androidx.compose.ui.unit.sp
import ladderbook.core.Asked
import ladderbook.core.DoorstepState
import ladderbook.core.Then

/** A door plate: the address large; what they ask now over what was said then; what to look at again. */
@Composable
fun Doorstep(state: DoorstepState, shell: Shell) = Page(
    shell,
    hand = state.doors.take(1).map { inHand(shell, it) } + listOfNotNull(state.main?.let { inHand(shell, it, main = true) }),
    head = {
        Heading(state.address, size = 40.sp)
        Say(state.under, size = 19.sp)
    },
) {
    state.dangers.forEach { Danger(it) }
    state.asked?.let { Asks(it) }
    state.then?.let { SaidThen(it) }
    if (state.lookAgain.isNotEmpty()) {
        SectionHeading(state.lookTitle)
        Rows(shell, state.lookAgain)
        state.lookMore?.let { Fold(it) { Rows(shell, state.lookRest) } }
    }
    for (line in state.lines) {
        Column(Modifier.padding(EDGE, 10.dp).semantics(mergeDescendants = true) {}) {
            Say(line.title, bold = true)
            Say(line.says, size = 20.sp)
        }
    }
    state.open?.let {
        SectionHeading(it.title)
        Fields(shell, it)
    }
    Choices(shell, state.doors.drop(1))
}

@Composable
private fun Asks(asked: Asked) {
    Column(Modifier.fillMaxWidth().padding(EDGE, 12.dp)) {
        Heading(asked.title, size = 18.sp)
        Say(asked.words, size = 25.sp, bold = true)
    }
    Rule(LINE)
}

@Composable
private fun SaidThen(then: Then) {
    Column(Modifier.fillMaxWidth().background(LocalColours.current.mist).padding(EDGE, 12.dp), Arrangement.spacedBy(4.dp)) {
        Heading(then.title, size = 18.sp)
        Say(then.said, size = 25.sp, bold = true)
        then.contradicts?.let { Say(it, size = 21.sp, bold = true, colour = LocalColours.current.chalk) }
        then.why.forEach { Say(it) }
    }
    Rule(LINE)
}
