//! The doorstep: what one address tells you before you climb.

use crate::ids::PartId;
use crate::mark::Rung;
use crate::verdict::StandsOn;
use crate::words::Said;
use jiff::civil::Date;
use serde::{Deserialize, Serialize};

/// What one line of the doorstep tells of, in the order it is told.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Tells {
    /// A danger known from before.
    Danger,
    /// The request against the last verdict.
    Request,
    /// How often this cause was patched.
    Patched,
    /// What was offered and how it was answered.
    Offered,
    /// What was never, or not again, seen.
    NotSeen,
    /// Work since, ours or not ours.
    WorkSince,
    /// What is due.
    Due,
    /// A correction of the record.
    Corrected,
    /// Our own callback.
    Callback,
}

impl Tells {
    /// All of them, in the order they are told.
    pub const ALL: [Self; 9] = [
        Self::Danger,
        Self::Request,
        Self::Patched,
        Self::Offered,
        Self::NotSeen,
        Self::WorkSince,
        Self::Due,
        Self::Corrected,
        Self::Callback,
    ];

    /// Its key in the message files.
    pub fn key(self) -> &'static str {
        match self {
            Self::Danger => "tells-danger",
            Self::Request => "tells-request",
            Self::Patched => "tells-patched",
            Self::Offered => "tells-offered",
            Self::NotSeen => "tells-not-seen",
            Self::WorkSince => "tells-work-since",
            Self::Due => "tells-due",
            Self::Corrected => "tells-corrected",
            Self::Callback => "tells-callback",
        }
    }
}

/// One line of the doorstep.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Line {
    /// What it tells of.
    pub tells: Tells,
    /// What it says.
    pub says: Said,
    /// The records behind it.
    pub stands_on: Vec<StandsOn>,
}

/// The request beside what was said last time.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct ThenAndNow {
    /// The day of the last verdict.
    pub on: Date,
    /// What it was, in a sentence.
    pub said: Said,
    /// Why, in a sentence each.
    pub why: Vec<Said>,
    /// Whether the request goes against it.
    pub contradicts: bool,
}

/// One part to look at again.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct LookAgain {
    /// The part.
    pub part: PartId,
    /// Its last real rung; `None` where it was never seen.
    pub rung: Option<Rung>,
    /// Why: what was found then, what was done since.
    pub says: Said,
}

/// What one address tells you before you climb.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Doorstep {
    /// The lines, in the order they are told.
    pub lines: Vec<Line>,
    /// The request beside the last verdict, where there are both.
    pub then_and_now: Option<ThenAndNow>,
    /// What to look at again, worst first.
    pub look_again: Vec<LookAgain>,
}
