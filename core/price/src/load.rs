//! What a roof carries by its coverings, now and with another layer.

use crate::reading::{Reading, layers_of, speak_for};
use crate::tear_off::{TearOffError, over_spots};
use crate::weights::Weights;
use trade::roof::{Plane, RoofPlan};
use trade::stack::Covering;
use trade::takeoff::{PlaneLoad, Spread};

/// A second layer of at most so many pounds a square foot over one is excepted from the structural re-check (IEBC 706.2 exception 2).
const EXCEPTED: f64 = 3.0;

/// What each plane carries, and what it would with another covering over it. Suspect asbestos is weighed where it lies: nobody touches it for that.
///
/// # Errors
/// Where layers were not counted, or one cannot be weighed.
pub fn load(
    plan: &RoofPlan,
    readings: &[Reading],
    another: Option<Covering>,
    weights: &Weights,
) -> Result<Vec<PlaneLoad>, TearOffError> {
    plan.planes
        .iter()
        .map(|plane| plane_load(plan, plane, readings, another, weights))
        .collect()
}

fn plane_load(
    plan: &RoofPlan,
    plane: &Plane,
    readings: &[Reading],
    another: Option<Covering>,
    weights: &Weights,
) -> Result<PlaneLoad, TearOffError> {
    let here = speak_for(readings, plane);
    let layers =
        layers_of(&here).ok_or_else(|| TearOffError::LayersNotCounted(plane.letter.clone()))?;
    let spots = here
        .iter()
        .map(|reading| carried_at(reading, weights))
        .collect::<Result<Vec<Spread>, _>>()?;
    let on_slope = over_spots(&spots);
    let factor = Spread::within(plane.pitch.slope_factor(), plan.pitch_within);
    let another = another
        .map(|covering| one_layer(covering, weights))
        .transpose()?;
    Ok(PlaneLoad {
        letter: plane.letter.clone(),
        layers,
        on_slope,
        on_plan: on_slope.times(factor),
        with_another: another.map(|layer| (on_slope + layer).times(factor)),
        excepted: another.map(|layer| layers.most == 1 && layer.most <= EXCEPTED),
    })
}

fn carried_at(reading: &Reading, weights: &Weights) -> Result<Spread, TearOffError> {
    let sheathing = Spread::exactly(reading.sheathing * weights.sheathing_an_inch);
    reading
        .each_layer()
        .map(|covering| one_layer(covering, weights))
        .try_fold(sheathing, |sum, layer| Ok(sum + layer?))
}

fn one_layer(covering: Covering, weights: &Weights) -> Result<Spread, TearOffError> {
    weights
        .carried
        .get(&covering)
        .copied()
        .ok_or(TearOffError::WeightNotKnown(covering))
}
