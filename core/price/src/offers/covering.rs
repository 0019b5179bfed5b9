//! A new covering: material and work from the takeoff, tearing off and hauling from what comes down.

use super::lines::{Exact, Lines, line};
use super::{Asking, OfferError, unpriced};
use rust_decimal::Decimal;
use trade::offer::{CostKind, LeftOut, Unpriced};
use trade::price_list::PriceList;
use trade::takeoff::{Item, Need, RoofTask, Spread, Takeoff, TaskAmount, TearOff};
use trade::verdict::Course;
use trade::words::Said;

/// A pound in tons of 2,000.
const TONS_A_POUND: Decimal = Decimal::from_parts(5, 0, 0, false, 4);

/// What lies on the deck: a re-cover never sees it (common practice).
const ON_DECK: [Item; 3] = [Item::Underlayment, Item::IceBarrier, Item::DeckSheet];
/// The work of laying that.
const ON_DECK_TASKS: [RoofTask; 2] = [RoofTask::LayUnderlayment, RoofTask::LayIceBarrier];

/// Whether a course takes a thing, which lies above the deck or on it.
fn takes(course: Course, is_above: bool) -> bool {
    is_above || course == Course::TearOff
}

/// What of a takeoff a course takes.
pub(super) fn needs(takeoff: &Takeoff, course: Course) -> impl Iterator<Item = &Need> {
    let needs = takeoff.needs.iter();
    needs.filter(move |need| takes(course, !ON_DECK.contains(&need.item)))
}

/// Adds what a new covering costs.
pub(super) fn price(
    asking: &Asking<'_>,
    course: Course,
    lines: &mut Lines,
) -> Result<(), OfferError> {
    let list = asking.list;
    match asking.takeoff {
        None => unpriced(lines, Unpriced::NoTakeoff),
        Some(takeoff) => {
            for need in needs(takeoff, course) {
                material(list, need, lines)?;
            }
            let tasks = takeoff.tasks.iter();
            for task in tasks.filter(|task| takes(course, !ON_DECK_TASKS.contains(&task.task))) {
                work(list, task, lines)?;
            }
            let gaps = takeoff.gaps.iter();
            for gap in gaps.filter(|gap| takes(course, !ON_DECK.contains(&gap.item))) {
                let what = Unpriced::Gap {
                    item: gap.item,
                    why: Box::new(gap.why.clone()),
                };
                unpriced(lines, what);
            }
        }
    }
    if course == Course::TearOff {
        match asking.tear_off {
            None => unpriced(lines, Unpriced::NoTearOff),
            Some(tear_off) => down(list, tear_off, lines)?,
        }
    }
    permit(list, lines)
}

fn material(list: &PriceList, need: &Need, lines: &mut Lines) -> Result<(), OfferError> {
    if need.item == Item::DeckSheet {
        match list.sheet {
            Some(each) => lines.sheets = Some((need.packs, each)),
            None => unpriced(lines, Unpriced::NoSheetPrice),
        }
        return Ok(());
    }
    // Other shingles would be laid otherwise: their pack must be the one that was laid.
    let other_pack = need.item.is_laid()
        && list.material(need.item, need.size).is_some_and(|row| {
            row.pack.normalize().to_string() != trade::takeoff::plain(need.pack, 6)
        });
    if other_pack {
        unpriced(lines, Unpriced::OtherPack { item: need.item });
        return Ok(());
    }
    lines.material(list, need.item, need.size, need.amount)
}

/// Work by its hours at its steepness.
fn work(list: &PriceList, done: &TaskAmount, lines: &mut Lines) -> Result<(), OfferError> {
    let TaskAmount {
        task,
        pitch,
        amount,
    } = *done;
    let row = list.task(task, pitch);
    let rate = row.and_then(|row| list.rate(row.rate.as_deref()));
    let (Some(row), Some(rate)) = (row, rate) else {
        unpriced(lines, Unpriced::NoHours { task, pitch });
        return Ok(());
    };
    if row.hours.is_zero() {
        return Ok(());
    }
    let name = Said::new(task.key());
    let what = match pitch {
        Some(pitch) => Said::new("offer-line-at-pitch")
            .with("work", name)
            .with("pitch", pitch),
        None => name,
    };
    let hours = Exact::of(amount)?.times(row.hours);
    lines.work(list.rounding, what, hours, rate);
    Ok(())
}

fn down(list: &PriceList, tear_off: &TearOff, lines: &mut Lines) -> Result<(), OfferError> {
    for task in &tear_off.tasks {
        work(list, task, lines)?;
    }
    let disposal = list.disposal;
    if disposal.ton.is_none() && disposal.load.is_none() {
        unpriced(lines, Unpriced::NoDisposal);
    }
    let tons = Exact::of(tear_off.pounds)?.times(TONS_A_POUND);
    let priced = [
        (disposal.ton, "offer-line-tons", tons, "unit-ton"),
        (
            disposal.load,
            "offer-line-loads",
            Exact::of(tear_off.loads.spread())?,
            "unit-load",
        ),
    ];
    for (each, what, quantity, unit) in priced {
        if let Some(each) = each {
            lines.rows.push(line(
                list.rounding,
                CostKind::Disposal,
                Said::new(what),
                quantity,
                Said::new(unit),
                each,
            ));
        }
    }
    Ok(())
}

fn permit(list: &PriceList, lines: &mut Lines) -> Result<(), OfferError> {
    if let Some(permit) = list.permit {
        lines.rows.push(line(
            list.rounding,
            CostKind::Permit,
            Said::new("cost-permit"),
            Exact::of(Spread::exactly(1.0))?,
            Said::new("unit-job.one"),
            permit,
        ));
    }
    Ok(())
}

/// Slopes that stay as they are, and what sheets of deck beyond those included cost.
pub(super) fn left_out(asking: &Asking<'_>, course: Course) -> Vec<LeftOut> {
    let Some(takeoff) = asking.takeoff else {
        return Vec::new();
    };
    let mut out = Vec::new();
    if !takeoff.planes_left.is_empty() {
        out.push(LeftOut::OtherSlopes {
            letters: takeoff.planes_left.clone(),
        });
    }
    out.extend(takeoff.untied.clone().map(LeftOut::Untied));
    if takeoff.of(Item::LowVent).next().is_none() {
        out.push(LeftOut::VentArea);
    }
    if let Some(each) = asking.list.sheet.filter(|_| course == Course::TearOff) {
        let included = takeoff.of(Item::DeckSheet).map(|need| need.packs.most);
        out.push(LeftOut::MoreSheets {
            included: included.sum(),
            each,
        });
    }
    out
}
