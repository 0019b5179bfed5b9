package ladderbook.app

import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import java.io.File

/** The camera itself: what it sees, and the pictures it takes. */
interface Eye {
    /** What it sees now, for as long as this is drawn. */
    @Composable
    fun See(modifier: Modifier)

    /** Takes a picture into the file; then calls back on the main thread with what went wrong, if anything did. */
    fun take(into: File, taken: (String?) -> Unit)
}
