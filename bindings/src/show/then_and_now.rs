//! Then and now: what became of every part since the last real look.

use crate::block::{Button, Form, Ladder, Picture};
use crate::cross::mirror;

mirror! {
    /// One part, then and now.
    Changed of screens::Changed {
        /// The part.
        part: String,
        /// What became of it.
        became: String,
        /// More of it: patches, whose work, a callback.
        says: Vec<String>,
        /// Its ladder then.
        then: Option<Ladder>,
        /// Its ladder now.
        now: Ladder,
        /// A picture then.
        picture_then: Option<Picture>,
        /// A picture now.
        picture_now: Option<Picture>,
        /// Correcting the record, where the visit is closed.
        correct: Option<Form>,
    }

    /// The state of Then and now.
    ThenAndNowState of screens::ThenAndNow {
        /// The address.
        under: String,
        /// The heading.
        title: String,
        /// What changed, worst first.
        changed: Vec<Changed>,
        /// How many were sound then and now.
        quiet: Option<String>,
        /// Back to the walk, where the visit is open.
        back: Button,
        /// The main act.
        main: Button,
    }
}
