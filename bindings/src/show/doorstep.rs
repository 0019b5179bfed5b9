//! Doorstep: what one address tells before he climbs.

use crate::block::{Button, Form, Row};
use crate::cross::mirror;

mirror! {
    /// What is asked now.
    Asked of screens::Asked {
        /// "They ask now".
        title: String,
        /// The caller's own words.
        words: String,
    }

    /// What was said then.
    Then of screens::Then {
        /// "You said on DATE".
        title: String,
        /// The verdict, in a sentence.
        said: String,
        /// Why.
        why: Vec<String>,
        /// Whether the request goes against it, and how that is said.
        contradicts: Option<String>,
    }

    /// The state of the Doorstep.
    DoorstepState of screens::Doorstep {
        /// The address.
        address: String,
        /// Town, owner, since when.
        under: String,
        /// Dangers known from before.
        dangers: Vec<String>,
        /// What they ask now.
        asked: Option<Asked>,
        /// What was said then.
        then: Option<Then>,
        /// The lines, in the order they are told.
        lines: Vec<Row>,
        /// The heading over what to look at again.
        look_title: String,
        /// What to look at again first.
        look_again: Vec<Row>,
        /// Over the others, where there are more.
        look_more: Option<String>,
        /// The others.
        look_rest: Vec<Row>,
        /// Opening a visit, where none is open.
        open: Option<Form>,
        /// The main act, where a visit is open.
        main: Option<Button>,
        /// Elsewhere.
        doors: Vec<Button>,
    }
}
