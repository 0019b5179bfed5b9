package ladderbook.computer

import kotlinx.coroutines.CoroutineDispatcher
import kotlinx.coroutines.CoroutineScope
import ladderbook.core.Book
import ladderbook.core.Language
import ladderbook.screens.Shell
import java.io.File
import java.time.LocalDate

/** The day the demo plays on. */
val DEMO_DAY: LocalDate = LocalDate.of(2026, 9, 14)

/** A folder that `ladderbook demo --out` wrote, with a phone to hold it. */
class DemoBook(private val folder: File) {
    val phone = ComputerPhone(File(folder, "demo.key"), DEMO_DAY)

    fun open(): Book = Book.open(File(folder, "book").path, File(folder, "cache").path, Language.ENGLISH, phone.ports, phone.now())

    fun shell(book: Book, scope: CoroutineScope, worker: CoroutineDispatcher, came: List<String> = emptyList()) =
        Shell(book, phone, scope, worker, came)
}
