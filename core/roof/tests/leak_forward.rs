//! A thousand leaks made forward, and traced back. Water is let in at one part and runs down in small steps with laps, seams and trusses in its
//! way; where it drops, and how well somebody shows the place, is left to chance. Nothing here is shared with the tracer but the plan and the
//! view of how readily a part on each rung lets water in: what is tried is the way of the water. How far water runs on a deck, and how it strays,
//! is common practice with no source, here as there; the two were written apart and neither was fitted to the other.

#![cfg(test)]

mod chance;
mod roofs;

use chance::Chance;
use roof::leak::suspects;
use roofs::{FOOT, ell_planes, gable_planes, hip_planes, plan, tee_planes};
use trade::catalogue::StopKey;
use trade::ids::PartId;
use trade::leak::{Candidate, LetsIn, Lies, LookTo, Stain};
use trade::mark::Rung;
use trade::roof::{LineKind, Plane, RoofLine, RoofPlan};
use trade::units::{Length, Pitch};
use trade::visit::WetWhen;
use trade::words::Said;

type Place = (f64, f64);

fn any_roof(chance: &mut Chance) -> RoofPlan {
    let span = chance.within(20.0, 36.0) * FOOT;
    let wide = span + chance.within(8.0, 30.0) * FOOT;
    let pitch = Pitch::rise(3 + chance.below(8));
    let planes = match chance.below(4) {
        0 => gable_planes(wide, span, pitch).to_vec(),
        1 => hip_planes(wide, span, pitch).to_vec(),
        2 => ell_planes(wide, wide, span * 0.7, pitch).to_vec(),
        _ => {
            let from = wide * chance.within(0.1, 0.3);
            let wing = (from, from + span * chance.within(0.5, 0.8));
            tee_planes(wide, span, wing, chance.within(6.0, 14.0) * FOOT, pitch).to_vec()
        }
    };
    plan(&planes, &[])
}

fn inside(plane: &Plane, place: Place) -> bool {
    std::iter::once(&plane.corners)
        .chain(&plane.holes)
        .flat_map(|ring| ring.iter().zip(ring.iter().cycle().skip(1)))
        .filter(|(a, b)| {
            (a.y > place.1) != (b.y > place.1)
                && place.0 < a.x + (place.1 - a.y) / (b.y - a.y) * (b.x - a.x)
        })
        .count()
        % 2
        == 1
}

fn height(plane: &Plane, place: Place) -> f64 {
    let eave = plane.corners[0];
    let down = (place.0 - eave.x) * plane.downhill.0 + (place.1 - eave.y) * plane.downhill.1;
    eave.z - down * plane.pitch.in_twelfths() / 12.0
}

/// The plane that is seen from above.
fn plane_at(plan: &RoofPlan, place: Place) -> Option<usize> {
    plane_below(plan, place, f64::INFINITY)
}

/// The highest plane at a place that does not lie above a height.
fn plane_below(plan: &RoofPlan, place: Place, high: f64) -> Option<usize> {
    (0..plan.planes.len())
        .filter(|&plane| inside(&plan.planes[plane], place))
        .map(|plane| (plane, height(&plan.planes[plane], place)))
        .filter(|(_, lies)| *lies <= high)
        .max_by(|a, b| a.1.total_cmp(&b.1))
        .map(|(plane, _)| plane)
}

