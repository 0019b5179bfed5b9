package ladderbook.computer

import ladderbook.core.Book
import ladderbook.core.FfiConverterTypeScreen
import java.io.File
import java.util.Locale

/** How often each screen is asked for, before it counts and while it does. */
private const val TIMES = 61

/**
 * How long each screen takes in the core alone, by a program of Rust's that is handed the same places of the same book, and how long it takes from
 * Kotlin, its records made on both sides of the border; medians. The last line is the screen that most crosses for.
 */
fun bench(demo: DemoBook, folder: File, core: File) {
    val places = demo.open().use { Tour(demo, it).places() }
    val alone = alone(demo, folder, core, places.values)
    println("milliseconds       in the core  from Kotlin   ratio   crosses, KB")
    val rows = demo.open().use { book -> places.entries.zip(alone) { (screen, place), alone -> row(demo, book, screen, place, alone) } }
    rows.forEach { println(it.text()) }
    println("largest: ${rows.maxBy { it.bytes }.text()}")
}

private class Row(val screen: String, val alone: Double, val across: Double, val bytes: Long) {
    fun text(): String =
        String.format(Locale.ROOT, "%-18s %11.2f %12.2f %7.2f %13.1f", screen, alone / 1e3, across / 1e3, across / alone, bytes / 1e3)
}

private fun row(demo: DemoBook, book: Book, screen: String, place: String, alone: Double): Row {
    val now = demo.phone.now()
    repeat(TIMES) { book.show(place, now) }
    val spans = List(TIMES) {
        val begun = System.nanoTime()
        book.show(place, now)
        (System.nanoTime() - begun) / 1e3
    }
    // What Kotlin would set aside to send it: three bytes a letter, so that any letter fits.
    val bytes = FfiConverterTypeScreen.allocationSize(book.show(place, now)).toLong()
    return Row(screen, alone, spans.sorted()[TIMES / 2], bytes)
}

/** Microseconds of each place in the core alone. */
private fun alone(demo: DemoBook, folder: File, core: File, places: Collection<String>): List<Double> {
    val asked = listOf(core.path, folder.path, demo.phone.now().millis.toString(), TIMES.toString()) + places
    val process = ProcessBuilder(asked).redirectError(ProcessBuilder.Redirect.INHERIT).start()
    val told = process.inputStream.bufferedReader().readLines()
    check(process.waitFor() == 0) { "${core.name} failed" }
    return told.map { it.toDouble() }
}
