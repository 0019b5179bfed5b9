//! The catalogue: kinds of part, stops of the walk, defects and remedies, read from the data files beside this crate.
//!
//! A data file says what the rules need; what a person reads stands in the message files under the same key
//! (`kind-…`, `stop-…`, `defect-…`, `remedy-…`, `cause-…`). Tests hold the two together.

use crate::mark::Rung;
use crate::stack::Covering;
use crate::verdict::{LicensedTrade, Question, When};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use std::fmt;
use std::sync::LazyLock;

mod read;

pub use read::{CatalogueError, DataFile, DataFiles};

macro_rules! keys {
    ($($(#[$doc:meta])* $name:ident = $prefix:literal),+ $(,)?) => {$(
        $(#[$doc])*
        #[derive(JsonSchema, Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
        #[serde(transparent)]
        pub struct $name(pub String);

        impl $name {
            /// The key as written in the data files.
            pub fn as_str(&self) -> &str {
                &self.0
            }

            /// The key of its name in the message files.
            pub fn message(&self) -> String {
                format!(concat!($prefix, "-{}"), self.0)
            }
        }

        impl From<&str> for $name {
            fn from(key: &str) -> Self {
                Self(key.to_owned())
            }
        }

        impl fmt::Display for $name {
            fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str(&self.0)
            }
        }
    )+};
}

keys! {
    /// Names a stop of the walk.
    StopKey = "stop",
    /// Names a kind of part.
    KindKey = "kind",
    /// Names a defect.
    DefectKey = "defect",
    /// Names a remedy.
    RemedyKey = "remedy",
    /// Names the cause behind defects: two defects of one cause are cured by the same work.
    CauseKey = "cause",
}

/// The families by which a defect is found: what it looks like.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Family {
    /// Split, cracked, worn through, rusted.
    Split,
    /// Loose, lifted, unfastened, moved.
    Loose,
    /// Missing, gone, too short.
    Missing,
    /// Built wrong.
    Misbuilt,
    /// Smothered: clogged, overgrown, tarred or painted over.
    Smothered,
    /// Wet, stained, soft, rotten.
    Wet,
}

impl Family {
    /// All six, in the order they are shown.
    pub const ALL: [Self; 6] = [
        Self::Split,
        Self::Loose,
        Self::Missing,
        Self::Misbuilt,
        Self::Smothered,
        Self::Wet,
    ];

    /// Its key in the message files.
    pub fn key(self) -> &'static str {
        match self {
            Self::Split => "family-split",
            Self::Loose => "family-loose",
            Self::Missing => "family-missing",
            Self::Misbuilt => "family-misbuilt",
            Self::Smothered => "family-smothered",
            Self::Wet => "family-wet",
        }
    }
}

/// A span of months, both ends included.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(from = "[u16; 2]", into = "[u16; 2]")]
pub struct Months {
    /// Shortest.
    pub least: u16,
    /// Longest.
    pub most: u16,
}

impl From<[u16; 2]> for Months {
    fn from([least, most]: [u16; 2]) -> Self {
        Self { least, most }
    }
}

impl From<Months> for [u16; 2] {
    fn from(months: Months) -> Self {
        [months.least, months.most]
    }
}

/// What a remedy does to a defect.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", tag = "effect")]
pub enum Effect {
    /// It restores the lap or the part.
    Cures,
    /// It holds for a while, the cause remains.
    BuysTime {
        /// How long such a patch usually holds.
        months: Months,
        /// Where that is from: a published source, or "common practice".
        source: String,
    },
    /// It makes the defect worse, or a later cure dearer.
    Worsens,
}

/// One remedy for one defect, and what it does.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Treats {
    /// Which remedy.
    pub remedy: RemedyKey,
    /// The kinds of part on which it is the remedy; empty where it is so on all kinds of the defect.
    #[serde(default)]
    pub on: Vec<KindKey>,
    /// What it does.
    #[serde(flatten)]
    pub effect: Effect,
}

impl Treats {
    /// Whether it is a remedy on one kind of part.
    pub fn fits(&self, kind: &KindKey) -> bool {
        self.on.is_empty() || self.on.contains(kind)
    }
}

/// A stop of the walk.
#[derive(Clone, Debug, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Stop {
    /// Its key.
    pub key: StopKey,
    /// Whether a quick look goes there.
    pub quick: bool,
}

/// What becomes of a part when its slope is covered anew. Common practice, no source.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum CoveredAnew {
    /// A new one stands there.
    #[default]
    Renewed,
    /// A tear-off renews it; a re-cover lies over it and hides it.
    LaidOver,
    /// It stays as it is: a gutter, a chimney's masonry, what is seen from the attic.
    Stays,
}

/// A kind of part.
#[derive(Clone, Debug, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Kind {
    /// Its key.
    pub key: KindKey,
    /// The stop at which it is looked at.
    pub stop: StopKey,
    /// Whether it belongs to one slope.
    pub on_slope: bool,
    /// Whether every roof has it, so that a walk asks for it.
    #[serde(default)]
    pub always: bool,
    /// The questions that a look at it settles, asked on its Mark screen.
    #[serde(default)]
    pub asks: Vec<Question>,
    /// The questions that a close look at it answers with "no" where none of its defects says "yes".
    #[serde(default)]
    pub clears: Vec<Question>,
    /// The trade that must do the work on it, where it is not a roofer's.
    #[serde(default)]
    pub refer: Option<LicensedTrade>,
    /// What becomes of it when its slope is covered anew.
    #[serde(default)]
    pub covered_anew: CoveredAnew,
}

