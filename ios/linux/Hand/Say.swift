import Foundation

/// The tree of the project.
public let tree = URL(fileURLWithPath: #filePath).deletingLastPathComponent().appending(path: "../../..").standardizedFileURL

/// The words that a person reads, from the message files themselves: messages of one line without choices.
public struct Say: Sendable {
    private let messages: [String: String]

    /// The words of a language: `en`, `es`.
    public init(_ language: String) throws {
        let words = tree.appending(path: "core/trade/words/\(language)")
        let files = FileManager.default.enumerator(at: words, includingPropertiesForKeys: nil)?.compactMap { $0 as? URL } ?? []
        var messages: [String: String] = [:]
        for file in files where file.pathExtension == "ftl" {
            for line in try String(contentsOf: file, encoding: .utf8).split(separator: "\n") {
                guard let message = try /([a-z][\w-]*) = (.+)/.wholeMatch(in: line) else { continue }
                messages[String(message.1)] = String(message.2)
            }
        }
        self.messages = messages
    }

    /// A message, with what it asks for.
    public func callAsFunction(_ key: String, _ given: [String: String] = [:]) throws -> String {
        guard let text = messages[key] else { throw NotThere(what: "no message \(key)") }
        return try text.replacing(/\{ \$([\w-]+) }/) { asked in
            guard let argument = given[String(asked.1)] else { throw NotThere(what: "\(key) asks for \(asked.0)") }
            return argument
        }
    }

    /// All messages whose key begins so.
    public func all(_ beginning: String) -> [String] { messages.keys.filter { $0.hasPrefix(beginning) }.sorted().compactMap { messages[$0] } }
}

/// Something that a person would look for in vain.
public struct NotThere: Error, CustomStringConvertible {
    /// What he looked for, and where.
    public let what: String

    /// He looked for this.
    public init(what: String) { self.what = what }

    /// In words.
    public var description: String { what }
}
