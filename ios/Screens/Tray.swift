import LadderbookCore
import Shell
import SwiftUI

/// What is not yet tied to a part.
struct Tray: View {
    let state: TrayState
    let shell: Shell

    var body: some View {
        Page(shell: shell, hand: [InHand(shell, state.back), InHand(shell, state.shutter)]) {
            Title(state.under, state.title)
        } content: {
            if let empty = state.empty { Say(empty, size: 20).padding(.edge) }
            Each(state.loose) { LooseThing(loose: $0, tieTitle: state.tieTitle, shell: shell) }
            if !state.half.isEmpty {
                SectionHeading(state.halfTitle)
                Rows(shell: shell, rows: state.half)
            }
        }
    }
}

private struct LooseThing: View {
    let loose: Loose
    let tieTitle: String
    let shell: Shell

    var body: some View {
        VStack(alignment: .leading, spacing: 0) {
            if let picture = loose.picture { Pictures(shell: shell, pictures: [picture]) }
            Say(loose.words, size: 20).padding(.horizontal, .edge).padding(.vertical, 8)
            if let caption = loose.caption { Fields(shell: shell, form: caption) }
            Fold(tieTitle) { Choices(shell: shell, buttons: loose.tie, columns: 1) }
            Rule(.line)
        }
        .accessibilityElement(children: .contain)
    }
}
