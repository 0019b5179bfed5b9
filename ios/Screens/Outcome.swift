import LadderbookCore
import Shell
import SwiftUI

/// What came of the letter, and what to come back to.
struct Outcome: View {
    let state: OutcomeState
    let shell: Shell

    var body: some View {
        Page(shell: shell, hand: [InHand(shell, state.back)]) {
            Title(state.under, state.title)
        } content: {
            SectionHeading(state.record.title)
            Fields(shell: shell, form: state.record)
            Each(state.told) { Came(told: $0, shell: shell) }
            SectionHeading(state.remindersTitle)
            Each(state.reminders) { RowWithButton(shell: shell, row: $0.row, button: $0.done) }
            FoldedForm(shell: shell, form: state.remind)
        }
    }
}

private struct Came: View {
    let told: LadderbookCore.Told
    let shell: Shell

    var body: some View {
        Rows(shell: shell, rows: [told.row])
        Pictures(shell: shell, pictures: told.pictures)
        if let shutter = told.shutter {
            Key(shutter.label) { shell.shoot(shutter) }.padding(.horizontal, .edge).padding(.vertical, 4)
        }
    }
}
