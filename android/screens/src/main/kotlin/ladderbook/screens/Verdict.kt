package ladderbook.screens

import androidx.compose.foundation.background
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.IntrinsicSize
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxHeight
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.height
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.layout.width
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.draw.drawBehind
import androidx.compose.ui.geometry.Offset
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.text.style.TextDecoration
import androidx.compose.ui.unit.dp
import androidx.compose.ui.unit.sp
import ladderbook.core.Reason
import ladderbook.core.RefusedBlock
import ladderbook.core.StepBlock
import ladderbook.core.VerdictState

/** What to do, read in time; what is refused is struck through; then the look that could change it. */
@Composable
fun Verdict(state: VerdictState, shell: Shell) = Page(
    shell,
    hand = listOf(inHand(shell, state.back), inHand(shell, state.main, main = true)),
    head = { Title(state.under, state.title) },
) {
    if (state.structures.size > 1) {
        Choices(shell, state.structures)
        Rule(LINE)
    }
    state.steps.forEach { Step(it) }
    state.refused.forEach { Refused(it) }
    if (state.look.isNotEmpty()) {
        SectionHeading(state.lookTitle)
        Rows(shell, state.look)
        state.turnsTo?.let { Say(it, Modifier.padding(EDGE, 8.dp), bold = true) }
    }
    if (state.cautions.isNotEmpty()) {
        SectionHeading(state.cautionsTitle)
        Facts(state.cautions)
    }
    Facts(state.limits)
    if (state.unseen.isNotEmpty()) Fold(state.unseenTitle) { Facts(state.unseen) }
    TapButton(shell, state.offer, Modifier.fillMaxWidth().padding(EDGE, GAP))
}

@Composable
private fun Step(step: StepBlock) {
    Column(Modifier.fillMaxWidth().padding(EDGE, 12.dp), Arrangement.spacedBy(4.dp)) {
        Heading(step.`when`, size = 18.sp, colour = LocalColours.current.chalk)
        Say(step.what, size = 25.sp, bold = true)
        step.until?.let { Say(it, bold = true) }
        step.tasks.forEach { Task(it) }
        step.why.forEach { Why(it) }
    }
    step.whyMore?.let { title ->
        Fold(title) { Column(Modifier.padding(0.dp, 8.dp), Arrangement.spacedBy(8.dp)) { step.whyRest.forEach { Why(it) } } }
    }
    Rule(LINE)
}

/** One thing to do, behind an upright line. */
@Composable
fun Task(task: String) = Row(Modifier.height(IntrinsicSize.Min).padding(0.dp, 4.dp), Arrangement.spacedBy(12.dp)) {
    Box(Modifier.width(5.dp).fillMaxHeight().background(LocalColours.current.ink))
    Say(task, size = 20.sp, bold = true)
}

@Composable
private fun Why(why: Reason) = Column(Modifier.padding(top = 4.dp).semantics(mergeDescendants = true) {}) {
    Say(why.says)
    if (why.source.isNotEmpty()) Say("— ${why.source}", size = 16.sp)
}

@Composable
private fun Refused(refused: RefusedBlock) {
    val hatch = LocalColours.current.hatch
    Column(
        Modifier.fillMaxWidth().drawBehind {
            val step = 18.dp.toPx()
            var x = -size.height
            while (x < size.width) {
                drawLine(hatch, Offset(x, size.height), Offset(x + size.height, 0f), 2.dp.toPx())
                x += step
            }
        }.padding(EDGE, 12.dp),
        Arrangement.spacedBy(4.dp),
    ) {
        Heading(refused.label, size = 18.sp)
        Say(refused.what, size = 25.sp, bold = true, line = TextDecoration.LineThrough)
        refused.why.forEach { Why(it) }
    }
    Rule(LINE)
}
