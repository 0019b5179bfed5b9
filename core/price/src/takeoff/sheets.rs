//! What comes off a roll: underlayment by its laps, and the ice barrier by how far it must reach.

use super::Counted;
use super::site::Site;
use crate::code::{Irc, irc};
use crate::supplies::Supply;
use trade::answer::Answer;
use trade::firm::Edition;
use trade::roof::{LineKind, Plane, RoofLine};
use trade::takeoff::{Gap, Item, RoofTask, Spread, TaskAmount};
use trade::units::{Length, Pitch};
use trade::words::{Arg, Said};

/// From here one layer of underlayment is enough; below it lies double (IRC R905.1.1, R905.2.7 up to 2012).
const SINGLE_FROM: Pitch = Pitch::rise(4);
/// The ice barrier reaches this far inside the exterior wall line, on plan (IRC R905.1.2, R905.2.7.1 up to 2012).
const INSIDE_WALL: Length = Length::inches(24);
/// From this pitch on it also reaches at least [`ALONG_STEEP`] along the slope (IRC R905.1.2 of 2018).
const STEEP_FROM: Pitch = Pitch::rise(8);
/// See [`STEEP_FROM`].
const ALONG_STEEP: Length = Length::inches(36);

/// How far up the slope an ice barrier reaches from the eave's lowest edge, for an overhang on plan and a pitch.
///
/// From the lowest edge to at least 24 in inside the exterior wall line, a distance on plan (IRC R905.1.2); since 2018 at 8:12 and
/// steeper also at least 36 in along the slope.
pub fn ice_reach(overhang: Length, pitch: Pitch, edition: Edition) -> Length {
    let on_plan = overhang.plus(INSIDE_WALL).unwrap_or(INSIDE_WALL);
    let along = on_plan.scaled(pitch.slope_factor());
    if edition >= Edition::E2018 && pitch >= STEEP_FROM {
        along.max(ALONG_STEEP)
    } else {
        along
    }
}

/// Courses of a roll that reach so far, each lapping the one below. A hair, a thousandth of an inch, takes no further course.
pub(super) fn courses(reach: Length, roll: &Supply) -> f64 {
    let width = roll.width.unwrap_or(reach).in_inches();
    let more = reach.in_inches() - width - 0.001;
    let step = width - roll.lap.in_inches();
    if more <= 0.0 {
        1.0
    } else {
        1.0 + (more / step).ceil()
    }
}

/// What is bought of a roll to cover an area once: its head laps, 2 in where it lies single, half its width and an inch more where
/// it lies double, and the laps at its ends.
pub(super) fn bought_for_cover(roll: &Supply, doubled: bool) -> f64 {
    let width = roll.width.map_or(f64::INFINITY, Length::in_inches);
    let lap = if doubled {
        width / 2.0 + 1.0
    } else {
        roll.lap.in_inches()
    };
    let heads = if width.is_finite() {
        width / (width - lap)
    } else {
        1.0
    };
    heads * roll.end_lapped()
}

/// Underlayment over all that no ice barrier lies on, which stands in for it there.
pub(super) fn underlayment(site: &Site<'_>) -> Counted {
    let roll = site.basis.supplies.supply(Item::Underlayment);
    let bare = |plane: &Plane| bare_squares(site, plane);
    let is_doubled = |plane: &Plane| plane.pitch < SINGLE_FROM;
    let amount = site
        .planes
        .iter()
        .map(|(_, plane)| bare(plane).scaled(100.0 * bought_for_cover(&roll, is_doubled(plane))))
        .sum();
    let doubled = site
        .planes
        .iter()
        .filter(|(_, plane)| is_doubled(plane))
        .count();
    let reason = if doubled == 0 {
        Said::new("need-underlayment").with("lap", Arg::Length(roll.lap))
    } else if doubled == site.planes.len() {
        Said::new("need-underlayment-double")
    } else {
        Said::new("need-underlayment-some-double")
    };
    Counted {
        needs: vec![site.need(
            Item::Underlayment,
            amount,
            reason,
            irc(Irc::Underlayment, site.edition()),
        )],
        tasks: site.over(RoofTask::LayUnderlayment, bare),
        ..Counted::default()
    }
}

fn bare_squares(site: &Site<'_>, plane: &Plane) -> Spread {
    let iced = ice_on(site, plane)
        .map(|ice| square_feet_below(plane, ice.covers))
        .fold(0.0, f64::max);
    let bare = (plane.slope_area.in_square_feet() - iced).max(0.0) / 100.0;
    Spread::within(bare, site.plan.area_within())
}

/// The ice barrier along one eave.
struct Ice<'a> {
    eave: &'a RoofLine,
    plane: &'a Plane,
    /// Courses at the least, the likely and the most that its reach may be.
    courses: Spread,
    /// How far up the slope the likely courses cover.
    covers: Length,
}

fn ice_on<'a>(site: &'a Site<'_>, plane: &'a Plane) -> impl Iterator<Item = Ice<'a>> {
    ices(site).filter(move |ice| std::ptr::eq(ice.plane, plane))
}

fn ices<'a>(site: &'a Site<'_>) -> impl Iterator<Item = Ice<'a>> {
    eaves(site).filter_map(move |(eave, plane)| Some(ice(site, eave, plane, overhang(site, eave)?)))
}

/// The overhang of an eave: as the plan has it, else the widest that was measured at an eave, else the one he gives for the whole roof.
fn overhang(site: &Site<'_>, eave: &RoofLine) -> Option<Length> {
    eave.overhang
        .or(site.basis.standing.overhang)
        .or(site.basis.choices.overhang)
}

