//! The whole job, tested as a person does it: a book, its screens, and a hand that taps what is shown.
//!
//! - [`scene`]: books that the tests begin with.
//! - [`hand`]: looks at a screen, finds what its words say, taps it.
//! - [`chance`]: taps whatever is shown, by a number.
//! - [`walking`]: a visit written down as a file, walked tap by tap.
//!
//! This is a test's tool: where something is not on the screen it stops with a panic.

#![allow(clippy::missing_panics_doc)]

pub mod chance;
pub mod hand;
pub mod scene;
pub mod walking;
