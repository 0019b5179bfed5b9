package ladderbook.screens

import androidx.compose.foundation.background
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxSize
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.runtime.key
import androidx.compose.ui.Modifier
import ladderbook.core.Screen

/** Draws the screen that the shell shows. A screen of another kind begins at its top. */
@Composable
fun Screens(shell: Shell) {
    val shown = shell.shown ?: return Opening(shell)
    key(shown.screen::class) {
        when (val screen = shown.screen) {
            is Screen.Arrive -> Arrive(screen.state, shell)
            is Screen.Doorstep -> Doorstep(screen.state, shell)
            is Screen.Property -> Property(screen.state, shell)
            is Screen.Safety -> Safety(screen.state, shell)
            is Screen.Walk -> Walk(screen.state, shell)
            is Screen.Mark -> Mark(screen.state, shell)
            is Screen.Tray -> Tray(screen.state, shell)
            is Screen.ThenAndNow -> ThenAndNow(screen.state, shell)
            is Screen.Verdict -> Verdict(screen.state, shell)
            is Screen.Roof -> Roof(screen.state, shell)
            is Screen.Leak -> Leak(screen.state, shell)
            is Screen.Offer -> Offer(screen.state, shell)
            is Screen.Letter -> Letter(screen.state, shell)
            is Screen.Outcome -> Outcome(screen.state, shell)
            is Screen.Reminders -> Reminders(screen.state, shell)
            is Screen.Settings -> Settings(screen.state, shell)
        }
    }
}

/** Before the first screen is there, and where it could not be shown. */
@Composable
private fun Opening(shell: Shell) = Column(Modifier.fillMaxSize().background(LocalColours.current.paper).padding(EDGE)) {
    shell.trouble?.let { Say(it, bold = true) }
}