/// A gable roof in feet with one or two dormers, or with a storey on its middle whose roof drains onto it.
fn two_levels(chance: &mut Chance) -> RoofPlan {
    use trade::sketch::{Body, Drawn, EdgeIs, OutlineOf, SketchEdge};
    let rectangle = |(x, y): Place, (wide, deep): Place, is: [EdgeIs; 4]| -> Vec<SketchEdge> {
        let corners = [(x, y), (x + wide, y), (x + wide, y + deep), (x, y + deep)];
        let edge = |(&(x, y), is): (&Place, EdgeIs)| SketchEdge {
            x: Length::from_metres(x * FOOT),
            y: Length::from_metres(y * FOOT),
            is,
            pitch: None,
            overhang: None,
            slope: None,
        };
        corners.iter().zip(is).map(edge).collect()
    };
    let (hip, gable) = (EdgeIs::Hip, EdgeIs::Gable);
    let main = Pitch::rise(5 + chance.below(7));
    let body = |rim: Vec<SketchEdge>, pitch: Pitch, above: Option<f64>| Body {
        rings: vec![rim],
        of: OutlineOf::Walls,
        pitch,
        overhang: Length::inches(8),
        raised: Length::ZERO,
        above_roof: above.map(|feet| Length::from_metres(feet * FOOT)),
    };
    let (wide, deep) = (chance.within(38.0, 56.0), chance.within(28.0, 36.0));
    let mut bodies = vec![body(
        rectangle((0.0, 0.0), (wide, deep), [hip, gable, hip, gable]),
        main,
        None,
    )];
    let dormer = |from: f64, chance: &mut Chance| {
        let (y, high) = (chance.within(1.0, 3.0), chance.within(2.0, 3.0));
        let size = (chance.within(6.0, 9.0), deep / 2.0 - y - 0.7);
        if chance.below(2) == 0 {
            let rim = rectangle((from, y), size, [gable, hip, gable, hip]);
            body(rim, main, Some(high))
        } else {
            let rim = rectangle((from, y), size, [hip, gable, gable, gable]);
            body(rim, Pitch::rise(3), Some(high))
        }
    };
    match chance.below(3) {
        0 => bodies.push(dormer(chance.within(4.0, 24.0), chance)),
        1 => {
            bodies.push(dormer(chance.within(3.0, 6.0), chance));
            bodies.push(dormer(chance.within(20.0, 26.0), chance));
        }
        _ => {
            let (x, y) = (chance.within(8.0, 12.0), chance.within(6.0, 8.0));
            let size = (wide - 2.0 * x, deep - 2.0 * y);
            let rim = rectangle((x, y), size, [hip, gable, hip, gable]);
            bodies.push(body(rim, main, Some(chance.within(4.0, 9.0))));
        }
    }
    roof::plan_of(
        &Drawn::Outlines { bodies },
        trade::units::Got::Tape,
        trade::units::Got::Tape,
    )
    .expect("a roof")
}

/// A place on a plane, clear of its edges by `clear` metres in the four ways; within 2 m of `near` where that can be had.
fn any_place(
    plan: &RoofPlan,
    near: Option<Place>,
    chance: &mut Chance,
    clear: f64,
) -> (usize, Place) {
    let corners = || plan.planes.iter().flat_map(|plane| &plane.corners);
    let most = corners().fold((0.0_f64, 0.0_f64), |m, c| (m.0.max(c.x), m.1.max(c.y)));
    let least = corners().fold((0.0_f64, 0.0_f64), |m, c| (m.0.min(c.x), m.1.min(c.y)));
    let mut tries = 0;
    loop {
        tries += 1;
        let place = match near {
            Some(near) if tries < 50 => (
                near.0 + chance.within(-2.0, 2.0),
                near.1 + chance.within(-2.0, 2.0),
            ),
            _ => (
                chance.within(least.0, most.0),
                chance.within(least.1, most.1),
            ),
        };
        let Some(plane) = plane_at(plan, place) else {
            continue;
        };
        let ways = [(clear, 0.0), (-clear, 0.0), (0.0, clear), (0.0, -clear)];
        if ways
            .iter()
            .all(|way| inside(&plan.planes[plane], (place.0 + way.0, place.1 + way.1)))
        {
            return (plane, place);
        }
    }
}

fn any_rung(chance: &mut Chance) -> Option<Rung> {
    match chance.below(20) {
        0..3 => Some(Rung::Failed),
        3..8 => Some(Rung::Failing),
        8..14 => Some(Rung::Ageing),
        14..18 => Some(Rung::Sound),
        _ => None,
    }
}

/// Twelve to fifteen parts: pipes and nails, a chimney or skylight or two, lengths of valley, ridge and eave. They stand together as they do on a
/// roof over kitchen and bath: most within 2 m of another, so that the nearest is seldom the one.
fn any_parts(plan: &RoofPlan, chance: &mut Chance) -> Vec<Candidate> {
    let count = 12 + chance.below(4);
    let mut near: Option<Place> = None;
    (0..count)
        .map(|at| {
            let (plane, lies, lets_in) = match chance.below(10) {
                0..2 => through(plan, near, chance),
                2..4 => on_line(plan, chance),
                _ => spot(plan, near, chance),
            };
            near = match lies {
                Lies::Spot { at } | Lies::Through { at, .. } if chance.below(8) > 0 => Some(at),
                _ if chance.below(8) > 0 => near,
                _ => None,
            };
            Candidate {
                part: PartId(uuid::Uuid::from_u128(u128::from(at))),
                name: Said::verbatim(format!("part {at}")),
                stop: StopKey::from("field"),
                plane,
                lies,
                rung: any_rung(chance),
                lets_in,
            }
        })
        .collect()
}

