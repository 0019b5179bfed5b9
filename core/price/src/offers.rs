//! Offers: the courses of a verdict as priced courses, in order of time.

mod compare;
mod covering;
mod error;
mod lines;
mod remedies;
mod solves;
mod sums;

pub use error::OfferError;

use compare::{patching, yearly};
use jiff::{Span, civil::Date};
use lines::Lines;
use trade::catalogue::{Catalogue, Months, RemedyKey};
use trade::history::History;
use trade::ids::{OfferId, PartId};
use trade::offer::{Lasts, LeftOut, Nevertheless, Offer, PricedCourse, Unpriced};
use trade::price_list::PriceList;
use trade::takeoff::{Takeoff, TearOff};
use trade::verdict::{Course, Narrowed, Refused, Task, Verdict, When};
use trade::worksheet::Count;

/// A course that judgement refuses and that the owner wants priced all the same.
#[derive(Clone, Debug, PartialEq)]
pub struct Wanted {
    /// The course.
    pub course: Course,
    /// What of it is refused.
    pub narrowed: Narrowed,
    /// Why it is offered, in the roofer's words. It is recorded and printed.
    pub because: String,
    /// When it would be done.
    pub when: When,
    /// The work.
    pub tasks: Vec<Task>,
}

/// The patch that a lasting course is compared with.
#[derive(Clone, Debug, PartialEq)]
pub struct Patch {
    /// The part that is patched.
    pub part: PartId,
    /// With what.
    pub remedy: RemedyKey,
    /// How long one holds; `None` takes what the catalogue says for the part's defects.
    pub holds: Option<Months>,
}

/// What an offer is made from.
#[derive(Clone, Copy, Debug)]
pub struct Asking<'a> {
    /// What to do.
    pub verdict: &'a Verdict,
    /// The record: parts, their defects and measures, the pitch of their slopes.
    pub history: &'a History,
    /// Kinds of part, defects and remedies.
    pub catalogue: &'a Catalogue,
    /// The firm's prices.
    pub list: &'a PriceList,
    /// What a new covering takes, where the roof was counted.
    pub takeoff: Option<&'a Takeoff>,
    /// What comes down, where it was reckoned.
    pub tear_off: Option<&'a TearOff>,
    /// Places and lengths that he counted.
    pub counts: &'a [Count],
    /// Courses that judgement refuses and that are offered all the same.
    pub wanted: &'a [Wanted],
    /// The patch to compare a new covering with.
    pub patch: Option<&'a Patch>,
    /// How long a repair lasts here, by his own judgement of the roof around it.
    pub repair_lasts: Option<&'a Lasts>,
}

/// One course to be priced.
struct Todo<'a> {
    when: When,
    course: Course,
    until: Option<Date>,
    tasks: &'a [Task],
    nevertheless: Option<Nevertheless>,
}

/// Prices every step of a verdict, and what is wanted beside it, in order of time.
///
/// # Errors
/// Where a course is forbidden by rule, where one refused by judgement comes without a reason, where the takeoff is of another structure, where the
/// verdict has no step, or where an amount is beyond reckoning.
pub fn offers(id: OfferId, on: Date, asking: &Asking<'_>) -> Result<Offer, OfferError> {
    let verdict = asking.verdict;
    if let Some(takeoff) = asking.takeoff
        && takeoff
            .structure
            .is_some_and(|structure| structure != verdict.structure)
    {
        return Err(OfferError::OtherStructure);
    }
    let valid_until = on
        .checked_add(Span::new().days(i64::from(asking.list.valid_days)))
        .map_err(|_| OfferError::TooGreat)?;
    let todo = all_courses(asking)?;
    let courses = todo
        .into_iter()
        .map(|todo| priced(asking, todo))
        .collect::<Result<Vec<_>, _>>()?;
    Ok(Offer {
        id,
        structure: verdict.structure,
        verdict_on: verdict.on,
        on,
        valid_until,
        currency: asking.list.currency.clone(),
        courses,
    })
}

fn all_courses<'a>(asking: &Asking<'a>) -> Result<Vec<Todo<'a>>, OfferError> {
    let verdict = asking.verdict;
    let mut todo = Vec::new();
    for step in &verdict.steps {
        may_be_offered(verdict, step.course)?;
        todo.push(Todo {
            when: step.when,
            course: step.course,
            until: step.until,
            tasks: &step.tasks,
            nevertheless: None,
        });
    }
    for wanted in asking.wanted {
        may_be_offered(verdict, wanted.course)?;
        todo.push(Todo {
            when: wanted.when,
            course: wanted.course,
            until: None,
            tasks: &wanted.tasks,
            nevertheless: Some(against(verdict, wanted)?),
        });
    }
    if todo.is_empty() {
        return Err(OfferError::NothingToDo);
    }
    // Sorting keeps the verdict's own order within one time, and puts what is wanted beside it last.
    todo.sort_by_key(|todo| todo.when);
    Ok(todo)
}

