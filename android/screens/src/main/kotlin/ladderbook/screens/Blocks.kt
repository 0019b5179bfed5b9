package ladderbook.screens

import androidx.compose.foundation.background
import androidx.compose.foundation.border
import androidx.compose.foundation.clickable
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.ColumnScope
import androidx.compose.foundation.layout.IntrinsicSize
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxHeight
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.height
import androidx.compose.foundation.layout.heightIn
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.shape.RoundedCornerShape
import androidx.compose.runtime.Composable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.remember
import androidx.compose.runtime.setValue
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.draw.clip
import androidx.compose.ui.graphics.Color
import androidx.compose.ui.semantics.Role
import androidx.compose.ui.semantics.clearAndSetSemantics
import androidx.compose.ui.semantics.collapse
import androidx.compose.ui.semantics.expand
import androidx.compose.ui.semantics.selected
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.text.style.TextAlign
import androidx.compose.ui.text.style.TextDecoration
import androidx.compose.ui.unit.TextUnit
import androidx.compose.ui.unit.dp
import androidx.compose.ui.unit.sp
import ladderbook.core.Button
import ladderbook.core.Shutter
import ladderbook.core.Row as Line

/** How tall a ladder on a button or row is. */
private val TALL = 46.dp
private val SHAPE = RoundedCornerShape(CORNER)

/** A button of a screen. */
@Composable
fun TapButton(shell: Shell, button: Button, modifier: Modifier = Modifier, main: Boolean = false, wide: Boolean = false) {
    val colours = LocalColours.current
    val (face, back) = when {
        button.chosen -> colours.onChalk to colours.chalk
        main -> colours.paper to colours.ink
        else -> colours.ink to colours.paper
    }
    Row(
        modifier.heightIn(min = LocalSizes.current.target).clip(SHAPE).background(back)
            .border(LINE, if (button.chosen) colours.chalk else colours.ink, SHAPE)
            .clickable(role = Role.Button) { shell.tap(button) }
            .semantics { if (button.chosen) selected = true }
            .padding(GAP, 8.dp),
        Arrangement.spacedBy(GAP, if (wide) Alignment.Start else Alignment.CenterHorizontally),
        Alignment.CenterVertically,
    ) {
        button.ladder?.let { LadderPicture(it, TALL, face) }
        Column(Modifier.weight(1f, fill = wide)) {
            val align = if (wide || button.ladder != null) TextAlign.Start else TextAlign.Center
            Say(button.label, size = LocalSizes.current.word, bold = true, colour = face, align = align)
            button.note?.let { Say(it, colour = face, align = align) }
        }
        if (button.chosen) Tick(face)
    }
}

/** What is chosen is told by a tick too, not by colour alone. */
@Composable
private fun Tick(colour: Color) =
    Say("✓", Modifier.clearAndSetSemantics {}, LocalSizes.current.word, bold = true, colour = colour)

/** A button of the hand: its word shrinks before it breaks. */
@Composable
fun HandButton(shell: Shell, button: Button, modifier: Modifier, main: Boolean = false) = Key(button.label, modifier, main) { shell.tap(button) }

fun inHand(shell: Shell, button: Button, main: Boolean = false) = InHand(main) { HandButton(shell, button, it, main) }

/** The shutter: large, black, under the thumb. */
fun inHand(shell: Shell, shutter: Shutter) = InHand(main = true, tall = true) { modifier ->
    Key(shutter.label, modifier, main = true, size = 27.sp) { shell.shoot(shutter) }
}

/** A word to tap that is the phone's own, or of the hand. */
@Composable
fun Key(label: String, modifier: Modifier = Modifier, main: Boolean = false, size: TextUnit = 21.sp, tap: () -> Unit) {
    val colours = LocalColours.current
    Box(
        modifier.heightIn(min = 72.dp).clip(SHAPE).background(if (main) colours.ink else colours.paper).border(LINE, colours.ink, SHAPE)
            .clickable(role = Role.Button, onClick = tap).padding(4.dp, 6.dp),
        Alignment.Center,
    ) { Fitting(label, size, if (main) colours.paper else colours.ink) }
}

/** Buttons in columns, as many as fit. */
@Composable
fun Choices(shell: Shell, buttons: List<Button>, columns: Int = 2) =
    Grid(buttons, columns) { button, modifier -> TapButton(shell, button, modifier, wide = columns == 1 || button.ladder != null) }

