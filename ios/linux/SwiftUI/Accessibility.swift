public struct AccessibilityTraits: SetAlgebra, OptionSet, Sendable {
    public let rawValue: Int

    public init(rawValue: Int) { self.rawValue = rawValue }

    public static let isHeader = AccessibilityTraits(rawValue: 1)
    public static let isSelected = AccessibilityTraits(rawValue: 2)
    public static let isImage = AccessibilityTraits(rawValue: 4)
}

public enum AccessibilityChildBehavior: Sendable {
    case ignore
    case combine
    case contain
}

public enum AccessibilityActionKind: Sendable {
    case escape
}

public enum AccessibilityNotification {
    /// Who hears what is read out by itself.
    @MainActor static var heard: (String) -> Void = { _ in }

    public struct Announcement {
        let words: String

        public init(_ words: String) { self.words = words }

        @MainActor
        public func post() { heard(words) }
    }

    public struct ScreenChanged {
        public init() {}

        public func post() {}
    }
}

extension View {
    public func accessibilityHidden(_ hidden: Bool) -> some View { nodes { nodes, _ in hidden ? [] : nodes } }

    public func accessibilityLabel(_ label: Text) -> some View { each { $0.label = label.words } }

    public func accessibilityValue(_ value: Text) -> some View { each { $0.value = value.words } }

    public func accessibilityAddTraits(_ traits: AccessibilityTraits) -> some View { each { $0.traits.formUnion(traits) } }

    public func accessibilityElement(children: AccessibilityChildBehavior = .ignore) -> some View {
        nodes { nodes, _ in
            switch children {
            case .ignore: [Node(nodes.first?.kind ?? .text, texts: nodes.flatMap(\.texts))]
            case .combine: [Node(.text, of: nodes)]
            case .contain: [Node(.group, children: nodes)]
            }
        }
    }

    public func accessibilityAction(_ kind: AccessibilityActionKind, _ handler: @escaping @MainActor () -> Void) -> some View {
        nodes { nodes, place in
            place.memory.escape = handler
            return nodes
        }
    }
}
