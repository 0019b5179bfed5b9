package ladderbook.computer

import java.io.File
import java.nio.file.Files

/** The program of a computer, built from the same core. */
object Program {
    private val file = System.getProperty("ladderbook")

    /** What it says; it must end well. */
    fun says(vararg asked: String): String {
        val process = ProcessBuilder(file, *asked).redirectError(ProcessBuilder.Redirect.INHERIT).start()
        val said = process.inputStream.bufferedReader().readText()
        check(process.waitFor() == 0) { "ladderbook ${asked.joinToString(" ")} failed: $said" }
        return said
    }

    private val demo: File by lazy {
        newFolder().also { says("demo", "--no-serve", "--at-call", "--out", it.path) }
    }

    /** A demo's folder of one's own, up to the call that the main story turns on. */
    fun demoAtCall(): File = newFolder().also { demo.copyRecursively(it) }

    private fun newFolder(): File = Files.createTempDirectory("ladderbook").toFile()

    /** What it says of the book in a demo's folder. */
    fun of(folder: File, vararg asked: String): String = says(
        "--book", File(folder, "book").path, "--key-file", File(folder, "demo.key").path, "--today", DEMO_DAY.toString(), *asked,
    )
}
