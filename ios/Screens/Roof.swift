import LadderbookCore
import Shell
import SwiftUI

/// The plan, and measuring it.
struct Roof: View {
    let state: RoofState
    let shell: Shell

    var body: some View {
        Page(shell: shell, hand: [InHand(shell, state.back), InHand(shell, state.leak, main: true)]) {
            Title(state.under, state.title)
        } content: {
            if state.structures.count > 1 {
                Choices(shell: shell, buttons: state.structures)
                Rule(.line)
            }
            if let none = state.none { Say(none).padding(.edge) }
            if let plan = state.plan { Plan(plan: plan) }
            Rows(shell: shell, rows: state.numbers)
            if !state.planes.isEmpty {
                SectionHeading(state.planesTitle)
                Rows(shell: shell, rows: state.planes)
                if let untied = state.untied { Say(untied).padding(.edge) }
                SectionHeading(state.linesTitle)
                Rows(shell: shell, rows: state.lines)
            }
            if !state.edges.isEmpty {
                SectionHeading(state.edgesTitle)
                Each(state.edges) { Edge(edge: $0, shell: shell) }
            }
            if !state.standing.isEmpty {
                SectionHeading(state.standingTitle)
                Choices(shell: shell, buttons: state.standing)
            }
            if !state.pitches.isEmpty {
                SectionHeading(state.pitchesTitle)
                Rows(shell: shell, rows: state.pitches)
            }
            if let laid = state.laid {
                Fold(laid.title) {
                    Plan(plan: laid.drawn)
                    Rows(shell: shell, rows: laid.numbers)
                }
            }
            SectionHeading(state.measureTitle)
            Each(state.forms) { FoldedForm(shell: shell, form: $0) }
            if !state.files.isEmpty {
                SectionHeading(state.filesTitle)
                Each(state.files) { file in
                    Key(file.label) { shell.sharePlan(state.structure, file.file) }.padding(.horizontal, 12).padding(.vertical, 5)
                }
            }
        }
    }
}

private struct Edge: View {
    let edge: EdgeRow
    let shell: Shell
    @Environment(\.sizes) private var sizes

    var body: some View {
        Fold(edge.name) {
            Choices(shell: shell, buttons: edge.is)
            Say(edge.form.title, size: sizes.word, bold: true).padding(.vertical, .gap)
            Fields(shell: shell, form: edge.form, edge: 0)
        }
    }
}
