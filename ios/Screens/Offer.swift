import LadderbookCore
import Shell
import SwiftUI

/// What it costs, in order of time.
struct Offer: View {
    let state: OfferState
    let shell: Shell

    var body: some View {
        Page(shell: shell, hand: hand) {
            Title(state.under, state.title)
        } content: {
            Say(state.put).padding(.edge)
            if let trouble = state.trouble { Against(trouble) }
            Each(state.courses) { Course(course: $0) }
            Each(state.nevertheless) { FoldedForm(shell: shell, form: $0) }
            if let worksheet = state.worksheet { FoldedForm(shell: shell, form: worksheet) }
            SectionHeading(state.takesTitle)
            Rows(shell: shell, rows: state.takes)
            if !state.weighs.isEmpty {
                SectionHeading(state.weighsTitle)
                Facts(state.weighs)
            }
            TapButton(shell: shell, button: state.roof).padding(.edge)
        }
    }

    private var hand: [InHand] {
        let main = state.main.map { [InHand(shell, $0, main: true)] }
        return [InHand(shell, state.back)] + (main ?? [])
    }
}

private struct Course: View {
    let course: CourseBlock
    @Environment(\.colours) private var colours

    var body: some View {
        VStack(alignment: .leading, spacing: 4) {
            Heading(course.when, size: 18, colour: colours.chalk)
            Say(course.what, size: 25, bold: true)
            if let until = course.until { Say(until, bold: true) }
            if let price = course.price { Say(price, size: 25, bold: true) }
            Each(course.unpriced) { Say($0, bold: true, colour: colours.chalk) }
            Each(course.beside) { Say($0) }
            Listed(title: course.includesTitle, lines: course.includes)
            Listed(title: course.leavesTitle, lines: course.leaves)
        }
        .padding(.horizontal, .edge)
        .padding(.vertical, 12)
        Fold(course.madeTitle) { Each(course.made) { Amount(sum: $0) } }
        Rule(.line)
    }
}

private struct Listed: View {
    let title: String
    let lines: [String]

    var body: some View {
        if !lines.isEmpty {
            Heading(title, size: 20).padding(.top, 8)
            Each(lines) { Doing($0) }
        }
    }
}

private struct Amount: View {
    let sum: Sum

    var body: some View {
        HStack(alignment: .top, spacing: .gap) {
            Say(sum.says).frame(maxWidth: .infinity, alignment: .leading)
            Say(sum.amount, bold: true)
        }
        .padding(.vertical, 6)
        .accessibilityElement(children: .combine)
        Rule(.thin)
    }
}
