import SwiftUI

/// Ink and chalk: black on white, one accent; white on black after dusk. Every pair is 7:1 or better.
public struct Colours: Sendable {
    /// Words and lines.
    public let ink: Color
    /// What they stand on.
    public let paper: Color
    let chalk: Color
    let onChalk: Color
    let mist: Color
    let hatch: Color
    /// Whether they are white on black.
    let dark: Bool

    /// Black on white.
    public static let day = Colours(
        ink: Color(hex: 0x101214), paper: Color(hex: 0xFFFFFF), chalk: Color(hex: 0x123F9C), onChalk: Color(hex: 0xFFFFFF),
        mist: Color(hex: 0xE9EDF2), hatch: Color(hex: 0xE0E0E0), dark: false)
    /// White on black.
    public static let dusk = Colours(
        ink: Color(hex: 0xFFFFFF), paper: Color(hex: 0x0B0C0D), chalk: Color(hex: 0x9FC0FF), onChalk: Color(hex: 0x0B0C0D),
        mist: Color(hex: 0x1D2229), hatch: Color(hex: 0x25282D), dark: true)
}

extension Color {
    fileprivate init(hex: Int) {
        func share(_ shift: Int) -> Double { Double(hex >> shift & 0xFF) / 255 }
        self.init(.sRGB, red: share(16), green: share(8), blue: share(0), opacity: 1)
    }
}

/// How large things are: on the ladder nothing is smaller than what an arm's length and the sun allow.
struct Sizes: Sendable {
    let small: CGFloat
    let word: CGFloat
    let target: CGFloat

    static let atTheTailgate = Sizes(small: 18, word: 21, target: 60)
    static let onTheLadder = Sizes(small: 24, word: 24, target: 72)

    /// What stands in a field.
    var typed: CGFloat { max(22, small) }
}

extension CGFloat {
    static let line: CGFloat = 3
    static let thin: CGFloat = 2
    static let corner: CGFloat = 10
    static let edge: CGFloat = 16
    static let gap: CGFloat = 10
    static let hand: CGFloat = 72
}

extension EnvironmentValues {
    /// By day or at dusk.
    public var colours: Colours {
        get { self[ColoursKey.self] }
        set { self[ColoursKey.self] = newValue }
    }

    var sizes: Sizes {
        get { self[SizesKey.self] }
        set { self[SizesKey.self] = newValue }
    }
}

private struct ColoursKey: EnvironmentKey {
    static let defaultValue = Colours.day
}

private struct SizesKey: EnvironmentKey {
    static let defaultValue = Sizes.atTheTailgate
}

extension Font {
    /// Atkinson Hyperlegible, at a size that was grown already.
    static func hand(_ size: CGFloat, bold: Bool) -> Font {
        .custom(bold ? "AtkinsonHyperlegible-Bold" : "AtkinsonHyperlegible-Regular", fixedSize: size)
    }
}

extension View {
    /// The frame around what can be tapped or filled.
    func framed(_ colour: Color, fill: Color) -> some View {
        background(RoundedRectangle(cornerRadius: .corner).fill(fill))
            .overlay(RoundedRectangle(cornerRadius: .corner).strokeBorder(colour, lineWidth: .line))
            .contentShape(Rectangle())
    }
}
