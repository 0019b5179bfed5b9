//! Letter: what the owner gets.

use crate::block::Button;
use crate::cross::{Cross, mirror};

mirror! {
    /// A letter that was made.
    Sent of screens::Sent {
        /// Which.
        letter: String,
        /// Its day and language.
        title: String,
        /// Whether a correction overtook it.
        overtaken: Option<String>,
        /// The short text that goes with it.
        text: String,
        /// Opening the PDF.
        open: String,
    }

    /// The state of Letter.
    LetterState of screens::Letter {
        /// The address.
        under: String,
        /// The heading.
        title: String,
        /// What page one would say today: each question, and its answer in lines.
        preview: Vec<Answered>,
        /// The heading over it.
        preview_title: String,
        /// What must be done first, where the visit is still open.
        first: Option<String>,
        /// Closing, where it is still open; writing it, where it is closed.
        acts: Vec<Button>,
        /// Letters made of this visit.
        sent: Vec<Sent>,
        /// The heading over them.
        sent_title: String,
        /// Back to the doorstep.
        back: Button,
        /// What came of it.
        main: Button,
    }
}

/// A question that an owner asks, and its answer in lines.
#[derive(Clone, Debug, uniffi::Record)]
pub struct Answered {
    /// The question.
    pub asks: String,
    /// The answer.
    pub says: Vec<String>,
}

impl Cross<Answered> for (String, Vec<String>) {
    fn cross(self) -> Answered {
        let (asks, says) = self;
        Answered { asks, says }
    }
}
