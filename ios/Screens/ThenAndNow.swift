import LadderbookCore
import Shell
import SwiftUI

/// What changed, worst first.
struct ThenAndNow: View {
    let state: ThenAndNowState
    let shell: Shell

    var body: some View {
        Page(shell: shell, hand: [InHand(shell, state.back), InHand(shell, state.main, main: true)]) {
            Title(state.under, state.title)
        } content: {
            Each(state.changed) { ChangedPart(changed: $0, shell: shell) }
            if let quiet = state.quiet { Say(quiet).padding(.edge) }
        }
    }
}

private struct ChangedPart: View {
    let changed: Changed
    let shell: Shell
    @ScaledMetric(relativeTo: .body) private var scale: CGFloat = 1

    var body: some View {
        told
            .padding(EdgeInsets(top: 12, leading: .edge, bottom: 4, trailing: .edge))
            .accessibilityElement(children: .combine)
        NamedPictures(shell: shell, pictures: [changed.pictureThen, changed.pictureNow].compactMap(\.self))
        if let correct = changed.correct { FoldedForm(shell: shell, form: correct) }
        Rule(.line)
    }

    @ViewBuilder private var told: some View {
        if Reader(scale: scale).wordsAreLarge {
            VStack(alignment: .leading, spacing: 4) {
                Ladders(changed: changed)
                Tells(changed: changed)
            }
        } else {
            HStack(alignment: .top, spacing: 14) {
                Ladders(changed: changed).frame(minWidth: 92)
                Tells(changed: changed)
            }
        }
    }
}

private struct Ladders: View {
    let changed: Changed

    var body: some View {
        HStack(spacing: 4) {
            if let then = changed.then {
                LadderPicture(ladder: then, height: 46)
                Sign("→", size: 22)
            }
            LadderPicture(ladder: changed.now, height: 46)
        }
    }
}

private struct Tells: View {
    let changed: Changed
    @Environment(\.colours) private var colours

    var body: some View {
        VStack(alignment: .leading, spacing: 0) {
            Say(changed.part, size: 22, bold: true)
            Say(changed.became, size: 20, bold: true, colour: colours.chalk)
            Each(changed.says) { Say($0) }
        }
        .frame(maxWidth: .infinity, alignment: .leading)
    }
}
