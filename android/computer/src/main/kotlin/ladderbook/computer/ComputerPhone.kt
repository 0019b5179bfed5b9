package ladderbook.computer

import androidx.compose.ui.graphics.ImageBitmap
import androidx.compose.ui.graphics.toComposeImageBitmap
import ladderbook.core.Camera
import ladderbook.core.Fix
import ladderbook.core.KeyStore
import ladderbook.core.Level
import ladderbook.core.Locator
import ladderbook.core.Moment
import ladderbook.core.Ports
import ladderbook.core.ShareSheet
import ladderbook.screens.Phone
import java.io.File
import java.time.LocalDate
import java.time.LocalTime
import java.time.ZoneOffset

/** A phone played by a computer: its camera gives the picture it was handed, its clock shows the day it is to be. */
class ComputerPhone(private val key: File, private val today: LocalDate) : Phone, KeyStore, Camera, Locator, Level, ShareSheet {
    /** What the camera sees. */
    var before: ByteArray? = null

    /** What was felt, opened and shared, for a test to see. */
    val felt = mutableListOf<String>()
    val opened = mutableListOf<String>()
    val shared = mutableListOf<String>()

    private var taken: File? = null
    private val began = LocalTime.now()

    val ports get() = Ports(this, this, this, this, this)

    override fun now(): Moment {
        val now = today.atTime(LocalTime.of(12, 0)).plusNanos(LocalTime.now().toNanoOfDay() - began.toNanoOfDay())
        return Moment(now.toInstant(ZoneOffset.UTC).toEpochMilli(), 0)
    }

    override fun feel(notice: String, tag: String) {
        felt += notice
    }

    override fun takePicture(shutter: String, taken: () -> Unit) {
        this.taken = before?.let { seen -> File.createTempFile("taken", ".jpg").apply { writeBytes(seen) } }
        taken()
    }

    override fun picture(): String? = taken?.path

    override fun allowPosition(answered: () -> Unit) = answered()

    override fun fix(): Fix? = null

    override fun degrees(): Double? = null

    override fun listen(tag: String, heard: (String?) -> Unit) = heard(null)

    override fun pickDay(now: String, picked: (String) -> Unit) {}

    override fun decode(file: String): ImageBitmap? =
        org.jetbrains.skia.Image.makeFromEncoded(File(file).readBytes()).toComposeImageBitmap()

    override fun open(file: String) {
        opened += file
    }

    override fun share(file: String, mediaType: String) {
        shared += file
    }

    override fun key(): String? = key.takeIf { it.exists() }?.readText()?.trim()

    override fun keep(key: String) = this.key.writeText(key)
}
