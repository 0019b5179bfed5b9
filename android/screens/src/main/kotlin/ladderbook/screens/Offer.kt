package ladderbook.screens

import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.unit.dp
import androidx.compose.ui.unit.sp
import ladderbook.core.CourseBlock
import ladderbook.core.OfferState
import ladderbook.core.Sum

/** What it costs, in order of time. */
@Composable
fun Offer(state: OfferState, shell: Shell) = Page(
    shell,
    hand = listOf(inHand(shell, state.back)) + listOfNotNull(state.main?.let { inHand(shell, it, main = true) }),
    head = { Title(state.under, state.title) },
) {
    Say(state.put, Modifier.padding(EDGE))
    state.trouble?.let { Against(it) }
    state.courses.forEach { Course(it) }
    state.nevertheless.forEach { FoldedForm(shell, it) }
    state.worksheet?.let { FoldedForm(shell, it) }
    SectionHeading(state.takesTitle)
    Rows(shell, state.takes)
    if (state.weighs.isNotEmpty()) {
        SectionHeading(state.weighsTitle)
        Facts(state.weighs)
    }
    TapButton(shell, state.roof, Modifier.fillMaxWidth().padding(EDGE))
}

@Composable
private fun Course(course: CourseBlock) {
    Column(Modifier.fillMaxWidth().padding(EDGE, 12.dp), Arrangement.spacedBy(4.dp)) {
        Heading(course.`when`, size = 18.sp, colour = LocalColours.current.chalk)
        Say(course.what, size = 25.sp, bold = true)
        course.until?.let { Say(it, bold = true) }
        course.price?.let { Say(it, size = 25.sp, bold = true) }
        course.unpriced.forEach { Say(it, bold = true, colour = LocalColours.current.chalk) }
        course.beside.forEach { Say(it) }
        Listed(course.includesTitle, course.includes)
        Listed(course.leavesTitle, course.leaves)
    }
    Fold(course.madeTitle) { course.made.forEach { Amount(it) } }
    Rule(LINE)
}

@Composable
private fun Listed(title: String, lines: List<String>) {
    if (lines.isEmpty()) return
    Heading(title, Modifier.padding(top = 8.dp), 20.sp)
    lines.forEach { Task(it) }
}

@Composable
private fun Amount(sum: Sum) {
    Row(Modifier.fillMaxWidth().padding(0.dp, 6.dp).semantics(mergeDescendants = true) {}, Arrangement.spacedBy(GAP)) {
        Say(sum.says, Modifier.weight(1f))
        Say(sum.amount, bold = true)
    }
    Rule(THIN)
}
