//! What the roofer chooses for one roof before it is counted.

use serde::{Deserialize, Serialize};
use trade::takeoff::{OrderAt, Spread};
use trade::units::Length;
use trade::worksheet::{Between, Ventilation, Worksheet};

/// Nails that a strip takes at least (IRC R905.2.6).
pub(crate) const LEAST_NAILS: u8 = 4;

/// What the roofer chooses.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[serde(default)]
pub struct Choices {
    /// By which end of the ranges it is ordered.
    pub order_at: OrderAt,
    /// Nails a strip: at least 4 (IRC R905.2.6), 6 in high wind or on a steep slope as the maker says.
    pub nails_a_strip: u8,
    /// The overhang of eaves where neither the plan nor a measure has one.
    pub overhang: Option<Length>,
    /// Whether it is a detached accessory structure with no conditioned space: no ice barrier is asked for there.
    pub unheated_accessory: bool,
    /// Counter flashing along walls, beside that of the chimneys.
    pub counter_flashing: Length,
    /// How the attic is vented, where vents are counted.
    pub vents: Option<Ventilation>,
    /// Sheets of deck allowed for.
    pub deck_sheets: Option<Spread>,
    /// Tubes of sealant.
    pub sealant: u32,
    /// Cans of asphalt cement.
    pub cement: u32,
}

impl Default for Choices {
    fn default() -> Self {
        Self {
            order_at: OrderAt::default(),
            nails_a_strip: LEAST_NAILS,
            overhang: None,
            unheated_accessory: false,
            counter_flashing: Length::ZERO,
            vents: None,
            deck_sheets: None,
            sealant: 0,
            cement: 0,
        }
    }
}

impl From<&Worksheet> for Choices {
    /// As it stands on the worksheet. What the record itself says is not on it: whether the structure is heated, how much of the deck is wet.
    fn from(sheet: &Worksheet) -> Self {
        Self {
            order_at: sheet.order_at,
            nails_a_strip: sheet.nails_a_strip.unwrap_or(LEAST_NAILS),
            overhang: sheet.overhang,
            unheated_accessory: false,
            counter_flashing: sheet.counter_flashing.unwrap_or(Length::ZERO),
            vents: sheet.vents,
            deck_sheets: sheet.deck_sheets.map(Between::spread),
            sealant: sheet.sealant.into(),
            cement: sheet.cement.into(),
        }
    }
}
