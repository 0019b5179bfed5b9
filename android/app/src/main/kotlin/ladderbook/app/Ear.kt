package ladderbook.app

import android.content.Context
import android.content.Intent
import android.os.Bundle
import android.speech.RecognitionListener
import android.speech.RecognizerIntent
import android.speech.SpeechRecognizer

/** Dictation by the phone's own recogniser, without the network where it can. */
class Ear(private val context: Context) {
    private var listening: SpeechRecognizer? = null

    /** Called on the main thread, as the recogniser asks. */
    fun listen(tag: String, heard: (String?) -> Unit) {
        if (!SpeechRecognizer.isRecognitionAvailable(context)) return heard(null)
        listening?.destroy()
        val asked = Intent(RecognizerIntent.ACTION_RECOGNIZE_SPEECH)
            .putExtra(RecognizerIntent.EXTRA_LANGUAGE_MODEL, RecognizerIntent.LANGUAGE_MODEL_FREE_FORM)
            .putExtra(RecognizerIntent.EXTRA_LANGUAGE, tag)
            .putExtra(RecognizerIntent.EXTRA_PREFER_OFFLINE, true)
        listening = SpeechRecognizer.createSpeechRecognizer(context).apply {
            setRecognitionListener(Once { said ->
                destroy()
                listening = null
                heard(said)
            })
            startListening(asked)
        }
    }

    /** Hears one answer. */
    private class Once(private val heard: (String?) -> Unit) : RecognitionListener {
        override fun onResults(results: Bundle) = heard(results.getStringArrayList(SpeechRecognizer.RESULTS_RECOGNITION)?.firstOrNull())

        override fun onError(error: Int) = heard(null)

        override fun onReadyForSpeech(params: Bundle?) {}

        override fun onBeginningOfSpeech() {}

        override fun onRmsChanged(loudness: Float) {}

        override fun onBufferReceived(buffer: ByteArray?) {}

        override fun onEndOfSpeech() {}

        override fun onPartialResults(partial: Bundle?) {}

        override fun onEvent(kind: Int, params: Bundle?) {}
    }
}
