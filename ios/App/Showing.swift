import ImageIO
import QuickLook
import UIKit
import UniformTypeIdentifiers

/// Shows a file over the screens, as the phone shows files of its kind.
@MainActor
final class Showing: NSObject, QLPreviewControllerDataSource {
    private let file: URL
    private static var shown: Showing?

    private init(_ file: URL) { self.file = file }

    static func show(_ file: String) {
        guard let file = named(URL(fileURLWithPath: file)), let top else { return }
        let showing = Showing(file)
        shown = showing
        let preview = QLPreviewController()
        preview.dataSource = showing
        top.present(preview, animated: true)
    }

    /// What lies on top of the window.
    static var top: UIViewController? {
        let scenes = UIApplication.shared.connectedScenes.compactMap { $0 as? UIWindowScene }
        var top = scenes.first { $0.activationState != .unattached }?.keyWindow?.rootViewController
        while let over = top?.presentedViewController { top = over }
        return top
    }

    nonisolated func numberOfPreviewItems(in controller: QLPreviewController) -> Int { 1 }

    nonisolated func previewController(_ controller: QLPreviewController, previewItemAt index: Int) -> any QLPreviewItem { file as NSURL }

    /// A picture comes without an ending, by which the phone tells what it is: here it gets its own.
    private static func named(_ file: URL) -> URL? {
        guard file.pathExtension.isEmpty else { return file }
        guard let source = CGImageSourceCreateWithURL(file as CFURL, nil), let kind = CGImageSourceGetType(source) as String?,
            let ending = UTType(kind)?.preferredFilenameExtension
        else { return nil }
        let link = file.appendingPathExtension(ending)
        try? FileManager.default.linkItem(at: file, to: link)
        return link
    }
}
