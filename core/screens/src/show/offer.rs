//! Offer: what each course of the verdict costs, in order of time, and what it takes.

mod worksheet;

use crate::action::Action;
use crate::block::{Button, FieldKind, Form, Row};
use crate::filling::Filling;
use crate::form::FormOf;
use crate::name;
use crate::place::Place;
use crate::screens::Context;
use acts::offer::Reckoning;
use acts::{ActError, judge, offer};
use serde::Serialize;
use trade::history::History;
use trade::ids::{PartId, StructureId, VisitId};
use trade::offer::{MoneySpread, Offer as Record, Patching, PricedCourse, Sums};
use trade::takeoff::{Unit, amount_said};
use trade::verdict::{Refused, Verdict};
use trade::words::Said;
use worksheet::Sheet;

/// One priced course.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct CourseBlock {
    /// When.
    pub when: String,
    /// What.
    pub what: String,
    /// By when.
    pub until: Option<String>,
    /// What the owner pays; `None` where something has no price yet.
    pub price: Option<String>,
    /// What is said beside the price: tax, the smallest charge, what it costs a year, what patching again would cost.
    pub beside: Vec<String>,
    /// What has no price yet.
    pub unpriced: Vec<String>,
    /// Over what is included.
    pub includes_title: String,
    /// What is included.
    pub includes: Vec<String>,
    /// Over what is left out and not put right.
    pub leaves_title: String,
    /// What is left out and what is not put right.
    pub leaves: Vec<String>,
    /// Over how the price is made. It is for the roofer: the owner's letter does not show it.
    pub made_title: String,
    /// Lines of cost and the sums under them, each with its amount.
    pub made: Vec<(String, String)>,
}

/// The state of Offer.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Offer {
    /// The address and the structure.
    pub under: String,
    /// The heading.
    pub title: String,
    /// Whether it was put to the owner, and until when it holds.
    pub put: String,
    /// What stands in the way of a price.
    pub trouble: Option<String>,
    /// The courses, soonest first.
    pub courses: Vec<CourseBlock>,
    /// Courses that judgement refuses: offered only with a reason.
    pub nevertheless: Vec<Form>,
    /// What is counted and chosen for it, where anything is to be.
    pub worksheet: Option<Form>,
    /// Over what it takes.
    pub takes_title: String,
    /// What a new covering takes: what, how much, what is ordered.
    pub takes: Vec<Row>,
    /// Over what comes down and what the roof carries.
    pub weighs_title: String,
    /// What comes down, what the roof carries.
    pub weighs: Vec<String>,
    /// The roof's plan.
    pub roof: Button,
    /// Back to the verdict.
    pub back: Button,
    /// Putting it to the owner.
    pub main: Option<Button>,
}

pub(crate) fn show(
    context: &Context<'_>,
    visit: VisitId,
    structure: StructureId,
) -> Result<Offer, ActError> {
    let judged = judge::judge(context.book, visit, context.moment)?;
    let history = &judged.history;
    let verdict = judged
        .verdict(structure)
        .ok_or_else(|| ActError::not_there("there-structure"))?;
    let list = context.book.price_list()?;
    let slopes = verdict.covered_slopes();
    let reckoned = offer::reckon(history, structure, slopes, &judged.going, list.as_ref());
    let asked = match &list {
        Some(list) => {
            let reckoned = reckoned.as_ref().ok();
            offer::offer(&judged, structure, list, reckoned, None, context.moment)
        }
        None => Err(ActError::not_there("there-price-list")),
    };
    let (priced, trouble) = match asked {
        Ok(priced) => (Some(priced), None),
        Err(why) => (None, Some(context.say(&why.says()))),
    };
    Ok(Offer {
        under: name::under(context.words, history, structure),
        title: context.text("offer-title"),
        put: put(context, history, structure),
        trouble,
        courses: priced
            .as_ref()
            .map_or_else(Vec::new, |priced| courses(context, history, priced)),
        nevertheless: nevertheless(context, verdict, visit, list.is_some()),
        worksheet: worksheet::form(
            context,
            &Sheet {
                judged: &judged,
                visit,
                structure,
                list: list.as_ref(),
                reckoned: reckoned.as_ref().ok(),
                offer: priced.as_ref(),
            },
        ),
        takes_title: context.text("offer-takes"),
        takes: reckoned.as_ref().map_or_else(
            |why| vec![trouble_row(context, why)],
            |one| takes(context, one),
        ),
        weighs_title: context.text("offer-weighs"),
        weighs: reckoned
            .as_ref()
            .map_or_else(|_| Vec::new(), |one| weighs(context, one)),
        roof: Button::new(
            context.text("roof-title"),
            Action::Go {
                to: Place::Roof { structure },
            },
        ),
        back: Button::new(
            context.text("verdict-title"),
            Action::Go {
                to: Place::Verdict { visit, structure },
            },
        ),
        main: priced.is_some().then(|| {
            Button::new(
                context.text("offer-put"),
                Action::PutOffer { visit, structure },
            )
        }),
    })
}

