import SwiftUI

/// Words this much larger than usual stand below each other instead of side by side.
private let large: CGFloat = 1.3

/// Words that are as large as this need not grow to help a reader.
private let largeEnough: CGFloat = 24

/// How much larger than usual the reader wants words.
struct Reader {
    let scale: CGFloat

    /// Whether words are so large that two things no longer fit side by side.
    var wordsAreLarge: Bool { scale > large }

    /// Large words grow with the reader's wish until they are as large as grown small ones: a title longer than its line helps nobody.
    func grown(_ size: CGFloat) -> CGFloat { min(size * scale, max(size, largeEnough * scale)) }
}

/// Words: no grey, no thin strokes.
struct Say: View {
    private let text: String
    private let size: CGFloat?
    private let bold: Bool
    private let colour: Color?
    private let align: TextAlignment
    private let line: Line?
    @Environment(\.sizes) private var sizes
    @Environment(\.colours) private var colours
    @ScaledMetric(relativeTo: .body) private var scale: CGFloat = 1

    /// A line along the words.
    enum Line {
        case under
        case through
    }

    init(
        _ text: String, size: CGFloat? = nil, bold: Bool = false, colour: Color? = nil, align: TextAlignment = .leading, line: Line? = nil
    ) {
        self.text = text
        self.size = size
        self.bold = bold
        self.colour = colour
        self.align = align
        self.line = line
    }

    var body: some View {
        Text(verbatim: text)
            .font(.hand(Reader(scale: scale).grown(size ?? sizes.small), bold: bold))
            .underline(line == .under)
            .strikethrough(line == .through)
            .foregroundStyle(colour ?? colours.ink)
            .multilineTextAlignment(align)
            .fixedSize(horizontal: false, vertical: true)
    }
}

/// Words that a reader of the screen can jump to.
struct Heading: View {
    private let text: String
    private let size: CGFloat?
    private let colour: Color?
    @Environment(\.sizes) private var sizes

    init(_ text: String, size: CGFloat? = nil, colour: Color? = nil) {
        self.text = text
        self.size = size
        self.colour = colour
    }

    var body: some View { Say(text, size: size ?? sizes.word, bold: true, colour: colour).accessibilityAddTraits(.isHeader) }
}

/// Words that must fit their place: they shrink before one of them breaks.
struct Fitting: View {
    let text: String
    let size: CGFloat
    let colour: Color
    @ScaledMetric(relativeTo: .body) private var scale: CGFloat = 1

    /// How far they shrink: no word is smaller than this, in points that do not grow.
    private static let least: CGFloat = 13

    var body: some View {
        let size = Reader(scale: scale).grown(size)
        // With no more lines than words, a word that does not fit its line makes all of them smaller instead of breaking.
        Text(verbatim: text)
            .font(.hand(size, bold: true))
            .lineLimit(text.split(separator: " ").count)
            .minimumScaleFactor(Self.least / size)
            .foregroundStyle(colour)
            .multilineTextAlignment(.center)
    }
}

/// A sign beside words that say the same: eyes only.
struct Sign: View {
    private let text: String
    private let size: CGFloat
    private let colour: Color?

    init(_ text: String, size: CGFloat, colour: Color? = nil) {
        self.text = text
        self.size = size
        self.colour = colour
    }

    var body: some View { Say(text, size: size, bold: true, colour: colour).accessibilityHidden(true) }
}
