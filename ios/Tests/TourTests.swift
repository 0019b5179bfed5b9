import Foundation
import Hand
import LadderbookCore
import SwiftUI
import Testing

@testable import Screens

/// How a screen is held and read.
private struct Held: CustomStringConvertible {
    let size: CGSize
    let scale: CGFloat

    var description: String { "\(size.width > size.height ? "lying" : "upright"), words × \(scale)" }

    static let upright = CGSize(width: 390, height: 844)
    static let lying = CGSize(width: 844, height: 390)

    static let all = [upright, lying].flatMap { size in [1, 3.1].map { Held(size: size, scale: $0) } }
}

/// Every screen of the demo's book, in both languages, upright and lying, with words as usual and as large as they get.
@MainActor
@Suite struct TourTests {
    @Test(arguments: ["en", "es"])
    func everyScreenSaysAllThatTheCoreSaysInWordsAndSizesForEveryone(_ language: String) async throws {
        try await tour(language) { name, hand in
            let said = sentences(of: try #require(hand.shell.shown?.screen))
            for held in Held.all {
                hand.look.size = held.size
                hand.look.scale = held.scale
                try await hand.unfoldAll()
                let all = hand.all
                saysAll(of: said, try readAll(hand), "\(name), \(held)")
                for node in all where node.kind != .group {
                    hasWords(node, "\(name), \(held)")
                    isLargeEnough(node, held.scale, "\(name), \(held)")
                }
            }
        }
    }

    @Test func theWalkBeginsAtThePresentStopAndLeadsToItsWords() async throws {
        try await tour("en") { name, hand in
            guard name == "walk" else { return }
            _ = hand.all
            let first = try #require(hand.look.scrolledTo)
            #expect(first.isThere)
            try await hand.tapLast(hand.say("say-it"))
            let then = try #require(hand.look.scrolledTo)
            #expect(then.isThere && then.to != first.to)
        }
    }

    @Test func thePlanIsDrawnWithItsWords() async throws {
        var drawn = 0
        try await tour("en") { _, hand in
            guard case .roof(let state) = hand.shell.shown?.screen, let plan = state.plan else { return }
            let words = plan.drawing.shapes.compactMap { shape in if case .words(let lettering) = shape { lettering.text } else { nil } }
            #expect(hand.all.first { $0.label == plan.says }?.texts == words)
            drawn += words.count
        }
        #expect(drawn > 10)
    }

    private func saysAll(of said: [String], _ read: [String], _ name: String) {
        let unsaid = said.filter { sentence in !read.contains { $0.contains(sentence) } }
        #expect(unsaid == [], "\(name) leaves out what the core says")
    }

    /// For those who do not see it.
    private func hasWords(_ node: Node, _ name: String) {
        #expect(!(node.label ?? node.texts.joined()).isEmpty, "something on \(name) has no words: \(node.kind)")
        #expect([.text, .button, .field, .day].contains(node.kind) || node.label != nil, "a picture on \(name) has no words")
    }

    private func isLargeEnough(_ node: Node, _ scale: CGFloat, _ name: String) {
        if let points = node.points { #expect(points >= 15 * scale, "small words on \(name): \(node.texts)") }
        guard [.button, .field].contains(node.kind), !node.traits.contains(.isImage) else { return }
        #expect(node.height >= 56, "a small target on \(name): \(node.texts)")
    }

    /// Every text, with every choice open as well.
    private func readAll(_ hand: Hand) throws -> [String] {
        let choosers = hand.all.filter { $0.kind == .button && $0.value != nil && $0.value != "−" }
        for chooser in choosers { chooser.tap() }
        defer { for chooser in choosers { chooser.tap() } }
        return hand.all.flatMap { $0.texts + [$0.label, $0.text].compactMap(\.self) }
    }

    private func tour(_ language: String, _ look: (String, Hand) async throws -> Void) async throws {
        let demo = try DemoBook.whole()
        let phone = ComputerPhone(demo)
        let book = try demo.open(phone.ports, now: phone.now())
        let places = try Tour(book, now: phone.now(), language: language).places()
        for (name, place) in places.sorted(by: { $0.key < $1.key }) {
            let hand = try await Hand(phone, came: [place], language: language) { book }
            #expect(hand.shell.trouble == nil, "\(name)")
            try await look(name, hand)
        }
    }
}