/// A defect.
#[derive(Clone, Debug, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Defect {
    /// Its key.
    pub key: DefectKey,
    /// The kinds of part it is found on.
    pub parts: Vec<KindKey>,
    /// What it looks like.
    pub family: Family,
    /// The coverings it is met on; empty where it is met on any.
    #[serde(default)]
    pub coverings: Vec<Covering>,
    /// The cause behind it.
    pub cause: CauseKey,
    /// How soon it must be answered.
    pub urgency: When,
    /// The rung it presets.
    pub rung: Rung,
    /// The questions it answers with "yes" about its structure.
    #[serde(default)]
    pub signs: Vec<Question>,
    /// What can be done, and what that does.
    pub remedies: Vec<Treats>,
    /// How often it is met on such parts: 1 seldom to 5 daily. Common practice, no source.
    pub common: u8,
    /// Whether it was built in: a fault of workmanship, the installer's to answer for.
    #[serde(default)]
    pub workmanship: bool,
    /// The trade that must do the work, where it is not a roofer's.
    #[serde(default)]
    pub refer: Option<LicensedTrade>,
}

impl Defect {
    /// Whether it is met on a roof with this covering; where nobody could say what the covering is, any defect may be.
    pub fn suits(&self, covering: Covering) -> bool {
        covering == Covering::Unclear
            || self.coverings.is_empty()
            || self.coverings.contains(&covering)
    }

    /// What one remedy does to it; `None` where the catalogue doesn't know the pair.
    pub fn effect(&self, remedy: &RemedyKey) -> Option<&Effect> {
        self.remedies
            .iter()
            .find(|treats| &treats.remedy == remedy)
            .map(|treats| &treats.effect)
    }

    /// What one remedy does to it on one kind of part; `None` where the catalogue doesn't know that.
    pub fn effect_on(&self, kind: &KindKey, remedy: &RemedyKey) -> Option<&Effect> {
        self.remedies
            .iter()
            .find(|treats| &treats.remedy == remedy && treats.fits(kind))
            .map(|treats| &treats.effect)
    }

    /// The remedies that cure it, best first.
    pub fn cures(&self) -> impl Iterator<Item = &RemedyKey> {
        self.remedies
            .iter()
            .filter(|treats| treats.effect == Effect::Cures)
            .map(|treats| &treats.remedy)
    }

    /// The remedies that cure it on one kind of part, best first.
    pub fn cures_on<'a>(&'a self, kind: &'a KindKey) -> impl Iterator<Item = &'a RemedyKey> {
        self.remedies
            .iter()
            .filter(move |treats| treats.effect == Effect::Cures && treats.fits(kind))
            .map(|treats| &treats.remedy)
    }
}

/// A remedy.
#[derive(Clone, Debug, PartialEq, Eq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Remedy {
    /// Its key.
    pub key: RemedyKey,
    /// How much work it is.
    pub size: RemedySize,
}

/// How much work a remedy is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum RemedySize {
    /// Cleaning and small sealing: upkeep.
    Upkeep,
    /// Cover or seal for weeks.
    MakeSafe,
    /// A repair of one part or place.
    Repair,
    /// A new covering.
    Covering,
    /// Another trade's work.
    Referred,
}

/// Stops, kinds, defects and remedies.
#[derive(Debug)]
pub struct Catalogue {
    stops: Vec<Stop>,
    kinds: Vec<Kind>,
    defects: Vec<Defect>,
    remedies: Vec<Remedy>,
    by_defect: BTreeMap<DefectKey, usize>,
}

static STANDARD: LazyLock<Catalogue> = LazyLock::new(|| {
    Catalogue::read(&DataFiles::STANDARD)
        .unwrap_or_else(|error| panic!("the catalogue built in is damaged: {error}"))
});

impl Catalogue {
    /// The catalogue that is built in.
    pub fn standard() -> &'static Self {
        &STANDARD
    }

    /// The stops in the order of the walk.
    pub fn stops(&self) -> &[Stop] {
        &self.stops
    }

    /// The kinds of part, in the order they are looked at.
    pub fn kinds(&self) -> &[Kind] {
        &self.kinds
    }

    /// The defects.
    pub fn defects(&self) -> &[Defect] {
        &self.defects
    }

    /// The remedies.
    pub fn remedies(&self) -> &[Remedy] {
        &self.remedies
    }

    /// One kind of part.
    pub fn kind(&self, key: &KindKey) -> Option<&Kind> {
        self.kinds.iter().find(|kind| &kind.key == key)
    }

    /// One defect.
    pub fn defect(&self, key: &DefectKey) -> Option<&Defect> {
        self.by_defect.get(key).map(|&at| &self.defects[at])
    }

    /// One remedy.
    pub fn remedy(&self, key: &RemedyKey) -> Option<&Remedy> {
        self.remedies.iter().find(|remedy| &remedy.key == key)
    }

    /// The defects found on one kind of part.
    pub fn defects_of<'a>(&'a self, kind: &'a KindKey) -> impl Iterator<Item = &'a Defect> {
        self.defects
            .iter()
            .filter(move |defect| defect.parts.contains(kind))
    }

    /// The stop at which a question can be settled: that of the first kind of part that asks or clears it.
    pub fn stop_for(&self, question: Question) -> Option<&StopKey> {
        self.kinds
            .iter()
            .find(|kind| kind.asks.contains(&question))
            .or_else(|| {
                self.kinds
                    .iter()
                    .find(|kind| kind.clears.contains(&question))
            })
            .map(|kind| &kind.stop)
    }
}
