import LadderbookCore
import Shell
import SwiftUI

/// Pictures side by side; a tap shows one as it was taken.
struct Pictures: View {
    let shell: Shell
    let pictures: [Picture]

    var body: some View { Columns(pictures, across: 2) { Thumbnail(shell: shell, picture: $0) } }
}

/// A picture with what it shows under it, for where two stand side by side.
struct NamedPictures: View {
    let shell: Shell
    let pictures: [Picture]

    var body: some View {
        Columns(pictures, across: 2) { picture in
            VStack(alignment: .leading, spacing: 4) {
                Thumbnail(shell: shell, picture: picture)
                Say(picture.alt, size: 16).accessibilityHidden(true)
            }
        }
    }
}

private struct Thumbnail: View {
    let shell: Shell
    let picture: Picture
    @State private var small: UIImage?
    @Environment(\.colours) private var colours

    var body: some View {
        Button {
            shell.openPicture(picture.photo)
        } label: {
            Color.clear
                .aspectRatio(4 / 3, contentMode: .fit)
                .overlay {
                    if let small { Image(uiImage: small).resizable().scaledToFill().accessibilityHidden(true) }
                }
                .clipShape(RoundedRectangle(cornerRadius: .corner))
                .framed(colours.ink, fill: colours.paper)
        }
        .buttonStyle(.plain)
        .accessibilityLabel(Text(verbatim: picture.alt))
        .accessibilityAddTraits(.isImage)
        .task(id: picture.photo) {
            guard let file = await shell.thumbnail(picture.photo) else { return }
            small = await read(file)
        }
    }

    /// Off the screen's own thread.
    private nonisolated func read(_ file: String) async -> UIImage? { UIImage(contentsOfFile: file) }
}
