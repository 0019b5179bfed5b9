package ladderbook.app

import android.app.AlertDialog
import android.content.pm.PackageManager
import androidx.activity.ComponentActivity
import androidx.activity.result.contract.ActivityResultContracts.RequestMultiplePermissions
import androidx.core.content.ContextCompat
import ladderbook.core.PhoneWords

/** Asks at the first use, says why first, and takes no for an answer. */
class Permissions(private val activity: ComponentActivity) {
    private var waiting: ((Boolean) -> Unit)? = null
    private val asking = activity.registerForActivityResult(RequestMultiplePermissions()) { answers ->
        waiting?.invoke(answers.values.any { it })
        waiting = null
    }

    /** Asks for the first; those after it are what it cannot be asked without. */
    fun ask(permissions: List<String>, why: String, words: PhoneWords, answered: (Boolean) -> Unit) {
        if (ContextCompat.checkSelfPermission(activity, permissions.first()) == PackageManager.PERMISSION_GRANTED) return answered(true)
        AlertDialog.Builder(activity)
            .setMessage(why)
            .setPositiveButton(words.goOn) { _, _ ->
                waiting = answered
                asking.launch(permissions.toTypedArray())
            }
            .setNegativeButton(words.leave) { _, _ -> answered(false) }
            .setOnCancelListener { answered(false) }
            .show()
    }
}
