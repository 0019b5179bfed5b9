import LadderbookCore
import Shell
import SwiftUI

/// A door plate: the address large; what they ask now over what was said then; what to look at again.
struct Doorstep: View {
    let state: DoorstepState
    let shell: Shell

    var body: some View {
        Page(shell: shell, hand: hand) {
            Heading(state.address, size: 40)
            Say(state.under, size: 19)
        } content: {
            Each(state.dangers) { Danger($0) }
            if let asked = state.asked { Asks(asked: asked) }
            if let then = state.then { SaidThen(then: then) }
            if !state.lookAgain.isEmpty {
                SectionHeading(state.lookTitle)
                Rows(shell: shell, rows: state.lookAgain)
                if let more = state.lookMore { Fold(more) { Rows(shell: shell, rows: state.lookRest) } }
            }
            Each(state.lines) { line in
                VStack(alignment: .leading, spacing: 0) {
                    Say(line.title, bold: true)
                    Say(line.says, size: 20)
                }
                .padding(.horizontal, .edge)
                .padding(.vertical, .gap)
                .accessibilityElement(children: .combine)
            }
            if let open = state.open {
                SectionHeading(open.title)
                Fields(shell: shell, form: open)
            }
            Choices(shell: shell, buttons: Array(state.doors.dropFirst()))
        }
    }

    private var hand: [InHand] {
        let main = state.main.map { [InHand(shell, $0, main: true)] }
        return state.doors.prefix(1).map { InHand(shell, $0) } + (main ?? [])
    }
}

private struct Asks: View {
    let asked: Asked

    var body: some View {
        VStack(alignment: .leading, spacing: 0) {
            Heading(asked.title, size: 18)
            Say(asked.words, size: 25, bold: true)
        }
        .padding(.horizontal, .edge)
        .padding(.vertical, 12)
        Rule(.line)
    }
}

private struct SaidThen: View {
    let then: Then
    @Environment(\.colours) private var colours

    var body: some View {
        VStack(alignment: .leading, spacing: 4) {
            Heading(then.title, size: 18)
            Say(then.said, size: 25, bold: true)
            if let contradicts = then.contradicts { Say(contradicts, size: 21, bold: true, colour: colours.chalk) }
            Each(then.why) { Say($0) }
        }
        .frame(maxWidth: .infinity, alignment: .leading)
        .padding(.horizontal, .edge)
        .padding(.vertical, 12)
        .background(colours.mist)
        Rule(.line)
    }
}
