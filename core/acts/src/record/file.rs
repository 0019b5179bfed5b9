//! The visit file: one visit as a JSON document, for other programs and for paper forms typed in later.
//!
//! The shapes here are the published format; its JSON Schema is made from them ([`schema`]).

use jiff::civil::Date;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};
use trade::catalogue::{KindKey, RemedyKey};
use trade::mark::{DefectSeen, MeasureOf, NotSeen, Rung, Seen};
use trade::property::{Address, Position, Role, Side, StructureKind};
use trade::stack::{LayerIs, Learned};
use trade::units::{Got, Length, Pitch};
use trade::verdict::Answered;
use trade::visit::{Reach, Request, SafetyAnswer, Scope, Weather};
use trade::work::{By, Did, Evidence};

/// The version of the format that this program writes and reads.
pub const VERSION: u32 = 1;

/// One visit to one property.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, rename_all = "kebab-case")]
pub struct VisitFile {
    /// The version of this format: 1.
    pub ladderbook_visit: u32,
    /// The property: found by its address in the book, or new.
    pub property: PropertyPart,
    /// The visit itself.
    pub visit: VisitPart,
    /// What was looked at.
    pub structures: Vec<StructurePart>,
}

/// The property of a visit file.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, rename_all = "kebab-case")]
pub struct PropertyPart {
    /// Its address.
    pub address: Address,
    /// Other addresses of the same place.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub also: Vec<Address>,
    /// Where it stands, WGS 84.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub position: Option<Position>,
    /// The people.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub people: Vec<PersonPart>,
    /// The year it was built.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub built: Option<i16>,
    /// Dangers that hold on every visit.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub dangers: Vec<String>,
}

/// A person in a visit file.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, rename_all = "kebab-case")]
pub struct PersonPart {
    /// Name.
    pub name: String,
    /// What they are to the property.
    pub role: Role,
    /// Telephone numbers.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub phones: Vec<String>,
    /// Electronic mail.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub email: Option<String>,
}

/// The visit of a visit file.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, rename_all = "kebab-case")]
pub struct VisitPart {
    /// The day, as `2024-05-03`.
    #[schemars(with = "String")]
    pub on: Date,
    /// Who came.
    pub by: String,
    /// Why.
    #[serde(default)]
    pub request: Request,
    /// What it set out to do.
    pub scope: Scope,
    /// The weather.
    #[serde(default)]
    pub weather: Weather,
    /// The safety answers.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub safety: Vec<SafetyAnswer>,
    /// Whether it is over; parts in scope without a record are then closed as not reached.
    #[serde(default = "yes")]
    pub closed: bool,
}

fn yes() -> bool {
    true
}

/// A structure of a visit file: told apart from others of its kind by its name.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, rename_all = "kebab-case")]
pub struct StructurePart {
    /// What it is.
    pub kind: StructureKind,
    /// Its name, where the kind is not enough.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub name: Option<String>,
    /// How it was reached.
    pub reached: Reach,
    /// Its slopes.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub slopes: Vec<SlopePart>,
    /// Readings of layers.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub layers: Vec<StackPart>,
    /// Parts and what was recorded of them.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub parts: Vec<PartPart>,
    /// Work done to the whole structure since the visit before.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub work: Vec<WorkPart>,
}

/// A slope of a visit file.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, rename_all = "kebab-case")]
pub struct SlopePart {
    /// Its letter, `A` first.
    pub letter: char,
    /// Where it faces.
    pub side: Side,
    /// Its pitch, as `6:12` or `26.6°`.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub pitch: Option<Pitch>,
    /// How the pitch was got.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub pitch_got: Option<Got>,
    /// Work done to the whole slope since the visit before.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub work: Vec<WorkPart>,
}

/// What lies at one spot.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, rename_all = "kebab-case")]
pub struct StackPart {
    /// The letter of the slope.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub slope: Option<char>,
    /// Where on the slope.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub spot: String,
    /// Whether the spot lies in an area that was rebuilt on its own.
    #[serde(default)]
    pub rebuilt: bool,
    /// From the top down to the deck.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub layers: Vec<LayerPart>,
    /// The exposure of the top layer, where only the edge could be read.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub exposure: Option<Length>,
    /// Heights of the visible butt lines above the eave, along the slope.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub butts: Vec<Length>,
    /// How it was learned.
    pub learned: Learned,
}

