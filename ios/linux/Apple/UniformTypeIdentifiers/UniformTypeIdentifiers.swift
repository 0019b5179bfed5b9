// See UIKit beside this folder.

public struct UTType: Sendable {
    public init?(_ identifier: String) { return nil }

    public var preferredFilenameExtension: String? { nil }
}
