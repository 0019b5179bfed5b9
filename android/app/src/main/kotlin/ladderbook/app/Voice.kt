package ladderbook.app

import android.content.Context
import android.os.VibrationEffect
import android.os.Vibrator
import android.speech.tts.TextToSpeech
import java.util.Locale

/** How long a save is felt, in milliseconds. */
private const val FELT = 40L

/** A save is felt and heard: on a roof nobody looks at a line of text. */
class Voice(context: Context) {
    private var ready = false
    private val vibrator = context.getSystemService(Vibrator::class.java)
    private val speaking: TextToSpeech = TextToSpeech(context) { status -> ready = status == TextToSpeech.SUCCESS }

    fun tell(notice: String, tag: String) {
        vibrator?.vibrate(VibrationEffect.createOneShot(FELT, VibrationEffect.DEFAULT_AMPLITUDE))
        if (!ready) return
        speaking.language = Locale.forLanguageTag(tag)
        speaking.speak(notice, TextToSpeech.QUEUE_FLUSH, null, notice)
    }
}
