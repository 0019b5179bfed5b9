import Hand
import Testing

/// A visit made by taps, from a visit file of the demo: what a person reads, taps and types, and nothing else.
@MainActor
struct Visit {
    let hand: Hand
    private var say: Say { hand.say }

    init(by hand: Hand) { self.hand = hand }

    /// Goes over every structure, stop by stop from the ground up, then adds by the form what no stop expects.
    func walk(_ structures: [Json]) async throws {
        for structure in structures {
            try await hand.tapFirst(structure.text("name") ?? say("structure-\(try #require(structure.text("kind")))"))
            var left = try structure.all("parts").map { (name: try name(of: $0, on: structure), part: $0) }
            for stop in stops() {
                try await hand.tapFirst(stop)
                for (name, part) in left where try isHere(name) { try await go(over: part, called: name, on: structure) }
                left = try left.filter { try !isHere($0.name) }
            }
            for (name, part) in left { try await add(part, called: name, on: structure) }
        }
    }

    private func stops() -> [String] {
        let all = say.all("stop-")
        var met: [String] = []
        for text in hand.reads where all.contains(text) && !met.contains(text) { met.append(text) }
        return met.reversed()
    }

    private func isHere(_ name: String) throws -> Bool { hand.canTapBeside(name, try say("walk-mark")) }

    private func name(of part: Json, on structure: Json) throws -> String {
        let kind = try say("kind-\(try #require(part.text("kind")))")
        let which = part.text("which")
        let side = try side(of: part, on: structure).map { try say("side-\(try #require($0.text("side")))") }
        let twins = structure.all("parts").filter { $0.text("kind") == part.text("kind") && $0.text("which") == which }
        switch (which, side) {
        case (let which?, let side?) where twins.count > 1: return try say("part-which-side", ["kind": kind, "which": which, "side": side])
        case (let which?, _): return try say("part-which", ["kind": kind, "which": which])
        case (nil, let side?): return try say("part-side", ["kind": kind, "side": side])
        case (nil, nil): return kind
        }
    }

    private func side(of part: Json, on structure: Json) -> Json? { structure.all("slopes").first { $0.text("letter") == part.text("slope") } }

    private func go(over part: Json, called name: String, on structure: Json) async throws {
        if isPlain(part) { return try await hand.tapBeside(name, say("rung-sound")) }
        try await hand.tapBeside(name, say("walk-mark"))
        try await mark(part, on: structure)
        try await backOnWalk()
    }

    /// Sound and no more: one tap.
    private func isPlain(_ part: Json) -> Bool {
        part.text("rung") == "sound" && part.text("words") == nil && ["defects", "answers", "work"].allSatisfy { part.all($0).isEmpty }
    }

    private func backOnWalk() async throws {
        if hand.hasHeading(try say("mark-title")) { try await hand.tapFirst(say("back-walk")) }
    }

    private func add(_ part: Json, called name: String, on structure: Json) async throws {
        try await hand.tap(say("walk-add-part"))
        try await hand.choose(say("add-part-kind"), say("kind-\(try #require(part.text("kind")))"))
        if let side = side(of: part, on: structure) {
            let given = ["letter": try #require(side.text("letter")), "side": try say("side-\(try #require(side.text("side")))")]
            try await hand.choose(say("add-part-slope"), say("slope-name", given))
        }
        try await hand.type(say("add-part-which"), part.text("which") ?? "")
        try await hand.tap(say("add-part-button"))
        try await mark(part, on: structure)
        try await backOnWalk()
        #expect(try isHere(name), "\(name) was added")
    }

    /// All that a visit file says of a part, on its screen. What ends at the walk comes last.
    private func mark(_ part: Json, on structure: Json) async throws {
        for seen in part.all("defects") { try await defect(seen) }
        if let rung = part.text("rung") {
            try await hand.tapFirst(say("rung-\(rung)"))
            try await hand.tapFirst(say("seen-\(try #require(part.text("seen")))"))
        }
        for given in part.all("answers") {
            try await hand.tapBeside(
                say("question-\(try #require(given.text("question")))"), say("answer-\(try #require(given.text("answer")))"))
        }
        if part.text("kind") == "layers" {
            try await layers(try #require(structure.all("layers").first { $0.text("slope") == part.text("slope") }))
        }
        // What the book has from its own record nobody types again.
        for done in part.all("work") where done.text("evidence") != "own-record" { try await work(done) }
        if let words = part.text("words") { try await keep(words) }
        if part.isTrue("gone") { try await unseen(say("condition-gone")) }
        if let why = part.text("not-seen") { try await unseen(say("not-seen-\(why)")) }
    }

    /// By the likely ones, or by what he sees.
    private func defect(_ seen: Json) async throws {
        let name = try say("defect-\(try #require(seen.text("defect")))")
        for family in say.all("family-") where !hand.canTap(name) { try await hand.tapFirst(family) }
        try await hand.tapFirst(name)
        try await hand.tapBeside(name, say("extent-\(try #require(seen.text("extent")))"))
    }

    private func layers(_ read: Json) async throws {
        let coverings = read.all("layers").map { $0["layer"] }.filter { $0.text("is") == "covering" }
        try await hand.tap(say("layers-title"))
        try await hand.choose(say("layers-count"), "\(coverings.count)")
        try await hand.choose(say("layers-covering"), say("covering-\(try #require(coverings.first?.text("of")))"))
        try await hand.choose(say("layers-learned"), say("learned-\(try #require(read.text("learned")))"))
        try await hand.type(say("layers-where"), try #require(read.text("spot")))
        try await hand.tap(say("layers-keep"))
    }

    private func work(_ work: Json) async throws {
        let did = try work.text("remedy").map { try say("remedy-\($0)") } ?? say("did-\(try #require(work.text("did")))")
        try await hand.tap(say("work-title"))
        try await hand.choose(say("work-did"), did)
        try await hand.choose(say("work-by"), say("by-\(try #require(work.text("by")))"))
        try await hand.type(say("work-when"), try #require(work.text("when")))
        try await hand.choose(say("work-evidence"), say("evidence-\(try #require(work.text("evidence")))"))
        try await hand.tap(say("work-keep"))
    }

    private func keep(_ words: String) async throws {
        try await hand.tapFirst(say("say-it"))
        try await hand.type(say("say-words"), words)
        try await hand.tap(say("say-keep"))
    }

    private func unseen(_ why: String) async throws {
        try await hand.tap(say("mark-not-seen"))
        try await hand.tapLast(why)
    }
}
