//! What a letter is handed of a roof that was measured or offered for.

use trade::drawing::Drawing;
use trade::ids::StructureId;
use trade::offer::Offer;
use trade::roof::RoofPlan;
use trade::takeoff::{Takeoff, TearOff};
use trade::words::Said;

/// What was measured, counted and offered of one structure.
#[derive(Clone, Copy, Debug)]
pub struct Roofed<'a> {
    /// The structure.
    pub structure: StructureId,
    /// Its plan, where it was measured.
    pub planned: Option<Planned<'a>>,
    /// What a new covering takes, where it is to be told.
    pub takeoff: Option<&'a Takeoff>,
    /// What comes down, where it is to be told.
    pub tear_off: Option<&'a TearOff>,
    /// The offer as it was recorded. It must follow the verdict that the letter tells.
    pub offer: Option<&'a Offer>,
}

/// A measured roof and its picture.
#[derive(Clone, Copy, Debug)]
pub struct Planned<'a> {
    /// The measures.
    pub plan: &'a RoofPlan,
    /// The plan as it is drawn, in the letter's language, as wide as a phone: on paper it is shown at that size or smaller.
    pub drawing: &'a Drawing,
    /// What found no room on the drawing.
    pub left_out: &'a [Said],
}
