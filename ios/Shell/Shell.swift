import LadderbookCore
import Observation

/// How often long work is asked how far it is, and how long half-typed words wait for more.
private let beat = Duration.milliseconds(150)

/// Carries a person from place to place. It knows the addresses he came by, what is on the screen and what is half typed; it decides nothing.
/// Every call of the core is made on the worker, in the order of the taps; everything else on the screen's own thread.
@MainActor
@Observable
public final class Shell {
    /// The addresses he came by, the present place last.
    public private(set) var places: [String]
    /// What is on the screen, and the address it was shown for.
    public private(set) var shown: Shown?
    /// The words around the screens.
    public private(set) var words: PhoneWords?
    /// What the last tap did.
    public private(set) var notice: String?
    /// Why something was not done.
    public private(set) var trouble: String?
    /// Long work that goes on.
    public private(set) var work: Working?
    /// What the viewfinder takes its picture for, while it is open.
    public private(set) var aimed: Shutter?
    /// Whether all is drawn white on black; as the phone has it, where nobody chose.
    public var dusk: Bool?

    @ObservationIgnored private let book: Book
    @ObservationIgnored private let phone: any Phone
    @ObservationIgnored private let worker: Worker
    @ObservationIgnored private var drafts = Drafts()
    @ObservationIgnored private var waiting: Task<Void, Never>?
    @ObservationIgnored private var latest = Task<Void, Never> {}

    /// A shell over an open book. `came` are the addresses that the phone kept.
    public init(book: Book, phone: any Phone, worker: Worker, came: [String] = []) {
        self.book = book
        self.phone = phone
        self.worker = worker
        places = came
    }

    // MARK: What a person does

    /// Shows the place where he was; where a day begins, if he was nowhere or it is gone.
    public func begin() {
        call {
            self.words = try await self.core { try $0.words() }
            do {
                return try await self.show(self.placeToBegin())
            } catch {
                self.tell(error)
                self.places = []
                return try await self.show(self.placeToBegin())
            }
        }
    }

    /// Carries out a button's tap.
    public func tap(_ button: Button) {
        if button.long { startLong(button.tap) } else { tap(button.tap) }
    }

    /// Carries out a tap.
    public func tap(_ tap: Tap) {
        let now = phone.now()
        call { try await self.follow(self.core { try $0.act(tap: tap, now: now) }) }
    }

    /// Sends a form with what stands in its fields, and says when it was taken.
    public func submit(_ form: Form, _ filled: [Filled], taken: @escaping @MainActor () -> Void) {
        let (form, now) = (form.form, phone.now())
        call {
            let next = try await self.core { try $0.submit(form: form, filled: filled, now: now) }
            taken()
            return try await self.follow(next)
        }
    }

    /// Keeps half-typed words, at the latest with the next call.
    public func draft(_ text: String, into field: Field, of form: Form) {
        drafts.put(Drafts.Draft(form: form, field: field.name, text: text))
        guard waiting == nil else { return }
        waiting = Task { [weak self] in
            guard (try? await Task.sleep(for: beat)) != nil else { return }
            self?.keepDrafts()
        }
    }

    /// Keeps what is half typed now: before a call, and when the phone takes the screen away.
    public func keepDrafts() {
        waiting?.cancel()
        waiting = nil
        let (all, now) = (drafts.takeAll(), phone.now())
        guard !all.isEmpty else { return }
        inOrder {
            try await self.core { book in
                for draft in all { try book.draft(form: draft.form.form, field: draft.field, text: draft.text, now: now) }
            }
        }
    }

    /// Takes a picture onto what the shutter names.
    public func shoot(_ shutter: Shutter) {
        Task {
            aimed = shutter
            await phone.takePicture()
            aimed = nil
            let (onto, now) = (shutter.onto, phone.now())
            call {
                guard let shot = try await self.core({ try $0.shoot(onto: onto, now: now) }) else { return nil }
                self.say(shot.notice)
                guard let place = self.shown?.place else { return nil }
                return try await self.show(place)
            }
        }
    }

    /// Where the phone stands, for a field.
    public func standing() async -> Standing {
        await phone.allowPosition()
        guard let answer = await guarded({ try $0.here() }) else { return .refused }
        return answer.map(Standing.here) ?? .unknown
    }

    /// What stands in a field, and how steep the phone lies beside it; nothing where it does not know.
    public func lean(beside typed: String) async -> String? { await guarded { try $0.lean(typed: typed) } ?? nil }

    /// What stands in a field, and the words heard behind it; nothing where none were understood.
    public func listen(after typed: String) async -> String? {
        guard let words else { return nil }
        guard let heard = await phone.listen(tag: words.tag) else {
            trouble = words.noDictation
            return nil
        }
        return [typed, heard].filter { !$0.isEmpty }.joined(separator: " ")
    }

