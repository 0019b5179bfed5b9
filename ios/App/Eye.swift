import AVFoundation
import LadderbookCore

/// The camera at the back of the phone. All that may wait is done in a line of its own.
final class Eye: @unchecked Sendable {
    let session = AVCaptureSession()
    private let output = AVCapturePhotoOutput()
    private let line = DispatchQueue(label: "ladderbook.camera", qos: .userInitiated)
    private var device: AVCaptureDevice?
    private var capture: Capture?

    /// Opens it.
    func open() {
        line.async { [self] in
            if session.inputs.isEmpty { setUp() }
            session.startRunning()
        }
    }

    /// Closes it.
    func close() {
        line.async { [self] in session.stopRunning() }
    }

    /// Takes a picture into a file of its own, upright as the phone is held.
    func picture() async -> Result<String?, PortTrouble> {
        await withCheckedContinuation { waiting in
            line.async { [self] in
                guard let connection = output.connection(with: .video), let device else {
                    return waiting.resume(returning: .failure(.Failed(reason: "AVCapturePhotoOutput")))
                }
                let level = AVCaptureDevice.RotationCoordinator(device: device, previewLayer: nil)
                connection.videoRotationAngle = level.videoRotationAngleForHorizonLevelCapture
                let capture = Capture { [self] taken in
                    line.async { self.capture = nil }
                    waiting.resume(returning: taken)
                }
                self.capture = capture
                output.capturePhoto(with: AVCapturePhotoSettings(format: [AVVideoCodecKey: AVVideoCodecType.jpeg]), delegate: capture)
            }
        }
    }

    private func setUp() {
        session.beginConfiguration()
        defer { session.commitConfiguration() }
        session.sessionPreset = .photo
        guard let device = AVCaptureDevice.default(.builtInWideAngleCamera, for: .video, position: .back),
            let input = try? AVCaptureDeviceInput(device: device), session.canAddInput(input), session.canAddOutput(output)
        else { return }
        session.addInput(input)
        session.addOutput(output)
        self.device = device
    }
}

/// Hears once that a picture was taken.
private final class Capture: NSObject, AVCapturePhotoCaptureDelegate {
    private let taken: @Sendable (Result<String?, PortTrouble>) -> Void

    init(_ taken: @escaping @Sendable (Result<String?, PortTrouble>) -> Void) { self.taken = taken }

    func photoOutput(_ output: AVCapturePhotoOutput, didFinishProcessingPhoto photo: AVCapturePhoto, error: (any Error)?) {
        taken(
            Result {
                if let error { throw error }
                let file = FileManager.default.temporaryDirectory.appending(path: "\(UUID().uuidString).jpg")
                try photo.fileDataRepresentation()?.write(to: file)
                return file.path
            }.mapError { PortTrouble.Failed(reason: $0.localizedDescription) })
    }
}
