//! Tray: pictures and words taken first, emptied at the tailgate.

use crate::block::{Button, Form, Picture, Row, Shutter};
use crate::cross::mirror;

mirror! {
    /// One loose picture or note.
    Loose of screens::Loose {
        /// The picture, where it is one.
        picture: Option<Picture>,
        /// The words, or when the picture was taken.
        words: String,
        /// What the picture shows.
        caption: Option<Form>,
        /// The parts it can be tied to.
        tie: Vec<Button>,
    }

    /// The state of Tray.
    TrayState of screens::Tray {
        /// The address.
        under: String,
        /// The heading.
        title: String,
        /// What lies in it.
        loose: Vec<Loose>,
        /// The heading over the parts to tie to.
        tie_title: String,
        /// What to say of an empty tray.
        empty: Option<String>,
        /// The heading over parts that still need a rung.
        half_title: String,
        /// Parts that still need a rung.
        half: Vec<Row>,
        /// The shutter.
        shutter: Shutter,
        /// Back to the walk.
        back: Button,
    }
}
