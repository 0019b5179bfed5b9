import Foundation
import LadderbookCore
import Shell

/// Under this name the addresses are kept that he came by.
private let placesKey = "places"

/// What this phone does around the screens.
@MainActor
final class IPhone: Phone {
    let camera = RoofCamera()
    private let position = Position()
    private let ear = Ear()
    private let voice = Voice()

    /// The language to speak before the book says its own.
    static var language: Language { Locale.preferredLanguages.first?.hasPrefix("es") == true ? .spanish : .english }

    /// What the core asks.
    var ports: Ports {
        Ports(keyStore: KeyInKeychain(), camera: camera.port, locator: Where(), level: Inclinometer(), shareSheet: Sharing())
    }

    /// The addresses that were kept. They are written at each step: a process that is ended in sight comes back too.
    var places: [String] { UserDefaults.standard.stringArray(forKey: placesKey) ?? [] }

    func keep(_ places: [String]) { UserDefaults.standard.set(places, forKey: placesKey) }

    func now() -> Moment {
        let now = Date.now
        return Moment(millis: Int64(now.timeIntervalSince1970 * 1000), offsetSeconds: Int32(TimeZone.current.secondsFromGMT(for: now)))
    }

    func feel(_ notice: String, tag: String) { voice.tell(notice, tag: tag) }

    func takePicture() async { await camera.picture() }

    func allowPosition() async { await position.ask() }

    func listen(tag: String) async -> String? { await ear.listen(tag: tag) }

    func open(_ file: String) { Showing.show(file) }
}
