//! Sending a form: what was typed becomes an act.

use super::typed::{day, wrong};
use super::{Next, going, on_roof, premises, roof};
use crate::form::{FormOf, Typed};
use crate::place::Place;
use crate::worksheet::{self, Reading};
use acts::visit::Opening;
use acts::{ActError, Book, Moment, arrive, offer, outcome, visit};
use trade::catalogue::{KindKey, RemedyKey};
use trade::ids::{PropertyId, StructureId, VisitId};
use trade::units::Money;
use trade::verdict::{Course, Narrowed};
use trade::visit::{Ask, Request, Scope};
use trade::words::Words;

pub(super) fn submit(
    book: &mut Book,
    form: &FormOf,
    typed: &Typed<'_>,
    words: &Words,
    moment: Moment,
) -> Result<Next, ActError> {
    let next = filled(book, form, typed, words, moment)?;
    for (field, _) in typed.0 {
        book.clear_draft(&form.draft_key(field))?;
    }
    Ok(next)
}

fn filled(
    book: &mut Book,
    form: &FormOf,
    typed: &Typed<'_>,
    words: &Words,
    moment: Moment,
) -> Result<Next, ActError> {
    match form {
        FormOf::Find => Ok(Next::at(Place::Arrive {
            find: typed.text("find").to_owned(),
        })),
        FormOf::AddProperty => add_property(book, typed, words, moment),
        FormOf::Address { .. }
        | FormOf::AlsoAt { .. }
        | FormOf::About { .. }
        | FormOf::Person { .. }
        | FormOf::Structure { .. }
        | FormOf::SamePlace { .. }
        | FormOf::Erase { .. } => premises::filled(book, form, typed, words, moment),
        FormOf::OpenVisit { property } => {
            let visit = visit::open(book, *property, opening(book, typed)?, moment)?;
            Ok(Next::saved(Place::Safety { visit }, words, "saved-visit"))
        }
        FormOf::RoofBox { .. }
        | FormOf::RoofSides { .. }
        | FormOf::RoofFile { .. }
        | FormOf::RoofPlane { .. }
        | FormOf::Edge { .. }
        | FormOf::TiePlane { .. }
        | FormOf::PlacePart { .. }
        | FormOf::SlopePitch { .. }
        | FormOf::SlopeRise { .. }
        | FormOf::SlopeRafter { .. }
        | FormOf::Dormer { .. }
        | FormOf::Stain { .. } => roof::filled(book, form, typed, words, moment),
        FormOf::Nevertheless {
            visit,
            structure,
            course,
            narrowed,
        } => {
            let because = (*course, *narrowed, typed.text("because").to_owned());
            put_offer(book, (*visit, *structure), Some(because), words, moment)
        }
        FormOf::Worksheet { visit, structure } => {
            fill_worksheet(book, (*visit, *structure), typed, words, moment)
        }
        FormOf::PriceList => {
            offer::set_price_list(book, typed.text("list").as_bytes(), moment)?;
            Ok(Next::saved(Place::Settings, words, "saved"))
        }
        FormOf::Temperature { .. }
        | FormOf::Ladder { .. }
        | FormOf::Say { .. }
        | FormOf::Measure { .. }
        | FormOf::Layers { .. }
        | FormOf::Work { .. }
        | FormOf::AddPart { .. }
        | FormOf::Caption { .. }
        | FormOf::Correct { .. } => on_roof::filled(book, form, typed, words, moment),
        FormOf::Outcome { property } => {
            outcome::record(book, *property, told(typed, moment)?, moment)?;
            Ok(Next::saved(
                Place::Outcome {
                    property: *property,
                },
                words,
                "saved",
            ))
        }
        FormOf::Remind { property } => {
            remind(book, *property, typed, moment)?;
            Ok(Next::saved(
                Place::Outcome {
                    property: *property,
                },
                words,
                "saved",
            ))
        }
        FormOf::Firm | FormOf::Profile | FormOf::Policy => {
            going::set(book, form, typed, moment)?;
            let words = Words::of(book.firm()?.language);
            Ok(Next::saved(Place::Settings, words, "saved"))
        }
    }
}

