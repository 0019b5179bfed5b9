package ladderbook.app

import androidx.camera.core.CameraSelector
import androidx.camera.core.Preview
import androidx.camera.lifecycle.ProcessCameraProvider
import androidx.camera.lifecycle.awaitInstance
import androidx.camera.view.PreviewView
import androidx.compose.foundation.background
import androidx.compose.foundation.layout.Arrangement
import androidx.compose.foundation.layout.Column
import androidx.compose.foundation.layout.Row
import androidx.compose.foundation.layout.fillMaxSize
import androidx.compose.foundation.layout.fillMaxWidth
import androidx.compose.foundation.layout.padding
import androidx.compose.runtime.Composable
import androidx.compose.runtime.DisposableEffect
import androidx.compose.runtime.LaunchedEffect
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.remember
import androidx.compose.runtime.setValue
import androidx.compose.ui.Modifier
import androidx.compose.ui.platform.LocalContext
import androidx.compose.ui.viewinterop.AndroidView
import androidx.lifecycle.compose.LocalLifecycleOwner
import ladderbook.screens.GAP
import ladderbook.screens.Key
import ladderbook.screens.LocalColours
import ladderbook.screens.Shell

/** What the camera sees, with the shutter under the thumb. The volume key takes the picture too. */
@Composable
fun Viewfinder(camera: RoofCamera, shell: Shell) {
    val context = LocalContext.current
    val owner = LocalLifecycleOwner.current
    val view = remember { PreviewView(context) }
    var bound by remember { mutableStateOf<ProcessCameraProvider?>(null) }
    LaunchedEffect(owner) {
        val provider = ProcessCameraProvider.awaitInstance(context)
        val preview = Preview.Builder().build().also { it.surfaceProvider = view.surfaceProvider }
        provider.unbindAll()
        provider.bindToLifecycle(owner, CameraSelector.DEFAULT_BACK_CAMERA, preview, camera.capture)
        bound = provider
    }
    DisposableEffect(Unit) { onDispose { bound?.unbindAll() } }
    Column(Modifier.fillMaxSize().background(LocalColours.current.paper)) {
        AndroidView({ view }, Modifier.weight(1f).fillMaxWidth())
        Row(Modifier.fillMaxWidth().padding(GAP), Arrangement.spacedBy(GAP)) {
            shell.words?.let { Key(it.leave, Modifier.weight(1f)) { camera.close() } }
            shell.shutter()?.let { Key(it.label, Modifier.weight(2f), main = true) { camera.take() } }
        }
    }
}
