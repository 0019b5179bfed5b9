import Foundation
import Hand
import Testing

/// A phone ends a process whenever it likes.
@MainActor
@Suite struct KilledTests {
    @Test func aProcessKilledInTheMiddleOfAMarkComesBackToItWithTheHalfTypedWords() async throws {
        let demo = try DemoBook.atCall()
        let hand = try await Hand(demo, came: placesWhenKilled(demo))
        let say = hand.say
        #expect(hand.hasHeading(try say("mark-title")))
        try await hand.tapFirst(say("say-it"))
        #expect(try hand.text(in: say("say-words")) == halfTyped)
        try await hand.tap(say("say-keep"))
        #expect(hand.sees(halfTyped))
        try await hand.tapFirst(say("back-walk"))
        #expect(hand.sees(try say("walk-mark")), "the way back is there too")
    }

    @Test func anAddressThatIsGoneLeadsToWhereADayBeginsAndSaysSo() async throws {
        let gone = "/doorstep/00000000-0000-7000-8000-000000000000"
        let hand = try await Hand(DemoBook.atCall(), came: [gone])
        #expect(hand.hasHeading(try hand.say("arrive-title")))
        #expect(hand.sees(try #require(hand.shell.trouble)))
        #expect(!hand.shell.places.contains(gone))
        #expect(!hand.phone.kept.contains(gone))
    }

    /// Runs the other process until it waits, and kills it.
    private func placesWhenKilled(_ demo: DemoBook) throws -> [String] {
        let process = Process()
        process.executableURL = URL(fileURLWithPath: try Program.environment("BUILT")).appending(path: "OnAMark")
        process.arguments = [demo.folder.path]
        let pipe = Pipe()
        process.standardOutput = pipe
        try process.run()
        var said = ""
        while !said.contains("\n") {
            let more = pipe.fileHandleForReading.availableData
            guard !more.isEmpty else { throw NotThere(what: "it ended by itself: \(said)") }
            said += String(decoding: more, as: UTF8.self)
        }
        kill(process.processIdentifier, SIGKILL)
        process.waitUntilExit()
        #expect(process.terminationReason == .uncaughtSignal)
        return said.trimmingPrefix("came by ").split(whereSeparator: \.isWhitespace).map(String.init)
    }
}
