//! Leak: where water that is seen inside comes in, the likeliest first.

use crate::block::{Button, Form, Row};
use crate::cross::mirror;
use crate::show::roof::Drawn;

mirror! {
    /// One suspect.
    Suspect of screens::Suspect {
        /// What it is, and how much of all suspicion falls on it; a tap goes to look at it while a visit is open.
        row: Row,
        /// Why, what weighs most first.
        why: Vec<String>,
    }

    /// The state of Leak.
    LeakState of screens::Leak {
        /// The address and the structure.
        under: String,
        /// The heading.
        title: String,
        /// How places are told; nothing more once it was traced.
        how: Option<String>,
        /// Where it shows and in which weather.
        ask: Option<Form>,
        /// The plan with the stain and the ways of its water, once it was traced.
        plan: Option<Drawn>,
        /// Over the suspects.
        suspects_title: String,
        /// The suspects.
        suspects: Vec<Suspect>,
        /// What must be said of them.
        caution: Option<String>,
        /// The same question, once it was traced: to ask it otherwise.
        again: Option<Form>,
        /// Back to the roof.
        back: Button,
    }
}
