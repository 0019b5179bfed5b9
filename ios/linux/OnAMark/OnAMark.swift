import Foundation
import Hand

/// A process of its own, to be killed: half types words on a Mark, tells the addresses that a phone would have kept, and waits.
@main
@MainActor
struct OnAMark {
    static func main() async throws {
        let hand = try await Hand(DemoBook(URL(fileURLWithPath: CommandLine.arguments[1])))
        try await hand.goToAMark()
        try await hand.type(hand.say("say-words"), halfTyped)
        // Longer than half-typed words wait before they are kept.
        try await Task.sleep(for: .seconds(1))
        FileHandle.standardOutput.write(Data("came by \(hand.phone.kept.joined(separator: " "))\n".utf8))
        try await Task.sleep(for: .seconds(3600))
    }
}
