//! Walk: one tall ladder climbed from the bottom up; the present stop lies under the thumb.

use crate::block::{Button, Form, Ladder, Shutter, Tap};
use crate::cross::mirror;
use std::sync::Arc;

mirror! {
    /// A stop on the ladder.
    StopRow of screens::StopRow {
        /// Its name.
        name: String,
        /// How far it is answered.
        says: String,
        /// Whether all there is answered: a solid rung.
        done: bool,
        /// Whether he stands here.
        here: bool,
        /// Going there.
        go: Arc<Tap>,
    }

    /// A part under the thumb.
    SpotRow of screens::SpotRow {
        /// Its ladder.
        ladder: Ladder,
        /// Its name.
        name: String,
        /// What is said of it: its rung now.
        says: String,
        /// Why to look at it again.
        look_again: Option<String>,
        /// Sound, in one tap.
        sound: Button,
        /// More than that.
        mark: Button,
    }

    /// The present stop.
    Here of screens::Here {
        /// "Here: …".
        title: String,
        /// The parts.
        spots: Vec<SpotRow>,
        /// Why nothing more here was seen.
        not_seen: Vec<Button>,
        /// The heading over it.
        not_seen_title: String,
        /// A part that is not on the list.
        add: Form,
        /// Where to climb next; `None` where every stop is done.
        next: Option<Button>,
    }

    /// The state of Walk.
    WalkState of screens::Walk {
        /// Address, scope, structure.
        under: String,
        /// How far the walk is.
        title: String,
        /// The structures.
        structures: Vec<Button>,
        /// The stops, from the ground up.
        stops: Vec<StopRow>,
        /// The present stop; `None` where there is nothing to look at.
        here: Option<Here>,
        /// The shutter.
        shutter: Shutter,
        /// Saying something.
        say: Form,
        /// Taking back.
        undo: Button,
        /// More: tray, slopes, closing.
        more_title: String,
        /// The buttons under it.
        more: Vec<Button>,
        /// Closing the visit.
        close_title: String,
        /// The ways to close.
        close: Vec<Button>,
    }
}
