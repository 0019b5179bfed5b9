//! Judging a structure: what became of its parts, what the code and the trade say, what to do, and which look would change that.
//!
//! - [`verdict`]: what to do with a structure, in order of time. It reads the record ([`as_of`]), names what is wrong
//!   ([`faults`]), answers the questions of fact ([`facts`], [`layers`]), decides the main course ([`course`]) and the look
//!   that would change it ([`next_look`]), and gives each step its reasons ([`rules`]).
//! - [`threads`]: what became of each part since its last real mark, and [`second_look()`]: which of them a visit must answer.
//!   [`standing`] says the same between visits, and [`doorstep()`] what one address tells before the climb.
//!
//! Facts in, reasons out: this room knows no file, clock, network or random source.

pub mod as_of;
pub mod course;
mod covering;
mod doorstep;
pub mod facts;
pub mod faults;
pub mod installer;
pub mod layers;
pub mod next_look;
pub mod profile;
mod refused;
pub mod rules;
pub mod safety;
mod second_look;
pub mod situation;
mod steps;
mod thread;
mod verdict;
mod why;

pub use doorstep::doorstep;
pub use second_look::{must_answer, second_look};
pub use thread::{patches_on, standing, threads};
pub use verdict::verdict;

use trade::catalogue::Catalogue;
use trade::firm::{HousePolicy, Profile};

/// What a judgement goes by.
#[derive(Clone, Copy, Debug)]
pub struct Rules<'a> {
    /// The code as it is adopted where the property stands.
    pub profile: &'a Profile,
    /// The firm's own policy.
    pub policy: &'a HousePolicy,
    /// Kinds of part, defects and remedies.
    pub catalogue: &'a Catalogue,
}
