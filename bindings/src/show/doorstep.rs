//! Doorstep: what one address tells before he climbs.

use crate::block::{Button, Form, Row};
use crate::cross::{Cross, mirror};

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
}

/// The state of the Doorstep.
#[derive(Clone, Debug, uniffi::Record)]
pub struct DoorstepState {
    /// The address.
    pub address: String,
    /// Town, owner, since when.
    pub under: String,
    /// Dangers known from before.
    pub dangers: Vec<String>,
    /// What they ask now.
    pub asked: Option<Asked>,
    /// What was said then.
    pub then: Option<Then>,
    /// The lines, in the order they are told.
    pub lines: Vec<Row>,
    /// The heading over what to look at again.
    pub look_title: String,
    /// What to look at again first.
    pub look_again: Vec<Row>,
    /// Over the others, where there are more.
    pub look_more: Option<String>,
    /// The others.
    pub look_rest: Vec<Row>,
    /// Opening a visit, where none is open.
    pub open: Option<Form>,
    /// The main act, where a visit is open.
    pub main: Option<Button>,
    /// Elsewhere.
    pub doors: Vec<Button>,
}

impl Cross<DoorstepState> for screens::Doorstep {
    fn cross(self) -> DoorstepState {
        let Self {
            address,
            under,
            dangers,
            asked,
            then,
            mut lines,
            look_title,
            mut look_again,
            look_more,
            open,
            main,
            doors,
        } = self;
        // A danger stands at the top already.
        lines.retain(|line| !dangers.contains(&line.says));
        let rest = look_again.split_off(look_again.len().min(screens::LOOK_FIRST));
        DoorstepState {
            address,
            under,
            dangers,
            asked: asked.cross(),
            then: then.cross(),
            lines: lines.cross(),
            look_title,
            look_again: look_again.cross(),
            look_more,
            look_rest: rest.cross(),
            open: open.cross(),
            main: main.cross(),
            doors: doors.cross(),
        }
    }
}
