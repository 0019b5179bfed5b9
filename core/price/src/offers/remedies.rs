//! Repairs, upkeep and making safe: each remedy by its row of the list, for as many places as it has.

use super::lines::{Exact, Lines, line};
use super::{Asking, OfferError, unpriced};
use crate::standing::measured;
use rust_decimal::prelude::ToPrimitive;
use std::collections::BTreeMap;
use trade::catalogue::RemedyKey;
use trade::ids::PartId;
use trade::mark::{Extent, Mark, MeasureOf};
use trade::offer::{CostKind, Unpriced};
use trade::price_list::RemedyRow;
use trade::property::Part;
use trade::takeoff::{ByRemedy, Item, Spread, Unit};
use trade::units::{Length, Pitch};
use trade::verdict::Task;
use trade::words::Said;

/// Material by item and size.
type Used = BTreeMap<(Item, Option<Length>), Spread>;

/// Adds what remedies cost. A covering's own tasks that name no remedy are in the covering; what comes along with it is priced whole, once.
pub(super) fn price(
    asking: &Asking<'_>,
    tasks: &[&Task],
    along: &[ByRemedy],
    is_covering: bool,
    lines: &mut Lines,
) -> Result<(), OfferError> {
    if tasks.is_empty() && !is_covering {
        unpriced(lines, Unpriced::NoWorkNamed);
    }
    let mut used = Used::new();
    for task in tasks {
        match &task.remedy {
            Some(remedy) => {
                let amount = |row: &RemedyRow| amount(asking, task.part, row);
                one(asking, task.part, remedy, amount, lines, &mut used)?;
            }
            None if is_covering => {}
            None => unpriced(lines, Unpriced::NoRemedyNamed { part: task.part }),
        }
    }
    for along in along {
        let is_named = tasks
            .iter()
            .any(|task| task.part == along.part && task.remedy.is_some());
        if !is_named {
            let amount = |row: &RemedyRow| whole(asking, along, row);
            one(asking, along.part, &along.remedy, amount, lines, &mut used)?;
        }
    }
    // Bought together: two half bundles are one.
    for ((item, size), amount) in used {
        lines.material(asking.list, item, size, amount)?;
    }
    Ok(())
}

fn one(
    asking: &Asking<'_>,
    part: PartId,
    remedy: &RemedyKey,
    amount: impl Fn(&RemedyRow) -> Option<Spread>,
    lines: &mut Lines,
    used: &mut Used,
) -> Result<(), OfferError> {
    let list = asking.list;
    let pitch = pitch_of(asking, part);
    let row = list.remedy(remedy, pitch);
    let rate = row.and_then(|row| list.rate(row.rate.as_deref()));
    let (Some(row), Some(rate)) = (row, rate) else {
        let remedy = remedy.clone();
        unpriced(lines, Unpriced::NoRemedy { remedy, pitch });
        return Ok(());
    };
    let Some(amount) = amount(row) else {
        let what = Unpriced::NotCounted {
            part,
            remedy: remedy.clone(),
            unit: row.unit,
        };
        unpriced(lines, what);
        return Ok(());
    };
    let name = Said::new(remedy.message());
    let exact = Exact::of(amount)?;
    let hours = exact.times(row.hours);
    lines.work(list.rounding, name.clone(), hours, rate);
    if let Some(each) = row.sundries {
        lines.rows.push(line(
            list.rounding,
            CostKind::Material,
            Said::new("offer-line-sundries").with("remedy", name),
            exact,
            Said::new(row.unit.key()),
            each,
        ));
    }
    for takes in list.uses.iter().filter(|takes| takes.remedy == *remedy) {
        let sum = used
            .entry((takes.item, size_of(asking, part, takes.item)))
            .or_default();
        *sum = *sum + amount.scaled(takes.amount.to_f64().unwrap_or(0.0));
    }
    Ok(())
}

/// A boot is as large as its pipe; nothing else that a remedy takes comes in sizes.
fn size_of(asking: &Asking<'_>, part: PartId, item: Item) -> Option<Length> {
    (item == Item::PipeBoot)
        .then(|| measured(asking.history, part_of(asking, part)?, MeasureOf::Diameter))
        .flatten()
        .map(|measured| measured.value)
}

fn part_of<'a>(asking: &Asking<'a>, part: PartId) -> Option<&'a Part> {
    asking.history.part(part)
}

/// The pitch of the slope that a part is on, where anybody measured it.
fn pitch_of(asking: &Asking<'_>, part: PartId) -> Option<Pitch> {
    let slope = asking.history.slope(part_of(asking, part)?.slope?)?;
    slope.pitch.map(|pitch| pitch.value)
}

/// How much of a remedy a part takes: as he counted; else places by how far its defects reach, feet by the length that was measured. `None`
/// where nobody counted.
fn amount(asking: &Asking<'_>, part: PartId, row: &RemedyRow) -> Option<Spread> {
    let counted = asking
        .counts
        .iter()
        .find(|count| count.part == part && count.remedy == row.remedy);
    if let Some(count) = counted {
        return Some(count.amount);
    }
    match row.unit {
        Unit::Place => places(asking, part, &row.remedy),
        Unit::Foot => run(asking, part),
        _ => None,
    }
}

/// How much renewing a part whole takes: one place, however far its defects reach; its length where it goes by the foot.
fn whole(asking: &Asking<'_>, along: &ByRemedy, row: &RemedyRow) -> Option<Spread> {
    match row.unit {
        Unit::Place => Some(Spread::exactly(1.0)),
        Unit::Foot => along.feet.or_else(|| amount(asking, along.part, row)),
        _ => amount(asking, along.part, row),
    }
}

/// The length of a part as it was measured, in feet.
fn run(asking: &Asking<'_>, part: PartId) -> Option<Spread> {
    let run = measured(asking.history, part_of(asking, part)?, MeasureOf::Run)?;
    let within = run.within.max(run.got.within());
    Some(Spread::within(run.value.in_feet(), within))
}

/// Places by how far the defects reach that the remedy answers: one, or two to three; more than that must be counted. A part with no such
/// defect is one place.
fn places(asking: &Asking<'_>, part: PartId, remedy: &RemedyKey) -> Option<Spread> {
    let kind = &part_of(asking, part)?.kind;
    let reach = last_real(asking, part)
        .into_iter()
        .flat_map(|mark| &mark.defects)
        .filter(|seen| {
            asking
                .catalogue
                .defect(&seen.defect)
                .is_some_and(|defect| defect.effect_on(kind, remedy).is_some())
        })
        .map(|seen| seen.extent)
        .max();
    match reach.unwrap_or_default() {
        Extent::Spot => Some(Spread::exactly(1.0)),
        Extent::Several => Some(Spread {
            least: 2.0,
            likely: 3.0,
            most: 3.0,
        }),
        Extent::Broad => None,
    }
}

/// The last mark in which a part was really seen.
pub(super) fn last_real<'a>(asking: &Asking<'a>, part: PartId) -> Option<&'a Mark> {
    asking
        .history
        .marks
        .iter()
        .rev()
        .find(|mark| mark.part == part && mark.is_real())
}
