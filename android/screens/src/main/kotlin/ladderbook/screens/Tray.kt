package ladderbook.screens

import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.isTraversalGroup
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import androidx.compose.ui.unit.sp
import ladderbook.core.Loose
import ladderbook.core.TrayState

/** What is not yet tied to a part. */
@Composable
fun Tray(state: TrayState, shell: Shell) = Page(
    shell,
    hand = listOf(inHand(shell, state.back), inHand(shell, state.shutter)),
    head = { Title(state.under, state.title) },
) {
    state.empty?.let { Say(it, Modifier.padding(EDGE), 20.sp) }
    state.loose.forEach { LooseThing(it, state.tieTitle, shell) }
    if (state.half.isNotEmpty()) {
        SectionHeading(state.halfTitle)
        Rows(shell, state.half)
    }
}

@Composable
private fun LooseThing(loose: Loose, tieTitle: String, shell: Shell) = Column(Modifier.semantics { isTraversalGroup = true }) {
    loose.picture?.let { Pictures(shell, listOf(it)) }
    Say(loose.words, Modifier.padding(EDGE, 8.dp), 20.sp)
    loose.caption?.let { Fields(shell, it) }
    Fold(tieTitle) { Choices(shell, loose.tie, columns = 1) }
    Rule(LINE)
}
