import LadderbookCore
import Shell
import SwiftUI

/// The suspects, the likeliest first.
struct Leak: View {
    let state: LeakState
    let shell: Shell

    var body: some View {
        Page(shell: shell, hand: [InHand(shell, state.back)]) {
            Title(state.under, state.title)
        } content: {
            if let how = state.how { Say(how).padding(.edge) }
            if let ask = state.ask { Fields(shell: shell, form: ask) }
            if let plan = state.plan { Plan(plan: plan) }
            if !state.suspects.isEmpty { SectionHeading(state.suspectsTitle) }
            Each(state.suspects) { suspect in
                Rows(shell: shell, rows: [suspect.row])
                Facts(suspect.why)
            }
            if let caution = state.caution { Danger(caution) }
            if let again = state.again { FoldedForm(shell: shell, form: again) }
        }
    }
}
