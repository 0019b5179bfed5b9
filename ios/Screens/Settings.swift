import LadderbookCore
import Shell
import SwiftUI

/// The firm, the code, the policy.
struct Settings: View {
    let state: SettingsState
    let shell: Shell

    var body: some View {
        Page(shell: shell, hand: [InHand(shell, state.back)]) {
            Title("", state.title)
        } content: {
            Each(state.forms) { form in
                SectionHeading(form.title)
                Fields(shell: shell, form: form)
            }
        }
    }
}
