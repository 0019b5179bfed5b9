package ladderbook.app

import android.app.Application
import android.graphics.Bitmap
import android.graphics.Canvas
import java.io.File

/** What the computer brings to the phone that it plays: the demo's book, the words of the message files, and where pictures go. */
object Desk {
    private val demo = File(System.getProperty("demo"))
    private val pictures = File(System.getProperty("pictures"))

    /** Lays the demo's book onto the phone, up to the call that its main story turns on, and seals its key as the phone would. */
    fun layDemo(app: Application) {
        File(demo, "book").copyRecursively(File(app.filesDir, "book"))
        KeyInKeystore(app).keep(File(demo, "demo.key").readText().trim())
    }

    /** A picture of the whole window. */
    fun picture(activity: MainActivity, name: String) {
        val window = activity.window.decorView
        val drawn = Bitmap.createBitmap(window.width, window.height, Bitmap.Config.ARGB_8888)
        window.draw(Canvas(drawn))
        File(pictures, "$name.png").outputStream().use { drawn.compress(Bitmap.CompressFormat.PNG, 100, it) }
    }

    private val messages = File("../core/trade/words/en").walk().filter { it.extension == "ftl" }
        .flatMap { Regex("^([a-z][\\w-]*) = (.+)$", RegexOption.MULTILINE).findAll(it.readText()) }
        .associate { it.groupValues[1] to it.groupValues[2] }

    /** A message of one line, in English. */
    fun say(key: String): String = checkNotNull(messages[key]) { "no message $key" }
}
