//! Carrying out a tap, and where it leads.

mod forms;
mod going;
mod on_roof;
mod premises;
mod roof;
mod typed;

use crate::action::Action;
use crate::form::{About, FormOf, Typed};
use crate::place::Place;
use acts::walk::Spot;
use acts::{ActError, Book, Moment, dormer, letter, mark, outcome, tray, undo, visit};
use trade::catalogue::Catalogue;
use trade::ids::{PropertyId, StructureId, VisitId};
use trade::words::{Said, Words};
use trade::work::{Did, Evidence, Work, WorkOn};

/// Where a tap leads, and what to say of it.
#[derive(Clone, Debug, PartialEq, Eq, serde::Serialize)]
pub struct Next {
    /// The place to show.
    pub place: Place,
    /// What to say: a save is felt and heard, so it has words.
    pub notice: Option<String>,
}

impl Next {
    fn at(place: Place) -> Self {
        Self {
            place,
            notice: None,
        }
    }

    pub(crate) fn saved(place: Place, words: &Words, key: &str) -> Self {
        Self {
            place,
            notice: Some(words.text(key)),
        }
    }
}

pub(crate) fn act(
    book: &mut Book,
    action: &Action,
    words: &Words,
    moment: Moment,
) -> Result<Next, ActError> {
    match action {
        Action::Go { to } => Ok(Next::at(to.clone())),
        Action::Submit { form, values } => forms::submit(book, form, &Typed(values), words, moment),
        Action::Draft { form, field, text } => {
            let property = property_of(book, form)?;
            book.set_draft(&form.draft_key(field), property, text)?;
            Ok(Next::at(Place::start()))
        }
        Action::Join { kept, other } => premises::join(book, *kept, *other, words, moment),
        Action::Part { kept, other } => premises::part(book, *kept, *other, words, moment),
        Action::SetScope { .. }
        | Action::SetSky { .. }
        | Action::SetWindy { .. }
        | Action::AnswerSafety { .. }
        | Action::SetReach { .. } => on_visit(book, action, moment),
        Action::AddStructure { .. } | Action::AddSlope { .. } | Action::SlopeReplaced { .. } => {
            on_structure(book, action, words, moment)
        }
        Action::Sound { visit, spot } => {
            let part = mark::sound(book, *visit, spot, moment)?;
            let place = back_on_walk(book, *visit, &Spot::Known { part })?;
            Ok(Next::saved(place, words, "saved-sound"))
        }
        Action::SetRung { .. }
        | Action::SetSeen { .. }
        | Action::SetNotSeen { .. }
        | Action::SetGone { .. }
        | Action::ToggleDefect { .. }
        | Action::SetExtent { .. }
        | Action::ToggleAdvised { .. }
        | Action::AnswerQuestion { .. } => on_mark(book, action, words, moment),
        Action::StopNotSeen { visit, place, why } => {
            let count = stop_not_seen(book, *visit, place, *why, moment)?;
            let said = Said::new("saved-stop-not-seen").with("count", i64::from(count));
            Ok(Next {
                place: next_stop(place),
                notice: Some(words.say(&said)),
            })
        }
        Action::TiePhoto { visit, photo, spot } => {
            tray::tie_photo(book, *visit, *photo, spot, moment)?;
            Ok(Next::saved(
                Place::Tray { visit: *visit },
                words,
                "saved-tied",
            ))
        }
        Action::TieNote { visit, note, spot } => {
            tray::tie_note(book, *visit, *note, spot, moment)?;
            Ok(Next::saved(
                Place::Tray { visit: *visit },
                words,
                "saved-tied",
            ))
        }
        Action::Undo { visit, stay } => {
            undo::last(book, *visit, moment)?;
            let place = still_there(book, stay)?;
            Ok(Next::saved(place, words, "saved-undone"))
        }
        Action::Close { visit, rest } => {
            let closing = visit::close(book, *visit, *rest, moment)?;
            let said = Said::new("saved-closed")
                .with("count", i64::try_from(closing.not_seen).unwrap_or(i64::MAX));
            Ok(Next {
                place: Place::ThenAndNow { visit: *visit },
                notice: Some(words.say(&said)),
            })
        }
        Action::SetEdge { structure, at, is } => roof::set_edge(book, *structure, *at, *is, moment),
        Action::TakeOffDormer { structure, number } => {
            dormer::take_off(book, *structure, *number, moment)?;
            let place = Place::Roof {
                structure: *structure,
            };
            Ok(Next::saved(place, words, "saved-dormer-off"))
        }
        Action::PutOffer { visit, structure } => {
            forms::put_offer(book, (*visit, *structure), None, words, moment)
        }
        Action::WriteLetter { visit, language } => {
            letter::make(book, *visit, *language, moment)?;
            Ok(Next::saved(
                Place::Letter { visit: *visit },
                words,
                "saved-letter",
            ))
        }
        Action::ReminderDone { property, reminder } => {
            outcome::done(book, *property, *reminder, moment)?;
            Ok(Next::saved(Place::Reminders, words, "saved-done"))
        }
    }
}

