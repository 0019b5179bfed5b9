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
import ladderbook.core.LetterState
import ladderbook.core.Sent

/** What the owner gets. */
@Composable
fun Letter(state: LetterState, shell: Shell) = Page(
    shell,
    hand = listOf(inHand(shell, state.back), inHand(shell, state.main, main = true)),
    head = { Title(state.under, state.title) },
) {
    state.first?.let { Against(it) }
    Choices(shell, state.acts)
    if (state.sent.isNotEmpty()) {
        SectionHeading(state.sentTitle)
        state.sent.forEach { SentLetter(it, shell) }
    }
    SectionHeading(state.previewTitle)
    for (answered in state.preview) {
        Column(Modifier.padding(EDGE, 8.dp).semantics(mergeDescendants = true) {}) {
            Say(answered.asks, bold = true)
            answered.says.forEach { Say(it, size = 20.sp) }
        }
    }
}

@Composable
private fun SentLetter(sent: Sent, shell: Shell) = Column(Modifier.fillMaxWidth().padding(EDGE, 8.dp), Arrangement.spacedBy(8.dp)) {
    Heading(sent.title)
    sent.overtaken?.let { Say(it, bold = true, colour = LocalColours.current.chalk) }
    Say(sent.text, Modifier.fillMaxWidth().background(LocalColours.current.mist).padding(14.dp, GAP))
    Key(sent.open, Modifier.fillMaxWidth()) { shell.openPaper(sent.letter) }
    shell.words?.let { Key(it.share, Modifier.fillMaxWidth()) { shell.sharePaper(sent.letter) } }
    Rule(LINE)
}
