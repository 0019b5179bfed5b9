//! What a roof takes: each thing to order with how much of it is needed, what is torn off, and what the roof carries.

mod tear_off;

pub use tear_off::{Binding, Layers, PlaneLoad, TearOff};

use crate::catalogue::RemedyKey;
use crate::ids::{PartId, StructureId};
use crate::stack::Covering;
use crate::units::{Length, Pitch};
use crate::verdict::Source;
use crate::words::{Arg, Said};
use serde::{Deserialize, Serialize};

/// A number that is known within a range: the least it can be, what it most likely is, the most it can be.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct Spread {
    /// The least.
    pub least: f64,
    /// What it most likely is.
    pub likely: f64,
    /// The most.
    pub most: f64,
}

impl Spread {
    /// Nothing.
    pub const ZERO: Self = Self::exactly(0.0);

    /// A number known exactly.
    pub const fn exactly(value: f64) -> Self {
        Self {
            least: value,
            likely: value,
            most: value,
        }
    }

    /// A number known within a share of itself: 0.02 is two per cent either way. Its least is never below nothing.
    pub fn within(value: f64, share: f64) -> Self {
        Self {
            least: (value * (1.0 - share)).max(0.0),
            likely: value,
            most: value * (1.0 + share),
        }
    }

    /// Times a factor of nothing or more.
    #[must_use]
    pub fn scaled(self, factor: f64) -> Self {
        self.map(|value| value * factor)
    }

    /// Least times least, likely times likely, most times most: for numbers of nothing or more.
    #[must_use]
    pub fn times(self, other: Self) -> Self {
        Self {
            least: self.least * other.least,
            likely: self.likely * other.likely,
            most: self.most * other.most,
        }
    }

    /// Each of the three through a function that never falls.
    #[must_use]
    pub fn map(self, through: impl Fn(f64) -> f64) -> Self {
        Self {
            least: through(self.least),
            likely: through(self.likely),
            most: through(self.most),
        }
    }

    /// Whether there is nothing of it at the most.
    pub fn is_nothing(self) -> bool {
        self.most <= 0.0
    }

    /// Whole packs that hold it. A hair of a pack, a millionth, opens no new one.
    pub fn in_packs(self, holds: f64) -> Packs {
        Packs {
            least: whole_packs(self.least, holds),
            likely: whole_packs(self.likely, holds),
            most: whole_packs(self.most, holds),
        }
    }

    /// How many of something whose name is kept under a key and, for a single one, under its `.one`: "1 layer", "1 to 2 layers".
    pub fn counted(self, decimals: usize, key: &str) -> Said {
        let is_one = |end: f64| plain(end, decimals) == "1";
        let name = if is_one(self.least) && is_one(self.most) {
            Said::new(format!("{key}.one"))
        } else {
            Said::new(key)
        };
        Said::new("price-amount")
            .with("amount", self.says(decimals))
            .with("unit", name)
    }

    /// "24 to 26", or one number where both ends read alike, with so many decimals.
    pub fn says(self, decimals: usize) -> Said {
        let (least, most) = (plain(self.least, decimals), plain(self.most, decimals));
        if least == most {
            return Said::verbatim(least);
        }
        Said::new("price-range")
            .with("least", least)
            .with("most", most)
    }
}

impl std::ops::Add for Spread {
    type Output = Self;

    fn add(self, other: Self) -> Self {
        Self {
            least: self.least + other.least,
            likely: self.likely + other.likely,
            most: self.most + other.most,
        }
    }
}

impl std::iter::Sum for Spread {
    fn sum<I: Iterator<Item = Self>>(spreads: I) -> Self {
        spreads.fold(Self::ZERO, |sum, spread| sum + spread)
    }
}

/// A number with at most so many decimals and no zeros at its end.
pub fn plain(value: f64, decimals: usize) -> String {
    let text = format!("{value:.decimals$}");
    if decimals == 0 {
        return text;
    }
    let text = text.trim_end_matches('0').trim_end_matches('.');
    if text == "-0" { "0" } else { text }.to_owned()
}

#[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
fn whole_packs(amount: f64, holds: f64) -> u32 {
    if amount <= 0.0 || holds <= 0.0 {
        return 0;
    }
    // As cast saturates: more packs than a u32 holds are no roof.
    ((amount / holds) * (1.0 - 1e-6)).ceil().max(1.0) as u32
}