@Composable
fun <T> Grid(all: List<T>, columns: Int, cell: @Composable (T, Modifier) -> Unit) {
    val across = if (wordsAreLarge()) 1 else columns
    Column(Modifier.fillMaxWidth().padding(12.dp, 6.dp), Arrangement.spacedBy(GAP)) {
        for (row in all.chunked(across)) {
            Row(Modifier.height(IntrinsicSize.Min), Arrangement.spacedBy(GAP)) {
                row.forEach { cell(it, Modifier.weight(1f).fillMaxHeight()) }
                repeat(across - row.size) { Box(Modifier.weight(1f)) }
            }
        }
    }
}

/** What is opened with a tap on its title. */
@Composable
fun Fold(title: String, modifier: Modifier = Modifier, content: @Composable ColumnScope.() -> Unit) {
    var open by remember(title) { mutableStateOf(false) }
    val colours = LocalColours.current
    Column(modifier.fillMaxWidth().padding(12.dp, 5.dp)) {
        Row(
            Modifier.fillMaxWidth().heightIn(min = LocalSizes.current.target).clip(SHAPE).border(LINE, colours.ink, SHAPE)
                .clickable(role = Role.Button) { open = !open }
                .semantics { if (open) collapse { open = false; true } else expand { open = true; true } }
                .padding(12.dp, 8.dp),
            Arrangement.spacedBy(GAP), Alignment.CenterVertically,
        ) {
            Say(title, Modifier.weight(1f), LocalSizes.current.word, bold = true)
            Say(if (open) "–" else "+", Modifier.clearAndSetSemantics {}, 30.sp, bold = true)
        }
        if (open) content()
    }
}

/** A list of rows. */
@Composable
fun Rows(shell: Shell, rows: List<Line>) = Column(Modifier.padding(EDGE, 0.dp)) {
    for (row in rows) {
        RowLine(shell, row)
        Rule(THIN)
    }
}

@Composable
private fun RowLine(shell: Shell, row: Line) {
    val tap = row.tap
    val modifier = if (tap == null) Modifier.semantics(mergeDescendants = true) {} else Modifier.clickable(role = Role.Button) { shell.tap(tap) }
    Row(
        modifier.fillMaxWidth().heightIn(min = 60.dp).padding(0.dp, 8.dp),
        Arrangement.spacedBy(14.dp), Alignment.CenterVertically,
    ) {
        row.ladder?.let { LadderPicture(it, TALL) }
        Column(Modifier.weight(1f)) {
            Say(row.title, size = 22.sp, bold = true)
            if (row.says.isNotEmpty()) Say(row.says)
        }
        if (tap != null) Say("›", Modifier.clearAndSetSemantics {}, 34.sp, bold = true)
    }
}

/** A line with a button that ends it: a reminder, a twin. */
@Composable
fun RowWithButton(shell: Shell, row: Line, button: Button) = Column(Modifier.padding(EDGE, 8.dp), Arrangement.spacedBy(8.dp)) {
    val tap = row.tap
    Column(if (tap == null) Modifier.semantics(mergeDescendants = true) {} else Modifier.clickable { shell.tap(tap) }.heightIn(min = 48.dp)) {
        Say(row.title, size = 22.sp, bold = true, line = TextDecoration.Underline.takeIf { tap != null })
        if (row.says.isNotEmpty()) Say(row.says)
    }
    TapButton(shell, button, Modifier.fillMaxWidth())
    Rule(THIN)
}

/** Lines of facts, each under a thin rule. */
@Composable
fun Facts(facts: List<String>) = Column(Modifier.padding(EDGE, 0.dp)) {
    for (fact in facts) {
        Say(fact, Modifier.padding(0.dp, 6.dp), LocalSizes.current.small)
        Rule(THIN)
    }
}

/** What goes against something: bold and in chalk. */
@Composable
fun Against(text: String, size: TextUnit = LocalSizes.current.small) =
    Say(text, Modifier.padding(EDGE, 10.dp), size, bold = true, colour = LocalColours.current.chalk)

/** A danger: it stands at the top, with a mark. */
@Composable
fun Danger(text: String) {
    Say("! $text", Modifier.padding(EDGE, 12.dp), LocalSizes.current.word, bold = true)
    Rule(LINE)
}

@Composable
fun SectionHeading(text: String) = Heading(text, Modifier.padding(EDGE, 14.dp, EDGE, 6.dp))
