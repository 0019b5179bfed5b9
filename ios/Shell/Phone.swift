import LadderbookCore

/// What the phone does around the screens, beside the ports that the core asks itself.
@MainActor
public protocol Phone: AnyObject {
    /// The phone's clock.
    func now() -> Moment

    /// A save is felt and heard, in the language of the tag.
    func feel(_ notice: String, tag: String)

    /// Lets a picture be taken; returns once the camera's file is there for the core to fetch, or there will be none.
    func takePicture() async

    /// Asks, if need be, whether the position may be used; returns either way.
    func allowPosition() async

    /// Listens, and gives the words heard; nothing where it was refused or not understood.
    func listen(tag: String) async -> String?

    /// Shows a file in the program that reads it.
    func open(_ file: String)

    /// Keeps the addresses he came by, for when the process is ended.
    func keep(_ places: [String])
}
