//! Arrive: find the address, or who to see today.

use crate::block::{Button, Form, Row};
use crate::cross::mirror;

mirror! {
    /// The state of Arrive.
    ArriveState of screens::Arrive {
        /// The firm's name.
        firm: String,
        /// The heading.
        title: String,
        /// Where the address is typed.
        search: Form,
        /// What was found, likeliest first.
        found: Vec<Row>,
        /// What to say where nothing was found.
        none: Option<String>,
        /// Adding what is not in the book.
        add: Option<Form>,
        /// Visits that are still open.
        open: Vec<Row>,
        /// The heading over them.
        open_title: String,
        /// Who to see today.
        today: Vec<Row>,
        /// The heading over them.
        today_title: String,
        /// Elsewhere.
        doors: Vec<Button>,
    }
}
