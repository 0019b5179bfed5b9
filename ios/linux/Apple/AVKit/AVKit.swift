// See UIKit beside this folder.

import UIKit

@MainActor
public final class AVCaptureEvent: NSObject {
    public enum Phase: UInt, Sendable {
        case began
        case ended
        case cancelled
    }

    public var phase: Phase { .began }
}

@MainActor
public final class AVCaptureEventInteraction: NSObject, UIInteraction {
    public init(handler: @escaping @MainActor (AVCaptureEvent) -> Void) {}
}
