import Foundation
import LadderbookCore
import Shell

/// A phone played by a computer: its clock shows the day it is to be, its camera gives the picture that it was handed.
@MainActor
public final class ComputerPhone: Phone {
    /// What the core asks.
    public let ports: ComputerPorts
    /// What the camera sees.
    public var before: Data?
    /// What was felt, opened and kept, for a test to see.
    public private(set) var felt: [String] = []
    public private(set) var opened: [String] = []
    public private(set) var kept: [String] = []
    /// What is said to it.
    public var said: String?

    private let began = ContinuousClock.now

    /// A phone that holds the key of a demo.
    public init(_ demo: DemoBook) { ports = ComputerPorts(key: demo.key) }

    public func now() -> Moment {
        let noon = try? Date("\(demoDay)T12:00:00Z", strategy: .iso8601)
        let since = (ContinuousClock.now - began) / .milliseconds(1)
        return Moment(millis: Int64((noon?.timeIntervalSince1970 ?? 0) * 1000 + since), offsetSeconds: 0)
    }

    public func feel(_ notice: String, tag: String) { felt.append(notice) }

    public func takePicture() async {
        let file = FileManager.default.temporaryDirectory.appending(path: "\(UUID().uuidString).jpg")
        ports.taken = before.flatMap { try? $0.write(to: file) }.map { file.path }
    }

    public func allowPosition() async {}

    public func listen(tag: String) async -> String? { said }

    public func open(_ file: String) { opened.append(file) }

    public func keep(_ places: [String]) { kept = places }
}

/// Ports that answer what they were told to.
public final class ComputerPorts: KeyStore, Camera, Locator, Level, ShareSheet, @unchecked Sendable {
    private let lock = NSLock()
    private let file: URL
    private var picture_: String?
    private var shared_: [String] = []
    private var fix_: Fix?
    private var allowed_ = true

    init(key: URL) { file = key }

    /// All of them.
    public var all: Ports { Ports(keyStore: self, camera: self, locator: self, level: self, shareSheet: self) }

    /// The camera's file.
    public var taken: String? {
        get { lock.withLock { picture_ } }
        set { lock.withLock { picture_ = newValue } }
    }

    /// Where it stands.
    public var stands: Fix? {
        get { lock.withLock { fix_ } }
        set { lock.withLock { fix_ = newValue } }
    }

    /// Whether the person allows it.
    public var allowed: Bool {
        get { lock.withLock { allowed_ } }
        set { lock.withLock { allowed_ = newValue } }
    }

    /// What was handed on.
    public var shared: [String] { lock.withLock { shared_ } }

    public func key() throws -> String? { try? String(contentsOf: file, encoding: .utf8).trimmingCharacters(in: .whitespacesAndNewlines) }

    public func keep(key: String) throws {
        do { try key.write(to: file, atomically: true, encoding: .utf8) } catch { throw PortTrouble.Failed(reason: "\(error)") }
    }

    public func picture() throws -> String? { try asked { picture_ } }

    public func fix() throws -> Fix? { try asked { fix_ } }

    public func degrees() throws -> Double? { 26.565 }

    public func share(file: String, mediaType: String) throws { try asked { shared_.append(file) } }

    private func asked<Answer>(_ answer: () -> Answer) throws -> Answer {
        guard allowed else { throw PortTrouble.NotAllowed }
        return lock.withLock(answer)
    }
}