fn put(context: &Context<'_>, history: &History, structure: StructureId) -> String {
    match offer::last_offer(history, structure) {
        Some(last) => context.say(
            &Said::new("offer-was-put")
                .with("on", last.on)
                .with("until", last.valid_until),
        ),
        None => context.text("offer-not-put"),
    }
}

fn courses(context: &Context<'_>, history: &History, offer: &Record) -> Vec<CourseBlock> {
    offer
        .courses
        .iter()
        .map(|course| block(context, history, offer, course))
        .collect()
}

fn block(
    context: &Context<'_>,
    history: &History,
    offer: &Record,
    course: &PricedCourse,
) -> CourseBlock {
    let named = |part: PartId| Said::verbatim(name::part(context.words, history, part));
    let say_all = |all: Vec<Said>| all.iter().map(|said| context.say(said)).collect::<Vec<_>>();
    let currency = offer.currency.as_str();
    let left = course
        .leaves_out
        .iter()
        .map(|left| left.says(&named, currency));
    let unsolved = course.unsolved.iter().map(|one| one.says(&named));
    CourseBlock {
        when: context.text(course.when.key()),
        what: context.text(course.course.key()),
        until: course
            .until
            .map(|until| context.say(&Said::new("verdict-until").with("until", until))),
        price: course
            .price()
            .map(|price| context.say(&price.says(currency))),
        beside: say_all(beside(course, currency)),
        unpriced: say_all(course.unpriced.iter().map(|one| one.says(&named)).collect()),
        includes_title: context.text("offer-includes"),
        includes: includes(context, history, course),
        leaves_title: context.text("offer-leaves"),
        leaves: say_all(left.chain(unsolved).collect()),
        made_title: context.text("offer-made"),
        made: made(context, course, currency),
    }
}

/// What is said beside the price.
fn beside(course: &PricedCourse, currency: &str) -> Vec<Said> {
    let mut says = course.says_beside(currency);
    says.extend(course.yearly.as_ref().map(|yearly| yearly.says(currency)));
    if let Some(Patching::Again(again)) = &course.patching {
        says.push(again.says(currency));
    }
    says
}

fn includes(context: &Context<'_>, history: &History, course: &PricedCourse) -> Vec<String> {
    let tasks = course
        .includes
        .iter()
        .map(|task| crate::show::verdict::task_line(context, history, task));
    let tear_off = course
        .tear_off
        .as_ref()
        .map(|tear_off| context.say(&tear_off.says()));
    tasks.chain(tear_off).collect()
}

fn made(context: &Context<'_>, course: &PricedCourse, currency: &str) -> Vec<(String, String)> {
    let lines = course.lines.iter().map(|line| {
        let what = Said::new("offer-line")
            .with("what", line.what.clone())
            .with("quantity", line.says_quantity());
        (context.say(&what), context.say(&line.amount.says(currency)))
    });
    let hours = (
        context.text("offer-hours"),
        context.say(&amount_said(course.hours, Unit::Hour)),
    );
    lines
        .chain(std::iter::once(hours))
        .chain(
            course
                .sums
                .iter()
                .flat_map(|sums| sums_rows(context, sums, currency)),
        )
        .collect()
}

