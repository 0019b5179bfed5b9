public struct Color: Equatable, Sendable {
    public enum RGBColorSpace: Sendable {
        case sRGB
    }

    public let red: Double
    public let green: Double
    public let blue: Double
    let opacity: Double

    public init(_ space: RGBColorSpace = .sRGB, red: Double, green: Double, blue: Double, opacity: Double = 1) {
        (self.red, self.green, self.blue, self.opacity) = (red, green, blue, opacity)
    }

    public static let clear = Color(red: 0, green: 0, blue: 0, opacity: 0)
}

extension Color: View {
    public var body: some View { EmptyView() }
}

public protocol ShapeStyle: Sendable {
}

extension Color: ShapeStyle {
}

@MainActor @preconcurrency
public protocol Shape: View {
}

extension Shape {
    public var body: some View { EmptyView() }

    public func fill<Style: ShapeStyle>(_ style: Style) -> some View { EmptyView() }
}

public protocol InsettableShape: Shape {
}

extension InsettableShape {
    public func strokeBorder<Style: ShapeStyle>(_ style: Style, lineWidth: CGFloat = 1) -> some View { EmptyView() }
}

public struct Rectangle: InsettableShape {
    public nonisolated init() {}
}

public struct RoundedRectangle: InsettableShape {
    public nonisolated init(cornerRadius: CGFloat) {}
}

public struct Angle: Equatable, Sendable {
    public let degrees: Double

    public static func degrees(_ degrees: Double) -> Angle { Angle(degrees: degrees) }
}

public enum CGLineCap: Sendable {
    case butt
    case round
    case square
}

public struct StrokeStyle: Equatable, Sendable {
    let lineWidth: CGFloat
    let lineCap: CGLineCap
    let dash: [CGFloat]

    public init(lineWidth: CGFloat = 1, lineCap: CGLineCap = .butt, dash: [CGFloat] = []) {
        (self.lineWidth, self.lineCap, self.dash) = (lineWidth, lineCap, dash)
    }
}

/// The places that a path goes through.
public struct Path: Equatable, Sendable {
    private(set) var places: [CGPoint] = []

    public init() {}

    public init(_ callback: (inout Path) -> Void) { callback(&self) }

    public mutating func move(to place: CGPoint) { places.append(place) }

    public mutating func addLine(to place: CGPoint) {
        precondition(!places.isEmpty, "a line begins where the path is")
        places.append(place)
    }

    public mutating func addLines(_ lines: [CGPoint]) { places += lines }

    public mutating func addQuadCurve(to place: CGPoint, control: CGPoint) {
        precondition(!places.isEmpty, "a curve begins where the path is")
        places.append(place)
    }

    public mutating func closeSubpath() {}
}

/// What a canvas draws, kept as a list: how many lines and areas, which words.
public struct GraphicsContext {
    final class Drawn {
        var strokes = 0
        var fills = 0
        var words: [String] = []
    }

    public struct Shading: Sendable {
        public static func color(_ color: Color) -> Shading { Shading() }
    }

    let drawn = Drawn()

    public mutating func scaleBy(x: CGFloat, y: CGFloat) {}

    public mutating func translateBy(x: CGFloat, y: CGFloat) {}

    public mutating func rotate(by angle: Angle) {}

    public func fill(_ path: Path, with shading: Shading) { drawn.fills += path.places.isEmpty ? 0 : 1 }

    public func stroke(_ path: Path, with shading: Shading, style: StrokeStyle) { drawn.strokes += path.places.isEmpty ? 0 : 1 }

    public func draw(_ text: Text, at place: CGPoint, anchor: UnitPoint = .center) { drawn.words.append(text.words) }
}

public struct Canvas: Primitive {
    let renderer: (inout GraphicsContext, CGSize) -> Void

    public init(renderer: @escaping (inout GraphicsContext, CGSize) -> Void) { self.renderer = renderer }

    func look(from place: Place) -> [Node] {
        var context = GraphicsContext()
        renderer(&context, CGSize(width: 100, height: 100))
        return [Node(.drawing, texts: context.drawn.words)]
    }
}

/// A picture out of a file.
public final class UIImage: Sendable {
    let bytes: Data

    public init?(contentsOfFile file: String) {
        guard let bytes = try? Data(contentsOf: URL(fileURLWithPath: file)), !bytes.isEmpty else { return nil }
        self.bytes = bytes
    }
}

public struct Image: Primitive {
    public nonisolated init(uiImage: UIImage) {}

    public nonisolated func resizable() -> Image { self }

    func look(from place: Place) -> [Node] { [Node(.image)] }
}
