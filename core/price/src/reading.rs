//! What a reading of layers says to a tear-off: which coverings lie at a spot, and how many layers.

use serde::{Deserialize, Serialize};
use trade::ids::SlopeId;
use trade::roof::Plane;
use trade::stack::{Covering, LayerIs, Learned, Stack};
use trade::takeoff::Layers;

/// Layers at one spot.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Reading {
    /// The slope.
    #[serde(default)]
    pub slope: Option<SlopeId>,
    /// The coverings that were seen, from the top down.
    pub coverings: Vec<Covering>,
    /// Layers of covering. More than coverings where a cut edge shows more than were named.
    pub layers: u8,
    /// Sheathing laid over an older covering, in inches of thickness all together.
    #[serde(default)]
    pub sheathing: f64,
}

/// Sheathing whose thickness nobody measured, in inches. Common practice, no source.
const SHEATHING: f64 = 0.5;

impl Reading {
    /// What a stack lists; `counted` is how many layers it shows in all, its edge read too. `None` for what the owner only said, and
    /// for a stack that shows no covering.
    pub fn of(stack: &Stack, counted: u8) -> Option<Self> {
        let coverings: Vec<Covering> = stack
            .layers
            .iter()
            .filter_map(|layer| match layer.is {
                LayerIs::Covering(covering) => Some(covering),
                LayerIs::Membrane | LayerIs::Sheathing | LayerIs::Deck => None,
            })
            .collect();
        let listed = u8::try_from(coverings.len()).unwrap_or(u8::MAX);
        let layers = counted.max(listed);
        let seen = layers > 0 && stack.learned != Learned::OwnersWord;
        seen.then(|| Self {
            slope: stack.slope,
            coverings,
            layers,
            sheathing: sheathing_in(stack),
        })
    }

    /// Every layer's covering from the top down; one that was counted and not named is taken to be like the lowest that was.
    pub fn each_layer(&self) -> impl Iterator<Item = Covering> + '_ {
        let last = self.coverings.last().copied().unwrap_or(Covering::Unclear);
        (0..usize::from(self.layers))
            .map(move |layer| self.coverings.get(layer).copied().unwrap_or(last))
    }
}

fn sheathing_in(stack: &Stack) -> f64 {
    stack
        .layers
        .iter()
        .filter(|layer| layer.is == LayerIs::Sheathing)
        .map(|layer| {
            layer
                .thickness
                .map_or(SHEATHING, |thickness| thickness.value.in_inches())
        })
        .sum()
}

/// The readings that speak for a plane: those of its slope; where it has none, all.
pub(crate) fn speak_for<'a>(readings: &'a [Reading], plane: &Plane) -> Vec<&'a Reading> {
    let own: Vec<&Reading> = readings
        .iter()
        .filter(|reading| plane.slope.is_some() && reading.slope == plane.slope)
        .collect();
    if own.is_empty() {
        readings.iter().collect()
    } else {
        own
    }
}

/// The least and the most layers of some readings; `None` where there are none.
pub(crate) fn layers_of(readings: &[&Reading]) -> Option<Layers> {
    let counts = || readings.iter().map(|reading| reading.layers);
    Some(Layers {
        least: counts().min()?,
        most: counts().max()?,
    })
}