/// Whole packs at the least, at the likely and at the most.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Packs {
    /// At the least.
    pub least: u32,
    /// At the likely.
    pub likely: u32,
    /// At the most.
    pub most: u32,
}

impl Packs {
    /// The same number throughout.
    pub const fn exactly(packs: u32) -> Self {
        Self {
            least: packs,
            likely: packs,
            most: packs,
        }
    }

    /// As a range of numbers.
    pub fn spread(self) -> Spread {
        Spread {
            least: f64::from(self.least),
            likely: f64::from(self.likely),
            most: f64::from(self.most),
        }
    }
}

/// In what an amount is counted.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Unit {
    /// One piece.
    Piece,
    /// A foot of length.
    Foot,
    /// A square foot.
    SquareFoot,
    /// A square: 100 square feet.
    Square,
    /// One place on a roof.
    Place,
    /// The whole job.
    Job,
    /// An hour of work.
    Hour,
    /// A ton of 2,000 pounds.
    Ton,
    /// A load of the firm's trailer or skip.
    Load,
}

impl Unit {
    /// All of them.
    pub const ALL: [Self; 9] = [
        Self::Piece,
        Self::Foot,
        Self::SquareFoot,
        Self::Square,
        Self::Place,
        Self::Job,
        Self::Hour,
        Self::Ton,
        Self::Load,
    ];

    /// Its name in a price list.
    pub fn name(self) -> &'static str {
        match self {
            Self::Piece => "piece",
            Self::Foot => "foot",
            Self::SquareFoot => "square-foot",
            Self::Square => "square",
            Self::Place => "place",
            Self::Job => "job",
            Self::Hour => "hour",
            Self::Ton => "ton",
            Self::Load => "load",
        }
    }

    /// Its key in the message files; `.one` names a single one.
    pub fn key(self) -> &'static str {
        match self {
            Self::Piece => "unit-piece",
            Self::Foot => "unit-foot",
            Self::SquareFoot => "unit-square-foot",
            Self::Square => "unit-square",
            Self::Place => "unit-place",
            Self::Job => "unit-job",
            Self::Hour => "unit-hour",
            Self::Ton => "unit-ton",
            Self::Load => "unit-load",
        }
    }
}

