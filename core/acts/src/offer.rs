//! The offer: what the roof takes and what comes down, priced by the firm's own list, put to the owner in order of time.

use crate::judge::Judged;
use crate::settings::Going;
use crate::{ActError, Moment, judge, measure};
use ::judge::layers;
use book::{Book, Entry};
use price::{
    Asking, Basis, Choices, OfferError, Patch, Reading, Standing, Supplies, Wanted, Weights,
};
use rust_decimal::Decimal;
use trade::catalogue::{Catalogue, Effect};
use trade::history::History;
use trade::ids::{OfferId, SlopeId, StructureId, VisitId};
use trade::laid::{Laid, LaidPiece, Pieces, Practice};
use trade::offer::{Lasts, Nevertheless, Offer};
use trade::price_list::{PriceList, Trailer};
use trade::property::{Slope, StructureKind};
use trade::roof::RoofPlan;
use trade::takeoff::{Item, PlaneLoad, Takeoff, TearOff};
use trade::verdict::{Course, Narrowed, Verdict, When};

/// What a small trailer carries and holds, where the list names none. Common practice, no source.
const TRAILER: Trailer = Trailer {
    pounds: Decimal::from_parts(7000, 0, 0, false, 0),
    cubic_yards: Decimal::from_parts(12, 0, 0, false, 0),
};

/// What one structure takes and carries.
#[derive(Debug)]
pub struct Reckoning {
    /// Its plan.
    pub plan: RoofPlan,
    /// The covering laid on it.
    pub laid: Laid,
    /// Every piece where it lies.
    pub pieces: Vec<LaidPiece>,
    /// What it takes.
    pub takeoff: Takeoff,
    /// What comes down, or why that cannot be said.
    pub tear_off: Result<TearOff, price::TearOffError>,
    /// What it carries now, plane by plane, and would with another layer, or why that cannot be said.
    pub load: Result<Vec<PlaneLoad>, price::TearOffError>,
}

/// Lays a new covering over some slopes of a structure, over all where none is named ([`Verdict::covered_slopes`]), and counts what it takes and
/// what comes down.
///
/// # Errors
/// Where it was not measured, a slope that is named is not on its plan, or it is no roof for shingles.
pub fn reckon(
    history: &History,
    structure: StructureId,
    slopes: &[SlopeId],
    going: &Going,
    list: Option<&PriceList>,
) -> Result<Reckoning, ActError> {
    let plan =
        measure::plan(history, structure)?.ok_or_else(|| ActError::not_there("there-plan"))?;
    let slopes: Vec<&Slope> = slopes.iter().filter_map(|id| history.slope(*id)).collect();
    let planes = price::takeoff::planes_of(&plan, &slopes)?;
    let practice = practice(history, structure);
    let (laid, pieces) = roof::laying::lay_on(&plan, &planes, &shingles(list), practice)?;
    let supplies = list.map_or_else(Supplies::default, Supplies::of);
    let standing = Standing::of(history, structure);
    let choices = choices(history, structure);
    let takeoff = price::takeoff(
        &plan,
        &laid,
        &Basis {
            profile: &going.profile,
            supplies: &supplies,
            standing: &standing,
            choices: &choices,
        },
    )?;
    let readings = readings(history, structure);
    let weights = Weights::default();
    let trailer = list.and_then(|list| list.disposal.trailer);
    let tear_off = price::tear_off(
        &plan,
        &planes,
        &readings,
        &weights,
        &trailer.unwrap_or(TRAILER),
    );
    let load = price::load(&plan, &readings, Some(laid.pieces.covering), &weights);
    Ok(Reckoning {
        plan,
        laid,
        pieces,
        takeoff,
        tear_off,
        load,
    })
}

/// The shingles of the firm's list laid on all of a plan, as is chosen for its structure: what that takes, and every piece where it lies.
///
/// # Errors
/// Where they cannot be laid as the list describes them.
pub(crate) fn lay_all(
    history: &History,
    structure: StructureId,
    plan: &RoofPlan,
    list: Option<&PriceList>,
) -> Result<(Laid, Vec<LaidPiece>), ActError> {
    let practice = practice(history, structure);
    Ok(roof::laying::lay(plan, &shingles(list), practice)?)
}

