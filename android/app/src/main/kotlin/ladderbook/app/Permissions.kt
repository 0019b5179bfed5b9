package ladderbook.app

import android.app.AlertDialog
import android.content.pm.PackageManager
import androidx.activity.ComponentActivity
import androidx.activity.result.contract.ActivityResultContracts.RequestPermission
import androidx.core.content.ContextCompat
import ladderbook.core.PhoneWords

/** Asks at the first use, says why first, and takes no for an answer. */
class Permissions(private val activity: ComponentActivity) {
    private var waiting: ((Boolean) -> Unit)? = null
    private val asking = activity.registerForActivityResult(RequestPermission()) { allowed ->
        waiting?.invoke(allowed)
        waiting = null
    }

    fun ask(permission: String, why: String, words: PhoneWords, answered: (Boolean) -> Unit) {
        if (ContextCompat.checkSelfPermission(activity, permission) == PackageManager.PERMISSION_GRANTED) return answered(true)
        AlertDialog.Builder(activity)
            .setMessage(why)
            .setPositiveButton(words.goOn) { _, _ ->
                waiting = answered
                asking.launch(permission)
            }
            .setNegativeButton(words.leave) { _, _ -> answered(false) }
            .setOnCancelListener { answered(false) }
            .show()
    }
}
