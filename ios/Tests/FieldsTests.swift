import Foundation
import Hand
import LadderbookCore
import Shell
import SwiftUI
import Testing

/// Fields that the phone can fill.
@MainActor
@Suite struct FieldsTests {
    @Test func aPositionIsTakenFromWhereThePhoneStands() async throws {
        let hand = try await Hand(DemoBook.atCall())
        let (here, failed, label) = try (hand.say("position-here"), hand.say("position-failed"), hand.say("arrive-find"))
        try await hand.tap(here)
        try await hand.until("it says that it does not know") { hand.sees(failed) }
        hand.phone.ports.allowed = false
        try await hand.tap(here)
        try await hand.until("it says that it may not") { hand.shell.trouble != nil }
        #expect(!hand.sees(failed))
        hand.phone.ports.allowed = true
        hand.phone.ports.stands = Fix(latitude: 41.2412346, longitude: -96.0113)
        try await hand.tap(here)
        try await hand.until("it stands in the field") { (try? hand.text(in: label)) == "41.241235, -96.011300" }
    }

    @Test func readingsOfTheSlopeStandBesideEachOther() async throws {
        let demo = try DemoBook.whole()
        let phone = ComputerPhone(demo)
        let book = try demo.open(phone.ports, now: phone.now())
        let roof = try #require(Tour(book, now: phone.now(), language: "en").places()["roof"])
        let hand = try await Hand(phone, came: [roof], language: "en") { book }
        let (lay, label) = try (hand.say("phone-lay"), hand.say("roof-readings"))
        try await hand.unfoldAll()
        for readings in ["26.6", "26.6, 26.6"] {
            try await hand.tap(lay)
            try await hand.until("a reading stands there") { (try? hand.text(in: label)) == readings }
        }
    }

    @Test func aDayIsPickedFromTheCalendarWhileItsFieldIsFilledIn() async throws {
        let hand = try await Hand(DemoBook.atCall())
        let label = try hand.say("work-when")
        try await hand.goToAMark()
        try await hand.tap(hand.say("work-title"))
        #expect(!hand.all.contains { $0.kind == .day })
        try await hand.type(label, "2019-06-03")
        let calendar = try #require(hand.all.first { $0.kind == .day })
        #expect(calendar.texts == [label])
        #expect(calendar.day.map { Day.text(of: $0) } == "2019-06-03")
        calendar.pick(try #require(calendar.day).addingTimeInterval(24 * 60 * 60))
        #expect(try hand.text(in: label) == "2019-06-04")
    }
}
