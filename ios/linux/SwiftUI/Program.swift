// What only the iPhone's program uses: it is type-checked, never walked.

@_exported import UIKit

@MainActor @preconcurrency
public protocol Scene {
    associatedtype Body: Scene
    @SceneBuilder @MainActor @preconcurrency var body: Body { get }
}

extension Never: Scene {}

@MainActor
@resultBuilder
public struct SceneBuilder {
    public static func buildBlock<Content: Scene>(_ content: Content) -> Content { content }
}

@MainActor @preconcurrency
public protocol App {
    associatedtype Body: Scene
    @SceneBuilder @MainActor @preconcurrency var body: Body { get }
    @MainActor @preconcurrency init()
}

extension App {
    public static func main() { _ = Self().body }
}

public struct WindowGroup<Content: View>: Scene {
    public init(@ViewBuilder content: () -> Content) {}

    public var body: Never { fatalError("no body") }
}

extension Scene {
    public func onChange<Value: Equatable>(of value: Value, initial: Bool = false, _ action: @escaping () -> Void) -> some Scene { self }
}

public enum ScenePhase: Sendable {
    case background
    case inactive
    case active
}

extension EnvironmentValues {
    public var scenePhase: ScenePhase { .active }
}

@propertyWrapper
@dynamicMemberLookup
public struct Bindable<Value: AnyObject> {
    public var wrappedValue: Value
    public var projectedValue: Bindable<Value> { self }

    public init(wrappedValue: Value) { self.wrappedValue = wrappedValue }

    public subscript<Subject>(dynamicMember keyPath: ReferenceWritableKeyPath<Value, Subject>) -> Binding<Subject> {
        let value = wrappedValue
        return Binding(read: { value[keyPath: keyPath] }, write: { value[keyPath: keyPath] = $0 })
    }
}

extension State {
    public init(initialValue: Value) { self.init(wrappedValue: initialValue) }
}

@MainActor @preconcurrency
public protocol UIViewRepresentable: View where Body == Never {
    associatedtype UIViewType: UIView
    typealias Context = UIViewRepresentableContext<Self>

    func makeUIView(context: Context) -> UIViewType

    func updateUIView(_ view: UIViewType, context: Context)
}

extension UIViewRepresentable {
    public var body: Never { fatalError("no body") }
}

public struct UIViewRepresentableContext<Representable: UIViewRepresentable> {}

extension View {
    public func task(_ action: @escaping @MainActor @Sendable () async -> Void) -> some View { self }

    public func onAppear(perform action: (() -> Void)? = nil) -> some View { self }

    public func onDisappear(perform action: (() -> Void)? = nil) -> some View { self }

    public func ignoresSafeArea(edges: Edge.Set) -> some View { self }

    public func fullScreenCover<Content: View>(
        isPresented: Binding<Bool>, onDismiss: (() -> Void)? = nil, @ViewBuilder content: @escaping () -> Content
    ) -> some View { self }
}
