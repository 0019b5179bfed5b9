import LadderbookCore
import Shell
import SwiftUI

/// What the owner gets.
struct Letter: View {
    let state: LetterState
    let shell: Shell

    var body: some View {
        Page(shell: shell, hand: [InHand(shell, state.back), InHand(shell, state.main, main: true)]) {
            Title(state.under, state.title)
        } content: {
            if let first = state.first { Against(first) }
            Choices(shell: shell, buttons: state.acts)
            if !state.sent.isEmpty {
                SectionHeading(state.sentTitle)
                Each(state.sent) { SentLetter(sent: $0, shell: shell) }
            }
            SectionHeading(state.previewTitle)
            Each(state.preview) { answered in
                VStack(alignment: .leading, spacing: 0) {
                    Say(answered.asks, bold: true)
                    Each(answered.says) { Say($0, size: 20) }
                }
                .padding(.horizontal, .edge)
                .padding(.vertical, 8)
                .accessibilityElement(children: .combine)
            }
        }
    }
}

private struct SentLetter: View {
    let sent: Sent
    let shell: Shell
    @Environment(\.colours) private var colours

    var body: some View {
        VStack(alignment: .leading, spacing: 8) {
            Heading(sent.title)
            if let overtaken = sent.overtaken { Say(overtaken, bold: true, colour: colours.chalk) }
            Say(sent.text)
                .frame(maxWidth: .infinity, alignment: .leading)
                .padding(.horizontal, 14)
                .padding(.vertical, .gap)
                .background(colours.mist)
            Key(sent.open) { shell.openPaper(sent.letter) }
            if let words = shell.words { Key(words.share) { shell.sharePaper(sent.letter) } }
            Rule(.line)
        }
        .padding(.horizontal, .edge)
        .padding(.vertical, 8)
    }
}
