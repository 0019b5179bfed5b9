import Foundation
import Hand
import LadderbookCore
import SwiftUI
import Testing

@testable import Screens

/// How a screen is held and read.
struct Held: CustomTestStringConvertible, Sendable {
    let language: String
    let size: CGSize
    let scale: CGFloat

    var testDescription: String { "\(language), \(size.width > size.height ? "lying" : "upright"), words × \(scale)" }

    static let upright = CGSize(width: 390, height: 844)
    static let lying = CGSize(width: 844, height: 390)

    static let all = ["en", "es"].flatMap { language in
        [upright, lying].flatMap { size in [1, 3.1].map { Held(language: language, size: size, scale: $0) } }
    }
}

/// Every screen of the demo's book, in both languages, upright and lying, with words as usual and as large as they get.
@MainActor
@Suite struct TourTests {
    @Test(arguments: Held.all)
    func everythingThatTheCoreSaysStandsOnTheScreen(_ held: Held) async throws {
        try await visitAll(held) { name, hand in
            let screen = try #require(hand.shell.shown?.screen)
            let read = try await readAll(hand)
            let unsaid = sentences(of: screen).filter { sentence in !read.contains { $0.contains(sentence) } }
            #expect(unsaid == [], "\(name) leaves out what the core says")
        }
    }

    @Test(arguments: Held.all)
    func everythingHasWordsForThoseWhoDoNotSeeIt(_ held: Held) async throws {
        try await visitAll(held) { name, hand in
            try await hand.unfoldAll()
            for node in hand.all where node.kind != .group {
                #expect(!(node.label ?? node.texts.joined()).isEmpty, "something on \(name) has no words: \(node.kind)")
                #expect([.text, .button, .field, .day].contains(node.kind) || node.label != nil, "a picture on \(name) has no words")
            }
        }
    }

    @Test(arguments: Held.all)
    func everythingIsLargeEnough(_ held: Held) async throws {
        try await visitAll(held) { name, hand in
            try await hand.unfoldAll()
            for node in hand.all {
                if let points = node.points { #expect(points >= 15 * held.scale, "small words on \(name): \(node.texts)") }
                let isPicture = node.traits.contains(.isImage)
                if [.button, .field].contains(node.kind), !isPicture { #expect(node.height >= 56, "a small target on \(name): \(node.texts)") }
            }
        }
    }

    @Test func theWalkBeginsAtThePresentStopAndLeadsToItsWords() async throws {
        let held = Held(language: "en", size: Held.upright, scale: 1)
        try await visitAll(held) { name, hand in
            guard name == "walk" else { return }
            _ = hand.all
            let first = try #require(hand.look.scrolledTo)
            #expect(first.isThere)
            try await hand.tapFirst(hand.say("say-it"))
            let then = try #require(hand.look.scrolledTo)
            #expect(then.isThere && then.to != first.to)
        }
    }

    @Test func thePlanIsDrawnWithItsWords() async throws {
        let held = Held(language: "en", size: Held.upright, scale: 1)
        try await visitAll(held) { name, hand in
            guard case .roof(let state) = hand.shell.shown?.screen, let plan = state.plan else { return }
            let words = plan.drawing.shapes.compactMap { shape in if case .words(let lettering) = shape { lettering.text } else { nil } }
            let drawn = try #require(hand.all.first { $0.label == plan.says })
            #expect(!words.isEmpty && drawn.texts == words)
        }
    }

    private func visitAll(_ held: Held, _ look: (String, Hand) async throws -> Void) async throws {
        let demo = try DemoBook.whole()
        let phone = ComputerPhone(demo)
        let places = try Tour(demo.open(phone.ports, now: phone.now()), now: phone.now(), language: held.language).places()
        for (name, place) in places.sorted(by: { $0.key < $1.key }) {
            let hand = try await Hand(demo, came: [place], language: held.language)
            hand.look.size = held.size
            hand.look.scale = held.scale
            #expect(hand.shell.trouble == nil, "\(name)")
            try await look(name, hand)
        }
    }

    /// Every text, with every fold and every choice open.
    private func readAll(_ hand: Hand) async throws -> [String] {
        try await hand.unfoldAll()
        for node in hand.all where node.kind == .button && node.value != nil && node.value != "−" { node.tap() }
        return hand.all.flatMap { $0.texts + [$0.label, $0.text].compactMap(\.self) }
    }
}
