// See UIKit beside this folder.

import UIKit
@_exported import Foundation

public struct AVMediaType: Hashable, Sendable {
    public static let video = AVMediaType()
}

public struct AVVideoCodecType: Hashable, Sendable {
    public static let jpeg = AVVideoCodecType()
}

public let AVVideoCodecKey = "AVVideoCodecKey"

open class AVCaptureInput: NSObject {}

open class AVCaptureOutput: NSObject {
    public func connection(with mediaType: AVMediaType) -> AVCaptureConnection? { nil }
}

public final class AVCaptureConnection: NSObject {
    public var videoRotationAngle: CGFloat = 0
}

public final class AVCaptureDevice: NSObject {
    public struct DeviceType: Hashable, Sendable {
        public static let builtInWideAngleCamera = DeviceType()
    }

    public enum Position: Int, Sendable {
        case unspecified
        case back
        case front
    }

    public final class RotationCoordinator: NSObject {
        public init(device: AVCaptureDevice, previewLayer: CALayer?) {}

        public var videoRotationAngleForHorizonLevelCapture: CGFloat { 0 }
    }

    public class func `default`(_ deviceType: DeviceType, for mediaType: AVMediaType?, position: Position) -> AVCaptureDevice? { nil }

    public class func requestAccess(for mediaType: AVMediaType) async -> Bool { false }
}

public final class AVCaptureDeviceInput: AVCaptureInput {
    public init(device: AVCaptureDevice) throws {}
}

public final class AVCaptureSession: NSObject {
    public struct Preset: Hashable, Sendable {
        public static let photo = Preset()
    }

    public var inputs: [AVCaptureInput] { [] }
    public var sessionPreset = Preset.photo

    public func beginConfiguration() {}

    public func commitConfiguration() {}

    public func canAddInput(_ input: AVCaptureInput) -> Bool { false }

    public func addInput(_ input: AVCaptureInput) {}

    public func canAddOutput(_ output: AVCaptureOutput) -> Bool { false }

    public func addOutput(_ output: AVCaptureOutput) {}

    public func startRunning() {}

    public func stopRunning() {}
}

public final class AVCapturePhotoSettings: NSObject {
    public init(format: [String: Any]?) {}
}

public final class AVCapturePhoto: NSObject {
    public func fileDataRepresentation() -> Data? { nil }
}

public protocol AVCapturePhotoCaptureDelegate: NSObjectProtocol {
    func photoOutput(_ output: AVCapturePhotoOutput, didFinishProcessingPhoto photo: AVCapturePhoto, error: (any Error)?)
}

public final class AVCapturePhotoOutput: AVCaptureOutput {
    public func capturePhoto(with settings: AVCapturePhotoSettings, delegate: any AVCapturePhotoCaptureDelegate) {}
}

public struct AVLayerVideoGravity: Hashable, Sendable {
    public static let resizeAspectFill = AVLayerVideoGravity()
}

public final class AVCaptureVideoPreviewLayer: CALayer {
    public var session: AVCaptureSession?
    public var videoGravity = AVLayerVideoGravity.resizeAspectFill
    public var connection: AVCaptureConnection? { nil }
}

public enum AVSpeechBoundary: Int, Sendable {
    case immediate
    case word
}

public final class AVSpeechSynthesisVoice: NSObject {
    public init?(language: String?) {}
}

public final class AVSpeechUtterance: NSObject {
    public var voice: AVSpeechSynthesisVoice?

    public init(string: String) {}
}

public final class AVSpeechSynthesizer: NSObject {
    @discardableResult
    public func stopSpeaking(at boundary: AVSpeechBoundary) -> Bool { false }

    public func speak(_ utterance: AVSpeechUtterance) {}
}

public final class AVAudioApplication: NSObject {
    public class func requestRecordPermission() async -> Bool { false }
}

public final class AVAudioFormat: NSObject {}

public final class AVAudioPCMBuffer: NSObject {}

public final class AVAudioTime: NSObject {}

public typealias AVAudioNodeBus = Int
public typealias AVAudioFrameCount = UInt32
public typealias AVAudioNodeTapBlock = (AVAudioPCMBuffer, AVAudioTime) -> Void

open class AVAudioNode: NSObject {
    public func outputFormat(forBus bus: AVAudioNodeBus) -> AVAudioFormat { AVAudioFormat() }

    public func installTap(onBus bus: AVAudioNodeBus, bufferSize: AVAudioFrameCount, format: AVAudioFormat?, block: @escaping AVAudioNodeTapBlock) {}

    public func removeTap(onBus bus: AVAudioNodeBus) {}
}

public final class AVAudioInputNode: AVAudioNode {}

public final class AVAudioEngine: NSObject {
    public let inputNode = AVAudioInputNode()

    public func start() throws {}

    public func stop() {}
}

public final class AVAudioSession: NSObject {
    public struct Category: Hashable, Sendable {
        public static let playAndRecord = Category()
    }

    public struct Mode: Hashable, Sendable {
        public static let `default` = Mode()
    }

    public struct CategoryOptions: OptionSet, Sendable {
        public let rawValue: UInt
        public static let duckOthers = CategoryOptions(rawValue: 2)
        public static let defaultToSpeaker = CategoryOptions(rawValue: 8)

        public init(rawValue: UInt) { self.rawValue = rawValue }
    }

    public struct SetActiveOptions: OptionSet, Sendable {
        public let rawValue: UInt
        public static let notifyOthersOnDeactivation = SetActiveOptions(rawValue: 1)

        public init(rawValue: UInt) { self.rawValue = rawValue }
    }

    public class func sharedInstance() -> AVAudioSession { AVAudioSession() }

    public func setCategory(_ category: Category, mode: Mode, options: CategoryOptions = []) throws {}

    public func setActive(_ active: Bool, options: SetActiveOptions = []) throws {}
}
