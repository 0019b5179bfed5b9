//! What of the roof itself lies up the slope from a stain, where no known part does: the valley, what stands through the roof, the eave under
//! ice, the line at the top.

use crate::frame::Place;
use crate::leak::entries::off;
use crate::leak::ground::{Ground, Meets};
use trade::leak::{LookTo, Suspected, Why, stop_at};
use trade::roof::{LineKind, RoofPlan};
use trade::units::Length;
use trade::words::Said;

/// A valley is looked at from stains this near to it on plan, in metres, beyond how well their place is known. Common practice, no source.
const NEAR_VALLEY: f64 = 0.6;
/// Ice holds water back so far inside the wall line: 24 in, as far as IRC R905.1.2 has the ice barrier reach.
const ICE_REACH: f64 = 24.0 * 0.0254;

/// What to look at above a place on plan under a plane, nearest trouble first. `thaw`: it comes when ice melts.
pub fn above(
    plan: &RoofPlan,
    grounds: &[Ground],
    plane: usize,
    stain: Place,
    within: f64,
    thaw: bool,
) -> Vec<Suspected> {
    let mut found = Vec::new();
    if thaw {
        found.extend(eave_below(plan, plane, stain, within));
    }
    found.extend(valley_beside(plan, plane, stain, within));
    found.extend(up_from(plan, grounds, plane, stain));
    let count = f64::from(u32::try_from(found.len()).unwrap_or(1).max(1));
    for one in &mut found {
        one.share = 1.0 / count;
    }
    found
}

fn eave_below(plan: &RoofPlan, plane: usize, stain: Place, within: f64) -> Option<Suspected> {
    nearest(plan, plane, LineKind::Eave, stain)
        .filter(|(at, far)| {
            let overhang = plan.lines.get(*at).and_then(|line| line.overhang);
            *far < overhang.map_or(0.0, Length::in_metres) + ICE_REACH + within
        })
        .map(|(at, _)| line_of(at, LineKind::Eave, stain, vec![Why::IceHoldsIt]))
}

fn valley_beside(plan: &RoofPlan, plane: usize, stain: Place, within: f64) -> Option<Suspected> {
    nearest(plan, plane, LineKind::Valley, stain)
        .filter(|(_, far)| *far < NEAR_VALLEY + within)
        .map(|(at, _)| {
            line_of(
                at,
                LineKind::Valley,
                stain,
                vec![Why::NoKnownPart, Why::DownTheValley],
            )
        })
}

fn nearest(plan: &RoofPlan, plane: usize, kind: LineKind, stain: Place) -> Option<(usize, f64)> {
    plan.lines
        .iter()
        .enumerate()
        .filter(|(_, line)| line.kind == kind && line.planes.contains(&plane))
        .map(|(at, line)| (at, off(line, stain)))
        .min_by(|a, b| a.1.total_cmp(&b.1))
}

/// What the way straight up meets: what stands in it, and the line at its end.
fn up_from(plan: &RoofPlan, grounds: &[Ground], plane: usize, stain: Place) -> Vec<Suspected> {
    let Some(ground) = grounds.get(plane) else {
        return Vec::new();
    };
    let mut found = Vec::new();
    let mut at = ground.frame.on_plane(stain);
    // Past what stands in the way, the way goes on from its upper edge.
    while let Some((met, meets)) = ground.up(at) {
        let place = ground.frame.on_plan(met);
        let far = Length::from_metres((place.0 - stain.0).hypot(place.1 - stain.1));
        let why = vec![Why::NoKnownPart, Why::UpTheSlope { far: rounded(far) }];
        match meets {
            Meets::InTheWay(hole) => {
                found.push(Suspected {
                    what: LookTo::Opening { plane, hole },
                    name: Said::new("leak-opening"),
                    stop: trade::catalogue::StopKey::from("chimneys"),
                    look_at: place,
                    way: Vec::new(),
                    share: 0.0,
                    why,
                });
                let Some(top) = ground.top_of(hole) else {
                    break;
                };
                at = (at.0, top.max(met.1) + crate::leak::ground::SAME * 2.0);
            }
            Meets::Edge(line) => {
                let line = line.and_then(|at| Some((at, plan.lines.get(at)?)));
                found.extend(line.map(|(at, line)| line_of(at, line.kind, place, why)));
                break;
            }
        }
    }
    found
}

fn line_of(line: usize, kind: LineKind, look_at: Place, why: Vec<Why>) -> Suspected {
    Suspected {
        what: LookTo::Line { line, kind },
        name: Said::new(kind.key()),
        stop: stop_at(kind),
        look_at,
        way: Vec::new(),
        share: 0.0,
        why,
    }
}

/// A length as one says it: whole feet from three feet on, whole inches below.
pub fn rounded(far: Length) -> Length {
    #[allow(clippy::cast_possible_truncation)]
    let whole = |length: f64| length.round() as i64;
    if far >= Length::feet(3) {
        Length::feet(whole(far.in_feet()))
    } else {
        Length::inches(whole(far.in_inches()))
    }
}