macro_rules! named {
    ($(#[$doc:meta])* $noun:ident($prefix:literal) { $($(#[$variant_doc:meta])* $variant:ident = $name:literal in $unit:ident),+ $(,)? }) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
        pub enum $noun {
            $($(#[$variant_doc])* #[serde(rename = $name)] $variant),+
        }

        impl $noun {
            /// All of them, in the order they are listed.
            pub const ALL: &[Self] = &[$(Self::$variant),+];

            /// Its name in a price list.
            pub fn name(self) -> &'static str {
                match self { $(Self::$variant => $name),+ }
            }

            /// Its key in the message files.
            pub fn key(self) -> &'static str {
                match self { $(Self::$variant => concat!($prefix, "-", $name)),+ }
            }

            /// In what it is counted.
            pub fn unit(self) -> Unit {
                match self { $(Self::$variant => Unit::$unit),+ }
            }

            /// The one of that name in a price list.
            pub fn named(name: &str) -> Option<Self> {
                Self::ALL.iter().copied().find(|noun| noun.name() == name)
            }
        }
    };
}

named! {
    /// A thing that a roof takes and a supplier sells.
    Item("item") {
        /// Three-tab strip shingles.
        StripShingle = "strip-shingle" in Piece,
        /// Laminated shingles.
        LaminatedShingle = "laminated-shingle" in Piece,
        /// Starter strip, where it is not cut from the shingles.
        Starter = "starter" in Foot,
        /// Hip and ridge caps, where they are not cut from the shingles.
        Cap = "cap" in Foot,
        /// Underlayment, as it comes off the roll.
        Underlayment = "underlayment" in SquareFoot,
        /// Ice barrier, as it comes off the roll.
        IceBarrier = "ice-barrier" in SquareFoot,
        /// Drip edge.
        DripEdge = "drip-edge" in Foot,
        /// Metal for an open valley.
        ValleyMetal = "valley-metal" in Foot,
        /// Sheet that lines a closed valley.
        ValleySheet = "valley-sheet" in Foot,
        /// Step flashing.
        StepFlashing = "step-flashing" in Piece,
        /// Flashing where a roof ends level against a wall.
        HeadFlashing = "head-flashing" in Foot,
        /// Counter flashing, let into the wall above the other.
        CounterFlashing = "counter-flashing" in Foot,
        /// Kick-out.
        KickOut = "kick-out" in Piece,
        /// Boot for a pipe.
        PipeBoot = "pipe-boot" in Piece,
        /// Cricket.
        Cricket = "cricket" in Piece,
        /// Vent high on the roof.
        HighVent = "high-vent" in Piece,
        /// Intake vent low at the eave.
        LowVent = "low-vent" in Piece,
        /// Roofing nails.
        Nails = "nails" in Piece,
        /// Sheets of deck.
        DeckSheet = "deck-sheet" in Piece,
        /// Tubes of sealant.
        Sealant = "sealant" in Piece,
        /// Cans of asphalt cement.
        Cement = "cement" in Piece,
    }
}

named! {
    /// A piece of roof work that the firm keeps hours for.
    RoofTask("task") {
        /// Taking off one layer of covering; two layers count twice.
        TearOff = "tear-off" in Square,
        /// Laying shingles.
        LayShingles = "lay-shingles" in Square,
        /// Starter course.
        LayStarter = "lay-starter" in Foot,
        /// Hip and ridge caps.
        LayCap = "lay-cap" in Foot,
        /// Underlayment.
        LayUnderlayment = "lay-underlayment" in Square,
        /// Ice barrier.
        LayIceBarrier = "lay-ice-barrier" in Square,
        /// Drip edge.
        SetDripEdge = "set-drip-edge" in Foot,
        /// Valley.
        LineValley = "line-valley" in Foot,
        /// Step flashing.
        SetStepFlashing = "set-step-flashing" in Piece,
        /// Flashing against a wall at the high edge.
        SetHeadFlashing = "set-head-flashing" in Foot,
        /// Counter flashing.
        SetCounterFlashing = "set-counter-flashing" in Foot,
        /// Kick-out.
        SetKickOut = "set-kick-out" in Piece,
        /// Boot.
        SetBoot = "set-boot" in Piece,
        /// Cricket.
        BuildCricket = "build-cricket" in Piece,
        /// Vent, high or low.
        SetVent = "set-vent" in Piece,
        /// Setting up, protecting, cleaning up, once a job.
        SetUp = "set-up" in Job,
    }
}

impl Item {
    /// The key of what it is bought in, in the message files: a bundle, a roll.
    pub fn pack_key(self) -> &'static str {
        match self {
            Self::StripShingle | Self::LaminatedShingle | Self::Starter | Self::Cap => {
                "pack-bundle"
            }
            Self::Underlayment | Self::IceBarrier | Self::ValleySheet => "pack-roll",
            Self::DripEdge | Self::ValleyMetal | Self::HeadFlashing | Self::CounterFlashing => {
                "pack-length"
            }
            Self::Nails | Self::StepFlashing => "pack-box",
            Self::DeckSheet => "pack-sheet",
            Self::Sealant => "pack-tube",
            Self::Cement => "pack-can",
            Self::KickOut | Self::PipeBoot | Self::Cricket | Self::HighVent | Self::LowVent => {
                "pack-piece"
            }
        }
    }

    /// The shingle of a covering; `None` for what is no asphalt shingle.
    pub fn shingle_of(covering: Covering) -> Option<Self> {
        match covering {
            Covering::AsphaltStrip => Some(Self::StripShingle),
            Covering::AsphaltLaminated => Some(Self::LaminatedShingle),
            _ => None,
        }
    }

    /// Whether its waste comes from laying it piece by piece, so that no share is added.
    pub fn is_laid(self) -> bool {
        matches!(self, Self::StripShingle | Self::LaminatedShingle)
    }
}

/// How many packs of a range are ordered.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum OrderAt {
    /// As many as are most likely needed.
    Likely,
    /// As many as may be needed: what is left goes back.
    #[default]
    Most,
}

impl OrderAt {
    /// Both.
    pub const ALL: [Self; 2] = [Self::Likely, Self::Most];

    /// Its key in the message files.
    pub fn key(self) -> &'static str {
        match self {
            Self::Likely => "order-at-likely",
            Self::Most => "order-at-most",
        }
    }

    /// The packs that it orders.
    pub fn of(self, packs: Packs) -> u32 {
        match self {
            Self::Likely => packs.likely,
            Self::Most => packs.most,
        }
    }
}

