//! An offer: the priced courses put to the owner, in order of time.

mod says;

pub use says::Named;

use crate::catalogue::{Months, RemedyKey};
use crate::ids::{OfferId, PartId, StructureId};
use crate::price_list::{Share, TaxOn};
use crate::takeoff::{Item, Need, RoofTask, Spread, TearOff, Unit, Untied};
use crate::units::{Length, Money, Pitch};
use crate::verdict::{Course, Narrowed, Reason, Task, When};
use crate::words::Said;
use jiff::civil::Date;
use rust_decimal::Decimal;
use serde::{Deserialize, Serialize};

/// An amount of money known within a range.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct MoneySpread {
    /// The least.
    pub least: Money,
    /// What it most likely is.
    pub likely: Money,
    /// The most.
    pub most: Money,
}

impl MoneySpread {
    /// Nothing.
    pub const ZERO: Self = Self::exactly(Money(Decimal::ZERO));

    /// An amount known exactly.
    pub const fn exactly(money: Money) -> Self {
        Self {
            least: money,
            likely: money,
            most: money,
        }
    }

    /// Each of the three through a function.
    #[must_use]
    pub fn map(self, through: impl Fn(Money) -> Money) -> Self {
        Self {
            least: through(self.least),
            likely: through(self.likely),
            most: through(self.most),
        }
    }

    /// Each of the three with its like.
    #[must_use]
    pub fn with(self, other: Self, through: impl Fn(Money, Money) -> Money) -> Self {
        Self {
            least: through(self.least, other.least),
            likely: through(self.likely, other.likely),
            most: through(self.most, other.most),
        }
    }

    /// Whether all three are alike.
    pub fn is_exact(self) -> bool {
        self.least == self.most && self.least == self.likely
    }

    /// "11,840.00 to 12,310.00 USD", or one amount where all three are alike.
    pub fn says(self, currency: &str) -> Said {
        if self.is_exact() {
            return Said::new("price-money")
                .with("amount", self.likely)
                .with("currency", currency);
        }
        Said::new("price-money-range")
            .with("least", self.least)
            .with("most", self.most)
            .with("currency", currency)
    }
}

impl std::ops::Add for MoneySpread {
    type Output = Self;

    fn add(self, other: Self) -> Self {
        self.with(other, |a, b| Money(a.0 + b.0))
    }
}

impl std::iter::Sum for MoneySpread {
    fn sum<I: Iterator<Item = Self>>(amounts: I) -> Self {
        amounts.fold(Self::ZERO, |sum, amount| sum + amount)
    }
}

/// What a line of an offer is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum CostKind {
    /// Material.
    Material,
    /// Work.
    Labour,
    /// Hauling and disposal.
    Disposal,
    /// A permit.
    Permit,
}

impl CostKind {
    /// All of them, in the order they are listed.
    pub const ALL: [Self; 4] = [Self::Material, Self::Labour, Self::Disposal, Self::Permit];

    /// Its key in the message files.
    pub fn key(self) -> &'static str {
        match self {
            Self::Material => "cost-material",
            Self::Labour => "cost-labour",
            Self::Disposal => "cost-disposal",
            Self::Permit => "cost-permit",
        }
    }
}

/// One line of what a course costs the firm.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct CostLine {
    /// What it is for.
    pub kind: CostKind,
    /// What it is.
    pub what: Said,
    /// How much: packs for material, hours for work.
    pub quantity: Spread,
    /// In what that is counted, as a message.
    pub unit: Said,
    /// What one costs.
    pub each: Money,
    /// What it costs, to the cent.
    pub amount: MoneySpread,
}

/// How a price is made: each row is the sum of those above it where it says so.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Sums {
    /// The lines together.
    pub subtotal: MoneySpread,
    /// The firm's running costs.
    pub overhead: MoneySpread,
    /// Subtotal and running costs together: what it costs the firm.
    pub cost: MoneySpread,
    /// What the firm adds: margin or markup.
    pub gain: MoneySpread,
    /// Sheets of deck that are included, at their own price.
    pub sheets: MoneySpread,
    /// What brings it up to the minimum charge; nothing where it is above it.
    pub to_minimum: MoneySpread,
    /// What rounding adds, or takes off where negative.
    pub rounded: MoneySpread,
    /// Cost, gain, sheets, minimum and rounding together.
    pub before_tax: MoneySpread,
    /// Sales tax.
    pub tax: MoneySpread,
    /// What the tax is, where there is one.
    #[serde(default)]
    pub taxed: Option<(Share, TaxOn)>,
    /// What the owner pays.
    pub price: MoneySpread,
}

/// Something that a price does not hold, and why there is no price.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", tag = "is")]
pub enum Unpriced {
    /// The list has no row for a material.
    NoMaterial {
        /// The material.
        item: Item,
        /// Its size, where it has one.
        size: Option<Length>,
    },
    /// The list's pack of shingles is not the one that was laid.
    OtherPack {
        /// The material.
        item: Item,
    },
    /// The list has no hours for a piece of work at its steepness.
    NoHours {
        /// The work.
        task: RoofTask,
        /// The pitch.
        pitch: Option<Pitch>,
    },
    /// The list has no row for a remedy at its steepness.
    NoRemedy {
        /// The remedy.
        remedy: RemedyKey,
        /// The pitch.
        pitch: Option<Pitch>,
    },
    /// Nobody counted the places, or measured the length or area.
    NotCounted {
        /// The part.
        part: PartId,
        /// The remedy.
        remedy: RemedyKey,
        /// What must be counted.
        unit: Unit,
    },
    /// It is not said what is done with a part.
    NoRemedyNamed {
        /// The part.
        part: PartId,
    },
    /// The list says nothing of disposal.
    NoDisposal,
    /// The list has no price for a sheet of deck.
    NoSheetPrice,
    /// What is done is not named.
    NoWorkNamed,
    /// The roof was not counted.
    NoTakeoff,
    /// What comes down was not reckoned.
    NoTearOff,
    /// A thing could not be counted on the roof.
    Gap {
        /// The thing.
        item: Item,
        /// What is missing.
        why: Box<Said>,
    },
}

