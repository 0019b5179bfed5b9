package ladderbook.screens

import androidx.compose.foundation.background
import androidx.compose.foundation.border
import androidx.compose.foundation.clickable
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.heightIn
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.selection.selectable
import androidx.compose.foundation.shape.RoundedCornerShape
import androidx.compose.foundation.text.BasicTextField
import androidx.compose.foundation.text.KeyboardOptions
import androidx.compose.runtime.Composable
import androidx.compose.runtime.MutableState
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.remember
import androidx.compose.runtime.setValue
import androidx.compose.ui.Alignment
import androidx.compose.ui.Modifier
import androidx.compose.ui.draw.clip
import androidx.compose.ui.focus.onFocusChanged
import androidx.compose.ui.graphics.SolidColor
import androidx.compose.ui.semantics.Role
import androidx.compose.ui.semantics.clearAndSetSemantics
import androidx.compose.ui.semantics.contentDescription
import androidx.compose.ui.semantics.semantics
import androidx.compose.ui.semantics.stateDescription
import androidx.compose.ui.text.input.KeyboardType
import androidx.compose.ui.unit.dp
import androidx.compose.ui.unit.sp
import ladderbook.core.Choice
import ladderbook.core.Field
import ladderbook.core.FieldKind
import ladderbook.core.Filled
import ladderbook.core.Form

private val SHAPE = RoundedCornerShape(CORNER)

/** A form behind its title. */
@Composable
fun FoldedForm(shell: Shell, form: Form) = Fold(form.title) { Fields(shell, form, edge = 0) }

/** A form with its fields. Half-typed words are kept as they are typed. */
@Composable
fun Fields(shell: Shell, form: Form, edge: Int = 16) {
    val typed = form.fields.map { it to typedIn(shell, form, it) }
    Column(Modifier.fillMaxWidth().padding(edge.dp, 8.dp), Arrangement.spacedBy(12.dp)) {
        for ((field, text) in typed) {
            OneField(shell, field, text.value) {
                text.value = it
                shell.draft(form, field.name, it)
            }
        }
        Key(form.submit, Modifier.fillMaxWidth(), main = true) {
            shell.submit(form, typed.map { (field, text) -> Filled(field.name, text.value) })
        }
    }
}

/** What stands in a field: what the core knows of it, until something is typed; anew once its form was sent. */
@Composable
private fun typedIn(shell: Shell, form: Form, field: Field): MutableState<String> {
    val first = (field.kind as? FieldKind.OneOf)?.choices?.let { choices ->
        (choices.find { it.value == field.value } ?: choices.firstOrNull())?.value
    }
    return remember(form.title, field.name, field.value, shell.timesSent(form.title)) { mutableStateOf(first ?: field.value) }
}

@Composable
private fun OneField(shell: Shell, field: Field, value: String, type: (String) -> Unit) = Column(Modifier.fillMaxWidth()) {
    Say(field.label, Modifier.padding(bottom = 4.dp).clearAndSetSemantics {}, bold = true)
    when (val kind = field.kind) {
        is FieldKind.OneOf -> OneOf(field.label, kind.choices, value, type)
        is FieldKind.Words -> {
            Typing(field.label, value, lines = 3, type = type)
            shell.words?.let { words ->
                Key(words.dictate, Modifier.padding(top = 8.dp).fillMaxWidth()) {
                    shell.listen { heard -> type(listOf(value, heard).filter { it.isNotBlank() }.joinToString(" ")) }
                }
            }
        }
        is FieldKind.Position -> {
            var failed by remember { mutableStateOf(false) }
            Typing(field.label, value, type = type)
            Key(kind.here, Modifier.padding(top = 8.dp).fillMaxWidth()) { shell.here({ failed = false; type(it) }) { failed = true } }
            if (failed) Say(kind.failed, Modifier.padding(top = 4.dp))
        }
        is FieldKind.Inclination -> {
            Typing(field.label, value, type = type)
            shell.words?.let { words -> Key(words.lay, Modifier.padding(top = 8.dp).fillMaxWidth()) { shell.lean(value, type) } }
        }
        is FieldKind.Day -> Typing(field.label, value, KeyboardType.Number, focused = { shell.phone.pickDay(value, type) }, type = type)
        is FieldKind.Phone -> Typing(field.label, value, KeyboardType.Phone, type = type)
        is FieldKind.Line -> Typing(field.label, value, type = type)
    }
}

@Composable
private fun Typing(
    label: String,
    value: String,
    keyboard: KeyboardType = KeyboardType.Text,
    lines: Int = 1,
    focused: () -> Unit = {},
    type: (String) -> Unit,
) {
    val colours = LocalColours.current
    BasicTextField(
        value, type,
        Modifier.fillMaxWidth().semantics { contentDescription = label }.onFocusChanged { if (it.isFocused) focused() },
        textStyle = style(maxOf(22f, LocalSizes.current.small.value).sp),
        keyboardOptions = KeyboardOptions(keyboardType = keyboard),
        singleLine = lines == 1,
        minLines = lines,
        cursorBrush = SolidColor(colours.chalk),
        decorationBox = { inner ->
            Box(
                Modifier.fillMaxWidth().heightIn(min = LocalSizes.current.target).border(LINE, colours.ink, SHAPE).padding(12.dp, 10.dp),
                if (lines == 1) Alignment.CenterStart else Alignment.TopStart,
            ) { inner() }
        },
    )
}

/** One of several: what is chosen, and with a tap all of them. */
@Composable
private fun OneOf(label: String, choices: List<Choice>, value: String, choose: (String) -> Unit) {
    val colours = LocalColours.current
    var open by remember { mutableStateOf(false) }
    val chosen = choices.find { it.value == value }?.label.orEmpty()
    Row(
        Modifier.fillMaxWidth().heightIn(min = LocalSizes.current.target).clip(SHAPE).border(LINE, colours.ink, SHAPE)
            .clickable(role = Role.DropdownList) { open = !open }
            .semantics { contentDescription = label; stateDescription = chosen }
            .padding(12.dp, 8.dp),
        Arrangement.spacedBy(GAP), Alignment.CenterVertically,
    ) {
        Say(chosen, Modifier.weight(1f), maxOf(22f, LocalSizes.current.small.value).sp)
        Say(if (open) "–" else "+", Modifier.clearAndSetSemantics {}, 30.sp, bold = true)
    }
    if (open) {
        Column(Modifier.padding(start = 12.dp)) {
            for (choice in choices) {
                Row(
                    Modifier.fillMaxWidth().heightIn(min = LocalSizes.current.target)
                        .background(if (choice.value == value) colours.mist else colours.paper)
                        .selectable(choice.value == value, role = Role.RadioButton) {
                            choose(choice.value)
                            open = false
                        }.padding(12.dp, 8.dp),
                    verticalAlignment = Alignment.CenterVertically,
                ) {
                    Say(choice.label, Modifier.weight(1f), LocalSizes.current.word, bold = choice.value == value)
                    if (choice.value == value) Say("✓", Modifier.clearAndSetSemantics {}, LocalSizes.current.word, bold = true)
                }
                Rule(THIN)
            }
        }
    }
}
