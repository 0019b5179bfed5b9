package ladderbook.app

import android.app.Application
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.setValue
import androidx.compose.runtime.snapshotFlow
import androidx.lifecycle.AndroidViewModel
import androidx.lifecycle.SavedStateHandle
import androidx.lifecycle.viewModelScope
import kotlinx.coroutines.launch
import kotlinx.coroutines.withContext
import ladderbook.core.Trouble
import ladderbook.screens.Shell
import ladderbook.screens.words

private const val PLACES = "places"

/** Keeps the shell while the activity comes and goes, and the addresses he came by when the process ends. */
class Keeping(app: Application, private val saved: SavedStateHandle) : AndroidViewModel(app) {
    var shell by mutableStateOf<Shell?>(null)
        private set
    var trouble by mutableStateOf<String?>(null)
        private set

    init {
        open()
    }

    /** Opens the book off the main thread; once more, where it did not open. */
    fun open() = viewModelScope.launch {
        val app = getApplication<LadderbookApp>()
        trouble = null
        try {
            val book = withContext(app.worker) { app.open() }
            val shell = Shell(book, app.phone, viewModelScope, app.worker, saved.get<ArrayList<String>>(PLACES).orEmpty())
            shell.begin()
            this@Keeping.shell = shell
            launch { snapshotFlow { shell.places.toList() }.collect { saved[PLACES] = ArrayList(it) } }
        } catch (refused: Trouble) {
            trouble = refused.words()
        }
    }
}
