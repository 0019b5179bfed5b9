import Hand
import LadderbookCore
import Testing

/// The addresses of all screens in the demo's book: those of the main story, and those of a visit that is open.
@MainActor
struct Tour {
    private let book: Book
    private let now: Moment

    /// A tour of a book, in a language: `en`, `es`.
    init(_ book: Book, now: Moment, language: String) throws {
        self.book = book
        self.now = now
        guard case .settings(let settings) = try book.show(place: "/settings", now: now) else { throw NotThere(what: "the settings are shown") }
        _ = try send(try #require(settings.forms.first), ["language": language])
    }

    /// By the names of the screens.
    func places() throws -> [String: String] {
        let door = try find("318 lamplighter")
        let letter = try act(#require(doorstep(door).doors.first).tap)
        let changed = letter.replacing("/letter/", with: "/then-and-now/")
        guard case .thenAndNow(let thenAndNow) = try show(changed) else { throw NotThere(what: "what changed is shown") }
        let verdict = try act(thenAndNow.main.tap)
        guard case .verdict(let judged) = try show(verdict) else { throw NotThere(what: "the verdict is shown") }
        let offer = try act(judged.offer.tap)
        guard case .offer(let offered) = try show(offer) else { throw NotThere(what: "the offer is shown") }
        let roof = try act(offered.roof.tap)
        guard case .roof(let measured) = try show(roof) else { throw NotThere(what: "the roof is shown") }
        let open = try openVisit()
        return [
            "arrive": try book.start(), "found": try search("lamplighter"), "unknown": try search("nowhere at all"),
            "doorstep": open.door, "property": door.replacing("/doorstep/", with: "/property/"), "safety": open.safety,
            "walk": open.walk, "mark": open.mark, "tray": open.walk.replacing(/\/walk\/([^\/]+)\/.*/) { "/tray/\($0.1)" },
            "then-and-now": changed, "verdict": verdict, "roof": roof, "leak": try act(measured.leak.tap), "offer": offer,
            "letter": letter, "outcome": door.replacing("/doorstep/", with: "/outcome/"), "reminders": "/reminders", "settings": "/settings",
        ]
    }

    /// A new call to the same roof: answered for safety, one part marked as failing with its likeliest defect.
    private func openVisit() throws -> (door: String, safety: String, walk: String, mark: String) {
        let door = try find("318 lamplighter")
        let asks = ["words": "It drips on the bed again. Could you put some more sealant on it?"]
        let safety = try send(#require(doorstep(door).open), asks)
        guard case .safety(let answers) = try show(safety) else { throw NotThere(what: "a visit begins with safety") }
        for check in answers.checks { _ = try act(check.yes.tap) }
        let ladder = try walk(act(answers.main.tap))
        _ = try send(ladder.say, ["words": "Nails lie in the gutter"])
        let stop = try act(ladder.stops[4].go)
        var mark = try act(#require(walk(stop).here?.spots.first).mark.tap)
        mark = try act(self.mark(mark).rungs[2].tap)
        mark = try act(#require(self.mark(mark).defects.first).tap)
        return (door, safety, stop, mark)
    }

    private func doorstep(_ place: String) throws -> DoorstepState {
        guard case .doorstep(let state) = try show(place) else { throw NotThere(what: "a doorstep is shown") }
        return state
    }

    private func walk(_ place: String) throws -> WalkState {
        guard case .walk(let state) = try show(place) else { throw NotThere(what: "the walk is shown") }
        return state
    }

    private func mark(_ place: String) throws -> MarkState {
        guard case .mark(let state) = try show(place) else { throw NotThere(what: "a mark is shown") }
        return state
    }

    private func find(_ address: String) throws -> String {
        guard case .arrive(let found) = try show(search(address)) else { throw NotThere(what: "what was found is shown") }
        return try act(#require(found.found.first?.tap))
    }

    private func search(_ words: String) throws -> String {
        guard case .arrive(let arrive) = try show(book.start()) else { throw NotThere(what: "a day begins with an address") }
        return try send(arrive.search, ["find": words])
    }

    private func send(_ form: Form, _ typed: [String: String]) throws -> String {
        let filled = form.fields.map { Filled(name: $0.name, value: typed[$0.name] ?? standing(in: $0)) }
        return try book.submit(form: form.form, filled: filled, now: now).place
    }

    private func standing(in field: Field) -> String {
        guard case .oneOf(let choices) = field.kind else { return field.value }
        return choices.contains { $0.value == field.value } ? field.value : choices.first?.value ?? ""
    }

    private func act(_ tap: Tap) throws -> String { try book.act(tap: tap, now: now).place }

    private func show(_ place: String) throws -> Screen { try book.show(place: place, now: now) }
}
