package ladderbook.app

import android.Manifest.permission.ACCESS_COARSE_LOCATION
import android.Manifest.permission.ACCESS_FINE_LOCATION
import android.Manifest.permission.CAMERA
import android.Manifest.permission.RECORD_AUDIO
import android.app.DatePickerDialog
import android.content.ActivityNotFoundException
import android.content.Intent
import android.graphics.BitmapFactory
import androidx.compose.ui.graphics.ImageBitmap
import androidx.compose.ui.graphics.asImageBitmap
import androidx.core.content.FileProvider
import ladderbook.core.Moment
import ladderbook.core.phoneWords
import ladderbook.screens.Phone
import java.io.File
import java.time.LocalDate
import java.time.format.DateTimeParseException

/** What this phone does around the screens. The activity comes and goes; without one, what needs a dialog waits for the next tap. */
class AndroidPhone(private val app: LadderbookApp) : Phone {
    var activity: MainActivity? = null
    val camera = RoofCamera(eyeOf(app), app.cacheDir)

    private val voice = Voice(app)
    private val ear = Ear(app)
    private val words get() = phoneWords(app.language)

    override fun now(): Moment {
        val now = app.clock.instant()
        return Moment(now.toEpochMilli(), app.clock.zone.rules.getOffset(now).totalSeconds)
    }

    override fun feel(notice: String, tag: String) = voice.tell(notice, tag)

    override fun takePicture(shutter: String, taken: () -> Unit) = ask(words.whyCamera, CAMERA) { allowed ->
        if (allowed) camera.open(shutter, taken) else {
            camera.refused()
            taken()
        }
    }

    /** Where he stands exactly; newer phones take that question only together with the one for about where. */
    override fun allowPosition(answered: () -> Unit) =
        ask(words.whyPosition, ACCESS_FINE_LOCATION, ACCESS_COARSE_LOCATION) { answered() }

    override fun listen(tag: String, heard: (String?) -> Unit) = ask(words.whyMicrophone, RECORD_AUDIO) { allowed ->
        if (allowed) ear.listen(tag, heard) else heard(null)
    }

    override fun pickDay(now: String, picked: (String) -> Unit) {
        val day = try {
            LocalDate.parse(now)
        } catch (_: DateTimeParseException) {
            LocalDate.now(app.clock)
        }
        val dialog = DatePickerDialog(
            activity ?: return,
            { _, year, month, date -> picked(LocalDate.of(year, month + 1, date).toString()) },
            day.year, day.monthValue - 1, day.dayOfMonth,
        )
        dialog.show()
    }

    override fun decode(file: String): ImageBitmap? = BitmapFactory.decodeFile(file)?.asImageBitmap()

    override fun open(file: String) {
        val shared = FileProvider.getUriForFile(app, "${app.packageName}.files", File(file))
        val show = Intent(Intent.ACTION_VIEW).setDataAndType(shared, kindOf(file))
            .addFlags(Intent.FLAG_GRANT_READ_URI_PERMISSION or Intent.FLAG_ACTIVITY_NEW_TASK)
        try {
            app.startActivity(show)
        } catch (_: ActivityNotFoundException) {
            // A phone without a reader for it can still hand it on.
            Sharing(app).share(file, kindOf(file))
        }
    }

    private fun kindOf(file: String) = if (file.endsWith(".pdf")) "application/pdf" else "image/*"

    private fun ask(why: String, vararg permissions: String, answered: (Boolean) -> Unit) {
        activity?.permissions?.ask(permissions.toList(), why, words, answered)
    }
}