fn spot(plan: &RoofPlan, near: Option<Place>, chance: &mut Chance) -> (usize, Lies, LetsIn) {
    let (plane, at) = any_place(plan, near, chance, 0.1);
    let rain = chance.below(4) > 0;
    let lets_in = LetsIn {
        rain,
        driven: true,
        thaw: false,
    };
    (plane, Lies::Spot { at }, lets_in)
}

fn through(plan: &RoofPlan, near: Option<Place>, chance: &mut Chance) -> (usize, Lies, LetsIn) {
    let (plane, at) = any_place(plan, near, chance, 0.7);
    let lies = Lies::Through {
        at,
        wide: Length::from_metres(chance.within(0.5, 1.2)),
        deep: Length::from_metres(chance.within(0.4, 0.9)),
    };
    (plane, lies, LetsIn::default())
}

fn on_line(plan: &RoofPlan, chance: &mut Chance) -> (usize, Lies, LetsIn) {
    loop {
        let line = &plan.lines[chance.below(u32::try_from(plan.lines.len()).unwrap()) as usize];
        let lets_in = match line.kind {
            LineKind::Valley | LineKind::Step => LetsIn::default(),
            LineKind::Ridge | LineKind::Hip => LetsIn {
                rain: false,
                driven: true,
                thaw: false,
            },
            LineKind::Eave => LetsIn {
                rain: false,
                driven: false,
                thaw: true,
            },
            _ => continue,
        };
        let start = chance.within(0.0, 0.6);
        let share = |share: f64| {
            (
                line.from.x + (line.to.x - line.from.x) * share,
                line.from.y + (line.to.y - line.from.y) * share,
            )
        };
        let lies = Lies::Along {
            from: share(start),
            to: share(start + chance.within(0.1, 0.4)),
        };
        return (line.planes[0], lies, lets_in);
    }
}

fn line_of(plan: &RoofPlan, part: &Candidate) -> Option<RoofLine> {
    let Lies::Along { from, to } = part.lies else {
        return None;
    };
    let off = |line: &RoofLine, at: Place| {
        let way = (line.to.x - line.from.x, line.to.y - line.from.y);
        let cross = (at.0 - line.from.x) * way.1 - (at.1 - line.from.y) * way.0;
        (cross / way.0.hypot(way.1)).abs()
    };
    plan.lines
        .iter()
        .find(|line| line.planes.contains(&part.plane) && off(line, from) + off(line, to) < 1e-6)
        .cloned()
}

/// Where the part lets the water in this time.
fn let_in(plan: &RoofPlan, part: &Candidate, chance: &mut Chance) -> (usize, Place) {
    let plane = &plan.planes[part.plane];
    let up = (-plane.downhill.0, -plane.downhill.1);
    let along = (-plane.downhill.1, plane.downhill.0);
    match part.lies {
        Lies::Spot { at } => (part.plane, at),
        Lies::Through { at, wide, deep } => {
            // Half of the time somewhere along the upper edge, else beside the upper half of a side.
            let (half_wide, half_deep) = (wide.in_metres() / 2.0, deep.in_metres() / 2.0);
            let (u, v) = if chance.below(2) == 0 {
                (chance.within(-half_wide, half_wide), half_deep + 0.03)
            } else {
                let side = if chance.below(2) == 0 { 1.0 } else { -1.0 };
                (side * (half_wide + 0.03), chance.within(0.0, half_deep))
            };
            (
                part.plane,
                (at.0 + along.0 * u + up.0 * v, at.1 + along.1 * u + up.1 * v),
            )
        }
        Lies::Along { from, to } => {
            let share = chance.within(0.0, 1.0);
            let at = (
                from.0 + (to.0 - from.0) * share,
                from.1 + (to.1 - from.1) * share,
            );
            let line = line_of(plan, part).expect("a part on a line");
            let mut side = part.plane;
            if line.planes.len() > 1 && chance.below(2) == 0 {
                side = line.planes[1];
            }
            let down = plan.planes[side].downhill;
            let by = match line.kind {
                // Ice: behind the wall line, up to where the water stands.
                LineKind::Eave => -(16.0 * 0.0254 + chance.within(0.0, 0.6)),
                LineKind::Valley => 0.0,
                _ => 0.03,
            };
            let at = (at.0 + down.0 * by, at.1 + down.1 * by);
            // Behind step flashing it comes in just beside the wall.
            let beside = [0.0, 0.03, -0.03].map(|off| (at.0 - down.1 * off, at.1 + down.0 * off));
            let on_it = beside
                .into_iter()
                .find(|place| inside(&plan.planes[side], *place));
            (side, on_it.unwrap_or(at))
        }
    }
}