/// Something that a course leaves out on purpose.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", tag = "is")]
pub enum LeftOut {
    /// Another trade's work.
    OtherTrade {
        /// The work.
        task: Task,
    },
    /// A part that was not seen.
    NotSeen {
        /// The part.
        part: PartId,
    },
    /// Slopes that are not covered anew.
    OtherSlopes {
        /// Their letters.
        letters: Vec<String>,
    },
    /// Planes that are the measure of no slope of the walk: nobody judged them.
    Untied(Untied),
    /// Whether the attic has enough vents: the vented space was not given.
    VentArea,
    /// Sheets of deck beyond those included, at so much each, before tax.
    MoreSheets {
        /// The sheets that are included.
        included: u32,
        /// What each further one costs.
        each: Money,
    },
}

/// A finding that a course does not cure.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Unsolved {
    /// The part.
    pub part: PartId,
    /// The course of this verdict that cures it, where there is one.
    #[serde(default)]
    pub by: Option<Course>,
}

/// Years that something usually lasts, and who says so.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Lasts {
    /// The years.
    pub years: Spread,
    /// Who says so; empty where it is the roofer's own judgement of this roof.
    pub source: String,
}

/// What a course costs a year over its usual life, at a rate of interest.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Yearly {
    /// How long it usually lasts.
    pub lasts: Lasts,
    /// The rate.
    pub rate: Share,
    /// A year: the least price over the longest life, the most over the shortest.
    pub cost: MoneySpread,
}

/// What patching again and again comes to over the same years.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct PatchingAgain {
    /// The remedy.
    pub remedy: RemedyKey,
    /// The part.
    pub part: PartId,
    /// What one patch costs.
    pub once: MoneySpread,
    /// How long one usually holds.
    pub holds: Months,
    /// Over how many years.
    pub years: u8,
    /// How often: where it holds long and where it holds short.
    pub times: (u32, u32),
    /// All patches together, as they are paid.
    pub sum: MoneySpread,
    /// The same, worth now at the rate.
    pub worth_now: MoneySpread,
    /// The rate.
    pub rate: Share,
}

/// Patching again, to compare with.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", tag = "is")]
pub enum Patching {
    /// What it comes to.
    Again(PatchingAgain),
    /// A patch has no price yet, and why.
    NotPriced {
        /// What is missing.
        unpriced: Vec<Unpriced>,
    },
}

/// Why a course is offered that judgement refuses.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Nevertheless {
    /// What of it is refused.
    pub narrowed: Narrowed,
    /// The recorded reason, in the roofer's words: it is printed.
    pub because: String,
    /// What speaks against it.
    pub against: Vec<Reason>,
}

/// One course of action, priced.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct PricedCourse {
    /// When.
    pub when: When,
    /// What.
    pub course: Course,
    /// The date by which it must be done, or made good.
    #[serde(default)]
    pub until: Option<Date>,
    /// Set where judgement refuses it and it is offered all the same.
    #[serde(default)]
    pub nevertheless: Option<Nevertheless>,
    /// The work on parts that it includes.
    pub includes: Vec<Task>,
    /// What it leaves out.
    pub leaves_out: Vec<LeftOut>,
    /// What it does not cure.
    pub unsolved: Vec<Unsolved>,
    /// Material, for a new covering counted on the roof.
    pub needs: Vec<Need>,
    /// What comes down, for a tear-off.
    #[serde(default)]
    pub tear_off: Option<TearOff>,
    /// Hours of work.
    pub hours: Spread,
    /// What it costs the firm, line by line.
    pub lines: Vec<CostLine>,
    /// How the price is made; `None` where something has no price yet, or where nothing is ours to price.
    #[serde(default)]
    pub sums: Option<Sums>,
    /// What has no price yet: named, never nothing.
    pub unpriced: Vec<Unpriced>,
    /// What it costs a year.
    #[serde(default)]
    pub yearly: Option<Yearly>,
    /// What patching again would come to over the same years.
    #[serde(default)]
    pub patching: Option<Patching>,
}

impl PricedCourse {
    /// What the owner pays, where everything has a price.
    pub fn price(&self) -> Option<MoneySpread> {
        self.sums.as_ref().map(|sums| sums.price)
    }
}

/// The priced courses for one structure, in order of time.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Offer {
    /// Identifier.
    pub id: OfferId,
    /// The structure.
    pub structure: StructureId,
    /// The day of the verdict that it follows.
    pub verdict_on: Date,
    /// The day it was made.
    pub on: Date,
    /// The last day that it holds.
    pub valid_until: Date,
    /// The currency, by its three letters.
    pub currency: String,
    /// The courses, soonest first.
    pub courses: Vec<PricedCourse>,
}
