//! The worksheet of an offer: what is still to be counted and chosen, and keeping it.

use crate::{ActError, Moment, measure};
use book::{Book, Entry};
use price::Standing;
use trade::catalogue::{Catalogue, RemedyKey};
use trade::history::History;
use trade::ids::{PartId, SlopeId, StructureId, WorksheetId};
use trade::mark::MeasureOf;
use trade::offer::{Offer, Patching, Unpriced};
use trade::price_list::PriceList;
use trade::roof::{Plane, RoofPlan};
use trade::takeoff::{Spread, Unit};
use trade::worksheet::Worksheet;

/// Square feet in a square.
const SQUARE: f64 = 100.0;

/// How much of a remedy a part takes: counted already, or to be counted before there is a price.
#[derive(Clone, Debug, PartialEq)]
pub struct ToCount {
    /// The part.
    pub part: PartId,
    /// The remedy.
    pub remedy: RemedyKey,
    /// In what it is counted; `None` where the price list no longer has the remedy.
    pub unit: Option<Unit>,
    /// What the plan says: a suggestion, which counts only once it is written down.
    pub on_plan: Option<Spread>,
}

/// A chimney whose size no mark holds in full.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Chimney {
    /// The chimney.
    pub part: PartId,
    /// Whether a mark holds its width.
    pub is_width_measured: bool,
}

/// The worksheet of a structure as it stands, or a blank one.
pub fn of(history: &History, structure: StructureId, moment: Moment) -> Worksheet {
    history
        .worksheet_of(structure)
        .cloned()
        .unwrap_or_else(|| Worksheet::blank(moment.id(), structure, moment.at))
}

/// Fills in the worksheet of a structure. It is kept whole, under the same identifier each time.
///
/// # Errors
/// Where the structure is not in the book, what is filled in cannot be, or the book cannot be written; what stood there still stands.
pub fn fill(
    book: &mut Book,
    structure: StructureId,
    moment: Moment,
    fill: impl FnOnce(&mut Worksheet, &History) -> Result<(), ActError>,
) -> Result<WorksheetId, ActError> {
    let history = measure::of_structure(book, structure)?;
    let mut sheet = of(&history, structure, moment);
    fill(&mut sheet, &history)?;
    sheet.at = moment.at;
    let id = sheet.id;
    book.write(moment.at, |tx| {
        tx.record(Entry::Worksheet(sheet))?;
        Ok(id)
    })
}

/// What was counted for a structure, and what an offer for it still waits for; each once.
pub fn to_count(
    history: &History,
    structure: StructureId,
    list: &PriceList,
    plan: Option<&RoofPlan>,
    offer: Option<&Offer>,
) -> Vec<ToCount> {
    let counted = history
        .worksheet_of(structure)
        .into_iter()
        .flat_map(|sheet| &sheet.counts)
        .map(|count| (count.part, &count.remedy));
    let waiting = offer
        .into_iter()
        .flat_map(|offer| &offer.courses)
        .flat_map(|course| {
            let patching = match &course.patching {
                Some(Patching::NotPriced { unpriced }) => unpriced.as_slice(),
                Some(Patching::Again(_)) | None => &[],
            };
            course.unpriced.iter().chain(patching)
        })
        .filter_map(|unpriced| match unpriced {
            Unpriced::NotCounted { part, remedy, .. } => Some((*part, remedy)),
            _ => None,
        });
    let mut all: Vec<(PartId, &RemedyKey)> = counted.chain(waiting).collect();
    all.sort_by_key(|(part, remedy)| (number(history, *part), *part, *remedy));
    all.dedup();
    all.into_iter()
        .map(|(part, remedy)| {
            let unit = unit_of(history, list, part, remedy);
            ToCount {
                part,
                remedy: remedy.clone(),
                unit,
                on_plan: plan
                    .zip(unit)
                    .and_then(|(plan, unit)| on_plan(history, plan, part, unit)),
            }
        })
        .collect()
}

fn number(history: &History, part: PartId) -> Option<u16> {
    history.part(part).map(|part| part.number)
}

/// In what a remedy is counted for a part, by the price list.
pub fn unit_of(
    history: &History,
    list: &PriceList,
    part: PartId,
    remedy: &RemedyKey,
) -> Option<Unit> {
    let slope = history.part(part)?.slope;
    let pitch = slope
        .and_then(|slope| history.slope(slope)?.pitch)
        .map(|pitch| pitch.value);
    list.remedy(remedy, pitch).map(|row| row.unit)
}

/// How long the line of the plan is that a part lies along, or how large the plane, in the unit it is counted by. A part of no one slope lies
/// along the only line of its kind, where there is only one.
fn on_plan(history: &History, plan: &RoofPlan, part: PartId, unit: Unit) -> Option<Spread> {
    let part = history.part(part)?;
    let planes = part.slope.map(|slope| planes_of(plan, slope));
    match unit {
        Unit::Foot => {
            let kind = measure::near(Catalogue::standard().kind(&part.kind)?)?;
            let near: Vec<f64> = plan
                .lines
                .iter()
                .filter(|line| line.kind == kind)
                .filter(|line| {
                    let Some(planes) = &planes else { return true };
                    line.planes.iter().any(|at| planes.contains(at))
                })
                .map(|line| line.length.in_feet())
                .collect();
            let is_known = if planes.is_some() {
                !near.is_empty()
            } else {
                near.len() == 1
            };
            let within = plan.length_within + plan.pitch_within;
            is_known.then(|| Spread::within(near.iter().sum(), within))
        }
        Unit::Square | Unit::SquareFoot => {
            let each = if unit == Unit::Square { SQUARE } else { 1.0 };
            let area: f64 = planes?
                .into_iter()
                .filter_map(|at| plan.planes.get(at))
                .map(|plane: &Plane| plane.slope_area.in_square_feet())
                .sum();
            (area > 0.0).then(|| Spread::within(area / each, plan.area_within()))
        }
        _ => None,
    }
}

fn planes_of(plan: &RoofPlan, slope: SlopeId) -> Vec<usize> {
    let planes = plan.planes.iter().enumerate();
    planes
        .filter(|(_, plane)| plane.slope == Some(slope))
        .map(|(at, _)| at)
        .collect()
}

/// The chimneys of a structure. No mark holds how deep one is.
pub fn chimneys(history: &History, structure: StructureId) -> Vec<Chimney> {
    let is_measured = |part: PartId| {
        let mut marks = history.marks.iter().filter(|mark| mark.part == part);
        marks.any(|mark| mark.measure(MeasureOf::Width).is_some())
    };
    Standing::of(history, structure)
        .chimneys
        .into_iter()
        .map(|chimney| Chimney {
            part: chimney.part,
            is_width_measured: is_measured(chimney.part),
        })
        .collect()
}
