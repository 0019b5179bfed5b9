/// What was half typed when the process ended.
public let halfTyped = "The lower course lifts, and under it"

extension Hand {
    /// From the call to the first part of the walk.
    public func goToAMark() async throws {
        try await type(say("arrive-find"), "318 lamplighter")
        try await tap(say("arrive-find-button"))
        try await tapFirst("318 Lamplighter Ln")
        try await tap(say("doorstep-open-button"))
        try await tap(say("safety-up"))
        try await tapFirst(say("walk-mark"))
        try await tapFirst(say("say-it"))
    }
}
