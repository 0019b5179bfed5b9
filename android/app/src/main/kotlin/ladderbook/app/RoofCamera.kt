package ladderbook.app

import android.content.Context
import androidx.camera.core.ImageCapture
import androidx.camera.core.ImageCaptureException
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.setValue
import androidx.core.content.ContextCompat
import ladderbook.core.Camera
import ladderbook.core.PortTrouble
import java.io.File

/** The camera in the window of the screens, so that no other program stands between the thumb and the roof. */
class RoofCamera(private val context: Context) : Camera {
    var isOpen by mutableStateOf(false)
        private set
    val capture = ImageCapture.Builder().setCaptureMode(ImageCapture.CAPTURE_MODE_MINIMIZE_LATENCY).build()

    @Volatile private var file: File? = null
    @Volatile private var trouble: PortTrouble? = null
    private var taken: () -> Unit = {}

    /** Shows the viewfinder; `taken` is called with every picture. */
    fun open(taken: () -> Unit) {
        this.taken = taken
        file = null
        trouble = null
        isOpen = true
    }

    fun close() {
        isOpen = false
    }

    fun refused() {
        file = null
        trouble = PortTrouble.NotAllowed()
    }

    fun take() {
        val into = File.createTempFile("taken", ".jpg", context.cacheDir)
        val options = ImageCapture.OutputFileOptions.Builder(into).build()
        capture.takePicture(options, ContextCompat.getMainExecutor(context), object : ImageCapture.OnImageSavedCallback {
            override fun onImageSaved(saved: ImageCapture.OutputFileResults) = end(into, null)

            override fun onError(error: ImageCaptureException) = end(null, PortTrouble.Failed(error.toString()))

            private fun end(file: File?, trouble: PortTrouble?) {
                this@RoofCamera.file = file
                this@RoofCamera.trouble = trouble
                close()
                taken()
            }
        })
    }

    override fun picture(): String? {
        trouble?.let { throw it }
        return file?.path
    }
}