/// The property that a form is about, where it is about one.
fn property_of(book: &Book, form: &FormOf) -> Result<Option<PropertyId>, ActError> {
    Ok(match form.about() {
        About::Property(property) => Some(property),
        About::Visit(visit) => book.property_of(visit)?,
        About::Structure(structure) => book.property_of(structure)?,
        About::NoPlace => None,
    })
}

fn on_structure(
    book: &mut Book,
    action: &Action,
    words: &Words,
    moment: Moment,
) -> Result<Next, ActError> {
    match action {
        Action::AddStructure { visit, kind } => {
            let structure = visit::add_structure(book, *visit, *kind, moment)?;
            Ok(Next::at(walk(*visit, structure)))
        }
        Action::AddSlope {
            visit,
            structure,
            side,
        } => {
            visit::add_slope(book, *visit, *structure, *side, moment)?;
            Ok(Next::at(walk(*visit, *structure)))
        }
        Action::SlopeReplaced { visit, slope, by } => {
            let (history, open) = visit::find_open(book, *visit)?;
            let structure = history
                .slope(*slope)
                .map(|slope| slope.structure)
                .ok_or_else(|| ActError::not_there("there-slope"))?;
            let work = Work {
                id: moment.id(),
                property: open.property,
                visit: Some(*visit),
                on: WorkOn::Slope(*slope),
                did: Did::Replaced,
                by: *by,
                when: open.on,
                exact: false,
                evidence: Evidence::Seen,
            };
            mark::add_work(book, work, moment)?;
            Ok(Next::saved(walk(*visit, structure), words, "saved-work"))
        }
        _ => Ok(Next::at(Place::start())),
    }
}

fn walk(visit: VisitId, structure: StructureId) -> Place {
    Place::Walk {
        visit,
        structure,
        stop: None,
    }
}

fn on_visit(book: &mut Book, action: &Action, moment: Moment) -> Result<Next, ActError> {
    let visit = match action {
        Action::SetScope { visit, scope } => {
            visit::change(book, *visit, moment, |visit| visit.scope = *scope)?;
            *visit
        }
        Action::SetSky { visit, sky } => {
            visit::change(book, *visit, moment, |visit| visit.weather.sky = *sky)?;
            *visit
        }
        Action::SetWindy { visit, windy } => {
            visit::change(book, *visit, moment, |visit| visit.weather.windy = *windy)?;
            *visit
        }
        Action::AnswerSafety {
            visit,
            check,
            holds,
        } => {
            visit::answer_safety(book, *visit, *check, *holds, moment)?;
            *visit
        }
        Action::SetReach {
            visit,
            structure,
            how,
        } => {
            visit::set_reach(book, *visit, *structure, *how, moment)?;
            *visit
        }
        _ => return Ok(Next::at(Place::start())),
    };
    Ok(Next::at(Place::Safety { visit }))
}

