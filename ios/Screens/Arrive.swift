import LadderbookCore
import Shell
import SwiftUI

/// Find the address, or who to see today.
struct Arrive: View {
    let state: ArriveState
    let shell: Shell

    var body: some View {
        Page(shell: shell, hand: state.doors.map { InHand(shell, $0) }) {
            Title(state.firm, state.title)
        } content: {
            Fields(shell: shell, form: state.search)
            if let none = state.none { Say(none).padding(.edge) }
            Rows(shell: shell, rows: state.found)
            if let add = state.add { FoldedForm(shell: shell, form: add) }
            if !state.open.isEmpty {
                SectionHeading(state.openTitle)
                Rows(shell: shell, rows: state.open)
            }
            if !state.today.isEmpty {
                SectionHeading(state.todayTitle)
                Rows(shell: shell, rows: state.today)
            }
            if let words = shell.words { DayAndDusk(shell: shell, words: words) }
        }
    }
}
