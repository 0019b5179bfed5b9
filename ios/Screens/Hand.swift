import LadderbookCore
import Shell
import SwiftUI

/// One thing at the bottom, which is the hand's.
struct InHand {
    let label: String
    /// The main one is black, and wider.
    var main = false
    /// The shutter is larger still.
    var tall = false
    let tap: @MainActor () -> Void

    @MainActor var key: some View { Key(label, main: main, size: tall ? 27 : 21, height: tall ? 84 : .hand, tap: tap) }
}

extension InHand {
    init(_ shell: Shell, _ button: CoreButton, main: Bool = false) {
        self.init(label: button.label, main: main) { shell.tap(button) }
    }

    /// The shutter: large, black, under the thumb.
    init(_ shell: Shell, _ shutter: Shutter) {
        self.init(label: shutter.label, main: true, tall: true) { shell.shoot(shutter) }
    }
}

/// Things side by side, each as wide as its share, all as tall as the tallest.
struct Shares: Layout {
    private let shares: [CGFloat]
    private let gap: CGFloat

    init(of shares: [CGFloat], gap: CGFloat) {
        self.shares = shares
        self.gap = gap
    }

    /// How wide each is.
    func widths(in width: CGFloat) -> [CGFloat] {
        let room = width - gap * CGFloat(shares.count - 1)
        let all = shares.reduce(0, +)
        return shares.map { max(0, room * $0 / all) }
    }

    func sizeThatFits(proposal: ProposedViewSize, subviews: Subviews, cache: inout ()) -> CGSize {
        let width = proposal.width ?? 0
        let heights = zip(subviews, widths(in: width)).map { $0.sizeThatFits(ProposedViewSize(width: $1, height: nil)).height }
        return CGSize(width: width, height: heights.max() ?? 0)
    }

    func placeSubviews(in bounds: CGRect, proposal: ProposedViewSize, subviews: Subviews, cache: inout ()) {
        var x = bounds.minX
        for (subview, width) in zip(subviews, widths(in: bounds.width)) {
            subview.place(at: CGPoint(x: x, y: bounds.minY), anchor: .topLeading, proposal: ProposedViewSize(width: width, height: bounds.height))
            x += width + gap
        }
    }
}
