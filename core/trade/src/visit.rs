//! Visits: who came, why, to do what, in what weather, and whether it was safe.

use crate::answer::Answer;
use crate::catalogue::{KindKey, RemedyKey};
use crate::ids::{NoteId, PhotoId, PropertyId, StructureId, VisitId};
use crate::property::Position;
use crate::units::Length;
use jiff::{Timestamp, civil::Date};
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// What a visit sets out to do.
#[derive(
    JsonSchema, Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize,
)]
#[serde(rename_all = "kebab-case")]
pub enum Scope {
    /// Only what the caller asked about.
    RequestOnly,
    /// A quick look at the parts that leak most.
    QuickLook,
    /// The whole roof.
    WholeRoof,
}

impl Scope {
    /// All three, smallest first.
    pub const ALL: [Self; 3] = [Self::RequestOnly, Self::QuickLook, Self::WholeRoof];

    /// Its key in the message files.
    pub fn key(self) -> &'static str {
        match self {
            Self::RequestOnly => "scope-request-only",
            Self::QuickLook => "scope-quick-look",
            Self::WholeRoof => "scope-whole-roof",
        }
    }
}

/// When water shows inside.
#[derive(JsonSchema, Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum WetWhen {
    /// In any rain.
    AnyRain,
    /// In rain driven by wind.
    DrivenRain,
    /// In long rain.
    LongRain,
    /// When snow or ice melts.
    Thaw,
    /// In dry cold: likely breath and steam, not rain.
    DryCold,
}

impl WetWhen {
    /// All of them, in the order they are offered.
    pub const ALL: [Self; 5] = [
        Self::AnyRain,
        Self::DrivenRain,
        Self::LongRain,
        Self::Thaw,
        Self::DryCold,
    ];

    /// Its key in the message files.
    pub fn key(self) -> &'static str {
        match self {
            Self::AnyRain => "wet-when-any-rain",
            Self::DrivenRain => "wet-when-driven-rain",
            Self::LongRain => "wet-when-long-rain",
            Self::Thaw => "wet-when-thaw",
            Self::DryCold => "wet-when-dry-cold",
        }
    }
}

/// One thing the caller wants done.
#[derive(JsonSchema, Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Ask {
    /// The kind of part they name.
    pub kind: KindKey,
    /// The remedy they name, if they name one.
    #[serde(default)]
    pub remedy: Option<RemedyKey>,
}

/// Why the visit was asked for.
#[derive(JsonSchema, Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Request {
    /// The caller's own words.
    #[serde(default)]
    pub words: String,
    /// What those words come to.
    #[serde(default)]
    pub asks: Vec<Ask>,
    /// Whether water comes in now.
    #[serde(default)]
    pub leaking: Answer,
    /// The room it shows in.
    #[serde(default)]
    pub room: Option<String>,
    /// When it shows.
    #[serde(default, rename = "wet-when", alias = "wet_when")]
    pub wet_when: Vec<WetWhen>,
    /// Whether a sale was mentioned.
    #[serde(default)]
    pub sale: bool,
    /// Whether the owner needs the roof to last, and does not only want to get by.
    #[serde(default, rename = "must-last", alias = "must_last")]
    pub must_last: Answer,
}

/// The weather on the roof.
#[derive(JsonSchema, Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Sky {
    /// Dry.
    #[default]
    Dry,
    /// Wet from rain or dew.
    Wet,
    /// Frost, snow or ice.
    Frozen,
    /// Thunder near.
    Thunder,
}

impl Sky {
    /// All four, in the order they are offered.
    pub const ALL: [Self; 4] = [Self::Dry, Self::Wet, Self::Frozen, Self::Thunder];

    /// Its key in the message files.
    pub fn key(self) -> &'static str {
        match self {
            Self::Dry => "sky-dry",
            Self::Wet => "sky-wet",
            Self::Frozen => "sky-frozen",
            Self::Thunder => "sky-thunder",
        }
    }
}

/// Weather, as he met it.
#[derive(JsonSchema, Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Weather {
    /// Dry, wet, frozen or thunder.
    #[serde(default)]
    pub sky: Sky,
    /// Whether the wind is too strong for a ladder.
    #[serde(default)]
    pub windy: bool,
    /// Air temperature in degrees Celsius, if known.
    #[serde(default)]
    pub celsius: Option<i16>,
}

/// One thing to answer before the ladder is climbed.
#[derive(
    JsonSchema, Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize,
)]
#[serde(rename_all = "kebab-case")]
pub enum SafetyCheck {
    /// Firm level ground, angle right, three feet above the landing, tied.
    LadderStands,
    /// No live line near the ladder or the way.
    LinesClear,
    /// No thunder, and wind a ladder can bear.
    WeatherHolds,
    /// Dry enough to stand on.
    SurfaceDry,
    /// Not too steep for the gear at hand.
    PitchSafe,
    /// The deck bears: not soft underfoot.
    DeckBears,
    /// No suspect asbestos or vermiculite in the way.
    NoSuspectFibres,
}

