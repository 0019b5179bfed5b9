package ladderbook.app

import android.os.Bundle
import android.view.KeyEvent
import androidx.activity.ComponentActivity
import androidx.activity.compose.BackHandler
import androidx.activity.compose.setContent
import androidx.activity.enableEdgeToEdge
import androidx.activity.viewModels
import androidx.compose.foundation.background
import androidx.compose.foundation.isSystemInDarkTheme
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Box
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.fillMaxSize
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.imePadding
import androidx.compose.foundation.layout.padding
import androidx.compose.foundation.layout.safeDrawingPadding
import androidx.compose.runtime.Composable
import androidx.compose.runtime.LaunchedEffect
import androidx.compose.ui.Modifier
import androidx.compose.ui.text.font.Font
import androidx.compose.ui.text.font.FontFamily
import androidx.compose.ui.text.font.FontWeight
import ladderbook.core.phoneWords
import ladderbook.screens.EDGE
import ladderbook.screens.Key
import ladderbook.screens.LocalColours
import ladderbook.screens.R
import ladderbook.screens.Say
import ladderbook.screens.Screens
import ladderbook.screens.Theme

private val ATKINSON = FontFamily(
    Font(R.font.atkinson_hyperlegible_regular, FontWeight.Normal),
    Font(R.font.atkinson_hyperlegible_bold, FontWeight.Bold),
)

/** The one window. It draws the shell's screen, lends the phone its dialogs, and hands the volume key to the shutter. */
class MainActivity : ComponentActivity() {
    private val keeping by viewModels<Keeping>()
    private val app get() = application as LadderbookApp
    val permissions = Permissions(this)

    override fun onCreate(saved: Bundle?) {
        super.onCreate(saved)
        enableEdgeToEdge()
        setContent {
            val dusk = keeping.shell?.dusk == true
            Theme(dusk, ATKINSON) {
                Box(Modifier.fillMaxSize().background(LocalColours.current.paper).safeDrawingPadding().imePadding()) { Window() }
            }
        }
    }

    @Composable
    private fun Window() {
        val shell = keeping.shell ?: return Opening()
        val dark = isSystemInDarkTheme()
        LaunchedEffect(dark) { shell.dusk = dark }
        BackHandler { if (app.phone.camera.isOpen) app.phone.camera.close() else if (!shell.back()) moveTaskToBack(true) }
        Screens(shell)
        if (app.phone.camera.isOpen) Viewfinder(app.phone.camera, shell)
    }

    /** While the book is opened, and where it does not open. */
    @Composable
    private fun Opening() = Column(Modifier.fillMaxSize().padding(EDGE), Arrangement.spacedBy(EDGE)) {
        val words = phoneWords(app.language)
        Say(keeping.trouble ?: words.opening, bold = true)
        if (keeping.trouble != null) Key(words.again, Modifier.fillMaxWidth()) { keeping.open() }
    }

    override fun onStart() {
        super.onStart()
        app.phone.activity = this
    }

    /** The phone may end the process from here on. */
    override fun onPause() {
        keeping.shell?.keepDrafts()
        super.onPause()
    }

    override fun onStop() {
        if (app.phone.activity === this) app.phone.activity = null
        super.onStop()
    }

    /** The volume key is the shutter wherever there is one; elsewhere it stays what it is. */
    override fun onKeyDown(key: Int, event: KeyEvent): Boolean {
        val shell = keeping.shell
        val shutter = shell?.shutter()
        val volume = key == KeyEvent.KEYCODE_VOLUME_UP || key == KeyEvent.KEYCODE_VOLUME_DOWN
        if (!volume || shutter == null) return super.onKeyDown(key, event)
        if (event.repeatCount == 0) press { shell.shoot(shutter) }
        return true
    }

    /** First it opens the viewfinder, then it takes the picture. */
    private fun press(open: () -> Unit) {
        val camera = app.phone.camera
        if (camera.isOpen) camera.take() else open()
    }

    override fun onKeyUp(key: Int, event: KeyEvent): Boolean {
        val volume = key == KeyEvent.KEYCODE_VOLUME_UP || key == KeyEvent.KEYCODE_VOLUME_DOWN
        return if (volume && keeping.shell?.shutter() != null) true else super.onKeyUp(key, event)
    }
}
