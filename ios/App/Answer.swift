import Foundation

/// An answer that another thread waits for: the best so far, where the last one does not come in time.
final class Answer<Value: Sendable>: @unchecked Sendable {
    private let lock = NSLock()
    private let came = DispatchSemaphore(value: 0)
    private var value: Value?

    /// The best answer so far.
    var best: Value? {
        get { lock.withLock { value } }
        set { lock.withLock { value = newValue } }
    }

    /// No better one is needed.
    func come() { came.signal() }

    /// Waits for it.
    func wait(_ patience: DispatchTimeInterval) -> Value? {
        _ = came.wait(timeout: .now() + patience)
        return best
    }
}
