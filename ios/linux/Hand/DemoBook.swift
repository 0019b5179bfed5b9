import Foundation
import LadderbookCore
import Shell

/// The day the demo plays on.
let demoDay = "2026-09-14"

/// A folder that `ladderbook demo --out` wrote.
public struct DemoBook: Sendable {
    /// Where it lies.
    public let folder: URL

    /// The demo in a folder.
    public init(_ folder: URL) { self.folder = folder }

    /// A demo of its own, up to the call that the main story turns on.
    public static func atCall() throws -> DemoBook { try copy(of: callPlayed.get()) }

    /// A demo of its own, with all its stories.
    public static func whole() throws -> DemoBook { try copy(of: allPlayed.get()) }

    var book: URL { folder.appending(path: "book") }

    /// Where its key lies.
    public var key: URL { folder.appending(path: "demo.key") }

    /// Opens its book.
    public func open(_ ports: ComputerPorts, now: Moment, language: Language = .english) throws -> Book {
        try Book.open(
            folder: book.path, cache: folder.appending(path: "cache").path, language: language, ports: ports.all, now: now)
    }

    /// The demo is played once, and copied for each test.
    private static let callPlayed = Result { try play("--at-call") }
    private static let allPlayed = Result { try play() }

    private static func play(_ how: String...) throws -> DemoBook {
        let demo = DemoBook(try newFolder())
        _ = try Program.says(["demo", "--no-serve"] + how + ["--out", demo.folder.path])
        return demo
    }

    private static func copy(of demo: DemoBook) throws -> DemoBook {
        let folder = try newFolder().appending(path: "demo")
        try FileManager.default.copyItem(at: demo.folder, to: folder)
        return DemoBook(folder)
    }

    private static func newFolder() throws -> URL {
        let folder = FileManager.default.temporaryDirectory.appending(path: "ladderbook-\(UUID().uuidString)")
        try FileManager.default.createDirectory(at: folder, withIntermediateDirectories: true)
        return folder
    }
}
