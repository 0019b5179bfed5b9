import LadderbookCore
import Screens
import Shell
import SwiftUI

/// The process: one book, opened once, behind one window.
@main
struct LadderbookApp: App {
    @State private var phone: IPhone
    @State private var keeping: Keeping
    @Environment(\.scenePhase) private var phase

    init() {
        let phone = IPhone()
        let (ports, now, language) = (phone.ports, phone.now(), IPhone.language)
        _phone = State(initialValue: phone)
        _keeping = State(
            initialValue: Keeping(language: language, phone: phone, came: phone.places) {
                try BookFolder.open(ports: ports, language: language, now: now)
            })
    }

    var body: some Scene {
        @Bindable var camera = phone.camera
        WindowGroup {
            LadderbookView(keeping)
                .task { await keeping.open() }
                .fullScreenCover(isPresented: $camera.isOpen) {
                    if let shell = keeping.shell { Viewfinder(camera: camera, shell: shell) }
                }
        }
        .onChange(of: phase) {
            if phase != .active { Leaving.keep(keeping.shell) }
        }
    }
}

/// The phone may end the process once the program is out of sight.
@MainActor
private enum Leaving {
    /// Keeps what is half typed, and asks for the moment that this takes.
    static func keep(_ shell: Shell?) {
        guard let shell else { return }
        let application = UIApplication.shared
        let asked = application.beginBackgroundTask()
        Task {
            shell.keepDrafts()
            await shell.settled()
            application.endBackgroundTask(asked)
        }
    }
}
