import LadderbookCore

extension Trouble {
    /// What a trouble says.
    public var says: String {
        switch self {
        case .Refused(let says), .NoKey(let says), .Broke(let says): says
        }
    }
}

/// What to show of an error: the core's own sentence, else what the system says.
func sentence(of error: any Error) -> String { (error as? Trouble)?.says ?? error.localizedDescription }
