import AVFoundation
import LadderbookCore
import Observation

/// The camera in the window of the screens, so that no other program stands between the thumb and the roof.
@MainActor
@Observable
final class RoofCamera {
    /// Whether the viewfinder is there. Closed without a picture, there is none.
    var isOpen = false {
        didSet {
            if !isOpen { end() }
        }
    }

    @ObservationIgnored let port = TakenPicture()
    @ObservationIgnored let eye = Eye()
    @ObservationIgnored private var waiting: CheckedContinuation<Void, Never>?
    @ObservationIgnored private var isTaking = false

    /// Shows the viewfinder; returns once a picture is there, or there will be none. The phone asks at the first use.
    func picture() async {
        guard await AVCaptureDevice.requestAccess(for: .video) else { return port.told(.failure(.NotAllowed)) }
        guard !isOpen else { return }
        port.told(.success(nil))
        isOpen = true
        await withCheckedContinuation { waiting = $0 }
    }

    /// Takes the picture, and closes the viewfinder over it.
    func take() async {
        guard !isTaking else { return }
        isTaking = true
        port.told(await eye.picture())
        isTaking = false
        isOpen = false
    }

    private func end() {
        waiting?.resume()
        waiting = nil
    }
}

/// The picture just taken, for the core to fetch.
final class TakenPicture: Camera, @unchecked Sendable {
    private let lock = NSLock()
    private var taken = Result<String?, PortTrouble>.success(nil)

    func told(_ taken: Result<String?, PortTrouble>) { lock.withLock { self.taken = taken } }

    func picture() throws -> String? { try lock.withLock { taken }.get() }
}
