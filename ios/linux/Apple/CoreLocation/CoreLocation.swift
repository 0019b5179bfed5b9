// See UIKit beside this folder.

@_exported import Foundation

public enum CLAuthorizationStatus: Int32, Sendable {
    case notDetermined
    case restricted
    case denied
    case authorizedAlways
    case authorizedWhenInUse
}

public struct CLLocationCoordinate2D: Sendable {
    public var latitude: Double
    public var longitude: Double
}

public final class CLLocation: NSObject, @unchecked Sendable {
    public var coordinate: CLLocationCoordinate2D { CLLocationCoordinate2D(latitude: 0, longitude: 0) }
    public var horizontalAccuracy: Double { 0 }
}

public struct CLLocationUpdate: Sendable {
    public enum LiveConfiguration: Int, Sendable {
        case `default`
        case otherNavigation
    }

    public struct Updates: AsyncSequence, Sendable {
        public typealias Element = CLLocationUpdate

        public struct AsyncIterator: AsyncIteratorProtocol {
            public mutating func next() async throws -> CLLocationUpdate? { nil }
        }

        public func makeAsyncIterator() -> AsyncIterator { AsyncIterator() }
    }

    public var location: CLLocation? { nil }

    public static func liveUpdates(_ configuration: LiveConfiguration = .default) -> Updates { Updates() }
}

public protocol CLLocationManagerDelegate: NSObjectProtocol {
    func locationManagerDidChangeAuthorization(_ manager: CLLocationManager)
}

public final class CLLocationManager: NSObject {
    public weak var delegate: (any CLLocationManagerDelegate)?

    public var authorizationStatus: CLAuthorizationStatus { .notDetermined }

    public func requestWhenInUseAuthorization() {}
}