/// Puts an offer to the owner, with a course that judgement refuses where a reason for it was written.
pub(super) fn put_offer(
    book: &mut Book,
    (visit, structure): (VisitId, StructureId),
    because: Option<(Course, Narrowed, String)>,
    words: &Words,
    moment: Moment,
) -> Result<Next, ActError> {
    offer::put(book, visit, structure, because, moment)?;
    let place = Place::Offer { visit, structure };
    Ok(Next::saved(place, words, "saved-offer"))
}

fn fill_worksheet(
    book: &mut Book,
    (visit, structure): (VisitId, StructureId),
    typed: &Typed<'_>,
    words: &Words,
    moment: Moment,
) -> Result<Next, ActError> {
    let list = book.price_list()?;
    acts::worksheet::fill(book, structure, moment, |sheet, history| {
        let reading = Reading {
            history,
            list: list.as_ref(),
            words,
        };
        worksheet::read(typed, sheet, &reading)
    })?;
    let place = Place::Offer { visit, structure };
    Ok(Next::saved(place, words, "saved-worksheet"))
}

fn add_property(
    book: &mut Book,
    typed: &Typed<'_>,
    words: &Words,
    moment: Moment,
) -> Result<Next, ActError> {
    let new = arrive::NewProperty {
        address: premises::address(typed),
        owner: typed.text("owner").to_owned(),
        phone: typed.text("phone").to_owned(),
        position: None,
    };
    let place = Place::Doorstep {
        property: arrive::add(book, new, moment)?,
    };
    Ok(Next::saved(place, words, "saved-property"))
}

fn opening(book: &Book, typed: &Typed<'_>) -> Result<Opening, ActError> {
    let by = match typed.text("by") {
        "" => book.firm()?.person,
        by => by.to_owned(),
    };
    let asks = match typed.text("kind") {
        "" => Vec::new(),
        kind => vec![Ask {
            kind: KindKey::from(kind),
            remedy: Some(typed.text("remedy"))
                .filter(|remedy| !remedy.is_empty())
                .map(RemedyKey::from),
        }],
    };
    Ok(Opening {
        by,
        request: Request {
            words: typed.text("words").to_owned(),
            asks,
            leaking: typed.choice("leaking").unwrap_or_default(),
            room: Some(typed.text("room").to_owned()).filter(|room| !room.is_empty()),
            wet_when: typed.choice("wet-when").into_iter().collect(),
            sale: typed.ticked("sale"),
            must_last: typed.choice("must-last").unwrap_or_default(),
        },
        scope: typed.choice("scope").unwrap_or(Scope::QuickLook),
    })
}

fn told(typed: &Typed<'_>, moment: Moment) -> Result<outcome::Told, ActError> {
    let amount = match typed.text("amount") {
        "" => None,
        text => Some(
            text.trim_start_matches('$')
                .replace(',', "")
                .parse()
                .map(Money)
                .map_err(|_| wrong("amount", "wrong-amount"))?,
        ),
    };
    Ok(outcome::Told {
        letter: typed.text("letter").parse().ok(),
        came: typed
            .choice("came")
            .ok_or_else(|| wrong("came", "wrong-no-outcome"))?,
        on: day(typed, "on")?.unwrap_or(moment.today),
        amount,
        words: typed.text("words").to_owned(),
    })
}

fn remind(
    book: &mut Book,
    property: PropertyId,
    typed: &Typed<'_>,
    moment: Moment,
) -> Result<(), ActError> {
    let on = day(typed, "on")?.ok_or_else(|| wrong("on", "wrong-no-day"))?;
    let because = typed
        .choice("because")
        .unwrap_or(trade::outcome::Because::LookPromised);
    outcome::remind(book, property, on, because, typed.text("words"), moment)?;
    Ok(())
}
