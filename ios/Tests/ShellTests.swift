import Foundation
import Hand
import LadderbookCore
import Shell
import SwiftUI
import Testing

@testable import Screens

/// What a shell does around the screens.
@MainActor
@Suite struct ShellTests {
    @Test func aBookThatDoesNotOpenSaysWhyAndOpensOnceItsKeyIsThere() async throws {
        let demo = try DemoBook.atCall()
        let say = try Say("en")
        let (key, phone) = (try Data(contentsOf: demo.key), ComputerPhone(demo))
        try FileManager.default.removeItem(at: demo.key)
        let (ports, now) = (phone.ports, phone.now())
        let keeping = Keeping(language: .english, phone: phone, came: []) { try demo.open(ports, now: now) }
        let look = Look { LadderbookView(keeping) }
        #expect(try look.nodes().flatMap(\.all).flatMap(\.texts) == [say("phone-opening")])
        await keeping.open()
        let told = look.nodes().flatMap(\.all)
        #expect(try told.flatMap(\.texts) == [say("phone-no-key"), say("phone-again")])
        try key.write(to: demo.key)
        try #require(told.first { $0.kind == .button }).tap()
        while keeping.shell == nil { try await Task.sleep(for: .milliseconds(10)) }
        await keeping.shell?.settled()
        #expect(look.nodes().flatMap(\.all).flatMap(\.texts).contains(try say("arrive-title")))
    }

    @Test func aLetterThatIsGivenUpIsNotKeptAndTheNextOneIs() async throws {
        let hand = try await letter(of: DemoBook.atCall())
        let say = hand.say
        let (stop, write) = try (say("phone-give-up"), say("letter-write-english"))
        let before = try sent(hand)
        try await hand.tap(write)
        try await hand.tap(stop)
        try await hand.until("it has ended") { hand.shell.work == nil }
        await hand.shell.settled()
        #expect(try sent(hand) == before)
        #expect(!hand.canTap(stop))
        try await hand.tap(write)
        try await hand.until("it has ended") { hand.shell.work == nil }
        await hand.shell.settled()
        #expect(try sent(hand) == before + 1)
        try await hand.tapFirst(say("phone-share"))
        #expect(hand.phone.ports.shared.count == 1)
    }

    private func sent(_ hand: Hand) throws -> Int {
        guard case .letter(let state) = hand.shell.shown?.screen else { throw NotThere(what: "the letter is shown") }
        return state.sent.count
    }

