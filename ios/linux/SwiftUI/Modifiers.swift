// What only changes how something is laid out or drawn is taken, and nothing else is done.

extension View {
    public func padding(_ insets: EdgeInsets) -> some View { self }

    public func padding(_ edges: Edge.Set = .all, _ length: CGFloat? = nil) -> some View { self }

    public func padding(_ length: CGFloat) -> some View { self }

    public func frame(width: CGFloat? = nil, height: CGFloat? = nil, alignment: Alignment = .center) -> some View {
        each { $0.height = max($0.height, height ?? 0) }
    }

    public func frame(
        minWidth: CGFloat? = nil, idealWidth: CGFloat? = nil, maxWidth: CGFloat? = nil, minHeight: CGFloat? = nil, idealHeight: CGFloat? = nil,
        maxHeight: CGFloat? = nil, alignment: Alignment = .center
    ) -> some View {
        each { $0.height = max($0.height, minHeight ?? 0) }
    }

    public func fixedSize(horizontal: Bool, vertical: Bool) -> some View { self }

    public func containerRelativeFrame(
        _ axes: Axis.Set, alignment: Alignment = .center, _ length: @escaping (CGFloat, Axis) -> CGFloat
    ) -> some View { self }

    public func aspectRatio(_ ratio: CGFloat? = nil, contentMode: ContentMode) -> some View { self }

    public func scaledToFill() -> some View { self }

    public func clipShape<Clip: Shape>(_ shape: Clip) -> some View { self }

    public func contentShape<Content: Shape>(_ shape: Content) -> some View { self }

    public func ignoresSafeArea() -> some View { self }

    public func defaultScrollAnchor(_ anchor: UnitPoint?) -> some View { self }

    public func multilineTextAlignment(_ alignment: TextAlignment) -> some View { self }

    public func lineLimit(_ number: Int?) -> some View { self }

    public func lineLimit(_ limit: Int, reservesSpace: Bool) -> some View { self }

    public func minimumScaleFactor(_ factor: CGFloat) -> some View { self }

    public func font(_ font: Font?) -> some View { each { $0.points = $0.points ?? font?.size } }

    public func foregroundStyle<Style: ShapeStyle>(_ style: Style) -> some View { self }

    public func preferredColorScheme(_ scheme: ColorScheme?) -> some View { self }

    public func tint(_ tint: Color?) -> some View { self }

    public func keyboardType(_ type: UIKeyboardType) -> some View { self }

    public func buttonStyle(_ style: PlainButtonStyle) -> some View { self }

    public func datePickerStyle(_ style: GraphicalDatePickerStyle) -> some View { self }

    public func overlay<Content: View>(_ content: Content) -> some View { under(content, name: "overlay") }

    public func overlay<Content: View>(alignment: Alignment = .center, @ViewBuilder content: () -> Content) -> some View {
        under(content(), name: "overlay")
    }

    public func background<Content: View>(_ content: Content) -> some View { over(content, name: "background") }

    public func background<Content: View>(alignment: Alignment = .center, @ViewBuilder content: () -> Content) -> some View {
        over(content(), name: "background")
    }

    private func under<Content: View>(_ content: Content, name: String) -> some View {
        nodes { nodes, place in nodes + place.inside(name).look(at: content) }
    }

    private func over<Content: View>(_ content: Content, name: String) -> some View {
        nodes { nodes, place in place.inside(name).look(at: content) + nodes }
    }

    public func environment<Value>(_ keyPath: WritableKeyPath<EnvironmentValues, Value>, _ value: Value) -> some View {
        Changed(content: self) { place in
            var place = place
            place.environment[keyPath: keyPath] = value
            return place.look(at: self)
        }
    }

    public func id<ID: Hashable>(_ id: ID) -> some View {
        Changed(content: self) { place in
            place.memory.ids.insert(AnyHashable(id))
            return place.inside(id).look(at: self)
        }
    }

    public func focused(_ condition: FocusState<Bool>.Binding) -> some View { each { $0.focus = condition } }

    public func onChange<Value: Equatable>(
        of value: Value, initial: Bool = false, _ action: @escaping @MainActor (Value, Value) -> Void
    ) -> some View {
        nodes { nodes, place in
            let path = place.inside("change").path
            let seen: Kept<Value?> = place.memory.keep(path) { Kept(initial ? nil : value) }
            if seen.value != value {
                let before = seen.value ?? value
                place.memory.later { action(before, value) }
                seen.value = value
            }
            return nodes
        }
    }

    public func onChange<Value: Equatable>(of value: Value, initial: Bool = false, _ action: @escaping @MainActor () -> Void) -> some View {
        onChange(of: value, initial: initial) { _, _ in action() }
    }

    public func task<ID: Equatable & Sendable>(id: ID, _ action: @escaping @MainActor @Sendable () async -> Void) -> some View {
        onChange(of: id, initial: true) { _, _ in Task { await action() } }
    }
}
