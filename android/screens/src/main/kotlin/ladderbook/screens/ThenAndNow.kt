package ladderbook.screens

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.layout.widthIn
import androidx.compose.runtime.Composable
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.clearAndSetSemantics
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import androidx.compose.ui.unit.sp
import ladderbook.core.Changed
import ladderbook.core.ThenAndNowState

/** What changed, worst first. */
@Composable
fun ThenAndNow(state: ThenAndNowState, shell: Shell) = Page(
    shell,
    hand = listOf(inHand(shell, state.back), inHand(shell, state.main, main = true)),
    head = { Title(state.under, state.title) },
) {
    state.changed.forEach { ChangedPart(it, shell) }
    state.quiet?.let { Say(it, Modifier.padding(EDGE)) }
}

@Composable
private fun ChangedPart(changed: Changed, shell: Shell) = Column {
    val modifier = Modifier.fillMaxWidth().padding(EDGE, 12.dp, EDGE, 4.dp).semantics(mergeDescendants = true) {}
    if (wordsAreLarge()) {
        Column(modifier) {
            Ladders(changed)
            Tells(changed, Modifier.fillMaxWidth())
        }
    } else {
        Row(modifier, Arrangement.spacedBy(14.dp)) {
            Ladders(changed)
            Tells(changed, Modifier.weight(1f))
        }
    }
    NamedPictures(shell, listOfNotNull(changed.pictureThen, changed.pictureNow))
    changed.correct?.let { FoldedForm(shell, it) }
    Rule(LINE)
}

@Composable
private fun Ladders(changed: Changed) =
    Row(Modifier.widthIn(min = 92.dp), Arrangement.spacedBy(4.dp, Alignment.CenterHorizontally), Alignment.CenterVertically) {
        changed.then?.let {
            LadderPicture(it, 46.dp)
            Say("→", Modifier.clearAndSetSemantics {}, 22.sp, bold = true)
        }
        LadderPicture(changed.now, 46.dp)
    }

@Composable
private fun Tells(changed: Changed, modifier: Modifier) = Column(modifier) {
    Say(changed.part, size = 22.sp, bold = true)
    Say(changed.became, size = 20.sp, bold = true, colour = LocalColours.current.chalk)
    changed.says.forEach { Say(it) }
}
