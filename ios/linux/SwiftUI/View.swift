// Declarations of our own under the names that the screens use, so that on Linux they are type-checked, walked and pressed. From memory and from
// public documents: that they compile against these says nothing about Apple's SDK. Nothing is laid out or drawn.

@_exported import Foundation

@MainActor @preconcurrency
public protocol View {
    associatedtype Body: View
    @ViewBuilder @MainActor @preconcurrency var body: Body { get }
}

extension Never: View {
    public var body: Never { fatalError("no body") }
}

/// A view that is no more than what it adds to the look.
@MainActor
protocol Primitive: View where Body == Never {
    func look(from place: Place) -> [Node]
}

extension Primitive {
    public var body: Never { fatalError("no body") }
}

@MainActor
@resultBuilder
public struct ViewBuilder {
    public static func buildExpression<Content: View>(_ content: Content) -> Content { content }

    public static func buildBlock() -> EmptyView { EmptyView() }

    public static func buildBlock<Content: View>(_ content: Content) -> Content { content }

    public static func buildBlock<each Content: View>(_ content: repeat each Content) -> TupleView<(repeat each Content)> {
        TupleView((repeat each content))
    }

    public static func buildIf<Content: View>(_ content: Content?) -> Content? { content }

    public static func buildEither<True: View, False: View>(first: True) -> _ConditionalContent<True, False> { .init(.first(first)) }

    public static func buildEither<True: View, False: View>(second: False) -> _ConditionalContent<True, False> { .init(.second(second)) }
}

public struct EmptyView: Primitive {
    public init() {}

    func look(from place: Place) -> [Node] { [] }
}

public struct TupleView<T>: Primitive {
    public var value: T

    public init(_ value: T) { self.value = value }

    func look(from place: Place) -> [Node] {
        Mirror(reflecting: value).children.enumerated().flatMap { index, child in
            (child.value as? any View).map { place.inside(index).look(at: $0) } ?? []
        }
    }
}

// swift-format-ignore: NoLeadingUnderscores
public struct _ConditionalContent<True: View, False: View>: Primitive {
    enum Storage {
        case first(True)
        case second(False)
    }

    let storage: Storage

    init(_ storage: Storage) { self.storage = storage }

    func look(from place: Place) -> [Node] {
        switch storage {
        case .first(let view): place.inside("if").look(at: view)
        case .second(let view): place.inside("else").look(at: view)
        }
    }
}

extension Optional: View where Wrapped: View {
    public var body: Never { fatalError("no body") }
}

extension Optional: Primitive where Wrapped: View {
    func look(from place: Place) -> [Node] { map { place.inside("if").look(at: $0) } ?? [] }
}

public struct ForEach<Data: RandomAccessCollection, ID: Hashable, Content: View>: Primitive {
    let data: Data
    let id: KeyPath<Data.Element, ID>
    let content: (Data.Element) -> Content

    public init(_ data: Data, id: KeyPath<Data.Element, ID>, @ViewBuilder content: @escaping (Data.Element) -> Content) {
        self.data = data
        self.id = id
        self.content = content
    }

    func look(from place: Place) -> [Node] {
        data.flatMap { place.inside($0[keyPath: id]).look(at: content($0)) }
    }
}
