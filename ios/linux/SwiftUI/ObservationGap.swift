// The library of Observation that comes with Swift 6.0 on Linux asks for this symbol, which the other libraries do not bring (swiftlang/swift,
// issue 75670).
@_cdecl("_ZN5swift9threading5fatalEPKcz")
public func observationFailed() { fatalError("a lock of Observation failed") }
