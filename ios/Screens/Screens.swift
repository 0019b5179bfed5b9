import LadderbookCore
import Shell
import SwiftUI

/// Draws the screen that the shell shows. A screen of another kind begins at its top.
struct Screens: View {
    let shell: Shell

    var body: some View {
        screen
            .onChange(of: shell.shown?.place) { AccessibilityNotification.ScreenChanged().post() }
            .accessibilityAction(.escape) { shell.back() }
    }

    @ViewBuilder private var screen: some View {
        switch shell.shown?.screen {
        case nil: Words(text: shell.trouble ?? "")
        case .arrive(let state): Arrive(state: state, shell: shell)
        case .doorstep(let state): Doorstep(state: state, shell: shell)
        case .property(let state): Property(state: state, shell: shell)
        case .safety(let state): Safety(state: state, shell: shell)
        case .walk(let state): Walk(state: state, shell: shell)
        case .mark(let state): Mark(state: state, shell: shell)
        case .tray(let state): Tray(state: state, shell: shell)
        case .thenAndNow(let state): ThenAndNow(state: state, shell: shell)
        case .verdict(let state): Verdict(state: state, shell: shell)
        case .roof(let state): Roof(state: state, shell: shell)
        case .leak(let state): Leak(state: state, shell: shell)
        case .offer(let state): Offer(state: state, shell: shell)
        case .letter(let state): Letter(state: state, shell: shell)
        case .outcome(let state): Outcome(state: state, shell: shell)
        case .reminders(let state): Reminders(state: state, shell: shell)
        case .settings(let state): Settings(state: state, shell: shell)
        }
    }
}

/// The one window: the screens, by day or at dusk; before the book is open, that it is being opened, or why it did not open.
public struct LadderbookView: View {
    private let keeping: Keeping
    @Environment(\.colorScheme) private var scheme

    /// A window on what is kept.
    public init(_ keeping: Keeping) { self.keeping = keeping }

    /// The screens, or what stands in their place.
    public var body: some View {
        let dusk = keeping.shell?.dusk
        let colours = dusk ?? (scheme == .dark) ? Colours.dusk : .day
        ZStack {
            colours.paper.ignoresSafeArea()
            if let shell = keeping.shell {
                Screens(shell: shell)
            } else {
                Opening(keeping: keeping)
            }
        }
        .environment(\.colours, colours)
        .preferredColorScheme(dusk.map { $0 ? .dark : .light })
    }
}

private struct Opening: View {
    let keeping: Keeping

    var body: some View {
        ScrollView {
            VStack(alignment: .leading, spacing: .edge) {
                Say(keeping.trouble ?? keeping.words?.opening ?? "", bold: true)
                if keeping.trouble != nil, let words = keeping.words {
                    Key(words.again) {
                        Task { await keeping.open() }
                    }
                }
            }
            .padding(.edge)
        }
    }
}

/// Before the first screen is there, and where it could not be shown.
private struct Words: View {
    let text: String

    var body: some View { Say(text, bold: true).padding(.edge) }
}
