package ladderbook.app

import android.content.ActivityNotFoundException
import android.content.Context
import android.content.Intent
import androidx.core.content.FileProvider
import ladderbook.core.PortTrouble
import ladderbook.core.ShareSheet
import java.io.File

/** Hands a file on to another program, which may read that file and no other. */
class Sharing(private val context: Context) : ShareSheet {
    override fun share(file: String, mediaType: String) {
        val shared = FileProvider.getUriForFile(context, "${context.packageName}.files", File(file))
        val send = Intent(Intent.ACTION_SEND).setType(mediaType.substringBefore(';')).putExtra(Intent.EXTRA_STREAM, shared)
            .addFlags(Intent.FLAG_GRANT_READ_URI_PERMISSION)
        try {
            context.startActivity(Intent.createChooser(send, null).addFlags(Intent.FLAG_ACTIVITY_NEW_TASK))
        } catch (error: ActivityNotFoundException) {
            throw PortTrouble.Failed(error.toString())
        }
    }
}
