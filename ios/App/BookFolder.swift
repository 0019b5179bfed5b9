import Foundation
import LadderbookCore

/// Where the book lies. It is sealed under a key that never leaves this phone, so no copy of it is made elsewhere: that would open nowhere.
enum BookFolder {
    /// Opens the book, or begins one.
    static func open(ports: Ports, language: Language, now: Moment) throws -> Book {
        let files = FileManager.default
        var home = try files.url(for: .applicationSupportDirectory, in: .userDomainMask, appropriateFor: nil, create: true)
        var unsaved = URLResourceValues()
        unsaved.isExcludedFromBackup = true
        try home.setResourceValues(unsaved)
        let cache = try files.url(for: .cachesDirectory, in: .userDomainMask, appropriateFor: nil, create: true)
        return try Book.open(folder: home.appending(path: "book").path, cache: cache.path, language: language, ports: ports, now: now)
    }
}
