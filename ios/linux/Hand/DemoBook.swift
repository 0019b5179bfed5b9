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
    public static func atCall() throws -> DemoBook { try copy(of: "at-call") }

    /// A demo of its own, with all its stories.
    public static func whole() throws -> DemoBook { try copy(of: "whole") }

    var book: URL { folder.appending(path: "book") }

    /// Where its key lies.
    public var key: URL { folder.appending(path: "demo.key") }

    /// Opens its book.
    public func open(_ ports: ComputerPorts, now: Moment, language: Language = .english) throws -> Book {
        try Book.open(
            folder: book.path, cache: folder.appending(path: "cache").path, language: language, ports: ports.all, now: now)
    }

    /// Of a demo that `test` has played.
    private static func copy(of name: String) throws -> DemoBook {
        let files = FileManager.default
        let folder = files.temporaryDirectory.appending(path: "ladderbook-\(UUID().uuidString)")
        try files.copyItem(at: URL(fileURLWithPath: Program.environment("DEMOS")).appending(path: name), to: folder)
        return DemoBook(folder)
    }
}