/// Every eave with the laid plane that rises from it, where an ice barrier is asked for.
fn eaves<'a>(site: &'a Site<'_>) -> impl Iterator<Item = (&'a RoofLine, &'a Plane)> {
    let wanted = site.basis.profile.ice_barrier.is_yes() && !site.basis.choices.unheated_accessory;
    site.lines(&[LineKind::Eave])
        .filter(move |_| wanted)
        .filter_map(|eave| {
            let planes = &site.planes;
            planes
                .iter()
                .find(|(at, _)| eave.planes.contains(at))
                .map(|(_, plane)| (eave, *plane))
        })
}

fn ice<'a>(site: &Site<'_>, eave: &'a RoofLine, plane: &'a Plane, overhang: Length) -> Ice<'a> {
    let roll = site.basis.supplies.supply(Item::IceBarrier);
    let reach = ice_reach(overhang, plane.pitch, site.edition());
    // The overhang is a length on plan, the reach hangs on the slope factor too.
    let within = Spread::within(1.0, site.plan.length_within + site.plan.pitch_within);
    let count = within.map(|share| courses(reach.scaled(share), &roll));
    let width = roll.width.unwrap_or(reach).in_inches();
    let covers = width + (count.likely - 1.0) * (width - roll.lap.in_inches());
    Ice {
        eave,
        plane,
        courses: count,
        covers: Length::from_inches(covers),
    }
}

/// Ice barrier where the locality asks for it.
pub(super) fn ice_barrier(site: &Site<'_>) -> Counted {
    match site.basis.profile.ice_barrier {
        Answer::No => Counted::default(),
        _ if site.basis.choices.unheated_accessory => Counted::default(),
        Answer::Unknown => gap(Said::new("gap-ice-not-known")),
        Answer::Yes => along_the_eaves(site),
    }
}

fn gap(why: Said) -> Counted {
    Counted {
        gaps: vec![Gap {
            item: Item::IceBarrier,
            why,
        }],
        ..Counted::default()
    }
}

fn along_the_eaves(site: &Site<'_>) -> Counted {
    let unmeasured = eaves(site)
        .filter(|(eave, _)| overhang(site, eave).is_none())
        .count();
    if unmeasured > 0 {
        return gap(Said::new("gap-overhang"));
    }
    let roll = site.basis.supplies.supply(Item::IceBarrier);
    let width = roll.width.map_or(1.0, Length::in_feet);
    let mut counted = Counted::default();
    let mut amount = Spread::ZERO;
    let mut most_courses = 0.0_f64;
    for ice in ices(site) {
        let sheet = site.feet(ice.eave).times(ice.courses).scaled(width);
        most_courses = most_courses.max(ice.courses.likely);
        amount = amount + sheet.scaled(roll.end_lapped());
        counted.tasks.push(TaskAmount {
            task: RoofTask::LayIceBarrier,
            pitch: Some(ice.plane.pitch),
            amount: sheet.scaled(0.01),
        });
    }
    if !amount.is_nothing() {
        let reason = Said::new("need-ice-barrier").with("courses", whole(most_courses));
        let source = irc(Irc::IceBarrier, site.edition());
        counted
            .needs
            .push(site.need(Item::IceBarrier, amount, reason, source));
    }
    counted
}

/// Courses are whole and few.
#[allow(clippy::cast_possible_truncation)]
fn whole(courses: f64) -> i64 {
    courses as i64
}

/// How much of a plane lies no further up its slope than so far, in square feet on the slope.
fn square_feet_below(plane: &Plane, up: Length) -> f64 {
    let factor = plane.pitch.slope_factor();
    let uphill = |(x, y): (f64, f64)| -(x * plane.downhill.0 + y * plane.downhill.1);
    let rim: Vec<_> = plane.corners.iter().map(|c| (c.x, c.y)).collect();
    let eave = rim.iter().map(|at| uphill(*at)).fold(f64::MAX, f64::min);
    let limit = eave + up.in_metres() / factor;
    let holes = plane.holes.iter().map(|hole| {
        let hole: Vec<_> = hole.iter().map(|c| (c.x, c.y)).collect();
        area_where(&hole, &uphill, limit)
    });
    let on_plan = area_where(&rim, &uphill, limit) - holes.sum::<f64>();
    trade::units::Area::square_metres(on_plan.max(0.0) * factor).in_square_feet()
}

/// The area of that part of a ring where a level reading stays below a limit: the ring cut along it, then the shoelace.
fn area_where(ring: &[(f64, f64)], level: &impl Fn((f64, f64)) -> f64, limit: f64) -> f64 {
    let mut kept: Vec<(f64, f64)> = Vec::with_capacity(ring.len() + 4);
    let next = ring.iter().cycle().skip(1);
    for (&a, &b) in ring.iter().zip(next) {
        let (below_a, below_b) = (limit - level(a), limit - level(b));
        if below_a >= 0.0 {
            kept.push(a);
        }
        if (below_a >= 0.0) != (below_b >= 0.0) {
            let share = below_a / (below_a - below_b);
            kept.push((a.0 + share * (b.0 - a.0), a.1 + share * (b.1 - a.1)));
        }
    }
    let next = kept.iter().cycle().skip(1);
    let twice: f64 = kept
        .iter()
        .zip(next)
        .map(|(a, b)| a.0 * b.1 - b.0 * a.1)
        .sum();
    twice.abs() / 2.0
}