fn on_mark(
    book: &mut Book,
    action: &Action,
    words: &Words,
    moment: Moment,
) -> Result<Next, ActError> {
    let (visit, part, back) = match action {
        Action::SetRung { visit, spot, rung } => (
            *visit,
            mark::set_rung(book, *visit, spot, *rung, moment)?,
            false,
        ),
        Action::SetSeen { visit, spot, seen } => (
            *visit,
            mark::set_seen(book, *visit, spot, *seen, moment)?,
            false,
        ),
        Action::SetNotSeen { visit, spot, why } => (
            *visit,
            mark::not_seen(book, *visit, spot, *why, moment)?,
            true,
        ),
        Action::SetGone { visit, spot } => (*visit, mark::gone(book, *visit, spot, moment)?, true),
        Action::ToggleDefect {
            visit,
            spot,
            defect,
        } => (
            *visit,
            mark::toggle_defect(book, *visit, spot, defect, moment)?,
            false,
        ),
        Action::SetExtent {
            visit,
            spot,
            defect,
            extent,
        } => (
            *visit,
            mark::set_extent(book, *visit, spot, defect, *extent, moment)?,
            false,
        ),
        Action::ToggleAdvised {
            visit,
            spot,
            remedy,
        } => (
            *visit,
            mark::toggle_advised(book, *visit, spot, remedy, moment)?,
            false,
        ),
        Action::AnswerQuestion {
            visit,
            spot,
            question,
            answer,
        } => (
            *visit,
            mark::answer(book, *visit, spot, *question, *answer, moment)?,
            false,
        ),
        _ => return Ok(Next::at(Place::start())),
    };
    let spot = Spot::Known { part };
    let place = if back {
        back_on_walk(book, visit, &spot)?
    } else {
        Place::Mark {
            visit,
            spot,
            family: None,
        }
    };
    Ok(Next::saved(place, words, "saved"))
}

/// The walk at the stop where a part is looked at.
pub(crate) fn back_on_walk(book: &Book, visit: VisitId, spot: &Spot) -> Result<Place, ActError> {
    let (history, _) = visit::find(book, visit)?;
    let (structure, kind) = match spot {
        Spot::Known { part } => history
            .part(*part)
            .map(|part| (part.structure, part.kind.clone()))
            .ok_or_else(|| ActError::not_there("there-part"))?,
        Spot::Unborn {
            structure, kind, ..
        } => (*structure, kind.clone()),
    };
    let stop = Catalogue::standard()
        .kind(&kind)
        .map(|kind| kind.stop.clone());
    Ok(Place::Walk {
        visit,
        structure,
        stop,
    })
}

/// After an undo the part, slope or structure on the screen may be gone: then he stands at the beginning of the walk.
fn still_there(book: &Book, stay: &Place) -> Result<Place, ActError> {
    let (Place::Mark { visit, .. } | Place::Walk { visit, .. }) = stay else {
        return Ok(stay.clone());
    };
    let (history, open) = visit::find(book, *visit)?;
    let there = match stay {
        Place::Mark {
            spot: Spot::Known { part },
            ..
        } => history.part(*part).is_some(),
        Place::Mark {
            spot: Spot::Unborn {
                structure, slope, ..
            },
            ..
        } => {
            history.structure(*structure).is_some()
                && slope.is_none_or(|slope| history.slope(slope).is_some())
        }
        Place::Walk { structure, .. } => open.structures.contains(structure),
        _ => true,
    };
    if there {
        return Ok(stay.clone());
    }
    Ok(open
        .structures
        .first()
        .map_or_else(Place::start, |structure| walk(*visit, *structure)))
}

fn stop_not_seen(
    book: &mut Book,
    visit: VisitId,
    place: &Place,
    why: trade::mark::NotSeen,
    moment: Moment,
) -> Result<u16, ActError> {
    let Place::Walk {
        structure,
        stop: Some(stop),
        ..
    } = place
    else {
        return Ok(0);
    };
    let (history, open) = visit::find_open(book, visit)?;
    let spots: Vec<Spot> = acts::walk::plan(&history, &open, Catalogue::standard())
        .into_iter()
        .filter(|walk| walk.structure == *structure)
        .flat_map(|walk| walk.stops)
        .filter(|planned| &planned.stop == stop)
        .flat_map(|planned| planned.spots)
        .filter(|planned| planned.mark.is_none())
        .map(|planned| planned.spot)
        .collect();
    mark::all_not_seen(book, visit, &spots, why, moment)?;
    Ok(u16::try_from(spots.len()).unwrap_or(u16::MAX))
}

fn next_stop(place: &Place) -> Place {
    match place {
        Place::Walk {
            visit, structure, ..
        } => walk(*visit, *structure),
        other => other.clone(),
    }
}
