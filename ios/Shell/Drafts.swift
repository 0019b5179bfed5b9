import LadderbookCore

/// Words half typed that the book does not hold yet: of each field the latest.
struct Drafts {
    struct Draft: Sendable {
        let form: Form
        let field: String
        let text: String
    }

    private var drafts: [Draft] = []

    mutating func put(_ draft: Draft) {
        drafts.removeAll { $0.form.form === draft.form.form && $0.field == draft.field }
        drafts.append(draft)
    }

    mutating func takeAll() -> [Draft] {
        defer { drafts = [] }
        return drafts
    }
}
