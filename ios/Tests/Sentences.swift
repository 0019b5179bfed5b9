import LadderbookCore

/// Forms that stand open without a heading of their own: what is over them says what they are for.
private let standOpen: Set = ["search", "same", "ask", "caption"]

/// What a state of the core says to a person, wherever in it; of a member, by its name.
func sentences(of value: Any, as name: String? = nil) -> [String] {
    switch value {
    case let text as String: text.isEmpty ? [] : [text]
    case let field as Field: [field.label] + sentences(in: field)
    case let choice as Choice: [choice.label]
    case let picture as Picture: [picture.alt]
    case let shutter as Shutter: [shutter.label]
    case let drawn as Drawn: [drawn.says]
    case let spot as SpotRow: sentences(of: spot.sound) + sentences(of: spot.mark) + [spot.name, spot.lookAgain ?? spot.says]
    case let form as Form where standOpen.contains(name ?? ""): form.fields.flatMap { sentences(of: $0) } + [form.submit]
    default: members(of: value).flatMap { sentences(of: $0.value, as: $0.label) }
    }
}

/// What stands in a field, and on the button beside it.
private func sentences(in field: Field) -> [String] {
    switch field.kind {
    case .oneOf(let choices): choices.flatMap { sentences(of: $0) }
    case .position(let here, _): sentences(of: field.value) + [here]
    default: sentences(of: field.value)
    }
}

/// The members of a record that are there to be read: no names of things, no heading over an empty list, nothing that only the core opens.
private func members(of record: Any) -> [Mirror.Child] {
    let mirror = Mirror(reflecting: record)
    guard mirror.displayStyle != .class else { return [] }
    return mirror.children.filter { child in
        switch (record, child.label) {
        case (is Sent, "letter"), (is RoofState, "structure"): false
        case (_, let label?) where label.hasSuffix("Title"): !isEmpty(label.dropLast(5), in: mirror)
        default: true
        }
    }
}

private func isEmpty(_ list: Substring, in mirror: Mirror) -> Bool {
    let lists = mirror.children.filter { $0.label?.hasPrefix(list) == true }.compactMap { $0.value as? [Any] }
    return !lists.isEmpty && lists.allSatisfy(\.isEmpty)
}
