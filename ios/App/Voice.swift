import AVFoundation
import UIKit

/// A save is felt and heard: on a roof nobody looks at a line of text.
@MainActor
final class Voice {
    private let speaking = AVSpeechSynthesizer()
    private let touch = UINotificationFeedbackGenerator()

    func tell(_ notice: String, tag: String) {
        touch.notificationOccurred(.success)
        // Where the phone reads its screen aloud already, it says this too, in its own voice.
        guard !UIAccessibility.isVoiceOverRunning else { return UIAccessibility.post(notification: .announcement, argument: notice) }
        let words = AVSpeechUtterance(string: notice)
        words.voice = AVSpeechSynthesisVoice(language: tag)
        speaking.stopSpeaking(at: .immediate)
        speaking.speak(words)
    }
}