/// The shingles of the firm's list: laminated ones where it has them.
fn shingles(list: Option<&PriceList>) -> Pieces {
    let has = |item| list.is_some_and(|list| list.materials.iter().any(|row| row.item == item));
    if has(Item::StripShingle) && !has(Item::LaminatedShingle) {
        Pieces::strip()
    } else {
        Pieces::laminated()
    }
}

/// What the worksheet says of the choices of a takeoff, and the record itself.
fn choices(history: &History, structure: StructureId) -> Choices {
    let kind = history.structure(structure).map(|one| one.kind);
    let told = history
        .worksheet_of(structure)
        .map_or_else(Choices::default, Choices::from);
    let found = || price::takeoff::deck_sheets(history, structure, Catalogue::standard());
    Choices {
        unheated_accessory: matches!(
            kind,
            Some(StructureKind::DetachedGarage | StructureKind::Shed)
        ),
        deck_sheets: told.deck_sheets.or_else(found),
        ..told
    }
}

/// How he lays, as the worksheet says.
fn practice(history: &History, structure: StructureId) -> Practice {
    history
        .worksheet_of(structure)
        .map_or_else(Practice::default, |sheet| Practice {
            valleys: sheet.valleys,
            starter: sheet.starter,
        })
}

fn readings(history: &History, structure: StructureId) -> Vec<Reading> {
    history
        .stacks
        .iter()
        .filter(|stack| stack.structure == structure)
        .filter_map(|stack| Reading::of(stack, layers::at_spot(stack)?.layers))
        .collect()
}

/// The firm's price list.
///
/// # Errors
/// Where it has none, or the book cannot be read.
pub fn listed(book: &Book) -> Result<PriceList, ActError> {
    book.price_list()?
        .ok_or_else(|| ActError::not_there("there-price-list"))
}

/// The offer for one structure as it would be today; not recorded. A course that judgement refuses is in it where a reason is recorded in the
/// last offer, or given here.
///
/// # Errors
/// Where nothing is to be done, or a course is forbidden.
pub fn offer(
    judged: &Judged,
    structure: StructureId,
    list: &PriceList,
    reckoned: Option<&Reckoning>,
    because: Option<(Course, Narrowed, String)>,
    moment: Moment,
) -> Result<Offer, ActError> {
    let verdict = judged
        .verdict(structure)
        .ok_or_else(|| ActError::not_there("there-structure"))?;
    let wanted = wanted(&judged.history, verdict, because);
    let patch = patch_asked(judged, structure);
    let sheet = judged.history.worksheet_of(structure);
    let repair_lasts = sheet
        .and_then(|sheet| sheet.repair_lasts)
        .map(|years| Lasts {
            years: years.spread(),
            source: String::new(),
        });
    let asking = Asking {
        verdict,
        history: &judged.history,
        catalogue: Catalogue::standard(),
        list,
        takeoff: reckoned.map(|one| &one.takeoff),
        tear_off: reckoned.and_then(|one| one.tear_off.as_ref().ok()),
        counts: sheet.map_or(&[], |sheet| &sheet.counts),
        wanted: &wanted,
        patch: patch.as_ref(),
        repair_lasts: repair_lasts.as_ref(),
    };
    Ok(price::offers(moment.id(), moment.today, &asking)?)
}

/// The patch that the caller asked for, where it only buys time: what a lasting course is compared with.
pub fn patch_asked(judged: &Judged, structure: StructureId) -> Option<Patch> {
    let catalogue = Catalogue::standard();
    let history = &judged.history;
    let asks = &judged.visit.request.asks;
    asks.iter().find_map(|ask| {
        let remedy = ask.remedy.as_ref()?;
        let part = history.parts_of(structure).find(|part| {
            let found = history.mark_on(part.id, judged.visit.id);
            part.kind == ask.kind
                && found.is_some_and(|mark| {
                    mark.defects.iter().any(|seen| {
                        let effect = catalogue
                            .defect(&seen.defect)
                            .and_then(|defect| defect.effect_on(&part.kind, remedy));
                        matches!(effect, Some(Effect::BuysTime { .. }))
                    })
                })
        })?;
        Some(Patch {
            part: part.id,
            remedy: remedy.clone(),
            holds: history
                .worksheet_of(structure)
                .and_then(|sheet| sheet.patch_holds),
        })
    })
}

