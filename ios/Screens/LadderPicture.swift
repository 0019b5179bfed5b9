import LadderbookCore
import SwiftUI

/// Width to height of the ladder.
private let slim: CGFloat = 0.62

/// How far it grows with the words beside it.
private let grows: CGFloat = 1.5

private enum Bar {
    case whole
    case sagging
    case snapped
    case gone
}

extension Ladder {
    /// From the top down.
    fileprivate var bars: [Bar] {
        switch self {
        case .sound: [.whole, .whole, .whole]
        case .ageing: [.whole, .sagging, .whole]
        case .failing: [.whole, .snapped, .whole]
        case .failed: [.snapped, .snapped, .gone]
        case .notSeen, .gone: [.gone, .gone, .gone]
        }
    }
}

/// A condition as a small ladder. The word always stands beside it, so it is hidden from readers.
struct LadderPicture: View {
    let ladder: Ladder
    let height: CGFloat
    var colour: Color?
    @Environment(\.colours) private var colours
    @ScaledMetric(relativeTo: .body) private var scale: CGFloat = 1

    var body: some View {
        let tall = height * min(max(scale, 1), grows)
        Canvas { context, size in
            Drawing(context: context, size: size, colour: colour ?? colours.ink).draw(ladder)
        }
        .frame(width: tall * slim, height: tall)
        .accessibilityHidden(true)
    }
}

private struct Drawing {
    let context: GraphicsContext
    let size: CGSize
    let colour: Color

    private var left: CGFloat { size.height * 0.1 }
    private var right: CGFloat { size.width - left }
    private var thick: CGFloat { size.height * 0.09 }

    func draw(_ ladder: Ladder) {
        let dots = ladder == .notSeen ? [1, size.height * 0.17] : []
        for x in [left, right] {
            line(CGPoint(x: x, y: thick), CGPoint(x: x, y: size.height - thick), dash: dots)
        }
        for (bar, share) in zip(ladder.bars, [0.2, 0.5, 0.8]) { draw(bar, at: size.height * share) }
    }

    private func draw(_ bar: Bar, at y: CGFloat) {
        switch bar {
        case .whole:
            line(CGPoint(x: left, y: y), CGPoint(x: right, y: y))
        case .sagging:
            stroke { path in
                path.move(to: CGPoint(x: left, y: y))
                path.addQuadCurve(to: CGPoint(x: right, y: y), control: CGPoint(x: size.width / 2, y: y + size.height * 0.17))
            }
        case .snapped:
            line(CGPoint(x: left, y: y), CGPoint(x: size.width * 0.36, y: y + size.height * 0.07))
            line(CGPoint(x: right, y: y), CGPoint(x: size.width * 0.7, y: y + size.height * 0.1))
        case .gone:
            break
        }
    }

    private func line(_ from: CGPoint, _ to: CGPoint, dash: [CGFloat] = []) {
        stroke(dash: dash) { path in
            path.move(to: from)
            path.addLine(to: to)
        }
    }

    private func stroke(dash: [CGFloat] = [], _ along: (inout Path) -> Void) {
        context.stroke(Path(along), with: .color(colour), style: StrokeStyle(lineWidth: thick, lineCap: .round, dash: dash))
    }
}
