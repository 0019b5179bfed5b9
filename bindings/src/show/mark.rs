//! Mark: one part. What it is like, by rung or by what you see.

use crate::block::{Button, Form, Picture, Row, Shutter};
use crate::cross::mirror;

mirror! {
    /// A defect that is named, and how far it reaches.
    DefectRow of screens::DefectRow {
        /// Its name.
        name: String,
        /// What it is and why it matters.
        what: String,
        /// What the picture must show.
        photo: String,
        /// How far it reaches.
        extents: Vec<Button>,
        /// Over the remedies.
        advise_title: String,
        /// The remedies that can be advised, each with what it does; where none is chosen, the cure is meant.
        advise: Vec<Button>,
        /// Taking it off.
        remove: Button,
    }

    /// A question asked on the spot.
    QuestionRow of screens::QuestionRow {
        /// The question.
        asks: String,
        /// The answers.
        answers: Vec<Button>,
    }

    /// The state of Mark.
    MarkState of screens::Mark {
        /// Part and how it was seen.
        under: String,
        /// The heading.
        title: String,
        /// What was found then.
        then: Option<Row>,
        /// The four rungs.
        rungs: Vec<Button>,
        /// The heading over the families.
        families_title: String,
        /// The six families.
        families: Vec<Button>,
        /// The heading over the defects.
        defects_title: String,
        /// The likely six, or those of the family chosen.
        defects: Vec<Button>,
        /// The defects named.
        named: Vec<DefectRow>,
        /// Questions asked on the spot.
        questions: Vec<QuestionRow>,
        /// The heading over how it was seen.
        seen_title: String,
        /// How it was seen.
        seen: Vec<Button>,
        /// The heading over why it was not seen.
        not_seen_title: String,
        /// Why it was not seen, and gone.
        not_seen: Vec<Button>,
        /// Pictures taken.
        pictures: Vec<Picture>,
        /// What was measured, read or done.
        facts: Vec<String>,
        /// Measures, layers, work done, words.
        forms: Vec<Form>,
        /// The shutter.
        shutter: Shutter,
        /// Back to the walk.
        back: Button,
        /// Taking back.
        undo: Button,
    }
}
