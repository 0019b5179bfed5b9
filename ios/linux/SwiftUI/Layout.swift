public struct EdgeInsets: Equatable, Sendable {
    public var top: CGFloat
    public var leading: CGFloat
    public var bottom: CGFloat
    public var trailing: CGFloat

    public init(top: CGFloat, leading: CGFloat, bottom: CGFloat, trailing: CGFloat) {
        self.top = top
        self.leading = leading
        self.bottom = bottom
        self.trailing = trailing
    }
}

public struct Edge {
    public struct Set: OptionSet, Sendable {
        public let rawValue: Int8

        public init(rawValue: Int8) { self.rawValue = rawValue }

        public static let top = Set(rawValue: 1)
        public static let leading = Set(rawValue: 2)
        public static let bottom = Set(rawValue: 4)
        public static let trailing = Set(rawValue: 8)
        public static let all: Set = [.top, .leading, .bottom, .trailing]
        public static let horizontal: Set = [.leading, .trailing]
        public static let vertical: Set = [.top, .bottom]
    }
}

public struct HorizontalAlignment: Equatable, Sendable {
    let name: String
    public static let leading = HorizontalAlignment(name: "leading")
    public static let center = HorizontalAlignment(name: "center")
    public static let trailing = HorizontalAlignment(name: "trailing")
}

public struct VerticalAlignment: Equatable, Sendable {
    let name: String
    public static let top = VerticalAlignment(name: "top")
    public static let center = VerticalAlignment(name: "center")
    public static let bottom = VerticalAlignment(name: "bottom")
}

public struct Alignment: Equatable, Sendable {
    let name: String
    public static let center = Alignment(name: "center")
    public static let leading = Alignment(name: "leading")
    public static let topLeading = Alignment(name: "topLeading")
}

public enum TextAlignment: Sendable {
    case leading
    case center
    case trailing
}

public enum Axis: Sendable {
    case horizontal
    case vertical

    public struct Set: OptionSet, Sendable {
        public let rawValue: Int8

        public init(rawValue: Int8) { self.rawValue = rawValue }

        public static let horizontal = Set(rawValue: 1)
        public static let vertical = Set(rawValue: 2)
    }
}

public enum ContentMode: Sendable {
    case fit
    case fill
}

public struct UnitPoint: Hashable, Sendable {
    public var x: CGFloat
    public var y: CGFloat

    public init(x: CGFloat, y: CGFloat) {
        self.x = x
        self.y = y
    }

    public static let top = UnitPoint(x: 0.5, y: 0)
    public static let center = UnitPoint(x: 0.5, y: 0.5)
    public static let bottom = UnitPoint(x: 0.5, y: 1)
    public static let topLeading = UnitPoint(x: 0, y: 0)
}

/// A box around others: what they are, in their order.
public struct Stack<Content: View>: Primitive {
    let content: Content

    func look(from place: Place) -> [Node] { place.inside("stack").look(at: content) }
}

public struct VStack<Content: View>: View {
    let content: Content

    public init(alignment: HorizontalAlignment = .center, spacing: CGFloat? = nil, @ViewBuilder content: () -> Content) {
        self.content = content()
    }

    public var body: some View { Stack(content: content) }
}

public struct HStack<Content: View>: View {
    let content: Content

    public init(alignment: VerticalAlignment = .center, spacing: CGFloat? = nil, @ViewBuilder content: () -> Content) {
        self.content = content()
    }

    public var body: some View { Stack(content: content) }
}

public struct ZStack<Content: View>: View {
    let content: Content

    public init(alignment: Alignment = .center, @ViewBuilder content: () -> Content) { self.content = content() }

    public var body: some View { Stack(content: content) }
}

public struct ScrollView<Content: View>: View {
    let content: Content

    public init(_ axes: Axis.Set = .vertical, showsIndicators: Bool = true, @ViewBuilder content: () -> Content) { self.content = content() }

    public var body: some View { Stack(content: content) }
}

public struct ScrollViewProxy {
    let memory: Memory

    @MainActor
    public func scrollTo<ID: Hashable>(_ id: ID, anchor: UnitPoint? = nil) { memory.scrolledTo = AnyHashable(id) }
}

public struct ScrollViewReader<Content: View>: Primitive {
    let content: (ScrollViewProxy) -> Content

    public init(@ViewBuilder content: @escaping (ScrollViewProxy) -> Content) { self.content = content }

    func look(from place: Place) -> [Node] { place.inside("reader").look(at: content(ScrollViewProxy(memory: place.memory))) }
}

public struct GeometryProxy {
    public let size: CGSize
}

public struct GeometryReader<Content: View>: Primitive {
    let content: (GeometryProxy) -> Content

    public init(@ViewBuilder content: @escaping (GeometryProxy) -> Content) { self.content = content }

    func look(from place: Place) -> [Node] { place.inside("room").look(at: content(GeometryProxy(size: place.environment.window))) }
}

public struct ProposedViewSize: Equatable, Sendable {
    public var width: CGFloat?
    public var height: CGFloat?

    public init(width: CGFloat?, height: CGFloat?) {
        self.width = width
        self.height = height
    }
}

/// One of the views that a layout places. Those of the tests are as tall as they are told.
public struct LayoutSubview {
    let height: CGFloat
    let placed: (CGRect) -> Void

    public func sizeThatFits(_ proposal: ProposedViewSize) -> CGSize { CGSize(width: proposal.width ?? 0, height: proposal.height ?? height) }

    public func place(at position: CGPoint, anchor: UnitPoint = .topLeading, proposal: ProposedViewSize) {
        let size = sizeThatFits(proposal)
        placed(CGRect(x: position.x - size.width * anchor.x, y: position.y - size.height * anchor.y, width: size.width, height: size.height))
    }
}

public struct LayoutSubviews: RandomAccessCollection {
    let views: [LayoutSubview]

    public var startIndex: Int { 0 }

    public var endIndex: Int { views.count }

    public subscript(index: Int) -> LayoutSubview { views[index] }
}

public protocol Layout {
    associatedtype Cache = Void
    typealias Subviews = LayoutSubviews
    func sizeThatFits(proposal: ProposedViewSize, subviews: Subviews, cache: inout Cache) -> CGSize
    func placeSubviews(in bounds: CGRect, proposal: ProposedViewSize, subviews: Subviews, cache: inout Cache)
}

extension Layout {
    @MainActor
    public func callAsFunction<Content: View>(@ViewBuilder _ content: () -> Content) -> some View { Stack(content: content()) }
}

extension Layout where Cache == Void {
    /// Where things of these heights come to stand in a place so wide.
    public func places(of heights: [CGFloat], in width: CGFloat) -> [CGRect] {
        var rects: [CGRect] = []
        let subviews = LayoutSubviews(views: heights.map { LayoutSubview(height: $0) { rects.append($0) } })
        let proposal = ProposedViewSize(width: width, height: nil)
        var cache: Void = ()
        let size = sizeThatFits(proposal: proposal, subviews: subviews, cache: &cache)
        placeSubviews(in: CGRect(origin: .zero, size: size), proposal: proposal, subviews: subviews, cache: &cache)
        return rects
    }
}
