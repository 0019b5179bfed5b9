//! Chimneys: the cricket behind them (IRC R903.2.2, R1003.20) and how high they stand (R1003.9).

use super::measure::{exceeds, falls_short};
use super::sections::Irc;
use super::{Case, Completed, Found, Rule, reason};
use crate::as_of::Standing;
use trade::answer::Answer;
use trade::mark::MeasureOf;
use trade::units::{Length, Measured, Pitch};
use trade::verdict::Strength;

/// Wider than this, parallel to the ridge, a chimney or penetration has a cricket; exactly so wide it needs none.
pub const CRICKET_OVER: Length = Length::inches(30);
/// Least height of a chimney above where it leaves the roof.
pub const LEAST_HEIGHT: Length = Length::feet(3);
/// Height of a chimney above anything near it.
pub const ABOVE_NEAR: Length = Length::feet(2);
/// What is near, in plan.
pub const NEAR: Length = Length::feet(10);

const CHIMNEYS: &[&str] = &["masonry-chimney", "prefab-chimney"];

/// Whether a chimney of this width needs a cricket on its ridge side.
pub fn needs_cricket(width: &Measured<Length>, straddles_ridge: bool) -> Answer {
    if straddles_ridge {
        Answer::No
    } else {
        exceeds(width, CRICKET_OVER)
    }
}

/// Height of the cricket: width times rise over 24 (agrees with Table R1003.20: W/2 at 12:12, W/3 at 8:12, W/4 at 6:12,
/// W/6 at 4:12, W/8 at 3:12).
pub fn cricket_height(width: Length, pitch: Pitch) -> Length {
    width.scaled(pitch.in_twelfths() / 24.0)
}

/// How high a chimney must stand above where it leaves the roof, `below_ridge` in plan below the ridge of a slope:
/// 2 ft above the roof within 10 ft of it, never less than 3 ft.
pub fn chimney_height(below_ridge: Length, pitch: Pitch) -> Length {
    above(below_ridge.min(NEAR).scaled(pitch.in_twelfths() / 12.0))
}

/// The same beside something that stands `rises` above where the chimney leaves the roof, within 10 ft.
pub fn above(rises: Length) -> Length {
    Length::from_inches(rises.in_inches() + ABOVE_NEAR.in_inches()).max(LEAST_HEIGHT)
}

/// Chimneys wide enough for a cricket that have none.
pub fn crickets_missing(case: &Case<'_>) -> Vec<Found> {
    case.looks_at(CHIMNEYS)
        .filter_map(|standing| cricket_missing(case, standing))
        .collect()
}

fn cricket_missing(case: &Case<'_>, standing: &Standing<'_>) -> Option<Found> {
    let width = standing.mark.measure(MeasureOf::Width)?;
    // A chimney astride the ridge belongs to no one slope, or lies no way below it.
    let straddles = standing.part.slope.is_none()
        || standing
            .mark
            .measure(MeasureOf::Distance)
            .is_some_and(|distance| distance.value == Length::ZERO);
    if !needs_cricket(width, straddles).is_yes() || has_cricket(case, standing) {
        return None;
    }
    let source = case.code(Irc::Cricket);
    let found = match case.pitch_at(standing) {
        Some(pitch) => reason(Rule::Cricket, source, Strength::Requires)
            .with("width", width.value)
            .with("height", cricket_height(width.value, pitch)),
        None => {
            reason(Rule::CricketUnmeasured, source, Strength::Requires).with("width", width.value)
        }
    };
    Some(Found::at(standing, found))
}

fn has_cricket(case: &Case<'_>, chimney: &Standing<'_>) -> bool {
    let seen = case.as_of.standing.iter().map(|standing| standing.part);
    seen.chain(case.as_of.unseen.iter().copied())
        .any(|part| part.kind.as_str() == "cricket" && part.slope == chimney.part.slope)
}

/// Chimneys that do not stand high enough.
pub fn too_low(case: &Case<'_>) -> Vec<Found> {
    case.looks_at(CHIMNEYS)
        .filter_map(|standing| {
            let height = standing.mark.measure(MeasureOf::Height)?;
            let needed = height_needed(case, standing);
            falls_short(height, needed).is_yes().then(|| {
                let low = reason(
                    Rule::ChimneyLow,
                    case.code(Irc::ChimneyHeight),
                    Strength::Requires,
                )
                .with("height", height.value)
                .with("needed", needed);
                Found::at(standing, low)
            })
        })
        .collect()
}

/// What the measures of the mark settle: a measured drop before one worked out from the pitch, 3 ft where neither is known.
fn height_needed(case: &Case<'_>, standing: &Standing<'_>) -> Length {
    let distance = standing.mark.measure(MeasureOf::Distance);
    let drop = standing.mark.measure(MeasureOf::Drop);
    match (distance, drop, case.pitch_at(standing)) {
        (Some(distance), Some(drop), _) if exceeds(distance, NEAR).is_no() => above(drop.value),
        (Some(distance), _, Some(pitch)) => chimney_height(distance.value, pitch),
        _ => LEAST_HEIGHT,
    }
}
