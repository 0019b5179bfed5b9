import LadderbookCore
import Shell
import SwiftUI

/// White on black after dusk, with one tap.
struct DayAndDusk: View {
    let shell: Shell
    let words: PhoneWords
    @Environment(\.colours) private var colours

    var body: some View { Key(colours.dark ? words.day : words.dusk) { shell.dusk = !colours.dark }.padding(.edge) }
}
