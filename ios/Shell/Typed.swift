import LadderbookCore

/// What was typed into a form and not sent yet. It holds for the place where it was typed, over what the core knows of a field.
public struct Typed: Sendable, Equatable {
    private var place: String?
    private var texts: [String: String] = [:]

    /// Nothing typed yet.
    public init() {}

    /// What stands in a field.
    public func text(in field: Field, at place: String?) -> String {
        let typed = place == self.place ? texts[field.name] : nil
        return typed ?? field.known
    }

    /// Something was typed.
    public mutating func type(_ text: String, into field: Field, at place: String?) {
        if place != self.place { self = Typed() }
        self.place = place
        texts[field.name] = text
    }

    /// A form as it is sent.
    public func filled(_ form: Form, at place: String?) -> [Filled] {
        form.fields.map { Filled(name: $0.name, value: text(in: $0, at: place)) }
    }
}

extension Field {
    /// What the core knows of it. One of several always has a choice that is chosen.
    fileprivate var known: String {
        guard case .oneOf(let choices) = kind else { return value }
        return (choices.first { $0.value == value } ?? choices.first)?.value ?? value
    }
}