/// Runs the water down on the deck until it drops.
fn run_down(plan: &RoofPlan, parts: &[Candidate], source: usize, chance: &mut Chance) -> Place {
    const STEP: f64 = 0.05;
    let (mut plane, mut at) = let_in(plan, &parts[source], chance);
    if let Some(valley) = line_of(plan, &parts[source]).filter(|line| line.kind == LineKind::Valley)
    {
        match down_valley(plan, &valley, at, chance) {
            Ran::Drops(at) => return at,
            Ran::On(next, place) => (plane, at) = (next, place),
        }
    }
    // Next lap of the underlayment (about every 2 ft of slope: 16 to 34 in) and next seam of the deck (4 ft of slope), on plan.
    let factor = plan.planes[plane].pitch.slope_factor();
    let mut to_lap = chance.within(0.0, 0.6) / factor;
    let mut to_seam = chance.within(0.0, 1.22) / factor;
    for _ in 0..2000 {
        let down = plan.planes[plane].downhill;
        let along = (-down.1, down.0);
        to_lap -= STEP;
        to_seam -= STEP;
        if to_lap <= 0.0 {
            to_lap = chance.within(0.4, 0.86) / factor;
            if chance.below(100) < 35 {
                let aside = chance.within(-0.6, 0.6);
                at = stay(plan, parts, plane, at, (along.0 * aside, along.1 * aside));
            }
        }
        if to_seam <= 0.0 {
            to_seam = 1.22 / factor;
            if chance.below(100) < 35 {
                return at;
            }
        }
        let wander = chance.within(-0.02, 0.02);
        let next = (
            at.0 + down.0 * STEP + along.0 * wander,
            at.1 + down.1 * STEP + along.1 * wander,
        );
        if let Some(turned) = blocked(plan, parts, plane, next, chance) {
            at = turned;
            continue;
        }
        if inside(&plan.planes[plane], next) {
            at = next;
            continue;
        }
        let here = height(&plan.planes[plane], next);
        if let Some(other) = plane_below(plan, next, here + 0.02) {
            let meets = plan.lines.iter().find(|line| {
                line.planes.contains(&plane)
                    && line.planes.contains(&other)
                    && height(&plan.planes[other], next) > here - 0.1
            });
            match meets.filter(|line| line.kind == LineKind::Valley) {
                Some(valley) => match down_valley(plan, valley, at, chance) {
                    Ran::Drops(at) => return at,
                    Ran::On(next, place) => (plane, at) = (next, place),
                },
                None if meets.is_some() => (plane, at) = (other, next),
                // Off the eave of a roof above: half of the time in at the wall there, else on under the lower roof.
                None if chance.below(2) == 0 => return at,
                None => (plane, at) = (other, next),
            }
        } else {
            // Against a wall that stands on the slope: straight down beside it, as far as it goes.
            let straight = (at.0 + down.0 * STEP, at.1 + down.1 * STEP);
            if inside(&plan.planes[plane], straight) {
                at = straight;
            } else {
                // Over the eave, or a wall in the way: what is seen inside is seen at the wall.
                return (at.0 - down.0 * 16.0 * 0.0254, at.1 - down.1 * 16.0 * 0.0254);
            }
        }
    }
    at
}

