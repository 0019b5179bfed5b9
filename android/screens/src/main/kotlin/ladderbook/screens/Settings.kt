package ladderbook.screens

import androidx.compose.runtime.Composable
import ladderbook.core.SettingsState

/** The firm, the code, the policy. */
@Composable
fun Settings(state: SettingsState, shell: Shell) = Page(
    shell,
    hand = listOf(inHand(shell, state.back)),
    head = { Title("", state.title) },
) {
    for (form in state.forms) {
        SectionHeading(form.title)
        Fields(shell, form)
    }
}
