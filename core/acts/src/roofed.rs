//! What a letter tells of measured roofs: plan, quantities where a new covering is advised, and the offer that still holds.

use crate::judge::Judged;
use crate::{ActError, Moment, measure, offer};
use book::Book;
use letter::{Planned, Roofed};
use roof::draw::Picture;
use trade::ids::StructureId;
use trade::offer::Offer;
use trade::price_list::PriceList;
use trade::roof::RoofPlan;
use trade::takeoff::{Takeoff, TearOff};
use trade::verdict::{Course, Verdict};
use trade::words::{Language, Words};

/// One structure's roof as a letter tells it.
pub(crate) struct RoofTold<'a> {
    structure: StructureId,
    plan: Option<(RoofPlan, Picture)>,
    takeoff: Option<Takeoff>,
    tear_off: Option<TearOff>,
    offer: Option<&'a Offer>,
}

impl RoofTold<'_> {
    /// As the letter takes it.
    pub(crate) fn roofed(&self) -> Roofed<'_> {
        Roofed {
            structure: self.structure,
            planned: self.plan.as_ref().map(|(plan, picture)| Planned {
                plan,
                drawing: &picture.drawing,
                left_out: &picture.left_out,
            }),
            takeoff: self.takeoff.as_ref(),
            tear_off: self.tear_off.as_ref(),
            offer: self.offer,
        }
    }
}

/// The roofs of every structure that a visit judged.
pub(crate) fn roofs<'a>(
    book: &Book,
    judged: &'a Judged,
    language: Language,
    moment: Moment,
) -> Result<Vec<RoofTold<'a>>, ActError> {
    let list = book.price_list()?;
    judged
        .verdicts
        .iter()
        .map(|verdict| told(judged, verdict, list.as_ref(), language, moment))
        .collect()
}

fn told<'a>(
    judged: &'a Judged,
    verdict: &Verdict,
    list: Option<&PriceList>,
    language: Language,
    moment: Moment,
) -> Result<RoofTold<'a>, ActError> {
    let history = &judged.history;
    let structure = verdict.structure;
    let plan = measure::plan(history, structure)?.map(|plan| {
        let picture = measure::pictured(history, structure, &plan, Words::of(language));
        (plan, picture)
    });
    // A roof that cannot be counted is told without quantities: the Offer screen says why.
    let reckoned = is_covered_anew(verdict)
        .then(|| {
            let slopes = verdict.covered_slopes();
            offer::reckon(history, structure, slopes, &judged.going, list).ok()
        })
        .flatten();
    let (takeoff, tear_off) = match reckoned {
        Some(reckoned) => (Some(reckoned.takeoff), reckoned.tear_off.ok()),
        None => (None, None),
    };
    let offer = offer::last_offer(history, structure)
        .filter(|offer| offer.on >= judged.visit.on && offer.valid_until >= moment.today);
    Ok(RoofTold {
        structure,
        plan,
        takeoff,
        tear_off,
        offer,
    })
}

fn is_covered_anew(verdict: &Verdict) -> bool {
    verdict
        .steps
        .iter()
        .any(|step| matches!(step.course, Course::Recover | Course::TearOff))
}
