package ladderbook.screens

import androidx.compose.runtime.Stable
import androidx.compose.runtime.getValue
import androidx.compose.runtime.mutableStateListOf
import androidx.compose.runtime.mutableStateMapOf
import androidx.compose.runtime.mutableStateOf
import androidx.compose.runtime.setValue
import androidx.compose.ui.graphics.ImageBitmap
import kotlinx.coroutines.CoroutineDispatcher
import kotlinx.coroutines.CoroutineScope
import kotlinx.coroutines.delay
import kotlinx.coroutines.launch
import kotlinx.coroutines.withContext
import ladderbook.core.Book
import ladderbook.core.Button
import ladderbook.core.Filled
import ladderbook.core.Form
import ladderbook.core.HowFar
import ladderbook.core.InternalException
import ladderbook.core.LongWork
import ladderbook.core.Next
import ladderbook.core.PhoneWords
import ladderbook.core.PlanFile
import ladderbook.core.Screen
import ladderbook.core.Shutter
import ladderbook.core.Tap
import ladderbook.core.Trouble

/** How often long work is asked how far it is, in milliseconds. */
private const val ASK_EVERY = 150L

/**
 * Carries a person from place to place. It knows the addresses he came by, what is on the screen and what is half typed; it decides nothing.
 * Every call of the core is made on `worker`, one after the other; everything else on the screen's own thread.
 */
