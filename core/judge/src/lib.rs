//!
//!
//! Facts in, reasons out: this room knows no file, clock, network or random source.

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
