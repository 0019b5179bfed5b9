//! What stands at an address: a property, its people, structures, slopes and parts.

use crate::catalogue::KindKey;
use crate::ids::{PartId, PersonId, PropertyId, SlopeId, StructureId};
use crate::units::{Length, Measured, Pitch};
use jiff::civil::Date;
use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// A postal address as somebody wrote it, split where they split it.
#[derive(JsonSchema, Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Address {
    /// House number and street, with a unit if there is one.
    pub line: String,
    /// Town or city.
    #[serde(default)]
    pub town: String,
    /// State or region.
    #[serde(default)]
    pub region: String,
    /// ZIP or postal code.
    #[serde(default)]
    pub postcode: String,
}

/// A position on the earth, WGS 84 degrees.
#[derive(JsonSchema, Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Position {
    /// Degrees north.
    pub latitude: f64,
    /// Degrees east.
    pub longitude: f64,
}

impl Position {
    /// Whether there is such a place.
    pub fn is_on_earth(self) -> bool {
        self.latitude.abs() <= 90.0 && self.longitude.abs() <= 180.0
    }

    /// Reads degrees north and east: `41.2412, -96.0113`. `None` where it is no place on the earth.
    pub fn read(text: &str) -> Option<Self> {
        let (latitude, longitude) = text.split_once(',')?;
        let position = Self {
            latitude: latitude.trim().parse().ok()?,
            longitude: longitude.trim().parse().ok()?,
        };
        position.is_on_earth().then_some(position)
    }
}

impl std::fmt::Display for Position {
    /// To the sixth place, a tenth of a metre.
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "{:.6}, {:.6}", self.latitude, self.longitude)
    }
}

/// What somebody is to a property.
#[derive(JsonSchema, Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Role {
    /// Owns it.
    Owner,
    /// Lives there.
    Tenant,
    /// Looks after it for the owner.
    Manager,
    /// Selling or buying it.
    Agent,
    /// Owned it once.
    FormerOwner,
}

impl Role {
    /// All of them, in the order they are offered.
    pub const ALL: [Self; 5] = [
        Self::Owner,
        Self::Tenant,
        Self::Manager,
        Self::Agent,
        Self::FormerOwner,
    ];

    /// Its key in the message files.
    pub fn key(self) -> &'static str {
        match self {
            Self::Owner => "role-owner",
            Self::Tenant => "role-tenant",
            Self::Manager => "role-manager",
            Self::Agent => "role-agent",
            Self::FormerOwner => "role-former-owner",
        }
    }
}

/// A person tied to a property.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Person {
    /// Identifier.
    pub id: PersonId,
    /// Name as they give it.
    pub name: String,
    /// What they are to the property.
    pub role: Role,
    /// Telephone numbers as written.
    #[serde(default)]
    pub phones: Vec<String>,
    /// Electronic mail, if known.
    #[serde(default)]
    pub email: Option<String>,
}

/// One plot with one owner's roofs on it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Property {
    /// Identifier.
    pub id: PropertyId,
    /// The address the firm writes to.
    pub address: Address,
    /// Other addresses of the same place: the other street of a corner lot, an old name.
    #[serde(default)]
    pub also: Vec<Address>,
    /// Where it stands.
    #[serde(default)]
    pub position: Option<Position>,
    /// The people.
    #[serde(default)]
    pub people: Vec<Person>,
    /// The year it was built, if known.
    #[serde(default)]
    pub built: Option<i16>,
    /// Dangers that hold on every visit: a dog, a live wire at the eave.
    #[serde(default)]
    pub dangers: Vec<String>,
    /// When the firm first heard of it.
    pub since: Date,
}

/// What kind of structure it is.
#[derive(
    JsonSchema, Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize,
)]
#[serde(rename_all = "kebab-case")]
pub enum StructureKind {
    /// The house.
    House,
    /// A garage that shares a wall with the house.
    AttachedGarage,
    /// A garage that stands alone.
    DetachedGarage,
    /// A porch.
    Porch,
    /// An addition to the house with a roof of its own.
    Addition,
    /// A shed.
    Shed,
}

impl StructureKind {
    /// Every kind, in the order it is offered.
    pub const ALL: [Self; 6] = [
        Self::House,
        Self::AttachedGarage,
        Self::DetachedGarage,
        Self::Porch,
        Self::Addition,
        Self::Shed,
    ];

    /// Its key in the message files.
    pub fn key(self) -> &'static str {
        match self {
            Self::House => "structure-house",
            Self::AttachedGarage => "structure-attached-garage",
            Self::DetachedGarage => "structure-detached-garage",
            Self::Porch => "structure-porch",
            Self::Addition => "structure-addition",
            Self::Shed => "structure-shed",
        }
    }
}

/// A structure with a roof of its own.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Structure {
    /// Identifier.
    pub id: StructureId,
    /// The property it stands on.
    pub property: PropertyId,
    /// What it is.
    pub kind: StructureKind,
    /// A name of its own, where the kind is not enough.
    #[serde(default)]
    pub name: Option<String>,
    /// When it was taken down.
    #[serde(default)]
    pub gone: Option<Date>,
}

/// Where a slope faces, named from the street.
#[derive(
    JsonSchema, Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize,
)]
#[serde(rename_all = "kebab-case")]
pub enum Side {
    /// Toward the street.
    Front,
    /// On the left, seen from the street.
    Left,
    /// Away from the street.
    Rear,
    /// On the right, seen from the street.
    Right,
}

impl Side {
    /// All four, in the order a person walks round.
    pub const ALL: [Self; 4] = [Self::Front, Self::Left, Self::Rear, Self::Right];

    /// Its key in the message files.
    pub fn key(self) -> &'static str {
        match self {
            Self::Front => "side-front",
            Self::Left => "side-left",
            Self::Rear => "side-rear",
            Self::Right => "side-right",
        }
    }
}

/// One slope of a structure. Measured planes attach to it later, by its identifier.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Slope {
    /// Identifier.
    pub id: SlopeId,
    /// The structure it belongs to.
    pub structure: StructureId,
    /// Where it faces.
    pub side: Side,
    /// Its letter on plan and letter, `A` first.
    pub letter: char,
    /// Its pitch, if anybody measured it.
    #[serde(default)]
    pub pitch: Option<Measured<Pitch>>,
}

/// One part of a roof, born with its first mark.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Part {
    /// Identifier.
    pub id: PartId,
    /// The structure it is on.
    pub structure: StructureId,
    /// The slope it is on; `None` for what belongs to no one slope.
    #[serde(default)]
    pub slope: Option<SlopeId>,
    /// What kind of part it is.
    pub kind: KindKey,
    /// Which one, where there are several: "nearest the street".
    #[serde(default)]
    pub which: Option<String>,
    /// Its number on plan and letter, 1 first within its structure.
    pub number: u16,
    /// Where it lies on the plan of its structure, where somebody put it there.
    #[serde(default)]
    pub at: Option<OnPlan>,
}

/// A place on a structure's plan: to the right and away from the street, as its outline is drawn.
#[derive(JsonSchema, Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct OnPlan {
    /// To the right, seen from the street.
    pub x: Length,
    /// Away from the street.
    pub y: Length,
}
