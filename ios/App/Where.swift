import CoreLocation
import LadderbookCore
import Shell

/// How long the sky is asked.
private let patience = DispatchTimeInterval.seconds(15)

/// How exact a position is to be, in metres: good enough to tell one house from the next.
private let exact = 20.0

/// Where the phone stands, asked once. Nothing follows him.
final class Where: Locator {
    /// Blocks until the sky answers: it is called on the worker.
    func fix() throws -> Fix? {
        guard [.authorizedWhenInUse, .authorizedAlways].contains(CLLocationManager().authorizationStatus) else { throw PortTrouble.NotAllowed }
        let answer = Answer<Fix>()
        let asking = Task.detached {
            for try await update in CLLocationUpdate.liveUpdates(.otherNavigation) {
                guard let location = update.location else { continue }
                answer.best = Fix(latitude: location.coordinate.latitude, longitude: location.coordinate.longitude)
                if location.horizontalAccuracy <= exact { answer.come() }
            }
        }
        defer { asking.cancel() }
        return answer.wait(patience)
    }
}

/// Asks whether the position may be used, at the first use.
@MainActor
final class Position: NSObject, CLLocationManagerDelegate {
    private let manager = CLLocationManager()
    private var waiting: [CheckedContinuation<Void, Never>] = []

    func ask() async {
        guard manager.authorizationStatus == .notDetermined else { return }
        manager.delegate = self
        manager.requestWhenInUseAuthorization()
        await withCheckedContinuation { waiting.append($0) }
    }

    nonisolated func locationManagerDidChangeAuthorization(_ manager: CLLocationManager) {
        let answered = manager.authorizationStatus != .notDetermined
        Task { @MainActor in
            guard answered else { return }
            for one in waiting { one.resume() }
            waiting = []
        }
    }
}