/// One layer.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, rename_all = "kebab-case")]
pub struct LayerPart {
    /// What it is.
    pub layer: LayerIs,
    /// Its colour.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub colour: Option<String>,
    /// Its thickness.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub thickness: Option<Length>,
}

/// A part and what was recorded of it. Exactly one of `rung`, `not-seen` and `gone` is given.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, rename_all = "kebab-case")]
pub struct PartPart {
    /// Its kind.
    pub kind: KindKey,
    /// The letter of its slope.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub slope: Option<char>,
    /// Which one, where there are several.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub which: Option<String>,
    /// Its condition, where it was seen.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub rung: Option<Rung>,
    /// How it was seen; needed with a rung.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub seen: Option<Seen>,
    /// Why it was not seen.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub not_seen: Option<NotSeen>,
    /// Whether it is gone, with nothing in its place.
    #[serde(default, skip_serializing_if = "is_false")]
    pub gone: bool,
    /// The defects, the one that weighs most first.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub defects: Vec<DefectSeen>,
    /// The remedies advised.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub advised: Vec<RemedyKey>,
    /// Questions answered on the spot.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub answers: Vec<Answered>,
    /// Measures.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub measures: Vec<MeasurePart>,
    /// Pictures: file names, relative to the visit file.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub photos: Vec<PhotoPart>,
    /// His own words.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub words: String,
    /// Work done to it since the visit before.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub work: Vec<WorkPart>,
}

#[allow(clippy::trivially_copy_pass_by_ref)]
fn is_false(value: &bool) -> bool {
    !*value
}

/// A measure of a part.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, rename_all = "kebab-case")]
pub struct MeasurePart {
    /// What was measured.
    pub of: MeasureOf,
    /// How long it is: `30 in`, `12' 6 1/2"`, `0.48 mm`.
    pub value: Length,
    /// How that was got.
    pub got: Got,
}

/// A picture.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, rename_all = "kebab-case")]
pub struct PhotoPart {
    /// The file, relative to the visit file.
    pub file: String,
    /// What it shows.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub caption: String,
}

/// Work done since the visit before. `remedy` names one of the catalogue; otherwise `did` says what is known.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(deny_unknown_fields, rename_all = "kebab-case")]
pub struct WorkPart {
    /// A remedy of the catalogue.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub remedy: Option<RemedyKey>,
    /// What was done, where it is no remedy of the catalogue.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub did: Option<WorkDid>,
    /// Whose work it was.
    pub by: By,
    /// The day, or the latest day it can have been.
    #[schemars(with = "String")]
    pub when: Date,
    /// Whether the day is exact.
    #[serde(default)]
    pub exact: bool,
    /// How it is known.
    pub evidence: Evidence,
}

impl WorkPart {
    /// What was done. Where nothing is said, something was.
    pub fn done(&self) -> Did {
        match (&self.remedy, self.did) {
            (Some(remedy), _) => Did::Remedy(remedy.clone()),
            (None, Some(WorkDid::Replaced)) => Did::Replaced,
            (None, Some(WorkDid::Covered)) => Did::Covered,
            (None, Some(WorkDid::TakenDown)) => Did::TakenDown,
            (None, Some(WorkDid::Something) | None) => Did::Something,
        }
    }
}

/// What was done, where it is no remedy of the catalogue.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, JsonSchema)]
#[serde(rename_all = "kebab-case")]
pub enum WorkDid {
    /// A new part was put in its place.
    Replaced,
    /// It was covered over.
    Covered,
    /// It was taken down.
    TakenDown,
    /// Something; nobody knows what.
    Something,
}

/// The published JSON Schema of the visit file.
pub fn schema() -> serde_json::Value {
    schemars::schema_for!(VisitFile).to_value()
}
