import LadderbookCore
import Shell
import SwiftUI

/// One part.
struct Mark: View {
    let state: MarkState
    let shell: Shell

    var body: some View {
        Page(
            shell: shell, hand: [InHand(shell, state.back), InHand(shell, state.shutter), InHand(shell, state.undo)], sizes: .onTheLadder
        ) {
            Title(state.under, state.title)
        } content: {
            if let then = state.then { ThenStrip(then: then) }
            Choices(shell: shell, buttons: state.rungs)
            Each(state.named) { Named(row: $0, shell: shell) }
            SectionHeading(state.defectsTitle)
            Choices(shell: shell, buttons: state.defects, columns: 1)
            SectionHeading(state.familiesTitle)
            Choices(shell: shell, buttons: state.families)
            Each(state.questions) { Question(question: $0, shell: shell) }
            if !state.seen.isEmpty {
                SectionHeading(state.seenTitle)
                Choices(shell: shell, buttons: state.seen)
            }
            Fold(state.notSeenTitle) { Choices(shell: shell, buttons: state.notSeen, columns: 1) }
            Facts(state.facts)
            Pictures(shell: shell, pictures: state.pictures)
            Each(state.forms) { FoldedForm(shell: shell, form: $0) }
        }
    }
}

private struct ThenStrip: View {
    let then: Row
    @Environment(\.colours) private var colours

    var body: some View {
        HStack(spacing: 14) {
            if let ladder = then.ladder { LadderPicture(ladder: ladder, height: 40) }
            VStack(alignment: .leading, spacing: 0) {
                Say(then.title, bold: true)
                Say(then.says)
            }
        }
        .frame(maxWidth: .infinity, alignment: .leading)
        .padding(.horizontal, .edge)
        .padding(.vertical, .gap)
        .background(colours.mist)
        .accessibilityElement(children: .combine)
        Rule(.line)
    }
}

/// A defect that is named: what it is, how far it reaches, what to advise.
private struct Named: View {
    let row: DefectRow
    let shell: Shell
    @Environment(\.colours) private var colours

    var body: some View {
        VStack(alignment: .leading, spacing: 0) {
            SectionHeading(row.name)
            Say(row.what).padding(EdgeInsets(top: 0, leading: .edge, bottom: 6, trailing: .edge))
            Say(row.photo).padding(EdgeInsets(top: 0, leading: .edge, bottom: 6, trailing: .edge))
            Choices(shell: shell, buttons: row.extents + [row.remove])
            if !row.advise.isEmpty { Fold(row.adviseTitle) { Choices(shell: shell, buttons: row.advise, columns: 1) } }
        }
        .padding(.bottom, 6)
        .overlay(RoundedRectangle(cornerRadius: .corner).strokeBorder(colours.chalk, lineWidth: .line))
        .padding(.horizontal, 12)
        .padding(.vertical, 6)
        .accessibilityElement(children: .contain)
    }
}

private struct Question: View {
    let question: QuestionRow
    let shell: Shell
    @Environment(\.sizes) private var sizes

    var body: some View {
        VStack(alignment: .leading, spacing: 0) {
            Say(question.asks, size: sizes.word, bold: true).padding(EdgeInsets(top: .gap, leading: .edge, bottom: 0, trailing: .edge))
            Choices(shell: shell, buttons: question.answers)
            Rule(.thin)
        }
        .accessibilityElement(children: .contain)
    }
}
