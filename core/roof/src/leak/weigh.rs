//! How likely it is that water from a part shows where the stain is, and that the part let it in. Common practice, no source: the numbers are a
//! roofer's sense of it, held against simulated leaks.

use crate::frame::Place;
use crate::leak::entries::{Entry, Weather};
use crate::leak::water::Way;
use trade::leak::LetsIn;
use trade::mark::Rung;
use trade::visit::WetWhen;

/// How far water runs on deck and underlayment before it drops, on average, in metres on plan.
const RUN: f64 = 1.8;
/// How far it strays to the side in running one metre, in metres; it grows with the root of the run.
const STRAY: f64 = 0.3;
/// How far it strays in dropping to the ceiling, in metres: to the next truss or seam.
const DROP: f64 = 0.3;
/// The step in which a way is followed, in metres.
const STEP: f64 = 0.2;

/// How densely water from these entries is expected at a place, a share for each square metre.
pub fn density(entries: &[Entry], stain: Place, within: f64) -> f64 {
    entries
        .iter()
        .flat_map(|entry| &entry.ways)
        .map(|way| along(way, stain, within))
        .sum()
}

/// How densely water on one way is expected at a place.
pub fn along(way: &Way, stain: Place, within: f64) -> f64 {
    let mut run = 0.0_f64;
    let mut sum = 0.0;
    let still = within.hypot(DROP);
    for pair in way.places.windows(2) {
        let [from, to] = pair else { continue };
        let length = (to.0 - from.0).hypot(to.1 - from.1);
        if length <= 0.0 {
            continue;
        }
        let toward = ((to.0 - from.0) / length, (to.1 - from.1) / length);
        let steps = (length / STEP).ceil().max(1.0);
        let step = length / steps;
        let mut gone = step / 2.0;
        while gone < length {
            let off = (
                stain.0 - from.0 - toward.0 * gone,
                stain.1 - from.1 - toward.1 * gone,
            );
            let forward = off.0 * toward.0 + off.1 * toward.1;
            let aside = off.0 * toward.1 - off.1 * toward.0;
            let stray = (still * still + STRAY * STRAY * (run + gone)).sqrt();
            let drops = (-(run + gone) / RUN).exp() / RUN * step;
            sum += drops * normal(forward, still) * normal(aside, stray);
            gone += step;
        }
        run += length;
    }
    sum * way.share
}

fn normal(off: f64, spread: f64) -> f64 {
    (-0.5 * (off / spread).powi(2)).exp() / (spread * std::f64::consts::TAU.sqrt())
}

/// How readily a part on a rung lets water in; `None` where nobody has seen it.
pub fn rung(rung: Option<Rung>) -> f64 {
    match rung {
        Some(Rung::Failed) => 1.0,
        Some(Rung::Failing) => 0.6,
        Some(Rung::Ageing) => 0.15,
        Some(Rung::Sound) => 0.03,
        None => 0.3,
    }
}

/// How well a part's way of letting water in fits the weather. `facing` is how far its slope faces the wind, from -1 (away) to 1 (into it).
pub fn weather(lets_in: LetsIn, when: Option<WetWhen>, facing: Option<f64>) -> f64 {
    let blown = facing.map_or(0.6, |facing| {
        0.15 + 0.85 * (f64::midpoint(1.0, facing)).powi(2)
    });
    match when {
        None => 1.0,
        Some(WetWhen::AnyRain | WetWhen::LongRain) => match lets_in {
            LetsIn { rain: true, .. } => 1.0,
            LetsIn { driven: true, .. } => 0.2 * blown,
            _ => 0.05,
        },
        Some(WetWhen::DrivenRain) => match lets_in {
            LetsIn {
                rain: true,
                driven: true,
                ..
            } => blown.max(0.5),
            LetsIn { driven: true, .. } => blown,
            LetsIn { rain: true, .. } => 0.4,
            _ => 0.05,
        },
        Some(WetWhen::Thaw) => match lets_in {
            LetsIn { thaw: true, .. } => 1.0,
            LetsIn { rain: true, .. } => 0.4,
            _ => 0.05,
        },
        Some(WetWhen::DryCold) => 0.1,
    }
}

/// The weather that a stain comes with.
pub fn weather_of(stain: &trade::leak::Stain) -> Weather {
    Weather {
        driven: stain.when == Some(WetWhen::DrivenRain),
        thaw: stain.when == Some(WetWhen::Thaw),
        wind: stain.wind_from.map(|degrees| {
            let angle = degrees.to_radians();
            (angle.sin(), angle.cos())
        }),
    }
}
