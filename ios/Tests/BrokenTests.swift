import Hand
import Testing

/// A core that breaks in the middle of a tap. The library of the tests has a word that makes it do so.
@MainActor
@Suite struct BrokenTests {
    @Test func aCoreThatBreaksIsToldOnTheScreenTheNextTapWorksTheBookIsWhole() async throws {
        let demo = try DemoBook.atCall()
        try await breakIt(Hand(demo))
        _ = try Program.says(of: demo, "check")
        #expect(try Program.says(of: demo, "--json", "rebuild").contains("\"same\": true"))
    }

    private func breakIt(_ hand: Hand) async throws {
        let say = hand.say
        try await hand.goToAMark()
        let broke = try say("phone-broke")
        try await hand.type(say("say-words"), "break on purpose")
        try await hand.until("it is told") { hand.sees(broke) }
        _ = hand.all
        #expect(hand.look.announced() == [broke], "it is read to who does not see it")
        try await hand.type(say("say-words"), "Lifted")
        try await hand.tapFirst(say("rung-failing"))
        #expect(!hand.sees(broke))
        #expect(try #require(hand.shell.notice).contains(try say("saved")))
        try await hand.tap(say("say-keep"))
        #expect(hand.sees("Lifted"))
    }
}
