package ladderbook.app

import android.content.Context
import android.graphics.BitmapFactory
import androidx.compose.foundation.Image
import androidx.compose.runtime.Composable
import androidx.compose.ui.Modifier
import androidx.compose.ui.graphics.asImageBitmap
import androidx.compose.ui.layout.ContentScale
import java.io.File

/** The eye of a phone that is played on a computer. */
@Suppress("UNUSED_PARAMETER")
fun eyeOf(context: Context): Eye = EyeOnADesk

/** It looks at one picture, and its pictures are that one. */
object EyeOnADesk : Eye {
    var before: File? = null

    /** What goes wrong with the next picture, if anything does. */
    var wrong: String? = null

    @Composable
    override fun See(modifier: Modifier) {
        val seen = BitmapFactory.decodeFile(before?.path) ?: return
        Image(seen.asImageBitmap(), null, modifier, contentScale = ContentScale.Crop)
    }

    override fun take(into: File, taken: (String?) -> Unit) {
        if (wrong == null) before?.copyTo(into, overwrite = true)
        taken(wrong)
    }
}
