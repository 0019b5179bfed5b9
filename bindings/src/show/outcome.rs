//! Outcome: what came of the letter, and what to come back to.

use crate::block::{Button, Form, Picture, Row, Shutter};
use crate::cross::mirror;
use crate::show::reminders::ReminderRow;

mirror! {
    /// What came of one letter, with pictures of the finished work.
    Told of screens::Told {
        /// What came of it, and what was said.
        row: Row,
        /// Pictures of the finished work.
        pictures: Vec<Picture>,
        /// Taking one more, where work was done.
        shutter: Option<Shutter>,
    }

    /// The state of Outcome.
    OutcomeState of screens::Outcome {
        /// The address.
        under: String,
        /// The heading.
        title: String,
        /// What came so far, newest first.
        told: Vec<Told>,
        /// What to record.
        record: Form,
        /// The heading over reminders.
        reminders_title: String,
        /// What to come back to.
        reminders: Vec<ReminderRow>,
        /// Something more to come back to.
        remind: Form,
        /// Back to the doorstep.
        back: Button,
    }
}