/// What a rule forbids as a whole is never offered.
fn may_be_offered(verdict: &Verdict, course: Course) -> Result<(), OfferError> {
    let forbids = |refused: &&Refused| {
        refused.forbidden && refused.course == course && refused.narrowed == Narrowed::Whole
    };
    match verdict.refused.iter().find(forbids) {
        Some(refused) => Err(OfferError::forbidden(refused)),
        None => Ok(()),
    }
}

/// What judgement refuses is offered with a reason only; what a rule forbids, not even then.
fn against(verdict: &Verdict, wanted: &Wanted) -> Result<Nevertheless, OfferError> {
    let refused = verdict
        .refused
        .iter()
        .find(|refused| refused.course == wanted.course && refused.narrowed == wanted.narrowed)
        .ok_or(OfferError::NotRefused(wanted.course))?;
    if refused.forbidden {
        return Err(OfferError::forbidden(refused));
    }
    let because = wanted.because.trim();
    if because.is_empty() {
        return Err(OfferError::NoReason(wanted.course));
    }
    Ok(Nevertheless {
        narrowed: wanted.narrowed,
        because: because.to_owned(),
        against: refused.reasons.clone(),
    })
}

fn priced(asking: &Asking<'_>, todo: Todo<'_>) -> Result<PricedCourse, OfferError> {
    let mut lines = Lines::default();
    let ours: Vec<&Task> = todo
        .tasks
        .iter()
        .filter(|task| task.trade.is_none())
        .collect();
    let is_covering = matches!(todo.course, Course::Recover | Course::TearOff);
    let is_priced = is_covering
        || matches!(
            todo.course,
            Course::MakeSafe | Course::Maintain | Course::Repair
        );
    if is_covering {
        covering::price(asking, todo.course, &mut lines)?;
    }
    if is_priced {
        let along = asking.takeoff.filter(|_| is_covering);
        let along = along.map_or(&[][..], |takeoff| &takeoff.by_remedy);
        remedies::price(asking, &ours, along, is_covering, &mut lines)?;
    }
    let everything = is_priced && lines.unpriced.is_empty();
    let sums = everything
        .then(|| sums::sums(asking.list, &lines))
        .transpose()?;
    let price = sums.as_ref().map(|sums| sums.price);
    let counted = asking.takeoff.filter(|_| is_covering);
    Ok(PricedCourse {
        when: todo.when,
        course: todo.course,
        until: todo.until,
        includes: if is_priced {
            ours.into_iter().cloned().collect()
        } else {
            Vec::new()
        },
        leaves_out: left_out(asking, &todo, is_priced),
        unsolved: solves::unsolved(asking, todo.course, todo.tasks),
        needs: counted.map_or_else(Vec::new, |takeoff| {
            covering::needs(takeoff, todo.course).cloned().collect()
        }),
        tear_off: asking
            .tear_off
            .filter(|_| todo.course == Course::TearOff)
            .cloned(),
        hours: lines.hours,
        yearly: price
            .map(|price| yearly(asking, todo.course, price))
            .transpose()?
            .flatten(),
        patching: if is_covering { patching(asking)? } else { None },
        lines: lines.rows,
        unpriced: lines.unpriced,
        sums,
        nevertheless: todo.nevertheless,
    })
}

/// What a course leaves out: other trades' work, what was not seen, slopes that stay, sheets of deck beyond those included.
fn left_out(asking: &Asking<'_>, todo: &Todo<'_>, is_priced: bool) -> Vec<LeftOut> {
    let others = todo
        .tasks
        .iter()
        .filter(|task| task.trade.is_some() || !is_priced)
        .cloned()
        .map(|task| LeftOut::OtherTrade { task });
    let mut out: Vec<LeftOut> = match todo.course {
        Course::LookFirst | Course::Leave => Vec::new(),
        _ => others.collect(),
    };
    if !is_priced {
        return out;
    }
    out.extend(
        asking
            .verdict
            .unseen
            .iter()
            .filter(|part| !todo.tasks.iter().any(|task| task.part == **part))
            .map(|part| LeftOut::NotSeen { part: *part }),
    );
    if matches!(todo.course, Course::Recover | Course::TearOff) {
        out.extend(covering::left_out(asking, todo.course));
    }
    out
}

/// Why something has no price, where that is one thing.
fn unpriced(lines: &mut Lines, what: Unpriced) {
    if !lines.unpriced.contains(&what) {
        lines.unpriced.push(what);
    }
}
