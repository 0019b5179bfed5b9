//! Work since: what was done to a roof between visits.

use crate::catalogue::RemedyKey;
use crate::ids::{PartId, PropertyId, SlopeId, StructureId, VisitId, WorkId};
use jiff::civil::Date;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// Whose work it was. Never a guess at who.
#[derive(
    JsonSchema, Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize,
)]
#[serde(rename_all = "kebab-case")]
pub enum By {
    /// This firm.
    Us,
    /// Not this firm.
    NotUs,
    /// Nobody knows.
    Unknown,
}

impl By {
    /// All three.
    pub const ALL: [Self; 3] = [Self::Us, Self::NotUs, Self::Unknown];

    /// Its key in the message files.
    pub fn key(self) -> &'static str {
        match self {
            Self::Us => "by-us",
            Self::NotUs => "by-not-us",
            Self::Unknown => "by-unknown",
        }
    }
}

/// What was done.
#[derive(JsonSchema, Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", tag = "did", content = "what")]
pub enum Did {
    /// A remedy of the catalogue.
    Remedy(RemedyKey),
    /// A new part was put in its place.
    Replaced,
    /// It was covered over.
    Covered,
    /// It was taken down.
    TakenDown,
    /// Something was done; nobody knows what.
    Something,
}

impl Did {
    /// Its key in the message files: the remedy's own name where a remedy was done.
    pub fn message(&self) -> String {
        match self {
            Self::Remedy(remedy) => remedy.message(),
            Self::Replaced => "did-replaced".to_owned(),
            Self::Covered => "did-covered".to_owned(),
            Self::TakenDown => "did-taken-down".to_owned(),
            Self::Something => "did-something".to_owned(),
        }
    }
}

/// How the work is known.
#[derive(JsonSchema, Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Evidence {
    /// Seen on the roof.
    Seen,
    /// Somebody said so.
    Told,
    /// An invoice, a permit, a letter.
    Papers,
    /// From this firm's own record.
    OwnRecord,
}

impl Evidence {
    /// All of them, in the order they are offered.
    pub const ALL: [Self; 4] = [Self::Seen, Self::Told, Self::Papers, Self::OwnRecord];

    /// Its key in the message files.
    pub fn key(self) -> &'static str {
        match self {
            Self::Seen => "evidence-seen",
            Self::Told => "evidence-told",
            Self::Papers => "evidence-papers",
            Self::OwnRecord => "evidence-own-record",
        }
    }
}

/// What the work was done to.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", tag = "to", content = "id")]
pub enum WorkOn {
    /// One part.
    Part(PartId),
    /// All parts of a slope: a re-roof of it.
    Slope(SlopeId),
    /// All parts of a structure.
    Structure(StructureId),
}

/// One piece of work.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Work {
    /// Identifier.
    pub id: WorkId,
    /// The property.
    pub property: PropertyId,
    /// The visit on which it was learned of, if any.
    #[serde(default)]
    pub visit: Option<VisitId>,
    /// What it was done to.
    pub on: WorkOn,
    /// What was done.
    pub did: Did,
    /// Whose work it was.
    pub by: By,
    /// The day it was done, or the latest day it can have been done.
    pub when: Date,
    /// Whether the day is exact.
    #[serde(default)]
    pub exact: bool,
    /// How it is known.
    pub evidence: Evidence,
}
