import Foundation
import Hand

/// A value of a visit file of the demo.
struct Json {
    private let value: Any?

    init(_ value: Any?) { self.value = value }

    /// A file of the tree.
    static func file(_ path: String) throws -> Json {
        Json(try JSONSerialization.jsonObject(with: Data(contentsOf: tree.appending(path: path))))
    }

    subscript(name: String) -> Json { Json((value as? [String: Any])?[name]) }

    /// The text of a member.
    func text(_ name: String) -> String? { self[name].value as? String }

    /// Whether a member is true.
    func isTrue(_ name: String) -> Bool { self[name].value as? Bool ?? false }

    /// All of a list.
    func all(_ name: String) -> [Json] { (self[name].value as? [Any] ?? []).map(Json.init) }
}
