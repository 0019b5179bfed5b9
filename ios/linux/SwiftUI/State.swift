public protocol DynamicProperty {
}

/// A property that is filled when its view is met.
protocol Connected {
    @MainActor func join(_ place: Place)
}

/// What a view remembers.
final class Kept<Value> {
    var value: Value

    init(_ value: Value) { self.value = value }
}

/// Where a property finds what it stands for.
final class Slot<Value> {
    var kept: Kept<Value>

    init(_ value: Value) { kept = Kept(value) }
}

@propertyWrapper
public struct State<Value>: DynamicProperty, Connected, @unchecked Sendable {
    private let slot: Slot<Value>

    public init(wrappedValue: Value) { slot = Slot(wrappedValue) }

    public var wrappedValue: Value {
        get { slot.kept.value }
        nonmutating set { slot.kept.value = newValue }
    }

    public var projectedValue: Binding<Value> {
        let slot = slot
        return Binding(read: { slot.kept.value }, write: { slot.kept.value = $0 })
    }

    func join(_ place: Place) { slot.kept = place.memory.keep(place.path) { slot.kept } }
}

extension State where Value: ExpressibleByNilLiteral {
    public init() { self.init(wrappedValue: nil) }
}

@propertyWrapper
@dynamicMemberLookup
public struct Binding<Value>: @unchecked Sendable {
    private let read: () -> Value
    private let write: (Value) -> Void

    init(read: @escaping () -> Value, write: @escaping (Value) -> Void) {
        self.read = read
        self.write = write
    }

    public init(get: @escaping @MainActor () -> Value, set: @escaping @MainActor (Value) -> Void) {
        read = unsafeBitCast(get, to: (() -> Value).self)
        write = unsafeBitCast(set, to: ((Value) -> Void).self)
    }

    public var wrappedValue: Value {
        get { read() }
        nonmutating set { write(newValue) }
    }

    public var projectedValue: Binding<Value> { self }

    public subscript<Subject>(dynamicMember keyPath: WritableKeyPath<Value, Subject>) -> Binding<Subject> {
        Binding<Subject>(
            read: { read()[keyPath: keyPath] },
            write: {
                var value = read()
                value[keyPath: keyPath] = $0
                write(value)
            })
    }
}

@propertyWrapper
public struct FocusState<Value: Hashable>: DynamicProperty, Connected, @unchecked Sendable {
    private let slot: Slot<Value>

    public init() where Value == Bool { slot = Slot(false) }

    public var wrappedValue: Value {
        get { slot.kept.value }
        nonmutating set { slot.kept.value = newValue }
    }

    public var projectedValue: Binding { Binding(slot: slot) }

    func join(_ place: Place) { slot.kept = place.memory.keep(place.path) { slot.kept } }

    public struct Binding {
        let slot: Slot<Value>

        public var wrappedValue: Value {
            get { slot.kept.value }
            nonmutating set { slot.kept.value = newValue }
        }
    }
}

@propertyWrapper
public struct Environment<Value>: DynamicProperty, Connected, @unchecked Sendable {
    private let keyPath: KeyPath<EnvironmentValues, Value>
    private let slot = Slot(EnvironmentValues())

    public init(_ keyPath: KeyPath<EnvironmentValues, Value>) { self.keyPath = keyPath }

    public var wrappedValue: Value { slot.kept.value[keyPath: keyPath] }

    func join(_ place: Place) { slot.kept = Kept(place.environment) }
}

@propertyWrapper
public struct ScaledMetric<Value: BinaryFloatingPoint>: DynamicProperty, Connected, @unchecked Sendable {
    private let usual: Value
    private let slot = Slot<CGFloat>(1)

    public init(wrappedValue: Value, relativeTo style: Font.TextStyle) { usual = wrappedValue }

    public var wrappedValue: Value { usual * Value(slot.kept.value) }

    func join(_ place: Place) { slot.kept = Kept(place.environment.wordScale) }
}

public protocol EnvironmentKey {
    associatedtype Value
    static var defaultValue: Value { get }
}

public enum ColorScheme: Sendable {
    case light
    case dark
}

public struct EnvironmentValues {
    private var values: [ObjectIdentifier: Any] = [:]
    var window = CGSize.zero
    var wordScale: CGFloat = 1
    public var colorScheme = ColorScheme.light

    public init() {}

    public subscript<Key: EnvironmentKey>(key: Key.Type) -> Key.Value {
        get { values[ObjectIdentifier(key)] as? Key.Value ?? Key.defaultValue }
        set { values[ObjectIdentifier(key)] = newValue }
    }
}
