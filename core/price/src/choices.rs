//! What the roofer chooses for one roof before it is counted.

use serde::{Deserialize, Serialize};
use trade::answer::Answer;
use trade::takeoff::{OrderAt, Spread};
use trade::units::{Area, Length};

/// How the attic is vented.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Ventilation {
    /// The vented space, on plan.
    pub area: Area,
    /// The share of the net free area that is high on the roof.
    pub high_share: f64,
    /// How far the high vents stand above those at the eave.
    #[serde(default)]
    pub above_eave_vents: Option<Length>,
    /// How far the high vents stand below the ridge.
    #[serde(default)]
    pub below_ridge: Option<Length>,
    /// Whether a vapour retarder lies on the warm side of the ceiling.
    #[serde(default)]
    pub retarder: Answer,
    /// Net free area of one high vent, in square inches, as its maker states it.
    pub high_vent: f64,
    /// Net free area of one intake vent, in square inches, as its maker states it.
    pub low_vent: f64,
    /// Net free area of high vents that stay, in square inches.
    #[serde(default)]
    pub high_stays: f64,
    /// Net free area of intake vents that stay, in square inches.
    #[serde(default)]
    pub low_stays: f64,
}

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
            nails_a_strip: 4,
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
