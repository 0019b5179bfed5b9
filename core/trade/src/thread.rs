//! Threads: one part's marks through all visits, and what became of it.

use crate::catalogue::{CauseKey, Months, RemedyKey};
use crate::ids::{MarkId, PartId};
use crate::mark::Rung;
use crate::work::By;
use jiff::civil::Date;
use serde::{Deserialize, Serialize};

/// What became of a part since the last real mark.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Became {
    /// Taken down, nothing in its place.
    Gone,
    /// Covered, cannot be judged.
    Hidden,
    /// Not seen this time: the old finding stands open.
    NotSeenAgain,
    /// A new part stands there.
    Replaced,
    /// The remedy that the cause needs was done, and it is sound now.
    Cured,
    /// Something was done, the cause remains.
    Patched,
    /// A lower rung, or a new or larger defect of the same cause.
    Worse,
    /// The same.
    StillOpen,
    /// A higher rung with no work known.
    Better,
    /// Sound then and now.
    Quiet,
    /// No earlier mark.
    New,
}

impl Became {
    /// All, in the order they are told.
    pub const ALL: [Self; 11] = [
        Self::Gone,
        Self::Hidden,
        Self::NotSeenAgain,
        Self::Replaced,
        Self::Cured,
        Self::Patched,
        Self::Worse,
        Self::StillOpen,
        Self::Better,
        Self::Quiet,
        Self::New,
    ];

    /// Its key in the message files.
    pub fn key(self) -> &'static str {
        match self {
            Self::Gone => "became-gone",
            Self::Hidden => "became-hidden",
            Self::NotSeenAgain => "became-not-seen-again",
            Self::Replaced => "became-replaced",
            Self::Cured => "became-cured",
            Self::Patched => "became-patched",
            Self::Worse => "became-worse",
            Self::StillOpen => "became-still-open",
            Self::Better => "became-better",
            Self::Quiet => "became-quiet",
            Self::New => "became-new",
        }
    }

    /// Whether the earlier finding still stands and must be answered.
    pub fn is_open(self) -> bool {
        matches!(
            self,
            Self::Hidden | Self::NotSeenAgain | Self::Patched | Self::Worse | Self::StillOpen
        )
    }
}

/// What was done about a thread since its earlier mark.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Patch {
    /// The remedy, where it is known.
    pub remedy: Option<RemedyKey>,
    /// When.
    pub when: Date,
    /// Whose.
    pub by: By,
    /// How long such a patch usually lasts.
    pub usual: Option<Months>,
}

/// One part's story, as far as a visit has to answer it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Thread {
    /// The part.
    pub part: PartId,
    /// Every real mark up to now, oldest first.
    pub marks: Vec<MarkId>,
    /// What became of it.
    pub became: Became,
    /// The last real mark before this visit.
    pub earlier: Option<MarkId>,
    /// The mark of this visit that counts.
    pub now: Option<MarkId>,
    /// The rung then.
    pub rung_then: Option<Rung>,
    /// The rung now.
    pub rung_now: Option<Rung>,
    /// The cause that the earlier finding had and that is still in question.
    pub cause: Option<CauseKey>,
    /// Every patch made on that cause, oldest first, over all visits since it was last cured or the part replaced. Empty where the work done
    /// had nothing to do with it.
    pub patches: Vec<Patch>,
    /// Whose the latest work since the earlier mark was; under an older patch, whose that was.
    pub by: Option<By>,
    /// Whose cure came back as the same fault: a callback, ours if it was ours.
    pub callback: Option<By>,
}
