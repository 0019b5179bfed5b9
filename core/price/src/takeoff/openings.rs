//! What stands through a roof: boots by the size of the pipe, crickets behind wide chimneys, the flashing round them.

use super::Counted;
use super::edges::{counter, courses_in, step_pieces};
use super::site::Site;
use crate::code::{Irc, irc};
use crate::standing::Chimney;
use trade::takeoff::{Gap, Item, RoofTask, Spread, TaskAmount};
use trade::units::{Length, Pitch};
use trade::verdict::Source;
use trade::words::{Arg, Said};

/// Wider than this, a chimney takes a cricket on its ridge side; exactly this wide takes none (IRC R903.2.2, R1003.20).
const CRICKET_OVER: Length = Length::inches(30);

/// A cricket.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Cricket {
    /// As wide as what it stands behind.
    pub width: Length,
    /// Its height where it is highest.
    pub height: Length,
}

/// The cricket behind a chimney of a width on a pitch; `None` where none is asked for.
///
/// Table R1003.20: half the width at 12:12, a third at 8:12, a quarter at 6:12, a sixth at 4:12, an eighth at 3:12. All rows but the
/// first are from memory; all are width × rise / 24.
pub fn cricket(width: Length, pitch: Pitch) -> Option<Cricket> {
    (width > CRICKET_OVER).then(|| Cricket {
        width,
        height: width.scaled(pitch.in_twelfths() / 24.0),
    })
}

fn one(task: RoofTask, pitch: Option<Pitch>) -> TaskAmount {
    TaskAmount {
        task,
        pitch,
        amount: Spread::exactly(1.0),
    }
}

/// A boot for every pipe, by its size.
pub(super) fn boots(site: &Site<'_>) -> Counted {
    let mut counted = Counted::default();
    for pipe in &site.basis.standing.pipes {
        if !site.reaches(pipe.slope) {
            continue;
        }
        let reason = match pipe.diameter {
            Some(_) => "need-boot",
            None => "need-boot-size-not-measured",
        };
        let mut need = site.need(
            Item::PipeBoot,
            Spread::exactly(1.0),
            Said::new(reason),
            Source::Practice,
        );
        need.size = pipe.diameter;
        counted.needs.push(need);
        let pitch = site.pitch_of(pipe.slope);
        counted.tasks.push(one(RoofTask::SetBoot, pitch));
    }
    counted
}

fn chimneys<'a>(site: &'a Site<'_>) -> impl Iterator<Item = &'a Chimney> {
    let chimneys = site.basis.standing.chimneys.iter();
    chimneys.filter(|chimney| site.reaches(chimney.slope))
}

/// A cricket behind every chimney wider than 30 in that does not stand astride the ridge.
pub(super) fn crickets(site: &Site<'_>) -> Counted {
    let mut counted = Counted::default();
    for chimney in chimneys(site) {
        if !chimney.astride_ridge.is_yes() {
            count_cricket(site, chimney, &mut counted);
        }
    }
    counted
}

fn count_cricket(site: &Site<'_>, chimney: &Chimney, counted: &mut Counted) {
    let Some(width) = chimney.width else {
        counted.gaps.push(Gap {
            item: Item::Cricket,
            why: Said::new("gap-chimney-width"),
        });
        return;
    };
    let Some(pitch) = site.pitch_of(chimney.slope) else {
        return;
    };
    if let Some(cricket) = cricket(width.value, pitch) {
        let mut need = site.need(
            Item::Cricket,
            Spread::exactly(1.0),
            Said::new("need-cricket")
                .with("width", Arg::Length(cricket.width))
                .with("height", Arg::Length(cricket.height)),
            irc(Irc::Cricket, site.edition()),
        );
        need.size = Some(cricket.width);
        counted.needs.push(need);
        counted.tasks.push(one(RoofTask::BuildCricket, Some(pitch)));
    }
}

/// Step flashing at a chimney's sides, flashing before and behind it, counter flashing all round. Common practice. A chimney whose width and
/// depth are not both known is priced whole.
pub(super) fn chimney_flashing(site: &Site<'_>) -> Counted {
    let mut counted = Counted::default();
    for chimney in chimneys(site) {
        if let (Some(width), Some(depth)) = (chimney.width, chimney.depth) {
            let width = Spread::within(width.value.in_feet(), width.within);
            counted.add(round_chimney(site, chimney, width, depth));
        }
    }
    counted
}

fn round_chimney(site: &Site<'_>, chimney: &Chimney, width: Spread, depth: Length) -> Counted {
    let pitch = site.pitch_of(chimney.slope);
    let up = depth.in_feet() * pitch.map_or(1.0, Pitch::slope_factor);
    let pieces = courses_in(site, Spread::exactly(up)).scaled(2.0);
    let heads = width.scaled(2.0);
    let lapped = site.basis.supplies.supply(Item::HeadFlashing).lapped();
    let mut counted = Counted {
        needs: vec![
            step_pieces(site, pieces),
            site.need(
                Item::HeadFlashing,
                heads.scaled(lapped),
                Said::new("need-head-flashing"),
                Source::Practice,
            ),
        ],
        tasks: vec![
            TaskAmount {
                task: RoofTask::SetStepFlashing,
                pitch,
                amount: pieces,
            },
            TaskAmount {
                task: RoofTask::SetHeadFlashing,
                pitch,
                amount: heads,
            },
        ],
        ..Counted::default()
    };
    let round = heads + Spread::exactly(2.0 * up);
    counted.add(counter(site, round, pitch));
    counted
}
