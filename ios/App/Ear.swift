import AVFoundation
import Speech

/// How long he may be silent before what he said is taken.
private let silence = Duration.seconds(2)

/// Dictation by the phone's own recogniser, without the network where it can. The phone asks at the first use.
final class Ear: Sendable {
    /// The words heard; nothing where it was refused or not understood.
    func listen(tag: String) async -> String? {
        guard await isAllowed(), let recogniser = recogniser(of: tag), recogniser.isAvailable, let microphone = try? Microphone() else { return nil }
        defer { microphone.close() }
        microphone.request.requiresOnDeviceRecognition = recogniser.supportsOnDeviceRecognition
        var heard: String?
        for await more in words(recogniser, microphone.request) { heard = more }
        return heard
    }

    private func isAllowed() async -> Bool {
        let speech = await withCheckedContinuation { waiting in
            SFSpeechRecognizer.requestAuthorization { waiting.resume(returning: $0 == .authorized) }
        }
        guard speech else { return false }
        return await AVAudioApplication.requestRecordPermission()
    }

    /// One for the phone's own country, where its language is the one asked for.
    private func recogniser(of tag: String) -> SFSpeechRecognizer? {
        let spoken = [Locale.current] + SFSpeechRecognizer.supportedLocales()
        return spoken.lazy.filter { $0.language.languageCode?.identifier == tag }.compactMap { SFSpeechRecognizer(locale: $0) }.first
    }

    /// What is understood, longer and longer, until he falls silent.
    private func words(_ recogniser: SFSpeechRecognizer, _ request: SFSpeechAudioBufferRecognitionRequest) -> AsyncStream<String> {
        AsyncStream { says in
            let quiet = Quiet { request.endAudio() }
            let hearing = recogniser.recognitionTask(with: request) { result, error in
                if let result { says.yield(result.bestTranscription.formattedString) }
                if error != nil || result?.isFinal == true { says.finish() } else { quiet.begin() }
            }
            says.onTermination = { _ in hearing.cancel() }
            quiet.begin()
        }
    }
}

/// The microphone, for as long as he speaks.
private final class Microphone: @unchecked Sendable {
    let request = SFSpeechAudioBufferRecognitionRequest()
    private let engine = AVAudioEngine()

    init() throws {
        // Saves are spoken too: the phone goes on playing.
        try AVAudioSession.sharedInstance().setCategory(.playAndRecord, mode: .default, options: [.duckOthers, .defaultToSpeaker])
        try AVAudioSession.sharedInstance().setActive(true)
        let node = engine.inputNode
        node.installTap(onBus: 0, bufferSize: 1024, format: node.outputFormat(forBus: 0)) { [request] sound, _ in request.append(sound) }
        try engine.start()
    }

    func close() {
        engine.stop()
        engine.inputNode.removeTap(onBus: 0)
        try? AVAudioSession.sharedInstance().setActive(false, options: .notifyOthersOnDeactivation)
    }
}

/// Does something once nothing was heard for a while.
private final class Quiet: @unchecked Sendable {
    private let lock = NSLock()
    private let then: @Sendable () -> Void
    private var waiting: Task<Void, Never>?

    init(_ then: @escaping @Sendable () -> Void) { self.then = then }

    /// The while begins anew.
    func begin() {
        lock.withLock {
            waiting?.cancel()
            waiting = Task { [then] in
                guard (try? await Task.sleep(for: silence)) != nil else { return }
                then()
            }
        }
    }
}
