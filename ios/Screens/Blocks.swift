import LadderbookCore
import Shell
import SwiftUI

/// How tall a ladder on a button or row is.
private let tall: CGFloat = 46

/// A button of a screen.
struct TapButton: View {
    let shell: Shell
    let button: CoreButton
    var main = false
    var wide = false
    @Environment(\.colours) private var colours
    @Environment(\.sizes) private var sizes

    var body: some View {
        Button {
            shell.tap(button)
        } label: {
            HStack(spacing: .gap) {
                if let ladder = button.ladder { LadderPicture(ladder: ladder, height: tall, colour: face) }
                words
                // What is chosen is told by a tick too, not by colour alone.
                if button.chosen { Sign("✓", size: sizes.word, colour: face) }
            }
            .padding(.horizontal, .gap)
            .padding(.vertical, 8)
            .frame(maxWidth: .infinity, minHeight: sizes.target, maxHeight: .infinity, alignment: wide ? .leading : .center)
            .framed(button.chosen ? colours.chalk : colours.ink, fill: back)
        }
        .buttonStyle(.plain)
        .accessibilityAddTraits(button.chosen ? .isSelected : [])
    }

    private var words: some View {
        let align: TextAlignment = wide || button.ladder != nil ? .leading : .center
        return VStack(alignment: align == .leading ? .leading : .center, spacing: 0) {
            Say(button.label, size: sizes.word, bold: true, colour: face, align: align)
            if let note = button.note { Say(note, colour: face, align: align) }
        }
        .frame(maxWidth: wide ? .infinity : nil, alignment: .leading)
    }

    private var face: Color { button.chosen ? colours.onChalk : main ? colours.paper : colours.ink }

    private var back: Color { button.chosen ? colours.chalk : main ? colours.ink : colours.paper }
}

/// A word to tap that is the phone's own, or of the hand: it shrinks before it breaks.
struct Key: View {
    private let label: String
    private let main: Bool
    private let size: CGFloat
    private let height: CGFloat
    private let tap: @MainActor () -> Void
    @Environment(\.colours) private var colours

    init(_ label: String, main: Bool = false, size: CGFloat = 21, height: CGFloat = .hand, tap: @escaping @MainActor () -> Void) {
        self.label = label
        self.main = main
        self.size = size
        self.height = height
        self.tap = tap
    }

    var body: some View {
        Button(action: tap) {
            Fitting(text: label, size: size, colour: main ? colours.paper : colours.ink)
                .padding(.horizontal, 4)
                .padding(.vertical, 6)
                .frame(maxWidth: .infinity, minHeight: height, maxHeight: .infinity)
                .framed(colours.ink, fill: main ? colours.ink : colours.paper)
        }
        .buttonStyle(.plain)
    }
}

/// One view for each of several, by their order.
struct Each<Item, Cell: View>: View {
    private let items: [Item]
    private let cell: (Item) -> Cell

    init(_ items: [Item], @ViewBuilder cell: @escaping (Item) -> Cell) {
        self.items = items
        self.cell = cell
    }

    var body: some View { ForEach(Array(items.enumerated()), id: \.offset) { cell($0.element) } }
}

/// Things in columns, as many as fit; those beside each other are equally tall.
struct Columns<Item, Cell: View>: View {
    private let rows: [[Item]]
    private let across: Int
    private let cell: (Item) -> Cell
    @ScaledMetric(relativeTo: .body) private var scale: CGFloat = 1

    init(_ items: [Item], across: Int, @ViewBuilder cell: @escaping (Item) -> Cell) {
        rows = stride(from: 0, to: items.count, by: across).map { Array(items[$0..<min($0 + across, items.count)]) }
        self.across = across
        self.cell = cell
    }

    var body: some View {
        VStack(spacing: .gap) {
            if Reader(scale: scale).wordsAreLarge {
                Each(rows.flatMap(\.self)) { cell($0) }
            } else {
                Each(rows) { row in
                    HStack(alignment: .top, spacing: .gap) {
                        Each(row) { cell($0).frame(maxWidth: .infinity) }
                        if row.count < across { Color.clear.frame(maxWidth: .infinity, maxHeight: 0) }
                    }
                    .fixedSize(horizontal: false, vertical: true)
                }
            }
        }
        .padding(.horizontal, 12)
        .padding(.vertical, 6)
    }
}

/// Buttons in columns.
struct Choices: View {
    let shell: Shell
    let buttons: [CoreButton]
    var columns = 2

    var body: some View {
        Columns(buttons, across: columns) { TapButton(shell: shell, button: $0, wide: columns == 1 || $0.ladder != nil) }
    }
}

/// What is opened with a tap on its title.
struct Fold<Content: View>: View {
    private let title: String
    private let content: () -> Content

    init(_ title: String, @ViewBuilder content: @escaping () -> Content) {
        self.title = title
        self.content = content
    }

    // Another title is another fold: it begins closed.
    var body: some View { Folding(title: title, content: content).id(title) }
}

private struct Folding<Content: View>: View {
    let title: String
    let content: () -> Content
    @State private var open = false
    @Environment(\.sizes) private var sizes