/// A step aside, unless it leads off the plane or into something.
fn stay(plan: &RoofPlan, parts: &[Candidate], plane: usize, at: Place, by: Place) -> Place {
    let next = (at.0 + by.0, at.1 + by.1);
    let free = !parts
        .iter()
        .any(|part| part.plane == plane && block_at(plan, part, next).is_some());
    if inside(&plan.planes[plane], next) && free {
        next
    } else {
        at
    }
}

/// Where a place lies within a part that stands through the roof: along and up from its middle, and its half width and depth.
fn block_at(plan: &RoofPlan, part: &Candidate, place: Place) -> Option<(f64, f64, f64)> {
    let Lies::Through { at, wide, deep } = part.lies else {
        return None;
    };
    let down = plan.planes[part.plane].downhill;
    let off = (place.0 - at.0, place.1 - at.1);
    let (u, v) = (
        off.1 * down.0 - off.0 * down.1,
        -(off.0 * down.0 + off.1 * down.1),
    );
    let (half_wide, half_deep) = (wide.in_metres() / 2.0, deep.in_metres() / 2.0);
    (u.abs() <= half_wide && v.abs() <= half_deep).then_some((u, v, half_wide))
}

/// Water that runs into something goes along its edge to one of its sides, the nearer one three times out of four.
fn blocked(
    plan: &RoofPlan,
    parts: &[Candidate],
    plane: usize,
    next: Place,
    chance: &mut Chance,
) -> Option<Place> {
    let (part, (u, _, half)) = parts
        .iter()
        .filter(|part| part.plane == plane)
        .find_map(|part| Some((part, block_at(plan, part, next)?)))?;
    let nearer = if u >= 0.0 { 1.0 } else { -1.0 };
    let side = if chance.below(4) == 0 {
        -nearer
    } else {
        nearer
    };
    let down = plan.planes[part.plane].downhill;
    let by = side * (half + 0.05) - u;
    Some((next.0 - down.1 * by, next.1 + down.0 * by))
}

/// What becomes of water in a valley.
enum Ran {
    /// It drops there.
    Drops(Place),
    /// It runs on from its foot, on a plane.
    On(usize, Place),
}

/// Down a valley: the lining leaks on at any place, on average after six feet. Where its foot lies in the midst of a slope, water runs on there.
fn down_valley(plan: &RoofPlan, valley: &RoofLine, at: Place, chance: &mut Chance) -> Ran {
    let foot = (valley.from.x, valley.from.y);
    let left = (foot.0 - at.0).hypot(foot.1 - at.1);
    let wanted = -1.8 * chance.within(1e-9, 1.0).ln();
    if wanted > left && left > 0.0 {
        let past = (
            foot.0 + (foot.0 - at.0) / left * 0.05,
            foot.1 + (foot.1 - at.1) / left * 0.05,
        );
        if let Some(plane) = plane_below(plan, past, valley.from.z + 0.05) {
            return Ran::On(plane, past);
        }
    }
    let share = if left > 0.0 {
        wanted.min(left) / left
    } else {
        0.0
    };
    let aside = chance.within(-0.3, 0.3);
    Ran::Drops((
        at.0 + (foot.0 - at.0) * share + aside,
        at.1 + (foot.1 - at.1) * share - aside,
    ))
}

/// One leak: the part it comes from is chosen by how bad the parts are, and the weather is one in which it lets water in.
fn any_leak(plan: &RoofPlan, parts: &[Candidate], chance: &mut Chance) -> (usize, Stain) {
    let source = loop {
        let at = chance.below(u32::try_from(parts.len()).unwrap()) as usize;
        let readily = match parts[at].rung {
            Some(Rung::Failed) => 100,
            Some(Rung::Failing) => 60,
            Some(Rung::Ageing) => 15,
            Some(Rung::Sound) => 2,
            None => 30,
        };
        if chance.below(100) < readily {
            break at;
        }
    };
    let part = &parts[source];
    let LetsIn { rain, driven, thaw } = part.lets_in;
    let down = plan.planes[part.plane].downhill;
    let when = match (rain, driven, thaw) {
        (true, ..) if chance.below(4) == 0 => None,
        (true, ..) if chance.below(3) > 0 => Some(WetWhen::AnyRain),
        (_, true, _) => Some(WetWhen::DrivenRain),
        (_, _, true) => Some(WetWhen::Thaw),
        _ => None,
    };
    // Wind from within 70° of the way the slope faces, told in two cases of three.
    let facing = down.0.atan2(down.1).to_degrees() + chance.within(-70.0, 70.0);
    let wind_from = (when == Some(WetWhen::DrivenRain) && chance.below(3) > 0).then_some(facing);
    let dropped = run_down(plan, parts, source, chance);
    // To the next truss (2 ft apart) or not, and shown to within about a foot.
    let to_truss = if chance.below(2) == 0 {
        chance.within(-0.3, 0.3)
    } else {
        0.0
    };
    let at = (
        dropped.0 + to_truss + chance.about(0.25),
        dropped.1 + chance.about(0.25),
    );
    let stain = Stain {
        at,
        within: Length::feet(2),
        when,
        wind_from,
    };
    (source, stain)
}

