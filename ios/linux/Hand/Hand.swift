import LadderbookCore
import Screens
import Shell
import SwiftUI

/// A hand on the screens: it taps and types only what stands on them, found by its words.
@MainActor
public final class Hand {
    /// The words that it looks for.
    public let say: Say
    /// What the phone did.
    public let phone: ComputerPhone
    /// The shell under the screens.
    public let shell: Shell
    /// The screen itself.
    public let look: Look

    /// A hand on the book of a demo, that came by these addresses.
    public convenience init(_ demo: DemoBook, came: [String] = []) async throws {
        let phone = ComputerPhone(demo)
        let (ports, now) = (phone.ports, phone.now())
        try await self.init(phone, came: came, language: "en") { try demo.open(ports, now: now) }
    }

    /// A hand on a phone with a book, that came by these addresses and reads this language: `en`, `es`.
    public init(_ phone: ComputerPhone, came: [String], language: String, book: @escaping @Sendable () throws -> Book) async throws {
        say = try Say(language)
        let keeping = Keeping(language: .english, phone: phone, came: came, book: book)
        await keeping.open()
        guard let shell = keeping.shell else { throw NotThere(what: "the book did not open: \(keeping.trouble ?? "")") }
        self.phone = phone
        self.shell = shell
        look = Look { LadderbookView(keeping) }
        await shell.settled()
    }

    // MARK: Reading

    /// Everything on the screen, in the order in which it is read.
    public var all: [Node] { look.nodes().flatMap(\.all) }

    /// Every text on the screen.
    public var reads: [String] { all.flatMap(\.texts) }

    /// Whether some text has these words in it.
    public func sees(_ text: String) -> Bool { all.contains { node in (node.texts + [node.text ?? ""]).contains { $0.contains(text) } } }

    /// Whether there is such a heading.
    public func hasHeading(_ text: String) -> Bool { all.contains { $0.traits.contains(.isHeader) && $0.texts.contains(text) } }

    /// Whether something says so that can be tapped.
    public func canTap(_ label: String) -> Bool { !buttons(label).isEmpty }

    /// Whether something says so beside a name or a question.
    public func canTapBeside(_ beside: String, _ label: String) -> Bool { !buttons(label, beside: beside).isEmpty }

    /// What stands in a field.
    public func text(in label: String) throws -> String { try field(label).text ?? "" }

    // MARK: Doing

    /// Taps what alone says so.
    public func tap(_ label: String) async throws {
        let found = buttons(label)
        guard found.count == 1 else { throw missing("\(found.count) buttons say \(label)") }
        try await press(found, label)
    }

    /// Taps the first that says so.
    public func tapFirst(_ label: String) async throws { try await press(buttons(label), label) }

    /// Taps the last that says so.
    public func tapLast(_ label: String) async throws { try await press(buttons(label).suffix(1), label) }

    /// Taps what says so beside a name or a question.
    public func tapBeside(_ beside: String, _ label: String) async throws {
        try await press(buttons(label, beside: beside), "\(label) beside \(beside)")
    }

    /// Types into a field, in place of what stood there.
    public func type(_ label: String, _ text: String) async throws {
        try field(label).type(text)
        await shell.settled()
    }

    /// Chooses one of several.
    public func choose(_ label: String, _ choice: String) async throws {
        let isChooser = { (node: Node) in node.kind == .button && node.label == label }
        try await press(all.filter(isChooser), label)
        try await press(all.drop { !isChooser($0) }.dropFirst().filter { $0.says(choice) }, choice)
    }

    /// Opens everything that is folded.
    public func unfoldAll() async throws {
        while let folded = all.first(where: { $0.value == "+" }) { try await press([folded], folded.label ?? "") }
    }

    /// Waits for something that comes by itself.
    public func until(_ what: String, _ holds: () -> Bool) async throws {
        for _ in 0..<6_000 {
            if holds() { return }
            try await Task.sleep(for: .milliseconds(10))
        }
        throw missing("waited in vain until \(what)")
    }

    private func press(_ nodes: [Node], _ what: String) async throws {
        guard let node = nodes.first else { throw missing("no button says \(what)") }
        node.tap()
        await shell.settled()
    }

    private func buttons(_ label: String) -> [Node] { all.filter { $0.says(label) } }

    private func buttons(_ label: String, beside: String) -> [Node] {
        let root = look.nodes()
        let groups = [root] + root.flatMap(\.all).map(\.children)
        return groups.filter { group in group.contains { $0.texts.contains(beside) } }.flatMap { group in group.filter { $0.says(label) } }
    }

    private func field(_ label: String) throws -> Node {
        guard let field = all.first(where: { $0.kind == .field && $0.label == label }) else { throw missing("no field asks \(label)") }
        return field
    }

    private func missing(_ what: String) -> NotThere {
        NotThere(what: "\(what); on the screen: \(reads.joined(separator: " | ")); trouble: \(shell.trouble ?? "none")")
    }
}

extension Node {
    fileprivate func says(_ label: String) -> Bool { kind == .button && texts.contains(label) }
}
