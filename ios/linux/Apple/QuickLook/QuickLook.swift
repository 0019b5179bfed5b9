// See UIKit beside this folder.

import UIKit

public protocol QLPreviewItem: NSObjectProtocol {}

extension NSURL: QLPreviewItem {}

public protocol QLPreviewControllerDataSource: AnyObject {
    func numberOfPreviewItems(in controller: QLPreviewController) -> Int

    func previewController(_ controller: QLPreviewController, previewItemAt index: Int) -> any QLPreviewItem
}

public final class QLPreviewController: UIViewController {
    public weak var dataSource: (any QLPreviewControllerDataSource)?
}
