//! How what a roof takes is sold: sizes of rolls and lengths, laps, what a pack holds. Read from the firm's price list where it
//! says so; the rest is a starting point.

use rust_decimal::prelude::ToPrimitive;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;
use trade::price_list::{Material, PriceList};
use trade::takeoff::Item;
use trade::units::Length;

/// How one item is sold and lapped.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Supply {
    /// How much one pack holds, in the item's unit.
    pub pack: f64,
    /// Width of a roll or lining.
    #[serde(default)]
    pub width: Option<Length>,
    /// Length of a roll or of a piece of metal.
    #[serde(default)]
    pub length: Option<Length>,
    /// Lap of one course over the next; of one length of metal over the next.
    #[serde(default)]
    pub lap: Length,
    /// Lap at the end of a roll.
    #[serde(default)]
    pub end_lap: Length,
    /// Share that is added for waste, where it is not computed.
    #[serde(default)]
    pub waste: f64,
}

impl Supply {
    /// Sold one by one, or so many in a pack.
    pub const fn packed(pack: f64) -> Self {
        Self {
            pack,
            width: None,
            length: None,
            lap: Length::ZERO,
            end_lap: Length::ZERO,
            waste: 0.0,
        }
    }

    /// A roll of sheet.
    pub fn roll(width: Length, length: Length) -> Self {
        Self {
            width: Some(width),
            length: Some(length),
            ..Self::packed(width.in_feet() * length.in_feet())
        }
    }

    /// A length of metal that laps the next.
    pub fn lengths(length: Length, lap: Length) -> Self {
        Self {
            length: Some(length),
            lap,
            ..Self::packed(length.in_feet())
        }
    }

    /// What is bought for one foot of cover where lengths lap: 10 ft lapped 2 in cover 9 ft 10 in.
    pub fn lapped(&self) -> f64 {
        let covers = |length: Length| length.in_inches() - self.lap.in_inches();
        self.length
            .filter(|length| covers(*length) > 0.0)
            .map_or(1.0, |length| length.in_inches() / covers(length))
    }

    /// What is bought for one foot of roll where its end laps.
    pub fn end_lapped(&self) -> f64 {
        let covers = |length: Length| length.in_inches() - self.end_lap.in_inches();
        self.length
            .filter(|length| covers(*length) > 0.0)
            .map_or(1.0, |length| length.in_inches() / covers(length))
    }
}

/// How everything is sold.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Supplies {
    /// By item; what is not there is sold by the piece.
    pub of: BTreeMap<Item, Supply>,
    /// Whether starter strip is bought; otherwise it is cut from the shingles.
    pub buys_starter: bool,
    /// Whether caps are bought; otherwise they are cut from the shingles.
    pub buys_caps: bool,
}

impl Supplies {
    /// How an item is sold.
    pub fn supply(&self, item: Item) -> Supply {
        self.of
            .get(&item)
            .copied()
            .unwrap_or_else(|| Supply::packed(1.0))
    }

    /// As the firm's list says; what it does not say is as by default. Starter and caps are bought where the list has them.
    pub fn of(list: &PriceList) -> Self {
        let mut supplies = Self::default();
        for row in &list.materials {
            let known = supplies.supply(row.item);
            supplies.of.insert(row.item, listed(row, known));
        }
        let has = |item| list.materials.iter().any(|row| row.item == item);
        supplies.buys_starter = has(Item::Starter);
        supplies.buys_caps = has(Item::Cap);
        supplies
    }
}

fn listed(row: &Material, known: Supply) -> Supply {
    Supply {
        pack: row.pack.to_f64().unwrap_or(known.pack),
        width: row.width.or(known.width),
        length: row.length.or(known.length),
        waste: row.waste.0.to_f64().unwrap_or(known.waste),
        ..known
    }
}

impl Default for Supplies {
    /// Starting points. The roll of felt is a textbook's (36 in by 144 ft: 432 ft²; others have 300 and 400), the lap of drip edge
    /// IRC R905.2.8.5, the width of valley metal R905.2.8.2; that of valley sheet and the end lap of felt are from memory of R905.2.8.2
    /// and R905.1.1. All else is common practice with no source.
    fn default() -> Self {
        let inches = Length::inches;
        let feet = Length::feet;
        let of = [
            (
                Item::Underlayment,
                Supply {
                    lap: inches(2),
                    end_lap: inches(4),
                    ..Supply::roll(inches(36), feet(144))
                },
            ),
            (
                Item::IceBarrier,
                Supply {
                    lap: inches(4),
                    end_lap: inches(6),
                    ..Supply::roll(inches(36), inches(800))
                },
            ),
            (Item::DripEdge, Supply::lengths(feet(10), inches(2))),
            (
                Item::ValleyMetal,
                Supply {
                    width: Some(inches(24)),
                    ..Supply::lengths(feet(10), inches(6))
                },
            ),
            (
                Item::ValleySheet,
                Supply {
                    width: Some(inches(36)),
                    ..Supply::lengths(feet(36), inches(12))
                },
            ),
            (Item::HeadFlashing, Supply::lengths(feet(10), inches(2))),
            (Item::CounterFlashing, Supply::lengths(feet(10), inches(2))),
            (Item::Starter, Supply::packed(105.0)),
            (Item::Cap, Supply::packed(31.0)),
            (Item::StepFlashing, Supply::packed(100.0)),
            (Item::Nails, Supply::packed(7200.0)),
        ];
        Self {
            of: of.into(),
            buys_starter: false,
            buys_caps: false,
        }
    }
}
