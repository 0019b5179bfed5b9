import Foundation

/// The program of a computer, built from the same core.
public enum Program {
    /// What it says; it must end well.
    public static func says(_ asked: [String]) throws -> String {
        let process = Process()
        process.executableURL = URL(fileURLWithPath: try environment("LADDERBOOK"))
        process.arguments = asked
        let pipe = Pipe()
        process.standardOutput = pipe
        try process.run()
        let said = String(decoding: try pipe.fileHandleForReading.readToEnd() ?? Data(), as: UTF8.self)
        process.waitUntilExit()
        guard process.terminationStatus == 0 else { throw NotThere(what: "ladderbook \(asked.joined(separator: " ")) failed: \(said)") }
        return said
    }

    /// What it says of the book in a demo's folder.
    public static func says(of demo: DemoBook, _ asked: String...) throws -> String {
        try says(["--book", demo.book.path, "--key-file", demo.key.path, "--today", demoDay] + asked)
    }

    /// A variable that `test` sets.
    public static func environment(_ name: String) throws -> String {
        guard let value = ProcessInfo.processInfo.environment[name] else { throw NotThere(what: "\(name) is not set: run ./dev test swift") }
        return value
    }
}