/// What is offered against advice: what the last offer of the same verdict held, and what is wanted now.
fn wanted(
    history: &History,
    verdict: &Verdict,
    because: Option<(Course, Narrowed, String)>,
) -> Vec<Wanted> {
    let last = last_offer(history, verdict.structure).filter(|last| last.verdict_on == verdict.on);
    let mut wanted: Vec<(Course, Narrowed, String)> = last
        .into_iter()
        .flat_map(|offer| &offer.courses)
        .filter_map(|course| {
            let Nevertheless {
                narrowed, because, ..
            } = course.nevertheless.as_ref()?;
            Some((course.course, *narrowed, because.clone()))
        })
        .collect();
    if let Some(now) = because {
        wanted.retain(|known| (known.0, known.1) != (now.0, now.1));
        wanted.push(now);
    }
    wanted
        .into_iter()
        .filter(|(course, narrowed, _)| {
            verdict
                .refused
                .iter()
                .any(|refused| (refused.course, refused.narrowed) == (*course, *narrowed))
        })
        .map(|(course, narrowed, because)| Wanted {
            course,
            narrowed,
            because,
            when: When::ThisSeason,
            tasks: tasks_of(verdict, course),
        })
        .collect()
}

/// The work that a refused course would do: that of the verdict's steps which it would take the place of.
fn tasks_of(verdict: &Verdict, course: Course) -> Vec<trade::verdict::Task> {
    if course != Course::Repair {
        return Vec::new();
    }
    verdict
        .steps
        .iter()
        .flat_map(|step| &step.tasks)
        .filter(|task| task.trade.is_none() && task.remedy.is_some())
        .cloned()
        .collect()
}

/// The slopes that the verdict covers anew; empty where that is all of them.
pub fn covered_slopes(judged: &Judged, structure: StructureId) -> &[SlopeId] {
    judged
        .verdict(structure)
        .map_or(&[], Verdict::covered_slopes)
}

/// The last offer that was put for a structure.
pub fn last_offer(history: &History, structure: StructureId) -> Option<&Offer> {
    history
        .offers
        .iter()
        .rev()
        .find(|offer| offer.structure == structure)
}

/// Puts an offer to the owner: it is recorded, and its figures stand in the letter that is written next.
///
/// # Errors
/// As [`listed`] and [`offer`], where the reason for a refused course is empty, or where the book cannot be written.
pub fn put(
    book: &mut Book,
    visit: VisitId,
    structure: StructureId,
    because: Option<(Course, Narrowed, String)>,
    moment: Moment,
) -> Result<OfferId, ActError> {
    if let Some((course, _, words)) = &because
        && words.trim().is_empty()
    {
        return Err(OfferError::NoReason(*course).into());
    }
    let list = listed(book)?;
    let judged = judge::judge(book, visit, moment)?;
    let slopes = covered_slopes(&judged, structure);
    let reckoned = reckon(
        &judged.history,
        structure,
        slopes,
        &judged.going,
        Some(&list),
    )
    .ok();
    let offer = offer(
        &judged,
        structure,
        &list,
        reckoned.as_ref(),
        because,
        moment,
    )?;
    let id = offer.id;
    book.write(moment.at, |tx| {
        tx.record(Entry::Offer(offer))?;
        Ok(id)
    })
}

/// Takes in the firm's price list.
///
/// # Errors
/// Where it does not read: every line and column that is wrong. The list before it still stands.
pub fn set_price_list(book: &mut Book, csv: &[u8], moment: Moment) -> Result<(), ActError> {
    let list = price::read_list(csv)?;
    book.write(moment.at, |tx| {
        tx.record(Entry::PriceList(Box::new(list)))?;
        Ok(())
    })
}

/// The firm's price list as a file; `None` where it has none.
///
/// # Errors
/// Where the book cannot be read.
pub fn price_list(book: &Book) -> Result<Option<String>, ActError> {
    Ok(book.price_list()?.as_ref().map(price::write_list))
}
