import LadderbookCore
import Shell
import SwiftUI

/// A form behind its title.
struct FoldedForm: View {
    let shell: Shell
    let form: CoreForm

    var body: some View { Fold(form.title) { Fields(shell: shell, form: form, edge: 0) } }
}

/// A form with its fields. Half-typed words are kept as they are typed.
struct Fields: View {
    let shell: Shell
    let form: CoreForm
    var edge: CGFloat = .edge
    @State private var typed = Typed()

    var body: some View {
        VStack(alignment: .leading, spacing: 12) {
            Each(form.fields) { OneField(shell: shell, field: $0, text: text(in: $0)) }
            Key(form.submit, main: true) {
                shell.submit(form, typed.filled(form, at: place)) { typed = Typed() }
            }
        }
        .padding(.horizontal, edge)
        .padding(.vertical, 8)
    }

    private var place: String? { shell.shown?.place }

    private func text(in field: Field) -> Binding<String> {
        Binding { @MainActor in
            typed.text(in: field, at: place)
        } set: { @MainActor text in
            guard text != typed.text(in: field, at: place) else { return }
            typed.type(text, into: field, at: place)
            shell.draft(text, into: field, of: form)
        }
    }
}

private struct OneField: View {
    let shell: Shell
    let field: Field
    @Binding var text: String

    var body: some View {
        VStack(alignment: .leading, spacing: 8) {
            Say(field.label, bold: true).accessibilityHidden(true)
            switch field.kind {
            case .line: Typing(label: field.label, text: $text)
            case .words: Dictated(shell: shell, label: field.label, text: $text)
            case .phone: Typing(label: field.label, text: $text, keyboard: .phonePad)
            case .day: Dated(label: field.label, text: $text)
            case .inclination: Leaning(shell: shell, label: field.label, text: $text)
            case .position(let here, let failed): Placed(shell: shell, label: field.label, here: here, failed: failed, text: $text)
            case .oneOf(let choices): OneOf(label: field.label, choices: choices, value: $text)
            }
        }
        .accessibilityElement(children: .contain)
    }
}

private struct Typing: View {
    let label: String
    @Binding var text: String
    var keyboard = UIKeyboardType.default
    var lines = 1
    @Environment(\.sizes) private var sizes
    @Environment(\.colours) private var colours
    @ScaledMetric(relativeTo: .body) private var scale: CGFloat = 1

    var body: some View {
        TextField("", text: $text, axis: lines > 1 ? .vertical : .horizontal)
            .lineLimit(lines, reservesSpace: true)
            .keyboardType(keyboard)
            .font(.hand(Reader(scale: scale).grown(sizes.typed), bold: false))
            .foregroundStyle(colours.ink)
            .tint(colours.chalk)
            .padding(.horizontal, 12)
            .padding(.vertical, 10)
            .frame(minHeight: sizes.target)
            .framed(colours.ink, fill: colours.paper)
            .accessibilityLabel(Text(verbatim: label))
    }
}

/// Several lines, typed or said.
private struct Dictated: View {
    let shell: Shell
    let label: String
    @Binding var text: String

    var body: some View {
        Typing(label: label, text: $text, lines: 3)
        if let words = shell.words {
            Key(words.dictate) {
                Task {
                    if let longer = await shell.listen(after: text) { text = longer }
                }
            }
        }
    }
}

/// A day, typed or picked from the phone's calendar while the field is filled in.
private struct Dated: View {
    let label: String
    @Binding var text: String
    @FocusState private var filling: Bool
    @Environment(\.colours) private var colours

    var body: some View {
        Typing(label: label, text: $text, keyboard: .numbersAndPunctuation).focused($filling)
        if filling {
            DatePicker(selection: day, displayedComponents: .date) {
                Text(verbatim: label)
            }
            .datePickerStyle(.graphical)
            .tint(colours.chalk)
        }
    }

    private var day: Binding<Date> {
        Binding { @MainActor in
            Day.date(of: text)
        } set: { @MainActor date in
            text = Day.text(of: date)
        }
    }
}

/// Inclinations, typed or read by laying the phone on the slope.
private struct Leaning: View {
    let shell: Shell
    let label: String
    @Binding var text: String

    var body: some View {
        Typing(label: label, text: $text, keyboard: .numbersAndPunctuation)
        if let words = shell.words {
            Key(words.lay) {
                Task {
                    if let readings = await shell.lean(beside: text) { text = readings }
                }
            }
        }
    }
}

/// A place, typed or taken from where the phone stands.
private struct Placed: View {
    let shell: Shell
    let label: String
    let here: String
    let failed: String
    @Binding var text: String
    @State private var unknown = false

    var body: some View {
        Typing(label: label, text: $text)
        Key(here) {
            Task {
                let standing = await shell.standing()
                if case .here(let here) = standing { text = here }
                if case .unknown = standing { unknown = true } else { unknown = false }
            }
        }
        if unknown { Say(failed) }
    }
}

/// One of several: what is chosen, and with a tap all of them.
private struct OneOf: View {
    let label: String
    let choices: [Choice]
    @Binding var value: String
    @State private var open = false
    @Environment(\.sizes) private var sizes

    var body: some View {
        Opener(label: label, says: chosen, value: chosen, size: sizes.typed, open: $open)
        if open {
            VStack(spacing: 0) {
                Each(choices) { choice in
                    OneChoice(choice: choice, chosen: choice.value == value) {
                        value = choice.value
                        open = false
                    }
                    Rule(.thin)
                }
            }
            .padding(.leading, 12)
        }
    }

    private var chosen: String { choices.first { $0.value == value }?.label ?? "" }
}

private struct OneChoice: View {
    let choice: Choice
    let chosen: Bool
    let choose: @MainActor () -> Void
    @Environment(\.sizes) private var sizes
    @Environment(\.colours) private var colours

    var body: some View {
        Button(action: choose) {
            HStack(spacing: .gap) {
                Say(choice.label, size: sizes.word, bold: chosen).frame(maxWidth: .infinity, alignment: .leading)
                if chosen { Sign("✓", size: sizes.word) }
            }
            .padding(.horizontal, 12)
            .padding(.vertical, 8)
            .frame(minHeight: sizes.target)
            .background(chosen ? colours.mist : colours.paper)
            .contentShape(Rectangle())
        }
        .buttonStyle(.plain)
        .accessibilityAddTraits(chosen ? .isSelected : [])
    }
}
