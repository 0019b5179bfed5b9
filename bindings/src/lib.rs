//! The screens for Kotlin and Swift. Nothing is decided here: a call comes in, is carried out by `screens`, and its answer goes out as plain
//! records.
//!
//! Where to start:
//! - [`Book`]: an open book: show a place, carry out a tap, send a form, take a picture in.
//! - [`show`]: the screens as records, one file a screen, mirrored from `screens`. A field that is added or renamed there fails the build here.
//! - [`ports`]: what the phone brings: camera, position, inclination, key store, share sheet.
//! - [`LongWork`]: what takes a while, asked again and again how far it is.
//! - [`Trouble`]: why something was not done, in the firm's language.
//!
//! Every call blocks until it is done, is made off the phone's main thread, and answers with a result: a panic inside is one of them.

mod block;
mod book;
mod cross;
mod drawing;
mod files;
mod long_work;
mod moment;
mod phone;
pub mod ports;
pub mod show;
mod trouble;

pub use block::{
    Button, Choice, Field, FieldKind, Filled, Form, FormOf, Ladder, Next, Onto, Picture, Reason,
    Row, Shot, Shutter, Tap,
};
pub use book::Book;
pub use drawing::{At, Drawing, Ink, Lettering, Pen, Shape};
pub use long_work::{HowFar, LongWork};
pub use moment::Moment;
pub use phone::{Language, PhoneWords};
pub use trouble::Trouble;

uniffi::setup_scaffolding!();
