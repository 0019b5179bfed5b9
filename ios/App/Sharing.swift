import LadderbookCore
import UIKit

/// Hands a file on to another program.
final class Sharing: ShareSheet {
    func share(file: String, mediaType: String) throws {
        Task { @MainActor in
            let sheet = UIActivityViewController(activityItems: [URL(fileURLWithPath: file)], applicationActivities: nil)
            guard let top = Showing.top else { return }
            // On a large screen the sheet has to come from somewhere.
            sheet.popoverPresentationController?.sourceView = top.view
            top.present(sheet, animated: true)
        }
    }
}