    @Test func theWayBackLeadsToWhereHeCameFromAndEndsWhereADayBegins() async throws {
        let hand = try await Hand(DemoBook.atCall())
        try await hand.goToAMark()
        var came: [String] = []
        while hand.shell.places.count > 1 {
            came.append(try #require(hand.shell.shown?.place))
            _ = hand.all
            hand.look.escape()
            await hand.shell.settled()
        }
        #expect(Set(came).count == came.count && came.count == 5, "mark, walk, safety, doorstep, what was found: \(came)")
        #expect(hand.hasHeading(try hand.say("arrive-title")))
        #expect(!hand.shell.back())
    }

    @Test func whatIsTypedStaysWhereTheFormWasRefusedAndIsGoneOnceItIsSent() async throws {
        let hand = try await Hand(DemoBook.atCall())
        let say = hand.say
        try await hand.goToAMark()
        try await hand.tap(say("work-title"))
        try await hand.type(say("work-when"), "the day before yesterday")
        try await hand.tap(say("work-keep"))
        #expect(hand.shell.trouble != nil)
        #expect(try hand.text(in: say("work-when")) == "the day before yesterday")
        try await hand.type(say("work-when"), "2025-05-31")
        try await hand.tap(say("work-keep"))
        #expect(hand.shell.trouble == nil)
        #expect(try hand.text(in: say("work-when")) == "")
    }

    @Test func wordsCanBeSaidInsteadOfTyped() async throws {
        let hand = try await Hand(DemoBook.atCall())
        let say = hand.say
        try await hand.goToAMark()
        try await hand.type(say("say-words"), "Two shingles")
        try await hand.tapLast(say("phone-dictate"))
        let refused = try say("phone-no-dictation")
        try await hand.until("it says that it heard nothing") { hand.sees(refused) }
        hand.phone.said = "are cracked"
        try await hand.tapLast(say("phone-dictate"))
        let label = try say("say-words")
        try await hand.until("the words stand there") { (try? hand.text(in: label)) == "Two shingles are cracked" }
    }

    @Test func wordsAreDrawnInTheColoursOfTheHour() {
        for colours in [Colours.day, .dusk] {
            let pairs = [
                (colours.ink, colours.paper), (colours.ink, colours.mist), (colours.ink, colours.hatch), (colours.chalk, colours.paper),
                (colours.onChalk, colours.chalk), (colours.chalk, colours.mist),
            ]
            for (words, under) in pairs { #expect(contrast(words, under) >= 7) }
        }
    }

    @Test func aTapAtDuskTurnsTheScreen() async throws {
        let hand = try await Hand(DemoBook.atCall())
        try await hand.tap(hand.say("phone-dusk"))
        #expect(hand.shell.dusk == true)
        try await hand.tap(hand.say("phone-day"))
        #expect(hand.shell.dusk == false)
    }

    @Test func theHandIsSharedOut() {
        let places = Shares(of: [1, 2], gap: 10).places(of: [60, 90], in: 310)
        #expect(places == [CGRect(x: 0, y: 0, width: 100, height: 90), CGRect(x: 110, y: 0, width: 200, height: 90)])
    }

    @Test func largeWordsGrowOnlyUntilSmallOnesAreAsLarge() {
        let reader = Reader(scale: 2)
        #expect(reader.grown(18) == 36)
        #expect(reader.grown(40) == 48)
        #expect(Reader(scale: 1).grown(40) == 40)
        #expect(Reader(scale: 3.1).grown(80) == 80)
    }

    @Test func theSteepnessIsAnAverageAlongTheLongEdge() throws {
        var steepness = Steepness(of: 2)
        steepness.add(0, -0.5, -0.75.squareRoot())
        #expect(steepness.average == nil)
        steepness.add(0, 0.5, -0.75.squareRoot())
        #expect(abs(try #require(steepness.average) - 30) < 1e-9)
    }

    @Test func aDayIsWrittenAsTheCoreReadsIt() {
        #expect(Day.text(of: Day.date(of: "2026-09-14")) == "2026-09-14")
        #expect(Day.text(of: Day.date(of: "soon")) == Day.text(of: .now))
    }

    /// From the call, without a look at anything, to the letter.
    private func letter(of demo: DemoBook) async throws -> Hand {
        let hand = try await Hand(demo)
        let say = hand.say
        try await hand.goToAMark()
        try await hand.tapFirst(say("back-walk"))
        try await hand.tap(say("walk-close"))
        try await hand.tapFirst(say("close-not-reached"))
        try await hand.tap(say("verdict-title"))
        try await hand.tapFirst(say("verdict-letter"))
        return hand
    }

    /// The contrast of two colours, as WCAG 2 has it.
    private func contrast(_ one: SwiftUI.Color, _ other: SwiftUI.Color) -> Double {
        func light(_ colour: SwiftUI.Color) -> Double {
            func linear(_ share: Double) -> Double { share <= 0.04045 ? share / 12.92 : pow((share + 0.055) / 1.055, 2.4) }
            return 0.2126 * linear(colour.red) + 0.7152 * linear(colour.green) + 0.0722 * linear(colour.blue)
        }
        let (brighter, darker) = (max(light(one), light(other)), min(light(one), light(other)))
        return (brighter + 0.05) / (darker + 0.05)
    }
}