impl SafetyCheck {
    /// All, in the order they are asked.
    pub const ALL: [Self; 7] = [
        Self::LadderStands,
        Self::LinesClear,
        Self::WeatherHolds,
        Self::SurfaceDry,
        Self::PitchSafe,
        Self::DeckBears,
        Self::NoSuspectFibres,
    ];

    /// Its key in the message files.
    pub fn key(self) -> &'static str {
        match self {
            Self::LadderStands => "safety-ladder-stands",
            Self::LinesClear => "safety-lines-clear",
            Self::WeatherHolds => "safety-weather-holds",
            Self::SurfaceDry => "safety-surface-dry",
            Self::PitchSafe => "safety-pitch-safe",
            Self::DeckBears => "safety-deck-bears",
            Self::NoSuspectFibres => "safety-no-suspect-fibres",
        }
    }
}

/// One safety answer.
#[derive(JsonSchema, Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct SafetyAnswer {
    /// What was asked.
    pub check: SafetyCheck,
    /// Whether it holds.
    pub holds: Answer,
}

/// How a structure was reached.
#[derive(
    JsonSchema, Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize,
)]
#[serde(rename_all = "kebab-case")]
pub enum Reach {
    /// He stood on it.
    OnRoof,
    /// From the ladder at the eave.
    Ladder,
    /// With a camera on a pole.
    Pole,
    /// From the ground.
    Ground,
    /// From inside only.
    Inside,
    /// Not at all.
    NotReached,
}

impl Reach {
    /// Every way, surest first.
    pub const ALL: [Self; 6] = [
        Self::OnRoof,
        Self::Ladder,
        Self::Pole,
        Self::Ground,
        Self::Inside,
        Self::NotReached,
    ];

    /// Its key in the message files.
    pub fn key(self) -> &'static str {
        match self {
            Self::OnRoof => "reach-on-roof",
            Self::Ladder => "reach-ladder",
            Self::Pole => "reach-pole",
            Self::Ground => "reach-ground",
            Self::Inside => "reach-inside",
            Self::NotReached => "reach-not-reached",
        }
    }
}

/// How one structure was reached on one visit.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Reached {
    /// The structure.
    pub structure: StructureId,
    /// How.
    pub how: Reach,
}

/// How a ladder stood, as it was measured before anybody climbed it.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
pub struct LadderStood {
    /// Along it from its foot to where it rests.
    pub working: Option<Length>,
    /// Level, from its foot to the wall.
    pub base: Option<Length>,
    /// How it leans, in tenths of a degree from the ground, as a phone on its rail read it.
    pub leans: Option<u16>,
    /// How high above its foot one steps off.
    pub landing: Option<Length>,
}

/// One visit to a property.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Visit {
    /// Identifier.
    pub id: VisitId,
    /// The property.
    pub property: PropertyId,
    /// The day.
    pub on: Date,
    /// Who came.
    pub by: String,
    /// Why.
    #[serde(default)]
    pub request: Request,
    /// What it sets out to do.
    pub scope: Scope,
    /// The structures in scope.
    pub structures: Vec<StructureId>,
    /// The weather.
    #[serde(default)]
    pub weather: Weather,
    /// The safety answers given.
    #[serde(default)]
    pub safety: Vec<SafetyAnswer>,
    /// How each structure was reached.
    #[serde(default)]
    pub reached: Vec<Reached>,
    /// How the ladder stood, where that was measured.
    #[serde(default)]
    pub ladder: Option<LadderStood>,
    /// When it was closed; a closed visit is never edited.
    #[serde(default)]
    pub closed: Option<Timestamp>,
}

impl Visit {
    /// How one structure was reached, if that was said.
    pub fn reach(&self, structure: StructureId) -> Option<Reach> {
        self.reached
            .iter()
            .rev()
            .find(|reached| reached.structure == structure)
            .map(|reached| reached.how)
    }
}

/// A picture as it was taken: its bytes lie in the book under their SHA-256 and are never altered.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Photo {
    /// Identifier.
    pub id: PhotoId,
    /// The property.
    pub property: PropertyId,
    /// The visit it was taken on.
    pub visit: VisitId,
    /// SHA-256 of the original bytes, lower-case hexadecimal.
    pub sha256: String,
    /// When it was taken: from the picture itself, or when it came in.
    pub taken: Timestamp,
    /// Where, as the picture says.
    #[serde(default)]
    pub position: Option<Position>,
    /// Compass direction of the lens in degrees, as the picture says.
    #[serde(default)]
    pub direction: Option<f64>,
    /// EXIF orientation, 1 to 8.
    #[serde(default = "upright")]
    pub orientation: u8,
    /// What it shows, in his words.
    #[serde(default)]
    pub caption: String,
}

fn upright() -> u8 {
    1
}

/// Words taken first and tied to a part later.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Note {
    /// Identifier.
    pub id: NoteId,
    /// The visit.
    pub visit: VisitId,
    /// When it was said.
    pub at: Timestamp,
    /// The words.
    pub words: String,
}