fn sums_rows(context: &Context<'_>, sums: &Sums, currency: &str) -> Vec<(String, String)> {
    let rows: [(&str, MoneySpread); 9] = [
        ("sum-subtotal", sums.subtotal),
        ("sum-overhead", sums.overhead),
        ("sum-cost", sums.cost),
        ("sum-gain", sums.gain),
        ("sum-sheets", sums.sheets),
        ("sum-to-minimum", sums.to_minimum),
        ("sum-rounded", sums.rounded),
        ("sum-before-tax", sums.before_tax),
        ("sum-tax", sums.tax),
    ];
    rows.into_iter()
        .filter(|(_, amount)| *amount != MoneySpread::ZERO)
        .map(|(key, amount)| (context.text(key), context.say(&amount.says(currency))))
        .collect()
}

/// Courses that judgement alone refuses; what a rule forbids has no form.
fn nevertheless(
    context: &Context<'_>,
    verdict: &Verdict,
    visit: VisitId,
    has_list: bool,
) -> Vec<Form> {
    let refused = verdict
        .refused
        .iter()
        .filter(|one| !one.forbidden && has_list);
    refused
        .map(|refused| all_the_same(context, verdict, visit, refused))
        .collect()
}

fn all_the_same(
    context: &Context<'_>,
    verdict: &Verdict,
    visit: VisitId,
    refused: &Refused,
) -> Form {
    let what = match refused.narrowed.key() {
        Some(key) => context.text(key),
        None => context.text(refused.course.key()),
    };
    let form = FormOf::Nevertheless {
        visit,
        structure: verdict.structure,
        course: refused.course,
        narrowed: refused.narrowed,
    };
    Filling::new(context, form)
        .blank("because", "offer-because", FieldKind::Words)
        .done(
            context.say(&Said::new("offer-all-the-same").with("what", what)),
            "offer-put",
        )
}

fn trouble_row(context: &Context<'_>, why: &ActError) -> Row {
    Row {
        title: context.text("offer-not-counted"),
        says: context.say(&why.says()),
        ladder: None,
        action: None,
    }
}

fn takes(context: &Context<'_>, reckoned: &Reckoning) -> Vec<Row> {
    let laid = &reckoned.laid;
    let waste = Row {
        title: context.text("offer-waste"),
        says: context.say(
            &Said::new("offer-waste-says")
                .with("waste", per_cent(laid.waste))
                .with("books", laid.says_handbook()),
        ),
        ladder: None,
        action: None,
    };
    let needs = reckoned.takeoff.needs.iter().map(|need| Row {
        title: context.say(
            &Said::new("offer-need")
                .with("item", need.name())
                .with("order", need.says_order()),
        ),
        says: context.say(
            &Said::new("offer-need-why")
                .with("amount", need.says_amount())
                .with("reason", need.reason.clone()),
        ),
        ladder: None,
        action: None,
    });
    let gaps = reckoned.takeoff.gaps.iter().map(|gap| Row {
        title: context.text(gap.item.key()),
        says: context.say(&gap.why),
        ladder: None,
        action: None,
    });
    std::iter::once(waste).chain(needs).chain(gaps).collect()
}

fn per_cent(share: f64) -> String {
    format!("{:.0}", share * 100.0)
}

fn weighs(context: &Context<'_>, reckoned: &Reckoning) -> Vec<String> {
    let down = match &reckoned.tear_off {
        Ok(tear_off) => tear_off.says(),
        Err(why) => why.says(),
    };
    let mut says = vec![context.say(&down)];
    if let Ok(loads) = &reckoned.load {
        says.extend(
            loads
                .iter()
                .flat_map(trade::takeoff::PlaneLoad::says)
                .map(|said| context.say(&said)),
        );
    }
    says
}
