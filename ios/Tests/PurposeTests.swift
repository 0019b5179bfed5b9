import Foundation
import Hand
import Testing

/// The few sentences that the system asks for before any code runs are the core's own.
@Suite struct PurposeTests {
    @Test(arguments: ["en", "es"])
    func thePhoneAsksInTheWordsOfTheCore(_ language: String) throws {
        let say = try Say(language)
        let file = try String(contentsOf: tree.appending(path: "ios/App/\(language).lproj/InfoPlist.strings"), encoding: .utf8)
        let asked = file.matches(of: /"(\w+)" = "(.+)";/).map { [String($0.1), String($0.2)] }
        let purposes = try [
            ["NSCameraUsageDescription", say("phone-why-camera")],
            ["NSLocationWhenInUseUsageDescription", say("phone-why-position")],
            ["NSMicrophoneUsageDescription", say("phone-why-microphone")],
            ["NSSpeechRecognitionUsageDescription", say("phone-why-microphone")],
        ]
        #expect(asked == purposes)
        // In any other language the phone asks in English.
        guard language == "en" else { return }
        let project = try String(contentsOf: tree.appending(path: "ios/project.yml"), encoding: .utf8)
        #expect(project.matches(of: /(NS\w+UsageDescription): (.+)/).map { [String($0.1), String($0.2)] } == purposes)
    }
}
