// See UIKit beside this folder.

import UIKit

public typealias CFDictionary = [CFString: Any]

public final class CGImageSource {}

public func CGImageSourceCreateWithURL(_ url: CFURL, _ options: CFDictionary?) -> CGImageSource? { nil }

public func CGImageSourceGetType(_ source: CGImageSource) -> CFString? { nil }
