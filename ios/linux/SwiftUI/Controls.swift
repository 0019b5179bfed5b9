public struct Font: Equatable, Sendable {
    public enum TextStyle: Sendable {
        case body
    }

    let size: CGFloat

    public static func custom(_ name: String, fixedSize: CGFloat) -> Font { Font(size: fixedSize) }
}

public struct Text: Primitive {
    let words: String
    private var font: Font?

    public nonisolated init(verbatim words: String) { self.words = words }

    public nonisolated func font(_ font: Font?) -> Text {
        var text = self
        text.font = font
        return text
    }

    public nonisolated func underline(_ isActive: Bool = true) -> Text { self }

    public nonisolated func strikethrough(_ isActive: Bool = true) -> Text { self }

    public nonisolated func foregroundStyle<Style: ShapeStyle>(_ style: Style) -> Text { self }

    func look(from place: Place) -> [Node] {
        guard !words.isEmpty else { return [] }
        let node = Node(.text, texts: [words])
        node.points = font?.size
        return [node]
    }
}

public struct Button<Label: View>: Primitive {
    let action: @MainActor () -> Void
    let label: Label

    public init(action: @escaping @MainActor () -> Void, @ViewBuilder label: () -> Label) {
        self.action = action
        self.label = label()
    }

    func look(from place: Place) -> [Node] { [Node(.button, of: place.inside("label").look(at: label), press: action)] }
}

public struct TextField: Primitive {
    let text: Binding<String>

    public init(_ prompt: String, text: Binding<String>, axis: Axis) { self.text = text }

    func look(from place: Place) -> [Node] { [Node(.field, typed: text)] }
}

public enum UIKeyboardType: Int, Sendable {
    case `default`
    case numbersAndPunctuation
    case phonePad
}

public struct DatePickerComponents: OptionSet, Sendable {
    public let rawValue: UInt

    public init(rawValue: UInt) { self.rawValue = rawValue }

    public static let date = DatePickerComponents(rawValue: 1)
}

public struct DatePicker<Label: View>: Primitive {
    let selection: Binding<Date>
    let label: Label

    public init(selection: Binding<Date>, displayedComponents: DatePickerComponents, @ViewBuilder label: () -> Label) {
        self.selection = selection
        self.label = label()
    }

    func look(from place: Place) -> [Node] {
        let node = Node(.day, of: place.inside("label").look(at: label))
        node.picked = selection
        return [node]
    }
}

public struct PlainButtonStyle: Sendable {
}

public struct GraphicalDatePickerStyle: Sendable {
}

extension PlainButtonStyle {
    public static var plain: PlainButtonStyle { PlainButtonStyle() }
}

extension GraphicalDatePickerStyle {
    public static var graphical: GraphicalDatePickerStyle { GraphicalDatePickerStyle() }
}
