/// One thing that a person meets on a screen: what is read of it, and what can be done with it.
@MainActor
public final class Node {
    public enum Kind {
        case text
        case button
        case field
        case image
        case drawing
        case day
        case group
    }

    public let kind: Kind
    /// The words that stand on it.
    public internal(set) var texts: [String]
    /// What a reader of the screen says instead of its words.
    public internal(set) var label: String?
    public internal(set) var value: String?
    public internal(set) var traits: AccessibilityTraits = []
    public internal(set) var children: [Node]
    /// The least height of what can be tapped.
    public internal(set) var height: CGFloat = 0
    /// The smallest words on it.
    public internal(set) var points: CGFloat?
    let press: (@MainActor () -> Void)?
    let typed: Binding<String>?
    var focus: FocusState<Bool>.Binding?
    var picked: Binding<Date>?

    init(
        _ kind: Kind, texts: [String] = [], children: [Node] = [], press: (@MainActor () -> Void)? = nil, typed: Binding<String>? = nil
    ) {
        self.kind = kind
        self.texts = texts
        self.children = children
        self.press = press
        self.typed = typed
    }

    /// One thing that is made of others: their words in one.
    convenience init(_ kind: Kind, of nodes: [Node], press: (@MainActor () -> Void)? = nil) {
        let all = nodes.flatMap(\.all)
        self.init(kind, texts: all.flatMap { $0.label.map { [$0] } ?? $0.texts }, press: press)
        traits = all.reduce(into: []) { $0.formUnion($1.traits) }
        points = all.compactMap(\.points).min()
        height = nodes.map(\.height).max() ?? 0
    }

    /// It and all in it.
    public var all: [Node] { [self] + children.flatMap(\.all) }

    /// What stands in a field.
    public var text: String? { typed?.wrappedValue }

    /// The day that a calendar shows.
    public var day: Date? { picked?.wrappedValue }

    /// Picks a day.
    public func pick(_ day: Date) { picked?.wrappedValue = day }

    /// Taps it.
    public func tap() { press?() }

    /// Fills it in, as its keyboard would.
    public func type(_ text: String) {
        focus?.wrappedValue = true
        typed?.wrappedValue = text
    }
}

/// A screen that can be looked at again and again. What its views remember is kept for as long as they stay where they are.
@MainActor
public final class Look {
    private let root: () -> any View
    let memory = Memory()

    /// How large the window is.
    public var size = CGSize(width: 390, height: 844)
    /// How much larger than usual the reader wants words.
    public var scale: CGFloat = 1

    public init<Root: View>(@ViewBuilder _ root: @escaping () -> Root) { self.root = root }

    /// What is on the screen now.
    public func nodes() -> [Node] {
        var environment = EnvironmentValues()
        environment.window = size
        environment.wordScale = scale
        memory.begin()
        let nodes = Place(path: Way(), environment: environment, memory: memory).look(at: root())
        memory.end()
        return nodes
    }

    /// What was read out by itself since it was last asked.
    public func announced() -> [String] {
        defer { memory.announced = [] }
        return memory.announced
    }

    /// Where the page was scrolled to last, and whether something is there.
    public var scrolledTo: (to: AnyHashable, isThere: Bool)? { memory.scrolledTo.map { ($0, memory.ids.contains($0)) } }

    /// The way out of a screen, as a reader of the screen takes it.
    public func escape() { memory.escape?() }
}

/// What views remember between two looks, by where they are.
@MainActor
final class Memory {
    private var kept: [Way: Any] = [:]
    private var met: Set<Way> = []
    private var after: [@MainActor () -> Void] = []
    var ids: Set<AnyHashable> = []
    var announced: [String] = []
    var scrolledTo: AnyHashable?
    var escape: (@MainActor () -> Void)?
    /// The kinds of views that have no property to fill.
    var plain: [ObjectIdentifier: Bool] = [:]

    func begin() {
        met = []
        ids = []
    }

    /// Forgets what is no longer there, then does what was to be done after the look.
    func end() {
        kept = kept.filter { met.contains($0.key) }
        let all = after
        after = []
        AccessibilityNotification.heard = { [weak self] in self?.announced.append($0) }
        for one in all { one() }
    }

    func keep<Value>(_ path: Way, _ first: () -> Value) -> Value {
        met.insert(path)
        if let before = kept[path] as? Value { return before }
        let new = first()
        kept[path] = new
        return new
    }

    func later(_ work: @escaping @MainActor () -> Void) { after.append(work) }
}

/// The way to a view from the root, as one number: what is kept is found by it.
struct Way: Hashable {
    private let number: UInt64

    init() { number = 14_695_981_039_346_656_037 }

    private init(number: UInt64) { self.number = number }

    func inside<Step: Hashable>(_ step: Step) -> Way {
        var hasher = Hasher()
        hasher.combine(number)
        hasher.combine(step)
        return Way(number: UInt64(bitPattern: Int64(hasher.finalize())))
    }
}

/// Where a view is met.
@MainActor
struct Place {
    let path: Way
    var environment: EnvironmentValues
    let memory: Memory

    func inside<Step: Hashable>(_ step: Step) -> Place { Place(path: path.inside(step), environment: environment, memory: memory) }

    func look<Content: View>(at view: Content) -> [Node] {
        if let primitive = view as? any Primitive { return primitive.look(from: self) }
        let here = inside(ObjectIdentifier(Content.self))
        connect(view, at: here)
        return here.look(at: view.body)
    }

    /// Fills the properties of a view.
    private func connect<Content: View>(_ view: Content, at here: Place) {
        let kind = ObjectIdentifier(Content.self)
        guard memory.plain[kind] != true else { return }
        var isPlain = true
        for (index, child) in Mirror(reflecting: view).children.enumerated() {
            guard let property = child.value as? any Connected else { continue }
            property.join(here.inside(index))
            isPlain = false
        }
        memory.plain[kind] = isPlain
    }
}

/// Something that changes the look of what it is put on.
struct Changed<Content: View>: Primitive {
    let content: Content
    let change: @MainActor (Place) -> [Node]

    func look(from place: Place) -> [Node] { change(place) }
}

extension View {
    /// The same with other nodes.
    func nodes(_ change: @escaping @MainActor ([Node], Place) -> [Node]) -> some View {
        Changed(content: self) { place in change(place.inside("of").look(at: self), place) }
    }

    /// The same with something done to each of its nodes.
    func each(_ change: @escaping @MainActor (Node) -> Void) -> some View {
        nodes { nodes, _ in
            for node in nodes { change(node) }
            return nodes
        }
    }
}
