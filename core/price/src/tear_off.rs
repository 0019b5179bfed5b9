//! What comes down in a tear-off: squares by layers, weight, volume, loads.

use crate::reading::{Reading, layers_of, speak_for};
use crate::takeoff::merged_tasks;
use crate::weights::Weights;
use rust_decimal::prelude::ToPrimitive;
use trade::price_list::Trailer;
use trade::roof::{Plane, RoofPlan};
use trade::stack::Covering;
use trade::takeoff::{Binding, Layers, RoofTask, Spread, TaskAmount, TearOff};
use trade::words::Said;

/// Why a tear-off cannot be reckoned.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum TearOffError {
    /// A layer may hold asbestos: it is not disturbed, and who may take it off says what that takes.
    #[error("a layer may hold asbestos: a licensed trade must look at it first")]
    Asbestos,
    /// Nobody counted the layers on a slope.
    #[error("nobody counted the layers on slope {0}")]
    LayersNotCounted(String),
    /// A layer is of a covering whose weight is not known.
    #[error("what {0:?} weighs is not known")]
    WeightNotKnown(Covering),
    /// The plan has no such plane.
    #[error("the plan has no plane {0}")]
    NoSuchPlane(usize),
    /// The trailer carries or holds nothing, or debris weighs nothing.
    #[error("the trailer's limits must be more than nothing")]
    Trailer,
}

impl TearOffError {
    /// What it says to the roofer.
    pub fn says(&self) -> Said {
        match self {
            Self::Asbestos => Said::new("tear-off-error-asbestos"),
            Self::LayersNotCounted(letter) => {
                Said::new("tear-off-error-layers").with("letter", letter.as_str())
            }
            Self::WeightNotKnown(covering) => {
                Said::new("tear-off-error-weight").with("covering", Said::new(covering.key()))
            }
            Self::NoSuchPlane(_) => Said::new("takeoff-error-other-plan"),
            Self::Trailer => Said::new("tear-off-error-trailer"),
        }
    }
}

/// Reckons the tear-off of some planes, by their place in the plan, from readings of layers.
///
/// # Errors
/// Where a layer may hold asbestos, where layers were not counted or cannot be weighed, where a plane is not of the plan.
pub fn tear_off(
    plan: &RoofPlan,
    planes: &[usize],
    readings: &[Reading],
    weights: &Weights,
    trailer: &Trailer,
) -> Result<TearOff, TearOffError> {
    let mut down = Down::default();
    for &at in planes {
        let plane = plan.planes.get(at).ok_or(TearOffError::NoSuchPlane(at))?;
        down.take(plane, plan.area_within(), readings, weights)?;
    }
    let layers = down.layers.ok_or(TearOffError::NoSuchPlane(0))?;
    if weights.a_cubic_yard.least <= 0.0 {
        return Err(TearOffError::Trailer);
    }
    let cubic_yards = Spread {
        least: down.pounds.least / weights.a_cubic_yard.most,
        likely: down.pounds.likely / weights.a_cubic_yard.likely,
        most: down.pounds.most / weights.a_cubic_yard.least,
    };
    let limit = |limit: rust_decimal::Decimal| {
        limit
            .to_f64()
            .filter(|limit| *limit > 0.0)
            .ok_or(TearOffError::Trailer)
    };
    let (pounds_limit, yards_limit) = (limit(trailer.pounds)?, limit(trailer.cubic_yards)?);
    let by_weight = down.pounds.scaled(1.0 / pounds_limit);
    let by_volume = cubic_yards.scaled(1.0 / yards_limit);
    let bound_by = if by_weight.likely >= by_volume.likely {
        Binding::Weight
    } else {
        Binding::Volume
    };
    let loads = Spread {
        least: by_weight.least.max(by_volume.least),
        likely: by_weight.likely.max(by_volume.likely),
        most: by_weight.most.max(by_volume.most),
    };
    Ok(TearOff {
        squares: down.squares,
        layers,
        layer_squares: down.layer_squares,
        pounds: down.pounds,
        cubic_yards,
        loads: loads.in_packs(1.0),
        bound_by,
        tasks: merged_tasks(down.tasks),
    })
}

/// What came down so far.
#[derive(Default)]
struct Down {
    squares: Spread,
    layers: Option<Layers>,
    layer_squares: Spread,
    pounds: Spread,
    tasks: Vec<TaskAmount>,
}

impl Down {
    fn take(
        &mut self,
        plane: &Plane,
        within: f64,
        readings: &[Reading],
        weights: &Weights,
    ) -> Result<(), TearOffError> {
        let here = speak_for(readings, plane);
        if here
            .iter()
            .any(|reading| reading.coverings.contains(&Covering::AsbestosCement))
        {
            return Err(TearOffError::Asbestos);
        }
        let layers =
            layers_of(&here).ok_or_else(|| TearOffError::LayersNotCounted(plane.letter.clone()))?;
        let squares = Spread::within(plane.slope_area.in_squares(), within);
        let layer_squares = squares.times(likely_layers(&here, layers));
        self.squares = self.squares + squares;
        self.layer_squares = self.layer_squares + layer_squares;
        self.pounds = self.pounds + squares.times(pounds_a_square(&here, weights)?);
        self.layers = Some(match self.layers {
            None => layers,
            Some(so_far) => Layers {
                least: so_far.least.min(layers.least),
                most: so_far.most.max(layers.most),
            },
        });
        self.tasks.push(TaskAmount {
            task: RoofTask::TearOff,
            pitch: Some(plane.pitch),
            amount: layer_squares,
        });
        Ok(())
    }
}

/// Layers as a range; the likeliest number is that of most spots, of two met equally often the greater.
fn likely_layers(readings: &[&Reading], layers: Layers) -> Spread {
    let met = |count: u8| {
        readings
            .iter()
            .filter(|reading| reading.layers == count)
            .count()
    };
    let likely = (layers.least..=layers.most)
        .max_by_key(|count| (met(*count), *count))
        .unwrap_or(layers.most);
    Spread {
        least: f64::from(layers.least),
        likely: f64::from(likely),
        most: f64::from(layers.most),
    }
}

/// What all layers of a square weigh: the lightest spot at its least, the mean of the spots, the heaviest spot at its most.
fn pounds_a_square(readings: &[&Reading], weights: &Weights) -> Result<Spread, TearOffError> {
    let spots = readings
        .iter()
        .map(|reading| spot_pounds(reading, weights))
        .collect::<Result<Vec<Spread>, _>>()?;
    Ok(over_spots(&spots))
}

/// One range over several spots.
pub(crate) fn over_spots(spots: &[Spread]) -> Spread {
    let count = u32::try_from(spots.len()).unwrap_or(u32::MAX).max(1);
    Spread {
        least: spots.iter().map(|spot| spot.least).fold(f64::MAX, f64::min),
        likely: spots.iter().map(|spot| spot.likely).sum::<f64>() / f64::from(count),
        most: spots.iter().map(|spot| spot.most).fold(0.0, f64::max),
    }
}

fn spot_pounds(reading: &Reading, weights: &Weights) -> Result<Spread, TearOffError> {
    let sheathing = Spread::exactly(reading.sheathing * weights.sheathing_an_inch * 100.0);
    reading
        .each_layer()
        .map(|covering| {
            weights
                .a_square
                .get(&covering)
                .copied()
                .ok_or(TearOffError::WeightNotKnown(covering))
        })
        .try_fold(sheathing, |sum, layer| Ok(sum + layer?))
}
