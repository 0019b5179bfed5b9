import LadderbookCore
import SwiftUI

/// The plan as the page and the letter draw it: as wide as the screen, and for a reader of large words so much wider, to be moved sideways.
struct Plan: View {
    let plan: Drawn
    @Environment(\.colours) private var colours
    @ScaledMetric(relativeTo: .body) private var scale: CGFloat = 1

    var body: some View {
        ScrollView(.horizontal) {
            drawing.containerRelativeFrame(.horizontal) { wide, _ in wide * max(1, scale) }
        }
    }

    private var drawing: some View {
        let drawing = plan.drawing
        return Canvas { context, size in
            let scale = size.width / drawing.width
            context.scaleBy(x: scale, y: scale)
            for shape in drawing.shapes { draw(shape, in: context) }
        }
        .aspectRatio(drawing.width / drawing.height, contentMode: .fit)
        .padding(.horizontal, .edge)
        .padding(.vertical, .gap)
        .accessibilityElement()
        .accessibilityLabel(Text(verbatim: plan.says))
        .accessibilityAddTraits(.isImage)
    }

    private func draw(_ shape: CoreShape, in context: GraphicsContext) {
        switch shape {
        case .line(let places, let pen):
            stroke(path(places), pen, in: context)
        case .rim(let corners, let pen, let fill):
            var rim = path(corners)
            rim.closeSubpath()
            if let fill { context.fill(rim, with: .color(colour(fill))) }
            if let pen { stroke(rim, pen, in: context) }
        case .words(let lettering):
            write(lettering, in: context)
        }
    }

    private func colour(_ ink: Ink) -> Color {
        switch ink {
        case .ink: colours.ink
        case .paper: colours.paper
        case .chosen: colours.chalk
        case .wash: colours.mist
        }
    }

    private func path(_ places: [At]) -> Path {
        Path { path in path.addLines(places.map { CGPoint(x: $0.x, y: $0.y) }) }
    }

    private func stroke(_ path: Path, _ pen: Pen, in context: GraphicsContext) {
        let style = StrokeStyle(lineWidth: pen.wide, lineCap: .round, dash: pen.dash.map { CGFloat($0) })
        context.stroke(path, with: .color(colour(pen.ink)), style: style)
    }

    /// Words keep the size that the drawing gives them: in its own units, not in the reader's.
    private func write(_ lettering: Lettering, in context: GraphicsContext) {
        var turned = context
        turned.translateBy(x: lettering.middle.x, y: lettering.middle.y)
        turned.rotate(by: .degrees(lettering.turned))
        let words = Text(verbatim: lettering.text).font(.hand(lettering.size, bold: lettering.bold)).foregroundStyle(colour(lettering.ink))
        turned.draw(words, at: .zero, anchor: .center)
    }
}