    /// The file of a small picture.
    public func thumbnail(_ photo: String) async -> String? { await guarded { try $0.thumbnail(photo: photo) } }

    /// Shows a picture as it was taken.
    public func openPicture(_ photo: String) { open { try $0.original(photo: photo) } }

    /// Shows a letter.
    public func openPaper(_ letter: String) { open { try $0.paper(letter: letter) } }

    /// Hands a letter on.
    public func sharePaper(_ letter: String) { share { try $0.sharePaper(letter: letter) } }

    /// Hands a file of a structure's plan on.
    public func sharePlan(_ structure: String, _ file: PlanFile) { share { try $0.sharePlan(structure: structure, file: file) } }

    /// Hands the open reminders on.
    public func shareCalendar() {
        let now = phone.now()
        share { try $0.shareCalendar(now: now) }
    }

    /// Gives long work up.
    public func giveUp() {
        guard let work = work?.work else { return }
        Task {
            do { try await aside { try work.giveUp() } } catch { tell(error) }
        }
    }

    /// The phone's own way back; false where a day begins.
    @discardableResult
    public func back() -> Bool {
        guard places.count > 1 else { return false }
        let before = places[places.count - 2]
        call { try await self.show(before) }
        return true
    }

    /// Waits until all that was asked so far is done: the phone may end the process then.
    public func settled() async {
        var seen: Task<Void, Never>?
        while seen != latest {
            seen = latest
            await latest.value
        }
    }

    // MARK: How it is done

    private func startLong(_ tap: Tap) {
        let now = phone.now()
        call {
            let begun = try await self.core { try $0.begin(tap: tap, now: now) }
            self.work = Working(work: begun, says: "", share: 0)
            Task { await self.ask(begun) }
            return nil
        }
    }

    private func ask(_ begun: LongWork) async {
        do {
            while let going = try await goesOn(begun) {
                work = going
                try await Task.sleep(for: beat)
            }
        } catch {
            tell(error)
        }
        work = nil
    }

    /// How far it is; nothing once it has ended.
    private func goesOn(_ begun: LongWork) async throws -> Working? {
        switch try await aside({ try begun.howFar() }) {
        case .going(let done, let of, let says):
            return Working(work: begun, says: says, share: Double(done) / Double(of))
        case .done(let next):
            call { try await self.follow(next) }
            return nil
        case .givenUp:
            return nil
        }
    }

    private func open(_ file: @escaping @Sendable (Book) throws -> String) {
        call {
            self.phone.open(try await self.core(file))
            return nil
        }
    }

    private func share(_ hand: @escaping @Sendable (Book) throws -> Void) {
        call {
            try await self.core(hand)
            return nil
        }
    }

    private func follow(_ next: Next) async throws -> Shown {
        words = try await core { try $0.words() }
        if let notice = next.notice { say(notice) }
        return try await show(next.place)
    }

    private func placeToBegin() async throws -> String {
        if let place = places.last { return place }
        return try await core { try $0.start() }
    }

    private func show(_ place: String) async throws -> Shown {
        let now = phone.now()
        return Shown(place: place, screen: try await core { try $0.show(place: place, now: now) })
    }

    private func say(_ notice: String) {
        self.notice = notice
        phone.feel(notice, tag: words?.tag ?? "")
    }

    private func tell(_ error: any Error) { trouble = sentence(of: error) }

    /// One call of a person: what was half typed first, then the call, then what it leads to.
    private func call(_ work: @escaping @MainActor () async throws -> Shown?) {
        keepDrafts()
        inOrder {
            self.notice = nil
            self.trouble = nil
            if let at = try await work() { self.arrive(at) }
        }
    }

    private func arrive(_ at: Shown) {
        shown = at
        if let before = places.firstIndex(of: at.place) {
            places.removeSubrange((before + 1)...)
        } else {
            places.append(at.place)
        }
        phone.keep(places)
    }

    /// After all that was asked before; a trouble becomes words on the screen.
    private func inOrder(_ work: @escaping @MainActor () async throws -> Void) {
        let before = latest
        latest = Task {
            await before.value
            do { try await work() } catch { tell(error) }
        }
    }

    /// Asks the core for something to show where the person is; a trouble becomes words on the screen.
    private func guarded<Answer: Sendable>(_ work: @escaping @Sendable (Book) throws -> Answer) async -> Answer? {
        do { return try await core(work) } catch {
            tell(error)
            return nil
        }
    }

    private func core<Answer: Sendable>(_ work: @escaping @Sendable (Book) throws -> Answer) async throws -> Answer {
        let book = book
        return try await worker.run { try work(book) }
    }

    /// Beside the worker, which the work itself may keep waiting for the book.
    private nonisolated func aside<Answer: Sendable>(_ work: @Sendable () throws -> Answer) async throws -> Answer { try work() }
}
