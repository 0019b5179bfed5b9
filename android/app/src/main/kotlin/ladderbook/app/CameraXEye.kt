package ladderbook.app

import android.content.Context
import android.view.OrientationEventListener
import android.view.Surface
import androidx.camera.core.CameraSelector
import androidx.camera.core.ImageCapture
import androidx.camera.core.ImageCaptureException
import androidx.camera.core.Preview
import androidx.camera.lifecycle.ProcessCameraProvider
import androidx.camera.lifecycle.awaitInstance
import androidx.camera.view.PreviewView
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
import androidx.core.content.ContextCompat
import androidx.lifecycle.compose.LocalLifecycleOwner
import java.io.File

/** The eye of this phone. */
fun eyeOf(context: Context): Eye = CameraXEye(context)

/** The camera on the phone's back, by CameraX. */
private class CameraXEye(private val context: Context) : Eye {
    private val capture = ImageCapture.Builder().setCaptureMode(ImageCapture.CAPTURE_MODE_MINIMIZE_LATENCY).build()

    /** Which way up the phone is held: a picture is turned by it even where the screen is kept from turning. */
    private val held = object : OrientationEventListener(context) {
        override fun onOrientationChanged(degrees: Int) {
            if (degrees == ORIENTATION_UNKNOWN) return
            capture.targetRotation = when (degrees) {
                in 45 until 135 -> Surface.ROTATION_270
                in 135 until 225 -> Surface.ROTATION_180
                in 225 until 315 -> Surface.ROTATION_90
                else -> Surface.ROTATION_0
            }
        }
    }

    @Composable
    override fun See(modifier: Modifier) {
        val context = LocalContext.current
        val owner = LocalLifecycleOwner.current
        val view = remember { PreviewView(context) }
        var bound by remember { mutableStateOf<ProcessCameraProvider?>(null) }
        LaunchedEffect(owner) {
            val provider = ProcessCameraProvider.awaitInstance(context)
            val preview = Preview.Builder().build().also { it.surfaceProvider = view.surfaceProvider }
            provider.unbindAll()
            provider.bindToLifecycle(owner, CameraSelector.DEFAULT_BACK_CAMERA, preview, capture)
            bound = provider
        }
        DisposableEffect(Unit) {
            held.enable()
            onDispose {
                held.disable()
                bound?.unbindAll()
            }
        }
        AndroidView({ view }, modifier)
    }

    override fun take(into: File, taken: (String?) -> Unit) {
        val options = ImageCapture.OutputFileOptions.Builder(into).build()
        capture.takePicture(options, ContextCompat.getMainExecutor(context), object : ImageCapture.OnImageSavedCallback {
            override fun onImageSaved(saved: ImageCapture.OutputFileResults) = taken(null)

            override fun onError(error: ImageCaptureException) = taken(error.toString())
        })
    }
}
