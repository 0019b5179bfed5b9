import Shell
import SwiftUI

/// What lies under the thumb while the camera is open: leaving it, and the shutter.
public struct ViewfinderKeys: View {
    private let shell: Shell
    private let leave: @MainActor () -> Void
    private let take: @MainActor () -> Void

    /// What the two do.
    public init(shell: Shell, leave: @escaping @MainActor () -> Void, take: @escaping @MainActor () -> Void) {
        self.shell = shell
        self.leave = leave
        self.take = take
    }

    /// The two beside each other.
    public var body: some View {
        Shares(of: [1, 2], gap: .gap) {
            if let words = shell.words { InHand(label: words.leave, tap: leave).key }
            if let shutter = shell.aimed { InHand(label: shutter.label, main: true, tall: true, tap: take).key }
        }
        .padding(.gap)
        .fixedSize(horizontal: false, vertical: true)
    }
}
