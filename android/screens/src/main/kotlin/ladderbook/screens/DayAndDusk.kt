package ladderbook.screens

import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import ladderbook.core.PhoneWords

/** White on black after dusk, with one tap. */
@Composable
fun DayAndDusk(shell: Shell, words: PhoneWords) =
    Key(if (shell.dusk) words.day else words.dusk, Modifier.padding(EDGE).fillMaxWidth()) { shell.dusk = !shell.dusk }
