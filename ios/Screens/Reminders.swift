import LadderbookCore
import Shell
import SwiftUI

/// What to come back to.
struct Reminders: View {
    let state: RemindersState
    let shell: Shell

    var body: some View {
        let calendar = InHand(label: state.calendar, main: true) { shell.shareCalendar() }
        Page(shell: shell, hand: [InHand(shell, state.back), calendar]) {
            Title("", state.title)
        } content: {
            if let none = state.none { Say(none).padding(.edge) }
            Each(state.rows) { RowWithButton(shell: shell, row: $0.row, button: $0.done) }
        }
    }
}
