package ladderbook.app

import android.app.Application
import kotlinx.coroutines.asCoroutineDispatcher
import ladderbook.core.Book
import ladderbook.core.Language
import ladderbook.core.Ports
import java.io.File
import java.time.Clock
import java.util.Locale
import java.util.concurrent.Executors

/** The process: one book, opened once, on the one thread that calls the core. */
open class LadderbookApp : Application() {
    /** The phone's clock, with the zone that it is in now. */
    open val clock: Clock get() = Clock.systemDefaultZone()

    val worker = Executors.newSingleThreadExecutor().asCoroutineDispatcher()
    val phone by lazy { AndroidPhone(this) }

    private var book: Book? = null

    /** The language to speak before the book says its own. */
    val language get() = if (Locale.getDefault().language == "es") Language.SPANISH else Language.ENGLISH

    /** Opens the book, or begins one; called on the worker only. */
    fun open(): Book = book ?: Book.open(
        File(filesDir, "book").path, cacheDir.path, language,
        Ports(KeyInKeystore(this), phone.camera, Where(this), Inclinometer(this), Sharing(this)), phone.now(),
    ).also { book = it }
}
