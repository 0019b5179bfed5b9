package ladderbook.computer

import androidx.compose.ui.unit.DpSize
import androidx.compose.ui.unit.dp
import androidx.compose.ui.window.Window
import androidx.compose.ui.window.WindowState
import androidx.compose.ui.window.application
import kotlinx.coroutines.CoroutineScope
import kotlinx.coroutines.asCoroutineDispatcher
import ladderbook.screens.Screens
import ladderbook.screens.Theme
import org.jetbrains.skiko.MainUIDispatcher
import java.io.File
import java.util.concurrent.Executors
import kotlin.system.exitProcess

/**
 * A phone on the desk: `FOLDER --window` opens a window on the demo's book, `FOLDER --pictures DIR` draws every screen into DIR,
 * `FOLDER --bench PROGRAM` times every screen, beside the program that shows it in the core alone.
 */
fun main(asked: Array<String>) {
    val folder = File(asked[0])
    val demo = DemoBook(folder)
    when (asked.getOrNull(1)) {
        "--pictures" -> demo.open().use { pictures(demo, it, File(asked[2])) }
        "--bench" -> bench(demo, folder, File(asked[2]))
        else -> window(demo)
    }
    exitProcess(0)
}

private fun window(demo: DemoBook) {
    val worker = Executors.newSingleThreadExecutor().asCoroutineDispatcher()
    val shell = demo.shell(demo.open(), CoroutineScope(MainUIDispatcher), worker)
    shell.begin()
    application {
        Window(::exitApplication, WindowState(size = DpSize(390.dp, 844.dp)), title = "Ladderbook") {
            Theme(shell.dusk, ATKINSON) { Screens(shell) }
        }
    }
    worker.close()
}
