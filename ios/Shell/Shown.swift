import LadderbookCore

/// A place and what it shows.
public struct Shown: Sendable {
    /// Its address.
    public let place: String
    /// What it shows.
    public let screen: Screen
}

/// Long work that goes on.
public struct Working: Sendable {
    /// The work, to be given up.
    let work: LongWork
    /// What it does now.
    public let says: String
    /// How much of it is done, from 0 to 1.
    public let share: Double
}

/// Where the phone stands, as a field takes it.
public enum Standing: Sendable {
    /// It stands here.
    case here(String)
    /// It does not know.
    case unknown
    /// It could not be asked; the screen says why.
    case refused
}
