//! The firm's own price list: what material costs it, how long work takes, and how a price is made of both.

use crate::catalogue::RemedyKey;
use crate::stack::Covering;
use crate::takeoff::{Item, RoofTask, Unit};
use crate::units::{Length, Money, Pitch};
use rust_decimal::{Decimal, RoundingStrategy};
use serde::{Deserialize, Serialize};

/// A share of something: 0.35 is 35 %.
#[derive(
    Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize,
)]
#[serde(transparent)]
pub struct Share(pub Decimal);

impl std::fmt::Display for Share {
    /// In per cent, as a price list writes it: `8.25 %`.
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(f, "{} %", (self.0 * Decimal::ONE_HUNDRED).normalize())
    }
}

/// What is done with exactly half of the last place.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Half {
    /// Up: 0.125 becomes 0.13.
    #[default]
    Up,
    /// To the even neighbour: 0.125 becomes 0.12.
    Even,
}

/// To what a price before tax is rounded. Lines and tax are always rounded to the cent.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum RoundTo {
    /// The cent.
    #[default]
    Cent,
    /// A whole amount, without cents.
    Whole,
}

/// How money is rounded.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Rounding {
    /// To what the price before tax is rounded.
    pub to: RoundTo,
    /// What is done with a half.
    pub half: Half,
}

impl Rounding {
    /// To the cent.
    pub fn cents(self, amount: Decimal) -> Money {
        Money(amount.round_dp_with_strategy(2, self.strategy()))
    }

    /// To what a price before tax is rounded to.
    pub fn price(self, amount: Decimal) -> Money {
        match self.to {
            RoundTo::Cent => self.cents(amount),
            RoundTo::Whole => Money(amount.round_dp_with_strategy(0, self.strategy())),
        }
    }

    fn strategy(self) -> RoundingStrategy {
        match self.half {
            Half::Up => RoundingStrategy::MidpointAwayFromZero,
            Half::Even => RoundingStrategy::MidpointNearestEven,
        }
    }
}

/// What the firm adds to what the work costs it. One or the other, never both.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", tag = "is", content = "share")]
pub enum Gain {
    /// A share of the price: cost 65, margin 35 %, price 100.
    Margin(Share),
    /// A share of the cost: cost 65, markup 35 %, price 87.75.
    Markup(Share),
}

impl Gain {
    /// Its key in the message files.
    pub fn key(self) -> &'static str {
        match self {
            Self::Margin(_) => "gain-margin",
            Self::Markup(_) => "gain-markup",
        }
    }

    /// The share.
    pub fn share(self) -> Share {
        match self {
            Self::Margin(share) | Self::Markup(share) => share,
        }
    }
}

/// What sales tax is on.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum TaxOn {
    /// What the firm pays for material.
    Materials,
    /// The whole price.
    All,
}

impl TaxOn {
    /// Both.
    pub const ALL: [Self; 2] = [Self::Materials, Self::All];

    /// Its name in a price list.
    pub fn name(self) -> &'static str {
        match self {
            Self::Materials => "materials",
            Self::All => "all",
        }
    }

    /// Its key in the message files.
    pub fn key(self) -> &'static str {
        match self {
            Self::Materials => "tax-on-materials",
            Self::All => "tax-on-all",
        }
    }
}

/// Sales tax.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct SalesTax {
    /// The rate.
    pub rate: Share,
    /// What it is on.
    pub on: TaxOn,
}

/// A band of steepness: from where the one before it ends.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Band {
    /// Its name in the list: "walkable".
    pub key: String,
    /// The steepest pitch in it; `None` for the last.
    #[serde(default)]
    pub to: Option<Pitch>,
}

/// What an hour of one kind of work costs the firm.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Rate {
    /// Its name in the list: "roofer".
    pub key: String,
    /// The hour.
    pub hour: Money,
}

/// A material as a supplier sells it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Material {
    /// What it is.
    pub item: Item,
    /// The greatest size that it serves, where it comes in sizes: the pipe of a boot.
    #[serde(default)]
    pub size: Option<Length>,
    /// The firm's own name for it.
    #[serde(default)]
    pub name: String,
    /// How much one pack holds, in the item's unit.
    pub pack: Decimal,
    /// Width of a roll.
    #[serde(default)]
    pub width: Option<Length>,
    /// Length of a roll or of a piece of metal.
    #[serde(default)]
    pub length: Option<Length>,
    /// What a pack costs.
    pub price: Money,
    /// What is added for waste, where the waste is not computed from the roof.
    #[serde(default)]
    pub waste: Share,
}

/// How long a piece of roof work takes.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct TaskHours {
    /// The work.
    pub task: RoofTask,
    /// The band of steepness; `None` for all that have no row of their own.
    #[serde(default)]
    pub band: Option<String>,
    /// Hours for one of the task's unit. None at all where another task's hours hold it.
    pub hours: Decimal,
    /// The rate; `None` takes the first.
    #[serde(default)]
    pub rate: Option<String>,
}

