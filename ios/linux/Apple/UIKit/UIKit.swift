// Declarations of our own under the names that the iPhone's program uses, so that on Linux it is type-checked: here and in the folders beside this
// one. From memory and from public documents: that it compiles against these says nothing about Apple's SDK. Nothing in them does anything.

@_exported import Foundation

public typealias CFURL = URL
public typealias CFString = String

@MainActor
open class UIResponder: NSObject {
    nonisolated override public init() {}
}

@MainActor
open class CALayer: NSObject {
    nonisolated override public required init() {}
}

@MainActor
open class UIView: UIResponder {
    open class var layerClass: AnyClass { CALayer.self }

    public let layer = CALayer()
    public var window: UIWindow? { nil }

    public func addInteraction(_ interaction: any UIInteraction) {}

    open func layoutSubviews() {}
}

@MainActor
public protocol UIInteraction: NSObjectProtocol {}

public enum UIInterfaceOrientation: Int, Sendable {
    case unknown
    case portrait
    case portraitUpsideDown
    case landscapeRight
    case landscapeLeft
}

public final class UIWindow: UIView {
    public var windowScene: UIWindowScene? { nil }
    public var rootViewController: UIViewController?
}

@MainActor
open class UIScene: UIResponder {
    public enum ActivationState: Int, Sendable {
        case unattached = -1
        case foregroundActive
        case foregroundInactive
        case background
    }

    public var activationState: ActivationState { .unattached }
}

public final class UIWindowScene: UIScene {
    public var interfaceOrientation: UIInterfaceOrientation { .unknown }
    public var keyWindow: UIWindow? { nil }
}

public struct UIBackgroundTaskIdentifier: Equatable, Sendable {}

@MainActor
public final class UIApplication: UIResponder {
    public static let shared = UIApplication()

    public var connectedScenes: Set<UIScene> { [] }

    public func beginBackgroundTask(expirationHandler handler: (@MainActor @Sendable () -> Void)? = nil) -> UIBackgroundTaskIdentifier { .init() }

    public func endBackgroundTask(_ identifier: UIBackgroundTaskIdentifier) {}
}

@MainActor
open class UIViewController: UIResponder {
    public var view: UIView!
    public var presentedViewController: UIViewController? { nil }
    public var popoverPresentationController: UIPopoverPresentationController? { nil }

    public func present(_ viewControllerToPresent: UIViewController, animated flag: Bool, completion: (() -> Void)? = nil) {}
}

@MainActor
public final class UIPopoverPresentationController: NSObject {
    public var sourceView: UIView?
}

open class UIActivity: NSObject {}

public final class UIActivityViewController: UIViewController {
    public init(activityItems: [Any], applicationActivities: [UIActivity]?) { super.init() }
}

@MainActor
public final class UINotificationFeedbackGenerator: NSObject {
    public enum FeedbackType: Int, Sendable {
        case success
        case warning
        case error
    }

    nonisolated override public init() {}

    public func notificationOccurred(_ notificationType: FeedbackType) {}
}

@MainActor
public enum UIAccessibility {
    public struct Notification: Sendable {
        public static let announcement = Notification()
    }

    public static var isVoiceOverRunning: Bool { false }

    public static func post(notification: Notification, argument: Any?) {}
}
