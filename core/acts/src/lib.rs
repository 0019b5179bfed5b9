//! What a person does with the book: one function for each act, one transaction each.
//!
//! Where to start, in the order of a day's work:
//! - [`arrive`]: find an address, or add it.
//! - [`premises`]: what stands there: its spellings, people and dangers, and whether two addresses are one place.
//! - [`doorstep`]: what it tells before he climbs.
//! - [`visit`]: open a visit, answer for safety, close it; [`ladder`]: what the rule says of how the ladder stands.
//! - [`walk`]: the stops and parts that a visit has to answer.
//! - [`mark`]: record what a part is like; [`found`]: the layers there and the work done to it; [`tray`]: what was shot or said first.
//! - [`judge`]: what changed, and what to do.
//! - [`measure`]: the roof drawn and its plan computed; [`dormer`]: what stands on it; [`laid`]: a covering laid on it; [`leak`]: where water comes in;
//!   [`offer`]: what it takes, and what that costs, with what was counted and chosen on its [`worksheet`].
//! - [`letter`], [`outcome`]: what the owner gets, and what came of it.
//! - [`undo`]: take back the last tap, by a later line.
//! - [`keep`]: check, rebuild, back up, restore.
//! - [`record`]: take in a visit that was written down elsewhere.
//!
//! An act that answers `Ok` is durable.

pub mod arrive;
pub mod doorstep;
pub mod dormer;
pub mod error;
pub mod found;
pub mod judge;
pub mod keep;
pub mod ladder;
pub mod laid;
pub mod leak;
pub mod letter;
pub mod likely;
pub mod mark;
pub mod measure;
pub mod measured;
pub mod moment;
pub mod offer;
pub mod outcome;
pub mod premises;
pub mod record;
mod roofed;
pub mod settings;
pub mod tray;
pub mod undo;
pub mod visit;
pub mod walk;
pub mod worksheet;

pub use book::{Book, BookError, Card, Due, Found, Key, Salt, Why, system};
pub use error::ActError;
pub use moment::Moment;
