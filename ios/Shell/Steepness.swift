import Foundation

/// How steep the phone lies along its long edge: readings in one average.
public struct Steepness: Sendable {
    private let wanted: Int
    private var degrees: [Double] = []

    /// An average over so many readings.
    public init(of wanted: Int) { self.wanted = wanted }

    /// A reading of gravity, in the phone's own axes: to the right, up along its long edge, out of its screen.
    public mutating func add(_ right: Double, _ up: Double, _ out: Double) {
        let length = (right * right + up * up + out * out).squareRoot()
        guard length > 0 else { return }
        degrees.append(asin(min(abs(up) / length, 1)) * 180 / .pi)
    }

    /// Degrees above the horizontal, once there are enough readings.
    public var average: Double? { degrees.count < wanted ? nil : degrees.reduce(0, +) / Double(degrees.count) }
}
