import Shell
import SwiftUI

/// The line between the page and the hand.
private let between: CGFloat = 4

/// A page: its heading, what it holds, and the bottom, which is the hand's. Held lying, the hand moves to the right edge and the shutter with it.
struct Page<Head: View, Content: View>: View {
    let shell: Shell
    let hand: [InHand]
    var sizes = Sizes.atTheTailgate
    @ViewBuilder let head: Head
    @ViewBuilder let content: Content
    @Environment(\.colours) private var colours

    var body: some View {
        GeometryReader { room in
            if room.size.width > room.size.height && room.size.height < 500 {
                HStack(spacing: 0) {
                    page
                    colours.ink.frame(width: between)
                    Lying(hand: hand)
                }
            } else {
                VStack(spacing: 0) {
                    page
                    Rule(between)
                    Upright(hand: hand)
                }
            }
        }
        .background(colours.paper.ignoresSafeArea())
        .environment(\.sizes, sizes)
    }

    private var page: some View {
        VStack(spacing: 0) {
            Told(shell: shell)
            ScrollView {
                VStack(alignment: .leading, spacing: 0) {
                    VStack(alignment: .leading, spacing: 0) { head }
                        .padding(EdgeInsets(top: 12, leading: .edge, bottom: .gap, trailing: .edge))
                    Rule(.line)
                    content
                }
                .frame(maxWidth: .infinity, alignment: .leading)
                .padding(.bottom, .edge)
            }
        }
        .frame(maxWidth: .infinity, maxHeight: .infinity)
        .accessibilityElement(children: .contain)
    }
}

private struct Lying: View {
    let hand: [InHand]

    var body: some View {
        ScrollView {
            VStack(spacing: .gap) { Each(hand) { $0.key } }.padding(8)
        }
        .defaultScrollAnchor(.bottom)
        .frame(width: 176)
        .accessibilityElement(children: .contain)
    }
}

private struct Upright: View {
    let hand: [InHand]
    @ScaledMetric(relativeTo: .body) private var scale: CGFloat = 1

    var body: some View {
        VStack(spacing: .gap) {
            if Reader(scale: scale).wordsAreLarge {
                if main.isEmpty {
                    Each(others) { $0.key }
                } else {
                    beside(others)
                    Each(main) { $0.key }
                }
            } else {
                beside(hand)
            }
        }
        .padding(EdgeInsets(top: .gap, leading: 12, bottom: 12, trailing: 12))
        .fixedSize(horizontal: false, vertical: true)
        .accessibilityElement(children: .contain)
    }

    private var main: [InHand] { hand.filter(\.main) }

    private var others: [InHand] { hand.filter { !$0.main } }

    private func beside(_ keys: [InHand]) -> some View {
        // Beside one other the main one is twice as wide; beside two their words need room too.
        let wide: CGFloat = keys.count > 2 ? 1.4 : 2
        return Shares(of: keys.map { $0.main ? wide : 1 }, gap: .gap) { Each(keys) { $0.key } }
    }
}

/// What the last tap did, or why it did not; and how far long work is.
private struct Told: View {
    let shell: Shell
    @Environment(\.colours) private var colours

    var body: some View {
        VStack(alignment: .leading, spacing: 0) {
            if let notice = shell.notice {
                Say("✓ " + notice, size: 20, bold: true).padding(.horizontal, .edge).padding(.vertical, 8)
                Rule(.line)
            }
            if let trouble = shell.trouble {
                Say(trouble, size: 22, bold: true)
                    .frame(maxWidth: .infinity, alignment: .leading)
                    .padding(14)
                    .overlay(RoundedRectangle(cornerRadius: .corner).strokeBorder(colours.ink, lineWidth: 6))
                    .padding(12)
            }
            if let work = shell.work { Progress(work: work, shell: shell) }
        }
        .fixedSize(horizontal: false, vertical: true)
        // A save is spoken by the phone; what else comes by itself is read to who does not see it.
        .onChange(of: shell.trouble, initial: true) { _, trouble in announce(trouble) }
        .onChange(of: shell.work?.says) { _, says in announce(says) }
    }

    private func announce(_ words: String?) {
        guard let words, !words.isEmpty else { return }
        AccessibilityNotification.Announcement(words).post()
    }
}

private struct Progress: View {
    let work: Working
    let shell: Shell
    @Environment(\.colours) private var colours

    var body: some View {
        VStack(alignment: .leading, spacing: .gap) {
            Say(work.says, size: 20, bold: true)
            GeometryReader { room in
                colours.chalk.frame(width: room.size.width * work.share)
            }
            .frame(height: 14)
            .overlay(Rectangle().strokeBorder(colours.ink, lineWidth: .line))
            if let words = shell.words { Key(words.giveUp) { shell.giveUp() } }
        }
        .padding(.horizontal, .edge)
        .padding(.vertical, .gap)
        Rule(.line)
    }
}

/// The usual heading: a small line over a large one.
struct Title: View {
    let under: String
    let title: String

    init(_ under: String, _ title: String) {
        self.under = under
        self.title = title
    }

    var body: some View {
        if !under.isEmpty { Say(under, size: 18, bold: true) }
        Heading(title, size: 30)
    }
}
