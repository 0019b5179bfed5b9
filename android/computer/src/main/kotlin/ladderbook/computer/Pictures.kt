package ladderbook.computer

import androidx.compose.ui.ImageComposeScene
import androidx.compose.ui.unit.Density
import androidx.compose.ui.use
import kotlinx.coroutines.CoroutineScope
import kotlinx.coroutines.Dispatchers
import ladderbook.core.Book
import ladderbook.screens.Screens
import ladderbook.screens.Theme
import org.jetbrains.skia.EncodedImageFormat
import java.io.File

private const val LONG = 800
private const val SHORT = 360
private const val DENSITY = 1.5f

/** How a screen is held and read. */
private class Held(val name: String, val dusk: Boolean, val words: Float, val lying: Boolean)

private val HELD = listOf(false, true).flatMap { dusk ->
    listOf(1f, 2f).flatMap { words ->
        listOf(false, true).map { lying ->
            val name = listOf(if (dusk) "dusk" else "day", if (words == 1f) "100" else "200", if (lying) "lying" else "upright")
            Held(name.joinToString("-"), dusk, words, lying)
        }
    }
}

/** Draws every screen in Spanish: by day and at dusk, with words as usual and twice as large, upright and lying. */
fun pictures(demo: DemoBook, book: Book, into: File) {
    into.mkdirs()
    for ((screen, place) in Tour(demo, book).places()) {
        for (held in HELD) File(into, "$screen-${held.name}.png").writeBytes(draw(demo, book, place, held))
    }
    println("${into.listFiles().orEmpty().size} pictures in $into")
}

private fun draw(demo: DemoBook, book: Book, place: String, held: Held): ByteArray {
    val (width, height) = if (held.lying) LONG to SHORT else SHORT to LONG
    val shell = demo.shell(book, CoroutineScope(Dispatchers.Unconfined), Dispatchers.Unconfined, listOf(place))
    shell.begin()
    val scene = ImageComposeScene((width * DENSITY).toInt(), (height * DENSITY).toInt(), Density(DENSITY, held.words)) {
        Theme(held.dusk, ATKINSON) { Screens(shell) }
    }
    // A few frames, so that what scrolls into view has done so.
    return scene.use { drawn ->
        repeat(4) { drawn.render(it * 100_000_000L) }
        checkNotNull(drawn.render(1_000_000_000L).encodeToData(EncodedImageFormat.PNG)).bytes
    }
}
