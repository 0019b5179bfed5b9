import CoreMotion
import LadderbookCore
import Shell

/// Readings in one average, how often they come, and how long they may take.
private let readings = 40
private let every = 1.0 / 50
private let patience = DispatchTimeInterval.seconds(3)

/// How steep the phone lies on a slope: gravity, averaged while the phone is held there.
final class Inclinometer: Level {
    /// Blocks for about a second: it is called on the worker.
    func degrees() throws -> Double? {
        let motion = CMMotionManager()
        guard motion.isDeviceMotionAvailable else { return nil }
        let answer = Answer<Double>()
        let average = Average()
        let line = OperationQueue()
        line.maxConcurrentOperationCount = 1
        motion.deviceMotionUpdateInterval = every
        motion.startDeviceMotionUpdates(to: line) { reading, _ in
            guard let gravity = reading?.gravity else { return }
            average.steepness.add(gravity.x, gravity.y, gravity.z)
            guard let degrees = average.steepness.average else { return }
            answer.best = degrees
            answer.come()
        }
        defer { motion.stopDeviceMotionUpdates() }
        return answer.wait(patience)
    }
}

/// Read and written in one line only.
private final class Average: @unchecked Sendable {
    var steepness = Steepness(of: readings)
}
