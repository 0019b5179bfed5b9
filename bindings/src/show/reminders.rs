//! Reminders: what to come back to, soonest first.

use crate::block::{Button, Row};
use crate::cross::{Cross, mirror};

mirror! {
    /// The state of Reminders.
    RemindersState of screens::Reminders {
        /// The heading.
        title: String,
        /// The reminders with the button that ends each.
        rows: Vec<ReminderRow>,
        /// What to say where there is none.
        none: Option<String>,
        /// Taking them to a calendar.
        calendar: String,
        /// Back to Arrive.
        back: Button,
    }
}

/// A reminder with the button that ends it.
#[derive(Clone, Debug, uniffi::Record)]
pub struct ReminderRow {
    /// What to come back to.
    pub row: Row,
    /// Ending it.
    pub done: Button,
}

impl Cross<ReminderRow> for (screens::Row, screens::Button) {
    fn cross(self) -> ReminderRow {
        let (row, done) = self;
        ReminderRow {
            row: row.cross(),
            done: done.cross(),
        }
    }
}
