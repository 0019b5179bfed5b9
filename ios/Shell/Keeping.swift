import LadderbookCore
import Observation

/// Opens the book, and keeps the shell over it for as long as the program runs.
@MainActor
@Observable
public final class Keeping {
    /// The shell, once the book is open.
    public private(set) var shell: Shell?
    /// Why the book did not open.
    public private(set) var trouble: String?
    /// The words before a book is open, in the phone's language.
    public let words: PhoneWords?

    @ObservationIgnored private let phone: any Phone
    @ObservationIgnored private let worker = Worker()
    @ObservationIgnored private let came: [String]
    @ObservationIgnored private let book: @Sendable () throws -> Book

    /// `came` are the addresses that the phone kept; `book` opens the book, or begins one.
    public init(language: Language, phone: any Phone, came: [String], book: @escaping @Sendable () throws -> Book) {
        words = try? phoneWords(language: language)
        self.phone = phone
        self.came = came
        self.book = book
    }

    /// Opens the book off the screen's thread; once more, where it did not open.
    public func open() async {
        guard shell == nil else { return }
        trouble = nil
        do {
            let shell = Shell(book: try await worker.run(book), phone: phone, worker: worker, came: came)
            shell.begin()
            self.shell = shell
        } catch {
            trouble = sentence(of: error)
        }
    }
}