    var body: some View {
        VStack(alignment: .leading, spacing: 0) {
            Opener(label: title, says: title, value: open ? "−" : "+", bold: true, size: sizes.word, open: $open)
            if open { content() }
        }
        .frame(maxWidth: .infinity, alignment: .leading)
        .padding(.horizontal, 12)
        .padding(.vertical, 5)
    }
}

/// A line that opens what lies under it, and closes it again.
struct Opener: View {
    let label: String
    let says: String
    let value: String
    var bold = false
    let size: CGFloat
    @Binding var open: Bool
    @Environment(\.sizes) private var sizes
    @Environment(\.colours) private var colours

    var body: some View {
        Button {
            open.toggle()
        } label: {
            HStack(spacing: .gap) {
                Say(says, size: size, bold: bold).frame(maxWidth: .infinity, alignment: .leading)
                Sign(open ? "−" : "+", size: 30)
            }
            .padding(.horizontal, 12)
            .padding(.vertical, 8)
            .frame(minHeight: sizes.target)
            .framed(colours.ink, fill: colours.paper)
        }
        .buttonStyle(.plain)
        .accessibilityLabel(Text(verbatim: label))
        .accessibilityValue(Text(verbatim: value))
    }
}

/// A list of rows.
struct Rows: View {
    let shell: Shell
    let rows: [Row]

    var body: some View {
        VStack(spacing: 0) {
            Each(rows) { row in
                RowLine(shell: shell, row: row)
                Rule(.thin)
            }
        }
        .padding(.horizontal, .edge)
    }
}

private struct RowLine: View {
    let shell: Shell
    let row: Row

    var body: some View {
        if let tap = row.tap {
            Button {
                shell.tap(tap)
            } label: {
                line(leads: true)
            }
            .buttonStyle(.plain)
        } else {
            line(leads: false).accessibilityElement(children: .combine)
        }
    }

    private func line(leads: Bool) -> some View {
        HStack(spacing: 14) {
            if let ladder = row.ladder { LadderPicture(ladder: ladder, height: tall) }
            VStack(alignment: .leading, spacing: 0) {
                Say(row.title, size: 22, bold: true)
                if !row.says.isEmpty { Say(row.says) }
            }
            .frame(maxWidth: .infinity, alignment: .leading)
            if leads { Sign("›", size: 34) }
        }
        .padding(.vertical, 8)
        .frame(minHeight: 60)
        .contentShape(Rectangle())
    }
}

/// A line with a button that ends it: a reminder, a twin.
struct RowWithButton: View {
    let shell: Shell
    let row: Row
    let button: CoreButton

    var body: some View {
        VStack(alignment: .leading, spacing: 8) {
            if let tap = row.tap {
                Button {
                    shell.tap(tap)
                } label: {
                    words(line: .under).frame(maxWidth: .infinity, minHeight: 56, alignment: .leading).contentShape(Rectangle())
                }
                .buttonStyle(.plain)
            } else {
                words(line: nil).accessibilityElement(children: .combine)
            }
            TapButton(shell: shell, button: button)
            Rule(.thin)
        }
        .padding(.horizontal, .edge)
        .padding(.vertical, 8)
    }

    private func words(line: Say.Line?) -> some View {
        VStack(alignment: .leading, spacing: 0) {
            Say(row.title, size: 22, bold: true, line: line)
            if !row.says.isEmpty { Say(row.says) }
        }
    }
}

/// Lines of facts, each over a thin rule.
struct Facts: View {
    private let facts: [String]

    init(_ facts: [String]) { self.facts = facts }

    var body: some View {
        VStack(alignment: .leading, spacing: 0) {
            Each(facts) { fact in
                Say(fact).padding(.vertical, 6)
                Rule(.thin)
            }
        }
        .padding(.horizontal, .edge)
    }
}

/// What goes against something: bold and in chalk.
struct Against: View {
    private let text: String
    @Environment(\.colours) private var colours

    init(_ text: String) { self.text = text }

    var body: some View { Say(text, bold: true, colour: colours.chalk).padding(.horizontal, .edge).padding(.vertical, .gap) }
}

/// A danger: it stands at the top, with a mark.
struct Danger: View {
    private let text: String
    @Environment(\.sizes) private var sizes

    init(_ text: String) { self.text = text }

    var body: some View {
        Say("! " + text, size: sizes.word, bold: true).padding(.horizontal, .edge).padding(.vertical, 12)
        Rule(.line)
    }
}

/// A heading over a part of a page.
struct SectionHeading: View {
    private let text: String

    init(_ text: String) { self.text = text }

    var body: some View { Heading(text).padding(EdgeInsets(top: 14, leading: .edge, bottom: 6, trailing: .edge)) }
}

/// A line from edge to edge.
struct Rule: View {
    private let thick: CGFloat
    @Environment(\.colours) private var colours

    init(_ thick: CGFloat) { self.thick = thick }

    var body: some View { colours.ink.frame(maxWidth: .infinity, minHeight: thick, maxHeight: thick) }
}
