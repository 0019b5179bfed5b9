//! What is torn off and hauled away, and what a roof carries.

use super::{Packs, Spread, TaskAmount, Unit};
use crate::words::Said;
use serde::{Deserialize, Serialize};

/// Layers that lie on what is torn off: the least at any spot and the most.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Layers {
    /// The least.
    pub least: u8,
    /// The most.
    pub most: u8,
}

/// Which limit of the trailer or skip is reached first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Binding {
    /// Its weight.
    Weight,
    /// Its volume.
    Volume,
}

impl Binding {
    /// Both.
    pub const ALL: [Self; 2] = [Self::Weight, Self::Volume];

    /// Its key in the message files.
    pub fn key(self) -> &'static str {
        match self {
            Self::Weight => "binding-weight",
            Self::Volume => "binding-volume",
        }
    }
}

/// What a tear-off takes down and hauls away.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct TearOff {
    /// The area torn off, in squares, each square once.
    pub squares: Spread,
    /// The layers that lie there.
    pub layers: Layers,
    /// Squares times layers, each layer's square once.
    pub layer_squares: Spread,
    /// Its weight in pounds.
    pub pounds: Spread,
    /// Its volume on the trailer, in cubic yards.
    pub cubic_yards: Spread,
    /// Whole loads.
    pub loads: Packs,
    /// What makes the loads as many as they are.
    pub bound_by: Binding,
    /// The work of taking it off, by pitch.
    pub tasks: Vec<TaskAmount>,
}

impl TearOff {
    /// What comes down, in one line.
    pub fn says(&self) -> Said {
        let layers = Spread {
            least: f64::from(self.layers.least),
            likely: f64::from(self.layers.most),
            most: f64::from(self.layers.most),
        };
        Said::new("tear-off-says")
            .with("squares", self.squares.counted(1, "unit-roof-square"))
            .with("layers", layers.counted(0, "unit-layer"))
            .with("pounds", self.pounds.counted(0, "unit-pound"))
            .with("yards", self.cubic_yards.counted(0, "unit-cubic-yard"))
            .with("loads", self.loads.spread().counted(0, Unit::Load.key()))
            .with("by", Said::new(self.bound_by.key()))
    }
}

/// What a plane carries by its coverings, in pounds a square foot.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct PlaneLoad {
    /// The plane, by its letter on the plan.
    pub letter: String,
    /// Layers that lie there.
    pub layers: Layers,
    /// On the slope.
    pub on_slope: Spread,
    /// On plan: the slope factor makes it more.
    pub on_plan: Spread,
    /// On plan with another layer; `None` where none is asked about.
    #[serde(default)]
    pub with_another: Option<Spread>,
    /// Whether another layer is excepted from the structural re-check (IEBC 706.2 exception 2: at most 3 psf over one layer).
    #[serde(default)]
    pub excepted: Option<bool>,
}

impl PlaneLoad {
    /// What it carries now, and with another layer whether the frame must be checked first.
    pub fn says(&self) -> Vec<Said> {
        let now = Said::new("load-now")
            .with("letter", self.letter.as_str())
            .with("slope", self.on_slope.says(1))
            .with("plan", self.on_plan.says(1));
        let another = self.with_another.map(|plan| {
            Said::new("load-with-another")
                .with("letter", self.letter.as_str())
                .with("plan", plan.says(1))
        });
        let check = self.excepted.map(|excepted| {
            Said::new(if excepted {
                "load-excepted"
            } else {
                "load-not-excepted"
            })
        });
        std::iter::once(now).chain(another).chain(check).collect()
    }
}
