import LadderbookCore
import Shell
import SwiftUI

/// What stands there, who lives there, what else it is called.
struct Property: View {
    let state: PropertyState
    let shell: Shell

    var body: some View {
        Page(shell: shell, hand: [InHand(shell, state.back)]) {
            Title(state.address, state.title)
        } content: {
            Each(state.place) { FoldedForm(shell: shell, form: $0) }
            if !state.also.isEmpty {
                SectionHeading(state.alsoTitle)
                Rows(shell: shell, rows: state.also)
            }
            SectionHeading(state.peopleTitle)
            Each(state.people) { FoldedForm(shell: shell, form: $0) }
            SectionHeading(state.structuresTitle)
            Each(state.structures) { FoldedForm(shell: shell, form: $0) }
            SectionHeading(state.sameTitle)
            Each(state.joined) { RowWithButton(shell: shell, row: $0.row, button: $0.tap) }
            Fields(shell: shell, form: state.same)
            if let none = state.none { Say(none).padding(.horizontal, .edge).padding(.vertical, 8) }
            Each(state.found) { RowWithButton(shell: shell, row: $0.row, button: $0.tap) }
            SectionHeading(state.erase.title)
            Say(state.eraseSays).padding(.horizontal, .edge)
            FoldedForm(shell: shell, form: state.erase)
        }
    }
}
