package ladderbook.app

import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.setValue
import ladderbook.core.Camera
import ladderbook.core.PortTrouble
import java.io.File

/** The camera in the window of the screens, so that no other program stands between the thumb and the roof. */
class RoofCamera(val eye: Eye, private val folder: File) : Camera {
    /** What the shutter says while the viewfinder is open; nothing while it is closed. */
    var open by mutableStateOf<String?>(null)
        private set

    @Volatile private var file: File? = null
    @Volatile private var trouble: PortTrouble? = null
    private var taken: () -> Unit = {}
    private var busy = false

    /** Shows the viewfinder; `taken` is called once there is a picture, or none could be taken. */
    fun open(shutter: String, taken: () -> Unit) {
        this.taken = taken
        file = null
        trouble = null
        busy = false
        open = shutter
    }

    fun close() {
        open = null
    }

    fun refused() {
        file = null
        trouble = PortTrouble.NotAllowed()
    }

    /** One picture for one press, however often the key is pressed while it is taken. */
    fun take() {
        if (busy || open == null) return
        busy = true
        val into = File.createTempFile("taken", ".jpg", folder)
        eye.take(into) { wrong ->
            file = into.takeIf { wrong == null }
            trouble = wrong?.let { PortTrouble.Failed(it) }
            close()
            taken()
        }
    }

    override fun picture(): String? {
        trouble?.let { throw it }
        return file?.path
    }
}
