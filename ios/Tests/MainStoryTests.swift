import Foundation
import Hand
import LadderbookCore
import Testing

/// The main story on the phone, from the call to the letter, by taps alone; then the desk is asked what it makes of the same book.
@MainActor
@Suite struct MainStoryTests {
    @Test func theWholeVisitByTapsAndTheVerdictThatTheDeskReads() async throws {
        let demo = try DemoBook.atCall()
        let verdict = try await visit(demo)
        let desk = try Program.says(of: demo, "verdict", "318 lamplighter").split(separator: "\n").map(letters).filter { !$0.isEmpty }
        #expect(desk.count > 60, "the desk says a verdict")
        let phone = letters(verdict.said.joined())
        #expect(desk.filter { !phone.contains($0) } == [], "what the desk says and the phone does not")
        let all = desk.joined()
        let said = verdict.said.filter { !verdict.taps.contains($0) }
        #expect(said.filter { !all.contains(letters($0)) } == [], "what the phone says and the desk does not")
        #expect(try Program.says(of: demo, "--json", "rebuild").contains("\"same\": true"))
    }

    /// What a verdict says, without the marks by which page, phone and paper set it differently.
    private func letters(_ text: some StringProtocol) -> String { String(text).filter { $0.isLetter || $0.isNumber } }

    private func visit(_ demo: DemoBook) async throws -> (said: [String], taps: Set<String>) {
        let file = try Json.file("fixtures/demo/01-lamplighter-lane/02-2026-09-14.json")
        let hand = try await Hand(demo)
        let say = hand.say
        try await hand.type(say("arrive-find"), "318 lamplighter")
        try await hand.tap(say("arrive-find-button"))
        try await hand.tapFirst("318 Lamplighter Ln")
        try await ask(file["visit"], hand)
        try await safety(file, hand)
        try await Visit(by: hand).walk(file.all("structures"))
        try await picture(hand)
        try await hand.tap(say("walk-close"))
        try await hand.tapFirst(say("close-not-reached"))
        #expect(hand.hasHeading(try say("then-and-now-title")))
        try await hand.tap(say("verdict-title"))
        let verdict = try await read(hand)
        try await hand.tapFirst(say("verdict-letter"))
        try await letter(hand)
        return verdict
    }

    private func ask(_ visit: Json, _ hand: Hand) async throws {
        let (say, request) = (hand.say, visit["request"])
        let asked = try #require(request.all("asks").first)
        try await hand.type(say("request-words"), try #require(request.text("words")))
        try await hand.choose(say("request-kind"), say("kind-\(try #require(asked.text("kind")))"))
        try await hand.choose(say("request-remedy"), say("remedy-\(try #require(asked.text("remedy")))"))
        try await hand.choose(say("request-leaking"), say("answer-\(try #require(request.text("leaking")))"))
        try await hand.type(say("request-room"), try #require(request.text("room")))
        try await hand.choose(say("request-scope"), say("scope-\(try #require(visit.text("scope")))"))
        try await hand.tap(say("doorstep-open-button"))
        try await hand.tap(say("back-doorstep"))
        #expect(hand.sees(try say("doorstep-contradicts")), "what they ask goes against what was said")
        try await hand.tap(say("doorstep-safety"))
    }

    private func safety(_ file: Json, _ hand: Hand) async throws {
        let say = hand.say
        for check in file["visit"].all("safety") {
            try await hand.tapBeside(say("safety-\(try #require(check.text("check")))"), say("answer-\(try #require(check.text("holds")))"))
        }
        for structure in file.all("structures") {
            let name = try structure.text("name") ?? say("structure-\(try #require(structure.text("kind")))")
            try await hand.tapBeside(name, say("reach-\(try #require(structure.text("reached")))"))
        }
        try await hand.tap(say("safety-up"))
    }

    /// A picture from the walk, through the tray, to its part.
    private func picture(_ hand: Hand) async throws {
        let say = hand.say
        hand.phone.before = try Data(contentsOf: tree.appending(path: "docs/pictures/walk.png"))
        try await hand.tap(say("shutter"))
        let saved = try say("saved-picture")
        try await hand.until("the picture is kept") { hand.phone.felt.last == saved }
        await hand.shell.settled()
        try await hand.tap(say("walk-more"))
        try await hand.tap(say("tray-title"))
        try await hand.tap(say("tray-tie"))
        try await hand.tapFirst(say("part-which", ["kind": say("kind-sidewall-flashing"), "which": "dormer, left cheek"]))
        #expect(hand.sees(try say("tray-empty")))
        try await hand.tap(say("back-walk"))
    }

    /// All that the phone says of the verdict, structure by structure, and the words on it that are there to tap.
    private func read(_ hand: Hand) async throws -> (said: [String], taps: Set<String>) {
        var said: [String] = []
        let structures = try state(hand).structures.map(\.label)
        var taps = Set(structures)
        for structure in structures {
            try await hand.tapFirst(structure)
            try await hand.unfoldAll()
            said += hand.reads
            let state = try state(hand)
            taps.formUnion(state.steps.compactMap(\.whyMore) + [state.main, state.back, state.offer].map(\.label))
        }
        return (said, taps)
    }

    private func state(_ hand: Hand) throws -> VerdictState {
        guard case .verdict(let state) = hand.shell.shown?.screen else { throw NotThere(what: "the verdict is shown") }
        return state
    }

    private func letter(_ hand: Hand) async throws {
        let say = hand.say
        try await hand.tap(say("letter-write-english"))
        let open = try say("letter-open")
        try await hand.until("the letter is written") { hand.shell.work == nil && hand.sees(open) }
        await hand.shell.settled()
        try await hand.tap(open)
        let paper = try #require(hand.phone.opened.first)
        #expect(try Data(contentsOf: URL(fileURLWithPath: paper)).starts(with: Data("%PDF-".utf8)))
        #expect(hand.phone.felt.contains(try say("saved-letter")))
    }
}
