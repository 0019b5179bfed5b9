// See UIKit beside this folder.

@_exported import Foundation

public struct CMAcceleration: Sendable {
    public var x: Double
    public var y: Double
    public var z: Double
}

public final class CMDeviceMotion: NSObject {
    public var gravity: CMAcceleration { CMAcceleration(x: 0, y: 0, z: 0) }
}

public typealias CMDeviceMotionHandler = @Sendable (CMDeviceMotion?, (any Error)?) -> Void

public final class CMMotionManager: NSObject {
    public var isDeviceMotionAvailable: Bool { false }
    public var deviceMotionUpdateInterval: TimeInterval = 0

    public func startDeviceMotionUpdates(to queue: OperationQueue, withHandler handler: @escaping CMDeviceMotionHandler) {}

    public func stopDeviceMotionUpdates() {}
}