@Stable
class Shell(
    private val book: Book,
    val phone: Phone,
    private val scope: CoroutineScope,
    private val worker: CoroutineDispatcher,
    came: List<String>,
) {
    /** The addresses he came by, the present place last: what the phone keeps when it ends the process. */
    val places = mutableStateListOf<String>().apply { addAll(came) }

    /** What is on the screen, and the address it was shown for. */
    var shown by mutableStateOf<Shown?>(null)
        private set
    var words by mutableStateOf<PhoneWords?>(null)
        private set
    var notice by mutableStateOf<String?>(null)
        private set
    var trouble by mutableStateOf<String?>(null)
        private set
    var work by mutableStateOf<Working?>(null)
        private set
    var dusk by mutableStateOf(false)

    private val sent = mutableStateMapOf<String, Int>()
    private val halfTyped = LinkedHashMap<Pair<String, String>, Draft>()

    /** Shows the place where he was; where a day begins, if he was nowhere or it is gone. */
    fun begin() = call {
        val words = book.words()
        onScreen { this.words = words }
        try {
            show(places.lastOrNull() ?: book.start())
        } catch (gone: Trouble) {
            onScreen {
                trouble = gone.words()
                places.clear()
            }
            show(book.start())
        }
    }

    /** Carries out a button's tap. */
    fun tap(button: Button) = if (button.long) startLong(button.tap) else tap(button.tap)

    fun tap(tap: Tap) = call { follow(book.act(tap, phone.now())) }

    /** Sends a form with what stands in its fields. */
    fun submit(form: Form, filled: List<Filled>) = call {
        val next = book.submit(form.form, filled, phone.now())
        onScreen { sent[form.title] = timesSent(form.title) + 1 }
        follow(next)
    }

    /** How often a form was sent: its fields begin anew each time. */
    fun timesSent(title: String): Int = sent[title] ?: 0

    /** Keeps half-typed words, at the latest with the next call. */
    fun draft(form: Form, field: String, text: String) {
        halfTyped[form.title to field] = Draft(form, field, text)
        scope.launch {
            delay(ASK_EVERY)
            keepDrafts()
        }
    }

    /** Keeps what is half typed now: before a call, and when the phone takes the screen away. */
    fun keepDrafts() {
        val drafts = halfTyped.values.toList()
        halfTyped.clear()
        if (drafts.isEmpty()) return
        scope.launch { guarded { drafts.forEach { book.draft(it.form.form, it.field, it.text, phone.now()) } } }
    }

    /** Takes a picture onto what the shutter names. */
    fun shoot(shutter: Shutter) = phone.takePicture(shutter.label) {
        call {
            val shot = book.shoot(shutter.onto, phone.now()) ?: return@call null
            onScreen { say(shot.notice) }
            shown?.let { show(it.place) }
        }
    }

    /** What the shutter of the present screen names: the volume key presses it. */
    fun shutter(): Shutter? = when (val screen = shown?.screen) {
        is Screen.Walk -> screen.state.shutter
        is Screen.Mark -> screen.state.shutter
        is Screen.Tray -> screen.state.shutter
        else -> null
    }

    /** Where the phone stands, for a field; its own words where it does not know. */
    fun here(known: (String) -> Unit, failed: () -> Unit) = phone.allowPosition {
        call {
            val here = book.here()
            onScreen { if (here == null) failed() else known(here) }
            null
        }
    }

    /** How steep the phone lies, beside what stands in the field. */
    fun lean(typed: String, read: (String) -> Unit) = call {
        val readings = book.lean(typed)
        onScreen { readings?.let(read) }
        null
    }

    fun listen(heard: (String) -> Unit) = phone.listen(words?.tag.orEmpty()) { said ->
        if (said == null) trouble = words?.noDictation else heard(said)
    }

    suspend fun thumbnail(photo: String): ImageBitmap? = guarded { phone.decode(book.thumbnail(photo)) }

    fun openPicture(photo: String) = call { phone.open(book.original(photo)).let { null } }

    fun openPaper(letter: String) = call { phone.open(book.paper(letter)).let { null } }

    fun sharePaper(letter: String) = call { book.sharePaper(letter).let { null } }

    fun sharePlan(structure: String, file: PlanFile) = call { book.sharePlan(structure, file).let { null } }

    fun shareCalendar() = call { book.shareCalendar(phone.now()).let { null } }

    fun giveUp() = work?.let { it.work.giveUp() } ?: Unit

    /** The phone's own way back; false where a day begins. */
    fun back(): Boolean {
        if (places.size < 2) return false
        val before = places[places.size - 2]
        call {
            show(before).also { onScreen { places.removeAt(places.lastIndex) } }
        }
        return true
    }

    private fun startLong(tap: Tap) = call {
        val begun = book.begin(tap, phone.now())
        onScreen { ask(begun) }
        null
    }

    private fun ask(begun: LongWork) = scope.launch {
        work = Working(begun, "", 0f)
        while (true) {
            val far = guarded { begun.howFar() } ?: break
            when (far) {
                is HowFar.Going -> work = Working(begun, far.says, far.done.toFloat() / far.of.toFloat())
                is HowFar.GivenUp -> break
                is HowFar.Done -> {
                    call { follow(far.next) }
                    break
                }
            }
            delay(ASK_EVERY)
        }
        work = null
    }

    private suspend fun follow(next: Next): Shown {
        val words = book.words()
        onScreen {
            this.words = words
            next.notice?.let { say(it) }
        }
        return show(next.place)
    }

    private fun show(place: String): Shown = Shown(place, book.show(place, phone.now()))

    private fun say(notice: String) {
        this.notice = notice
        phone.feel(notice, words?.tag.orEmpty())
    }

    /** One call of a person: what was half typed first, then the call, then what it leads to. */
    private fun call(work: suspend () -> Shown?) {
        keepDrafts()
        scope.launch {
            notice = null
            trouble = null
            guarded { work() }?.let { arrive(it) }
        }
    }

    private fun arrive(at: Shown) {
        shown = at
        if (places.lastOrNull() != at.place) {
            val before = places.indexOf(at.place)
            if (before < 0) places.add(at.place) else places.removeRange(before + 1, places.size)
        }
    }

    /** Off the screen's thread; a trouble becomes words on the screen. */
    private suspend fun <T> guarded(work: suspend () -> T): T? = try {
        withContext(worker) { work() }
    } catch (refused: Trouble) {
        trouble = refused.words()
        null
    } catch (broke: InternalException) {
        trouble = broke.message
        null
    }

    private suspend fun onScreen(change: () -> Unit) = withContext(scope.coroutineContext) { change() }

    private class Draft(val form: Form, val field: String, val text: String)
}

/** A place and what it shows. */
class Shown(val place: String, val screen: Screen)

/** Long work that goes on. */
class Working(val work: LongWork, val says: String, val share: Float)

/** What a trouble says. */
fun Trouble.words(): String = when (this) {
    is Trouble.Refused -> says
    is Trouble.NoKey -> says
    is Trouble.Broke -> says
}