/// What somebody does who only looks for the nearest part, and the nearest that is not sound.
fn nearest(parts: &[Candidate], stain: &Stain, bad_only: bool) -> Vec<PartId> {
    let far = |part: &Candidate| {
        let (a, b) = match part.lies {
            Lies::Spot { at } | Lies::Through { at, .. } => (at, at),
            Lies::Along { from, to } => (from, to),
        };
        let way = (b.0 - a.0, b.1 - a.1);
        let square = (way.0 * way.0 + way.1 * way.1).max(1e-12);
        let share = ((stain.at.0 - a.0) * way.0 + (stain.at.1 - a.1) * way.1) / square;
        let share = share.clamp(0.0, 1.0);
        (stain.at.0 - a.0 - share * way.0).hypot(stain.at.1 - a.1 - share * way.1)
    };
    let mut sorted: Vec<&Candidate> = parts
        .iter()
        .filter(|part| !bad_only || part.rung != Some(Rung::Sound))
        .collect();
    sorted.sort_by(|a, b| far(a).total_cmp(&far(b)));
    sorted.iter().take(3).map(|part| part.part).collect()
}

/// How often the true source of made leaks was found.
struct Found {
    first: usize,
    third: usize,
    near: usize,
    near_bad: usize,
}

fn trace_made(seed: u64, leaks: usize, roof: fn(&mut Chance) -> RoofPlan) -> Found {
    let mut chance = Chance::seeded(seed);
    let (mut first, mut third, mut parts_in_all) = (0, 0, 0);
    let (mut near, mut near_bad, mut nearest_first) = (0, 0, 0);
    let mut done = 0;
    while done < leaks {
        let plan = roof(&mut chance);
        let parts = any_parts(&plan, &mut chance);
        let (source, stain) = any_leak(&plan, &parts, &mut chance);
        let truly = parts[source].part;
        // A stain shown outside the roof is shown again.
        let Ok(found) = suspects(&plan, &stain, &parts) else {
            continue;
        };
        done += 1;
        parts_in_all += parts.len();
        let rank = found
            .iter()
            .position(|one| one.what == LookTo::Part { part: truly });
        first += usize::from(rank == Some(0));
        third += usize::from(rank.is_some_and(|rank| rank < 3));
        near += usize::from(nearest(&parts, &stain, false).contains(&truly));
        let bad = nearest(&parts, &stain, true);
        near_bad += usize::from(bad.contains(&truly));
        nearest_first += usize::from(bad.first() == Some(&truly));
    }
    println!(
        "{leaks} leaks among {:.1} parts a roof: traced first {first}, in the first three {third}; by nearness alone in the first three {near}, \
         nearest not sound {near_bad} ({nearest_first} first)",
        f64::from(u32::try_from(parts_in_all).unwrap()) / f64::from(u32::try_from(leaks).unwrap())
    );
    Found {
        first,
        third,
        near,
        near_bad,
    }
}

#[test]
fn the_true_source_is_among_the_first_three_suspects() {
    let found = trace_made(20_190_604, 1000, any_roof);
    assert!(found.third * 10 >= 9 * 1000);
    assert!(found.third > found.near && found.third > found.near_bad);
    assert!(found.first > 500);
}

/// On roofs with dormers, and with a storey whose roof drains onto the one below.
#[test]
fn the_true_source_is_found_on_two_levels() {
    let found = trace_made(20_210_817, 1000, two_levels);
    assert!(found.third * 10 >= 9 * 1000);
    assert!(found.third > found.near && found.third > found.near_bad);
}
