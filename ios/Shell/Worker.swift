import Dispatch

/// Where the core is called: one call after the other, on a thread that may wait, never the screen's.
public actor Worker {
    private let line = Line()

    /// A worker with a line of its own.
    public init() {}

    /// The line, instead of the threads that all tasks share: a call may wait for the sky or the disk.
    public nonisolated var unownedExecutor: UnownedSerialExecutor { line.asUnownedSerialExecutor() }

    /// Does one thing.
    public func run<Answer: Sendable>(_ work: @Sendable () throws -> Answer) rethrows -> Answer { try work() }
}

private final class Line: SerialExecutor {
    private let queue = DispatchQueue(label: "ladderbook.core", qos: .userInitiated)

    func enqueue(_ job: consuming ExecutorJob) {
        let job = UnownedJob(job)
        queue.async { job.runSynchronously(on: self.asUnownedSerialExecutor()) }
    }
}
