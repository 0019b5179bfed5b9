package ladderbook.app

import android.graphics.Color
import android.os.Bundle
import android.view.KeyEvent
import androidx.activity.ComponentActivity
import androidx.activity.SystemBarStyle
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
import androidx.compose.ui.semantics.clearAndSetSemantics
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
            LaunchedEffect(dusk) { enableEdgeToEdge(bars(dusk), bars(dusk)) }
            Theme(dusk, ATKINSON) {
                Box(Modifier.fillMaxSize().background(LocalColours.current.paper).safeDrawingPadding().imePadding()) { Window() }
            }
        }
    }

    /** What the phone draws over the edges goes by the screens' day and dusk, not by the phone's. */
    private fun bars(dusk: Boolean) =
        if (dusk) SystemBarStyle.dark(Color.TRANSPARENT) else SystemBarStyle.light(Color.TRANSPARENT, Color.TRANSPARENT)

    @Composable
    private fun Window() {
        val shell = keeping.shell ?: return Opening()
        val dark = isSystemInDarkTheme()
        LaunchedEffect(dark) { shell.dusk = dark }
        val camera = app.phone.camera
        BackHandler { if (camera.open != null) camera.close() else if (!shell.back()) moveTaskToBack(true) }
        // What lies under the viewfinder keeps its place, and is not read out.
        Box(if (camera.open == null) Modifier else Modifier.clearAndSetSemantics {}) { Screens(shell) }
        camera.open?.let { shutter -> Viewfinder(camera, shutter, shell.words?.leave.orEmpty()) }
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
        val press = onVolume(key) ?: return super.onKeyDown(key, event)
        if (event.repeatCount == 0) press()
        return true
    }

    override fun onKeyUp(key: Int, event: KeyEvent): Boolean = onVolume(key) != null || super.onKeyUp(key, event)

    /** First it opens the viewfinder, then it takes the picture. */
    private fun onVolume(key: Int): (() -> Unit)? {
        if (key != KeyEvent.KEYCODE_VOLUME_UP && key != KeyEvent.KEYCODE_VOLUME_DOWN) return null
        val camera = app.phone.camera
        if (camera.open != null) return camera::take
        val shell = keeping.shell ?: return null
        return shell.shutter()?.let { shutter -> { shell.shoot(shutter) } }
    }
}