/// What a remedy takes, for one place, foot or square of it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct RemedyRow {
    /// The remedy.
    pub remedy: RemedyKey,
    /// The band of steepness; `None` for all that have no row of their own.
    #[serde(default)]
    pub band: Option<String>,
    /// In what it is counted: a place, a foot, a square foot or a square.
    pub unit: Unit,
    /// Hours for one.
    pub hours: Decimal,
    /// The rate; `None` takes the first.
    #[serde(default)]
    pub rate: Option<String>,
    /// Small material for one, as a sum of money.
    #[serde(default)]
    pub sundries: Option<Money>,
}

/// Material that a remedy takes, for one place, foot or square of it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct RemedyUse {
    /// The remedy.
    pub remedy: RemedyKey,
    /// The material.
    pub item: Item,
    /// How much for one, in the item's unit.
    pub amount: Decimal,
}

/// A trailer or skip.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Trailer {
    /// The most that it may carry, in pounds.
    pub pounds: Decimal,
    /// The most that it holds, in cubic yards.
    pub cubic_yards: Decimal,
}

/// What it costs to be rid of what comes down.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Disposal {
    /// For a ton of 2,000 pounds.
    #[serde(default)]
    pub ton: Option<Money>,
    /// For a load.
    #[serde(default)]
    pub load: Option<Money>,
    /// What it is hauled with.
    #[serde(default)]
    pub trailer: Option<Trailer>,
}

/// How long a covering usually lasts, in years, and who says so.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Life {
    /// The covering.
    pub covering: Covering,
    /// The shortest usual.
    pub least: u8,
    /// The likeliest.
    pub likely: u8,
    /// The longest usual.
    pub most: u8,
    /// Who says so.
    pub source: String,
}

/// A firm's price list.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct PriceList {
    /// The currency, by its three letters (ISO 4217).
    pub currency: String,
    /// Days that an offer holds.
    pub valid_days: u16,
    /// How money is rounded.
    pub rounding: Rounding,
    /// What the firm adds.
    pub gain: Gain,
    /// What the firm's running costs add to what the work costs, as a share of that.
    pub overhead: Share,
    /// Sales tax; `None` where there is none.
    #[serde(default)]
    pub tax: Option<SalesTax>,
    /// The least that a visit with tools is done for, before tax.
    #[serde(default)]
    pub minimum: Option<Money>,
    /// The permit for a new covering.
    #[serde(default)]
    pub permit: Option<Money>,
    /// What the owner pays for each sheet of deck that is replaced, work and gain included, before tax.
    #[serde(default)]
    pub sheet: Option<Money>,
    /// The rate a year at which money now and money later are compared.
    #[serde(default)]
    pub interest: Option<Share>,
    /// Bands of steepness, flattest first; the last has no end.
    pub bands: Vec<Band>,
    /// Rates for an hour, the usual one first.
    pub rates: Vec<Rate>,
    /// Materials.
    pub materials: Vec<Material>,
    /// Hours of roof work.
    pub tasks: Vec<TaskHours>,
    /// Remedies.
    pub remedies: Vec<RemedyRow>,
    /// What remedies take.
    pub uses: Vec<RemedyUse>,
    /// Disposal.
    #[serde(default)]
    pub disposal: Disposal,
    /// Usual lives.
    #[serde(default)]
    pub lives: Vec<Life>,
}

impl PriceList {
    /// The band that a pitch lies in.
    pub fn band_of(&self, pitch: Pitch) -> Option<&Band> {
        self.bands
            .iter()
            .find(|band| band.to.is_none_or(|to| pitch <= to))
    }

    /// The rate of that name; the first where none is named.
    pub fn rate(&self, key: Option<&str>) -> Option<&Rate> {
        match key {
            Some(key) => self.rates.iter().find(|rate| rate.key == key),
            None => self.rates.first(),
        }
    }

    /// The material for an item: of those that come in sizes the smallest that serves, else the one without a size.
    pub fn material(&self, item: Item, size: Option<Length>) -> Option<&Material> {
        let rows = || self.materials.iter().filter(|row| row.item == item);
        let sized = size.and_then(|size| {
            rows()
                .filter(|row| row.size.is_some_and(|serves| serves >= size))
                .min_by_key(|row| row.size)
        });
        sized.or_else(|| rows().find(|row| row.size.is_none()))
    }

    /// The hours of a task at a pitch: the row of its band, else the row for all.
    pub fn task(&self, task: RoofTask, pitch: Option<Pitch>) -> Option<&TaskHours> {
        let rows = || self.tasks.iter().filter(move |row| row.task == task);
        self.in_band(pitch, rows, |row| row.band.as_deref())
    }

    /// The row of a remedy at a pitch: the row of its band, else the row for all.
    pub fn remedy(&self, remedy: &RemedyKey, pitch: Option<Pitch>) -> Option<&RemedyRow> {
        let rows = || {
            self.remedies
                .iter()
                .filter(move |row| row.remedy == *remedy)
        };
        self.in_band(pitch, rows, |row| row.band.as_deref())
    }

    fn in_band<'a, T: 'a, I: Iterator<Item = &'a T>>(
        &self,
        pitch: Option<Pitch>,
        rows: impl Fn() -> I,
        band_of: impl Fn(&T) -> Option<&str>,
    ) -> Option<&'a T> {
        let band = pitch.and_then(|pitch| self.band_of(pitch));
        band.and_then(|band| rows().find(|row| band_of(row) == Some(band.key.as_str())))
            .or_else(|| rows().find(|row| band_of(row).is_none()))
    }
}
