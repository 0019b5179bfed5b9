import LadderbookCore
import Shell
import SwiftUI

/// May he climb at all.
struct Safety: View {
    let state: SafetyState
    let shell: Shell

    var body: some View {
        Page(shell: shell, hand: [InHand(shell, state.back), InHand(shell, state.main, main: true)], sizes: .onTheLadder) {
            Title(state.address, state.title)
        } content: {
            Each(state.dangers) { Danger($0) }
            Each(state.stops) { Stop(stop: $0) }
            Each(state.checks) { Check(check: $0, shell: shell) }
            SectionHeading(state.skyTitle)
            Choices(shell: shell, buttons: state.sky)
            FoldedForm(shell: shell, form: state.temperature)
            LadderStands(check: state.ladder, shell: shell)
            SectionHeading(state.reachTitle)
            Each(state.reach) { reach in
                VStack(alignment: .leading, spacing: 0) {
                    Heading(reach.structure).padding(EdgeInsets(top: 8, leading: .edge, bottom: 0, trailing: .edge))
                    Choices(shell: shell, buttons: reach.ways)
                }
                .accessibilityElement(children: .contain)
            }
            Say(state.always).padding(.horizontal, .edge).padding(.vertical, 12)
        }
    }
}

/// What forbids climbing now.
private struct Stop: View {
    let stop: Row
    @Environment(\.sizes) private var sizes
    @Environment(\.colours) private var colours

    var body: some View {
        VStack(alignment: .leading, spacing: 0) {
            Say(stop.title, size: sizes.word, bold: true)
            Say(stop.says)
        }
        .frame(maxWidth: .infinity, alignment: .leading)
        .padding(.horizontal, 12)
        .padding(.vertical, 8)
        .overlay(RoundedRectangle(cornerRadius: .corner).strokeBorder(colours.ink, lineWidth: 4))
        .padding(.horizontal, 12)
        .padding(.vertical, 6)
        .accessibilityElement(children: .combine)
    }
}

private struct Check: View {
    let check: CheckRow
    let shell: Shell
    @Environment(\.sizes) private var sizes

    var body: some View {
        VStack(alignment: .leading, spacing: 0) {
            Say(check.asks, size: sizes.word, bold: true).padding(EdgeInsets(top: .gap, leading: .edge, bottom: 0, trailing: .edge))
            Choices(shell: shell, buttons: [check.yes, check.no])
            Rule(.thin)
        }
        .accessibilityElement(children: .contain)
    }
}

/// The caution first, then what the rule says, then what to measure.
private struct LadderStands: View {
    let check: LadderCheck
    let shell: Shell
    @Environment(\.sizes) private var sizes

    var body: some View {
        Say(check.caution).padding(.horizontal, .edge).padding(.vertical, .gap)
        Each(check.says) { Say($0, size: sizes.word, bold: true).padding(.horizontal, .edge).padding(.vertical, 4) }
        FoldedForm(shell: shell, form: check.form)
    }
}
