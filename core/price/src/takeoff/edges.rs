//! What runs along the lines of a roof: drip edge, valleys, flashing at walls.

use super::Counted;
use super::site::Site;
use crate::code::{Irc, irc};
use trade::laid::ValleyIs;
use trade::roof::{Corner, LineKind, RoofLine};
use trade::takeoff::{Item, Need, RoofTask, Spread, TaskAmount};
use trade::units::Pitch;
use trade::verdict::Source;
use trade::words::{Arg, Said};

/// Ends of lines nearer than this, in metres, are one corner.
const SAME_CORNER: f64 = 0.01;

/// Lengths of metal along lines of some kinds, lapped, and the work of setting them.
fn lengths(
    site: &Site<'_>,
    item: Item,
    task: RoofTask,
    kinds: &'static [LineKind],
    reason: Said,
    source: Source,
) -> Counted {
    let feet: Spread = site.lines(kinds).map(|line| site.feet(line)).sum();
    if feet.is_nothing() {
        return Counted::default();
    }
    let lapped = site.basis.supplies.supply(item).lapped();
    Counted {
        needs: vec![site.need(item, feet.scaled(lapped), reason, source)],
        tasks: site.along(task, site.lines(kinds)),
        ..Counted::default()
    }
}

/// Drip edge at eaves and rakes (IRC R905.2.8.5 since 2012); at a free high edge too (common practice).
pub(super) fn drip_edge(site: &Site<'_>) -> Counted {
    let supply = site.basis.supplies.supply(Item::DripEdge);
    lengths(
        site,
        Item::DripEdge,
        RoofTask::SetDripEdge,
        &[LineKind::Eave, LineKind::Rake, LineKind::Top],
        Said::new("need-drip-edge").with("lap", Arg::Length(supply.lap)),
        irc(Irc::DripEdge, site.edition()),
    )
}

/// Lining of valleys: metal at least 24 in wide where they stay open, sheet where they are closed (IRC R905.2.8.2).
pub(super) fn valleys(site: &Site<'_>) -> Counted {
    let (item, reason) = match site.laid.valleys {
        ValleyIs::Open => (Item::ValleyMetal, "need-valley-metal"),
        ValleyIs::ClosedCut => (Item::ValleySheet, "need-valley-sheet"),
    };
    let mut counted = lengths(
        site,
        item,
        RoofTask::LineValley,
        &[LineKind::Valley],
        Said::new(reason),
        irc(Irc::ValleyLining, site.edition()),
    );
    for need in &mut counted.needs {
        need.size = site.basis.supplies.supply(item).width;
    }
    counted
}

/// Flashing where a slope ends level against a wall.
pub(super) fn head_flashing(site: &Site<'_>) -> Counted {
    lengths(
        site,
        Item::HeadFlashing,
        RoofTask::SetHeadFlashing,
        &[LineKind::Wall],
        Said::new("need-head-flashing"),
        Source::Practice,
    )
}

/// Step flashing: one piece a course along every side wall (IRC R905.2.8.3).
pub(super) fn step_flashing(site: &Site<'_>) -> Counted {
    let mut counted = Counted::default();
    for line in site.lines(&[LineKind::Step]) {
        let pitch = site.pitch_at(line);
        let pieces = steps_along(site, line, pitch);
        counted.tasks.push(TaskAmount {
            task: RoofTask::SetStepFlashing,
            pitch,
            amount: pieces,
        });
        counted.needs.push(step_pieces(site, pieces));
    }
    counted
}

/// Pieces of step flashing as a need.
pub(super) fn step_pieces(site: &Site<'_>, pieces: Spread) -> Need {
    site.need(
        Item::StepFlashing,
        pieces,
        Said::new("need-step-flashing"),
        irc(Irc::SidewallFlashing, site.edition()),
    )
}

/// Courses that end at a side wall: its rise up the slope by the exposure, a begun one counted whole.
fn steps_along(site: &Site<'_>, line: &RoofLine, pitch: Option<Pitch>) -> Spread {
    let rise = (line.to.z - line.from.z).abs() / 0.3048;
    let up = match pitch {
        Some(pitch) if pitch > Pitch::rise(0) && rise > 0.0 => {
            rise * 12.0 / pitch.in_twelfths() * pitch.slope_factor()
        }
        _ => line.length.in_feet(),
    };
    let within = site.plan.length_within + site.plan.pitch_within;
    courses_in(site, Spread::within(up, within))
}

/// Whole courses in a length up the slope, in feet.
pub(super) fn courses_in(site: &Site<'_>, feet: Spread) -> Spread {
    let exposure = site.laid.pieces.exposure.in_feet();
    feet.map(|feet| {
        if exposure > 0.0 {
            (feet / exposure - 1e-6).ceil().max(0.0)
        } else {
            0.0
        }
    })
}

/// Counter flashing along walls, where he says how long it is.
pub(super) fn counter_flashing(site: &Site<'_>) -> Counted {
    let feet = Spread::exactly(site.basis.choices.counter_flashing.in_feet());
    if feet.is_nothing() {
        return Counted::default();
    }
    let pitch = site.planes.iter().map(|(_, plane)| plane.pitch).max();
    counter(site, feet, pitch)
}

/// Counter flashing of one length.
pub(super) fn counter(site: &Site<'_>, feet: Spread, pitch: Option<Pitch>) -> Counted {
    let lapped = site.basis.supplies.supply(Item::CounterFlashing).lapped();
    Counted {
        needs: vec![site.need(
            Item::CounterFlashing,
            feet.scaled(lapped),
            Said::new("need-counter-flashing"),
            Source::Practice,
        )],
        tasks: vec![TaskAmount {
            task: RoofTask::SetCounterFlashing,
            pitch,
            amount: feet,
        }],
        ..Counted::default()
    }
}

/// Kick-outs: one where an eave dies into a side wall, which is where a line of step flashing begins (IRC R903.2.1 since 2012).
pub(super) fn kick_outs(site: &Site<'_>) -> Counted {
    let mut counted = Counted::default();
    for step in site.lines(&[LineKind::Step]) {
        let low = if step.from.z <= step.to.z {
            step.from
        } else {
            step.to
        };
        let at_an_eave = site
            .lines(&[LineKind::Eave])
            .any(|eave| is_near(eave.from, low) || is_near(eave.to, low));
        if at_an_eave {
            counted.needs.push(site.need(
                Item::KickOut,
                Spread::exactly(1.0),
                Said::new("need-kick-out"),
                irc(Irc::KickOut, site.edition()),
            ));
            counted.tasks.push(TaskAmount {
                task: RoofTask::SetKickOut,
                pitch: site.pitch_at(step),
                amount: Spread::exactly(1.0),
            });
        }
    }
    counted
}

fn is_near(a: Corner, b: Corner) -> bool {
    (a.x - b.x).abs() < SAME_CORNER
        && (a.y - b.y).abs() < SAME_CORNER
        && (a.z - b.z).abs() < SAME_CORNER
}
