package ladderbook.app

import androidx.compose.foundation.background
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxSize
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.input.pointer.pointerInput
import ladderbook.screens.GAP
import ladderbook.screens.Key
import ladderbook.screens.LocalColours

/** What the camera sees, with the shutter under the thumb. The volume key takes the picture too. */
@Composable
fun Viewfinder(camera: RoofCamera, shutter: String, leave: String) =
    // It takes all taps, so that none goes through to the screen under it.
    Column(Modifier.fillMaxSize().background(LocalColours.current.paper).pointerInput(Unit) {}) {
        camera.eye.See(Modifier.weight(1f).fillMaxWidth())
        Row(Modifier.fillMaxWidth().padding(GAP), Arrangement.spacedBy(GAP)) {
            Key(leave, Modifier.weight(1f)) { camera.close() }
            Key(shutter, Modifier.weight(2f), main = true) { camera.take() }
        }
    }
