import LadderbookCore
import Shell
import SwiftUI

/// What to do, read in time; what is refused is struck through; then the look that could change it.
struct Verdict: View {
    let state: VerdictState
    let shell: Shell

    var body: some View {
        Page(shell: shell, hand: [InHand(shell, state.back), InHand(shell, state.main, main: true)]) {
            Title(state.under, state.title)
        } content: {
            if state.structures.count > 1 {
                Choices(shell: shell, buttons: state.structures)
                Rule(.line)
            }
            Each(state.steps) { Step(step: $0) }
            Each(state.refused) { Refused(refused: $0) }
            if !state.look.isEmpty {
                SectionHeading(state.lookTitle)
                Rows(shell: shell, rows: state.look)
                if let turnsTo = state.turnsTo { Say(turnsTo, bold: true).padding(.horizontal, .edge).padding(.vertical, 8) }
            }
            if !state.cautions.isEmpty {
                SectionHeading(state.cautionsTitle)
                Facts(state.cautions)
            }
            Facts(state.limits)
            if !state.unseen.isEmpty { Fold(state.unseenTitle) { Facts(state.unseen) } }
            TapButton(shell: shell, button: state.offer).padding(.horizontal, .edge).padding(.vertical, .gap)
        }
    }
}

private struct Step: View {
    let step: StepBlock
    @Environment(\.colours) private var colours

    var body: some View {
        VStack(alignment: .leading, spacing: 4) {
            Heading(step.when, size: 18, colour: colours.chalk)
            Say(step.what, size: 25, bold: true)
            if let until = step.until { Say(until, bold: true) }
            Each(step.tasks) { Doing($0) }
            Each(step.why) { Why(why: $0) }
        }
        .padding(.horizontal, .edge)
        .padding(.vertical, 12)
        if let more = step.whyMore {
            Fold(more) {
                VStack(alignment: .leading, spacing: 8) { Each(step.whyRest) { Why(why: $0) } }.padding(.vertical, 8)
            }
        }
        Rule(.line)
    }
}

/// One thing to do, behind an upright line.
struct Doing: View {
    private let what: String
    @Environment(\.colours) private var colours

    init(_ what: String) { self.what = what }

    var body: some View {
        Say(what, size: 20, bold: true)
            .padding(.leading, 17)
            .background(alignment: .leading) { colours.ink.frame(width: 5) }
            .padding(.vertical, 4)
    }
}

private struct Why: View {
    let why: Reason

    var body: some View {
        VStack(alignment: .leading, spacing: 0) {
            Say(why.says)
            if !why.source.isEmpty { Say("— " + why.source, size: 16) }
        }
        .padding(.top, 4)
        .accessibilityElement(children: .combine)
    }
}

private struct Refused: View {
    let refused: RefusedBlock
    @Environment(\.colours) private var colours

    var body: some View {
        VStack(alignment: .leading, spacing: 4) {
            Heading(refused.label, size: 18)
            Say(refused.what, size: 25, bold: true, line: .through)
            Each(refused.why) { Why(why: $0) }
        }
        .frame(maxWidth: .infinity, alignment: .leading)
        .padding(.horizontal, .edge)
        .padding(.vertical, 12)
        .background { hatch }
        Rule(.line)
    }

    private var hatch: some View {
        Canvas { context, size in
            let lines = Path { path in
                for x in stride(from: -size.height, to: size.width, by: 18) {
                    path.move(to: CGPoint(x: x, y: size.height))
                    path.addLine(to: CGPoint(x: x + size.height, y: 0))
                }
            }
            context.stroke(lines, with: .color(colours.hatch), style: StrokeStyle(lineWidth: 2))
        }
        .accessibilityHidden(true)
    }
}
