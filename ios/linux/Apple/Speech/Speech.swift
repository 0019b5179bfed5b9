// See UIKit beside this folder.

import AVFoundation
@_exported import Foundation

public enum SFSpeechRecognizerAuthorizationStatus: Int, Sendable {
    case notDetermined
    case denied
    case restricted
    case authorized
}

open class SFSpeechRecognitionRequest: NSObject {
    public var requiresOnDeviceRecognition = false
}

public final class SFSpeechAudioBufferRecognitionRequest: SFSpeechRecognitionRequest, @unchecked Sendable {
    public func append(_ audioPCMBuffer: AVAudioPCMBuffer) {}

    public func endAudio() {}
}

public final class SFTranscription: NSObject {
    public var formattedString: String { "" }
}

public final class SFSpeechRecognitionResult: NSObject {
    public var bestTranscription: SFTranscription { SFTranscription() }
    public var isFinal: Bool { true }
}

public final class SFSpeechRecognitionTask: NSObject, @unchecked Sendable {
    public func cancel() {}
}

public final class SFSpeechRecognizer: NSObject {
    public var isAvailable: Bool { false }
    public var supportsOnDeviceRecognition: Bool { false }

    public init?(locale: Locale) {}

    public class func supportedLocales() -> Set<Locale> { [] }

    public class func requestAuthorization(_ handler: @escaping @Sendable (SFSpeechRecognizerAuthorizationStatus) -> Void) {}

    public func recognitionTask(
        with request: SFSpeechRecognitionRequest, resultHandler: @escaping @Sendable (SFSpeechRecognitionResult?, (any Error)?) -> Void
    ) -> SFSpeechRecognitionTask { SFSpeechRecognitionTask() }
}
