package ladderbook.computer

import ladderbook.core.Book
import ladderbook.core.Field
import ladderbook.core.FieldKind
import ladderbook.core.Filled
import ladderbook.core.Form
import ladderbook.core.Picture
import ladderbook.core.Row
import ladderbook.core.Screen
import java.io.File

private const val MAIN_STORY = "318 lamplighter"

/** The addresses of all screens in the demo's book, in Spanish: those of the main story, and those of a visit that is open. */
class Tour(private val demo: DemoBook, private val book: Book) {
    fun places(): Map<String, String> {
        speakSpanish()
        val door = find(MAIN_STORY)
        val letter = at<Screen.Doorstep>(door).state.doors.first().let { book.act(it.tap, now()).place }
        val changed = letter.replace("/letter/", "/then-and-now/")
        val verdict = book.act(at<Screen.ThenAndNow>(changed).state.main.tap, now()).place
        val offer = book.act(at<Screen.Verdict>(verdict).state.offer.tap, now()).place
        val roof = book.act(at<Screen.Offer>(offer).state.roof.tap, now()).place
        val ask = at<Screen.Leak>(book.act(at<Screen.Roof>(roof).state.leak.tap, now()).place).state.ask ?: error("the leak was traced already")
        val leak = send(ask, "x" to "16 ft", "y" to "5 ft", "within" to "2 ft", "when" to "driven-rain", "wind" to "180")
        val open = openVisit()
        shoot(open.walk, at<Screen.ThenAndNow>(changed).state.changed.firstNotNullOf { it.pictureNow ?: it.pictureThen })
        return linkedMapOf(
            "arrive" to book.start(), "doorstep" to open.door, "property" to door.replace("/doorstep/", "/property/"),
            "safety" to open.safety, "walk" to open.walk, "mark" to open.mark, "tray" to open.walk.replace(Regex("/walk/([^/]+)/.*"), "/tray/$1"),
            "then-and-now" to changed, "verdict" to verdict, "roof" to roof, "leak" to leak, "offer" to offer, "letter" to letter,
            "outcome" to door.replace("/doorstep/", "/outcome/"), "reminders" to "/reminders", "settings" to "/settings",
        )
    }

    private class Open(val door: String, val safety: String, val walk: String, val mark: String)

    /** A new call to the same roof: answered for safety, one part marked as failing with its likeliest defect. */
    private fun openVisit(): Open {
        val door = find(MAIN_STORY)
        val form = checkNotNull(at<Screen.Doorstep>(door).state.open)
        val safety = send(form, "words" to "Gotea otra vez sobre la cama. ¿Puede poner un poco más de sellador?")
        for (at in at<Screen.Safety>(safety).state.checks.indices) book.act(at<Screen.Safety>(safety).state.checks[at].yes.tap, now())
        val walk = book.act(at<Screen.Safety>(safety).state.main.tap, now()).place
        val stop = at<Screen.Walk>(walk).state.stops[4].let { book.act(it.go, now()).place }
        var mark = book.act(checkNotNull(at<Screen.Walk>(stop).state.here).spots.first().mark.tap, now()).place
        mark = book.act(at<Screen.Mark>(mark).state.rungs[2].tap, now()).place
        mark = book.act(at<Screen.Mark>(mark).state.defects.first().tap, now()).place
        return Open(door, safety, stop, mark)
    }

    /** A picture from the walk: it lies in the tray until it is tied to a part. */
    private fun shoot(walk: String, seen: Picture) {
        demo.phone.before = File(book.original(seen.photo)).readBytes()
        demo.phone.takePicture("") {}
        checkNotNull(book.shoot(at<Screen.Walk>(walk).state.shutter.onto, now()))
    }

    private fun speakSpanish() {
        val firm = at<Screen.Settings>("/settings").state.forms.first()
        send(firm, "language" to "es")
    }

    private fun find(address: String): String {
        val found = send(at<Screen.Arrive>(book.start()).state.search, "find" to address)
        val row: Row = at<Screen.Arrive>(found).state.found.first()
        return book.act(checkNotNull(row.tap), now()).place
    }

    private fun send(form: Form, vararg typed: Pair<String, String>): String {
        val filled = form.fields.map { field -> Filled(field.name, typed.toMap()[field.name] ?: standing(field)) }
        return book.submit(form.form, filled, now()).place
    }

    private fun standing(field: Field): String =
        (field.kind as? FieldKind.OneOf)?.choices?.let { choices -> (choices.find { it.value == field.value } ?: choices.firstOrNull())?.value.orEmpty() }
            ?: field.value

    private inline fun <reified S : Screen> at(place: String): S = book.show(place, now()) as S

    private fun now() = demo.phone.now()
}
