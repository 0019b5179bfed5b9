import LadderbookCore
import Shell
import SwiftUI

/// How much of the ladder is left in sight above the present stop: a fifth of the height.
private let above = UnitPoint(x: 0.5, y: 0.2)

/// Where the page can be scrolled to.
private enum Spot: Hashable {
    case here
    case stop(String)
    case say
}

/// One tall ladder, climbed from the bottom up; the present stop lies in it, under the thumb.
struct Walk: View {
    let state: WalkState
    let shell: Shell

    var body: some View {
        ScrollViewReader { scroll in
            Page(shell: shell, hand: hand(scroll), sizes: .onTheLadder) {
                Title(state.under, state.title)
            } content: {
                if state.structures.count > 1 {
                    Choices(shell: shell, buttons: state.structures)
                    Rule(.line)
                }
                Each(state.stops.reversed()) { stop in
                    Rung(stop: stop, shell: shell).id(stop.here ? Spot.here : .stop(stop.name))
                    if stop.here, let here = state.here { HereBlock(here: here, shell: shell) }
                }
                Fold(state.moreTitle) { Choices(shell: shell, buttons: state.more, columns: 1) }
                Fold(state.closeTitle) { Choices(shell: shell, buttons: state.close, columns: 1) }
                SectionHeading(state.say.title).id(Spot.say)
                Fields(shell: shell, form: state.say)
            }
            .onChange(of: state.here?.title, initial: true) { scroll.scrollTo(Spot.here, anchor: above) }
        }
    }

    private func hand(_ scroll: ScrollViewProxy) -> [InHand] {
        [
            InHand(label: state.say.title) { scroll.scrollTo(Spot.say, anchor: .top) },
            InHand(shell, state.shutter),
            InHand(shell, state.undo),
        ]
    }
}

private struct Rung: View {
    let stop: StopRow
    let shell: Shell
    @Environment(\.colours) private var colours
    @ScaledMetric(relativeTo: .body) private var scale: CGFloat = 1

    var body: some View {
        let slim = Reader(scale: scale).wordsAreLarge
        Button {
            shell.tap(stop.go)
        } label: {
            VStack(alignment: .leading, spacing: 0) {
                Say(stop.name, size: 25, bold: true, colour: stop.here ? colours.chalk : colours.ink, line: stop.here ? .under : nil)
                Say(stop.says)
            }
            .padding(.vertical, 6)
            .frame(maxWidth: .infinity, minHeight: 76, alignment: .leading)
            .padding(.leading, (slim ? 40 : 64) + 14)
            .background(alignment: .leading) { rails.frame(width: slim ? 40 : 64) }
            .padding(.leading, slim ? 8 : 20)
            .padding(.trailing, 8)
            .contentShape(Rectangle())
        }
        .buttonStyle(.plain)
        .accessibilityAddTraits(stop.here ? .isSelected : [])
    }

    /// Two rails and a rung between them: solid where all is answered, dashed where it is open, thick where he stands.
    private var rails: some View {
        Canvas { context, size in
            let rail: CGFloat = 9
            func line(_ from: CGPoint, _ to: CGPoint, _ colour: Color, _ style: StrokeStyle) {
                let path = Path { path in path.addLines([from, to]) }
                context.stroke(path, with: .color(colour), style: style)
            }
            for x in [rail / 2, size.width - rail / 2] {
                line(CGPoint(x: x, y: 0), CGPoint(x: x, y: size.height), colours.ink, StrokeStyle(lineWidth: rail))
            }
            line(
                CGPoint(x: rail, y: size.height / 2), CGPoint(x: size.width - rail, y: size.height / 2),
                stop.here ? colours.chalk : colours.ink,
                StrokeStyle(lineWidth: stop.here ? 16 : rail, dash: stop.done || stop.here ? [] : [6, 7]))
        }
        .accessibilityHidden(true)
    }
}

private struct HereBlock: View {
    let here: Here
    let shell: Shell

    var body: some View {
        Rule(4)
        Heading(here.title, size: 28).padding(EdgeInsets(top: .gap, leading: .edge, bottom: 2, trailing: .edge))
        Each(here.spots) { OneSpot(spot: $0, shell: shell) }
        Fold(here.notSeenTitle) { Choices(shell: shell, buttons: here.notSeen, columns: 1) }
        FoldedForm(shell: shell, form: here.add)
        if let next = here.next { TapButton(shell: shell, button: next, main: true).padding(.horizontal, 12).padding(.vertical, 6) }
        Rule(4).padding(.top, 8)
    }
}

/// A part under the thumb: sound with one tap, more with another.
private struct OneSpot: View {
    let spot: SpotRow
    let shell: Shell
    @Environment(\.colours) private var colours

    var body: some View {
        VStack(alignment: .leading, spacing: 0) {
            HStack(spacing: 14) {
                LadderPicture(ladder: spot.ladder, height: 52)
                VStack(alignment: .leading, spacing: 0) {
                    Say(spot.name, bold: true)
                    if let again = spot.lookAgain {
                        Say(again, bold: true, colour: colours.chalk)
                    } else {
                        Say(spot.says)
                    }
                }
            }
            .padding(EdgeInsets(top: .gap, leading: .edge, bottom: 0, trailing: .edge))
            .accessibilityElement(children: .combine)
            Choices(shell: shell, buttons: [spot.sound, spot.mark])
            Rule(.thin)
        }
        .accessibilityElement(children: .contain)
    }
}