/// One thing that a roof takes.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Need {
    /// What it is.
    pub item: Item,
    /// Its size, where that tells two apart: the pipe of a boot, the width of a valley's lining, the width of a cricket.
    #[serde(default)]
    pub size: Option<Length>,
    /// How much, in the item's unit, laps and offcuts that nobody can use included.
    pub amount: Spread,
    /// How much of it one pack holds, in the item's unit.
    pub pack: f64,
    /// Whole packs of it.
    pub packs: Packs,
    /// Packs ordered.
    pub order: u32,
    /// Why, and how it was counted.
    pub reason: Said,
    /// What that stands on.
    pub source: Source,
}

impl Need {
    /// Its name, with its size where it has one.
    pub fn name(&self) -> Said {
        sized(self.item, self.size)
    }

    /// How much: "1290 to 1340 square feet".
    pub fn says_amount(&self) -> Said {
        amount_said(self.amount, self.item.unit())
    }

    /// What is ordered: "4 rolls".
    pub fn says_order(&self) -> Said {
        Said::new(self.item.pack_key()).with("count", self.order)
    }
}

/// The name of an item, with its size where it has one.
pub fn sized(item: Item, size: Option<Length>) -> Said {
    let name = Said::new(item.key());
    match size {
        Some(size) => Said::new("item-sized")
            .with("item", name)
            .with("size", Arg::Length(size)),
        None => name,
    }
}

/// An amount with its unit: "24 to 26 squares". Feet and pieces are said whole, the rest to a tenth.
pub fn amount_said(amount: Spread, unit: Unit) -> Said {
    let decimals = match unit {
        Unit::Piece | Unit::Foot | Unit::SquareFoot | Unit::Load | Unit::Place => 0,
        Unit::Square | Unit::Job | Unit::Hour | Unit::Ton => 1,
    };
    amount.counted(decimals, unit.key())
}

/// How much there is of one piece of roof work at one pitch.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct TaskAmount {
    /// The work.
    pub task: RoofTask,
    /// The pitch where it is done; `None` where it is done from no slope.
    #[serde(default)]
    pub pitch: Option<Pitch>,
    /// How much, in the task's unit.
    pub amount: Spread,
}

/// Work on a part that comes along with a covering and is priced whole, as a remedy, because its pieces are not on the plan: the flashing of a
/// dormer or chimney that was not measured, a hood, a ridge vent.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct ByRemedy {
    /// The part.
    pub part: PartId,
    /// The remedy that renews it.
    pub remedy: RemedyKey,
    /// How long it is, in feet, where the plan shows that.
    #[serde(default)]
    pub feet: Option<Spread>,
}

/// A thing that could not be counted, and what is missing to count it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Gap {
    /// The thing.
    pub item: Item,
    /// What is missing.
    pub why: Said,
}

/// Planes of a plan that are the measure of no slope of the walk.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub struct Untied {
    /// Their letters on the plan.
    pub letters: Vec<String>,
    /// What they cover together, on the slope.
    pub square_feet: u32,
}

impl Untied {
    /// That they are neither counted nor priced.
    pub fn says(&self) -> Said {
        let letters: Vec<Said> = self.letters.iter().map(Said::verbatim).collect();
        Said::new("left-out-untied")
            .with("letters", letters)
            .with("area", self.square_feet)
    }
}

/// All that a new covering takes.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Takeoff {
    /// The structure, where the plan is of one in the book.
    #[serde(default)]
    pub structure: Option<StructureId>,
    /// The covering that is laid.
    pub covering: Covering,
    /// The planes that are covered, by their letters on the plan.
    pub planes: Vec<String>,
    /// The planes of slopes of the walk that are not, by their letters.
    pub planes_left: Vec<String>,
    /// The planes that are not and belong to no slope of the walk.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub untied: Option<Untied>,
    /// What is covered, in squares.
    pub squares: Spread,
    /// What is ordered.
    pub needs: Vec<Need>,
    /// The work that lays it, by pitch.
    pub tasks: Vec<TaskAmount>,
    /// What comes along and is priced whole.
    #[serde(default)]
    pub by_remedy: Vec<ByRemedy>,
    /// What could not be counted.
    pub gaps: Vec<Gap>,
    /// By which end of the ranges it is ordered.
    pub order_at: OrderAt,
}

impl Takeoff {
    /// The needs of one item.
    pub fn of(&self, item: Item) -> impl Iterator<Item = &Need> {
        self.needs.iter().filter(move |need| need.item == item)
    }
}
