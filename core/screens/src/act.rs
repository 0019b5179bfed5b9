//! Carrying out a tap, and where it leads.

use crate::action::Action;
use crate::form::{FormOf, Typed};
use crate::place::Place;
use acts::visit::Opening;
use acts::walk::Spot;
use acts::{
    ActError, Book, Moment, arrive, found, letter, mark, outcome, settings, tray, undo, visit,
};
use trade::catalogue::{Catalogue, KindKey, RemedyKey};
use trade::firm::{Firm, HousePolicy, Profile};
use trade::ids::{PropertyId, StructureId, VisitId};
use trade::mark::{Condition, Measure, MeasureOf, Rung};
use trade::property::Address;
use trade::stack::{Covering, EdgeCourses, Layer, LayerIs, Learned};
use trade::units::{Got, Length, Measured, Money};
use trade::visit::{Ask, Request, Scope};
use trade::words::{Said, Words};
use trade::work::{By, Did, Evidence, Work, WorkOn};

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

    fn saved(place: Place, words: &Words, key: &str) -> Self {
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
        Action::Submit { form, values } => submit(book, form, &Typed(values), words, moment),
        Action::Draft { form, field, text } => {
            book.set_draft(&form.draft_key(field), None, text)?;
            Ok(Next::at(Place::start()))
        }
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
                .ok_or(ActError::NotThere { what: "the slope" })?;
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
            .ok_or(ActError::NotThere { what: "the part" })?,
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

fn submit(
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
        FormOf::AddProperty => {
            let property = arrive::add(book, new_property(typed), moment)?;
            Ok(Next::saved(
                Place::Doorstep { property },
                words,
                "saved-property",
            ))
        }
        FormOf::OpenVisit { property } => {
            let visit = visit::open(book, *property, opening(book, typed)?, moment)?;
            Ok(Next::saved(Place::Safety { visit }, words, "saved-visit"))
        }
        FormOf::Say {
            visit,
            spot,
            structure,
        } => {
            let place = say(book, *visit, spot.as_ref(), *structure, typed, moment)?;
            Ok(Next::saved(place, words, "saved-words"))
        }
        FormOf::Measure { visit, spot } => {
            let part = mark::add_measure(book, *visit, spot, measure(typed)?, moment)?;
            Ok(Next::saved(on_part(*visit, part), words, "saved"))
        }
        FormOf::Layers { visit, spot } => {
            let part = layers(book, *visit, spot, typed, moment)?;
            Ok(Next::saved(on_part(*visit, part), words, "saved-layers"))
        }
        FormOf::Work { visit, spot } => {
            let part = work(book, *visit, spot, typed, moment)?;
            Ok(Next::saved(on_part(*visit, part), words, "saved-work"))
        }
        FormOf::AddPart { visit, structure } => add_part(*visit, *structure, typed),
        FormOf::Caption { visit, photo } => {
            tray::set_caption(book, *visit, *photo, typed.text("caption"), moment)?;
            Ok(Next::saved(
                Place::Tray { visit: *visit },
                words,
                "saved-words",
            ))
        }
        FormOf::Correct { visit, mark } => {
            correct(book, *visit, *mark, typed, moment)?;
            Ok(Next::saved(
                Place::ThenAndNow { visit: *visit },
                words,
                "saved-corrected",
            ))
        }
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
            set(book, form, typed, moment)?;
            let words = Words::of(book.firm()?.language);
            Ok(Next::saved(Place::Settings, words, "saved"))
        }
    }
}

fn on_part(visit: VisitId, part: trade::ids::PartId) -> Place {
    Place::Mark {
        visit,
        spot: Spot::Known { part },
        family: None,
    }
}

fn new_property(typed: &Typed<'_>) -> arrive::NewProperty {
    arrive::NewProperty {
        address: Address {
            line: typed.text("line").to_owned(),
            town: typed.text("town").to_owned(),
            region: typed.text("region").to_owned(),
            postcode: typed.text("postcode").to_owned(),
        },
        owner: typed.text("owner").to_owned(),
        phone: typed.text("phone").to_owned(),
        position: None,
    }
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

fn say(
    book: &mut Book,
    visit: VisitId,
    spot: Option<&Spot>,
    structure: Option<StructureId>,
    typed: &Typed<'_>,
    moment: Moment,
) -> Result<Place, ActError> {
    match (spot, structure) {
        (Some(spot), _) => {
            let part = mark::set_words(book, visit, spot, typed.text("words"), moment)?;
            Ok(on_part(visit, part))
        }
        (None, structure) => {
            tray::say(book, visit, typed.text("words"), moment)?;
            Ok(structure.map_or(Place::Tray { visit }, |structure| walk(visit, structure)))
        }
    }
}

fn wrong(field: &'static str, problem: impl ToString) -> ActError {
    ActError::Wrong {
        field,
        problem: problem.to_string(),
    }
}

fn length(typed: &Typed<'_>, field: &'static str) -> Result<Length, ActError> {
    typed
        .text(field)
        .parse()
        .map_err(|error| wrong(field, error))
}

fn measure(typed: &Typed<'_>) -> Result<Measure, ActError> {
    let got = typed.choice("got").unwrap_or(Got::Tape);
    Ok(Measure {
        of: typed.choice("of").unwrap_or(MeasureOf::Width),
        value: Measured {
            value: length(typed, "length")?,
            got,
            within: got.within(),
        },
    })
}

fn layers(
    book: &mut Book,
    visit: VisitId,
    spot: &Spot,
    typed: &Typed<'_>,
    moment: Moment,
) -> Result<trade::ids::PartId, ActError> {
    let covering: Covering = typed.choice("covering").unwrap_or(Covering::Unclear);
    let count: u8 = typed.text("count").parse().unwrap_or(0);
    let edge = edge(typed)?;
    let mut stack_layers: Vec<Layer> = (0..count)
        .map(|_| Layer {
            is: LayerIs::Covering(covering),
            colour: None,
            thickness: None,
        })
        .collect();
    if !stack_layers.is_empty() {
        stack_layers.push(Layer {
            is: LayerIs::Deck,
            colour: None,
            thickness: None,
        });
    }
    let reading = found::Reading {
        place: typed.text("where").to_owned(),
        rebuilt: typed.ticked("rebuilt"),
        layers: stack_layers,
        edge,
        learned: typed.choice("learned").unwrap_or(Learned::RakeEdge),
    };
    found::layers(book, visit, spot, reading, moment)
}

/// Butt lines as typed: "2 in, 5 in, 7 in, 10 in".
fn edge(typed: &Typed<'_>) -> Result<Option<EdgeCourses>, ActError> {
    let text = typed.text("butts");
    if text.is_empty() {
        return Ok(None);
    }
    let butts = text
        .split(',')
        .map(|butt| butt.parse().map_err(|error| wrong("butts", error)))
        .collect::<Result<_, _>>()?;
    Ok(Some(EdgeCourses {
        exposure: length(typed, "exposure")?,
        butts,
    }))
}

fn work(
    book: &mut Book,
    visit: VisitId,
    spot: &Spot,
    typed: &Typed<'_>,
    moment: Moment,
) -> Result<trade::ids::PartId, ActError> {
    let done = found::Done {
        did: match typed.text("did") {
            "replaced" => Did::Replaced,
            "covered" => Did::Covered,
            "taken-down" => Did::TakenDown,
            "" | "something" => Did::Something,
            remedy => Did::Remedy(RemedyKey::from(remedy)),
        },
        by: typed.choice("by").unwrap_or(By::Unknown),
        when: day(typed, "when")?,
        evidence: typed.choice("evidence").unwrap_or(Evidence::Seen),
    };
    found::work(book, visit, spot, done, moment)
}

fn day(typed: &Typed<'_>, field: &'static str) -> Result<Option<jiff::civil::Date>, ActError> {
    match typed.text(field) {
        "" => Ok(None),
        text => text
            .parse()
            .map(Some)
            .map_err(|_| wrong(field, "write the day as 2024-05-31")),
    }
}

fn add_part(visit: VisitId, structure: StructureId, typed: &Typed<'_>) -> Result<Next, ActError> {
    let kind = typed.text("kind");
    if kind.is_empty() {
        return Err(wrong("kind", "choose what it is"));
    }
    Ok(Next::at(Place::Mark {
        visit,
        spot: Spot::Unborn {
            structure,
            slope: typed.text("slope").parse().ok(),
            kind: KindKey::from(kind),
            which: Some(typed.text("which").to_owned()).filter(|which| !which.is_empty()),
        },
        family: None,
    }))
}

fn correct(
    book: &mut Book,
    visit: VisitId,
    id: trade::ids::MarkId,
    typed: &Typed<'_>,
    moment: Moment,
) -> Result<(), ActError> {
    let rung: Option<Rung> = typed.choice("rung");
    let words = typed.text("words").to_owned();
    mark::correct(book, visit, id, typed.text("why"), moment, |mark| {
        if let (Some(rung), Condition::Seen { seen, .. }) = (rung, mark.condition) {
            mark.condition = Condition::Seen { rung, seen };
            if rung == Rung::Sound {
                mark.defects.clear();
            }
        }
        if !words.is_empty() {
            mark.words = words;
        }
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
                .map_err(|_| wrong("amount", "write an amount such as 1250 or 1250.00"))?,
        ),
    };
    Ok(outcome::Told {
        letter: typed.text("letter").parse().ok(),
        came: typed
            .choice("came")
            .ok_or_else(|| wrong("came", "choose what came of it"))?,
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
    let on = day(typed, "on")?.ok_or_else(|| wrong("on", "choose the day"))?;
    let because = typed
        .choice("because")
        .unwrap_or(trade::outcome::Because::LookPromised);
    outcome::remind(book, property, on, because, typed.text("words"), moment)?;
    Ok(())
}

fn set(book: &mut Book, form: &FormOf, typed: &Typed<'_>, moment: Moment) -> Result<(), ActError> {
    match form {
        FormOf::Profile => {
            let profile = profile(book.profile()?, typed)?;
            settings::set_profile(book, profile, moment)
        }
        FormOf::Policy => {
            let policy = policy(book.policy()?, typed)?;
            settings::set_policy(book, policy, moment)
        }
        _ => {
            let firm = firm(book.firm()?, typed);
            settings::set_firm(book, firm, moment)
        }
    }
}

fn firm(before: Firm, typed: &Typed<'_>) -> Firm {
    Firm {
        name: typed.text("name").to_owned(),
        person: typed.text("person").to_owned(),
        phone: typed.text("phone").to_owned(),
        email: typed.text("email").to_owned(),
        address: typed.text("address").lines().map(str::to_owned).collect(),
        licence: typed.text("licence").to_owned(),
        language: typed.choice("language").unwrap_or(before.language),
        contract: typed.text("contract").to_owned(),
        notices: typed.text("notices").to_owned(),
    }
}

fn profile(before: Profile, typed: &Typed<'_>) -> Result<Profile, ActError> {
    let edition = typed
        .text("edition")
        .parse::<u16>()
        .map_err(|error| wrong("edition", error))?;
    Ok(Profile {
        place: typed.text("place").to_owned(),
        edition: edition
            .try_into()
            .map_err(|error: String| wrong("edition", error))?,
        layers_allowed: typed.text("layers-allowed").parse().ok(),
        ice_barrier: typed.choice("ice-barrier").unwrap_or(before.ice_barrier),
        hail: typed.choice("hail").unwrap_or(before.hail),
        climate_zone: typed.text("climate-zone").parse().ok(),
        amendments: typed
            .text("amendments")
            .lines()
            .map(str::to_owned)
            .collect(),
    })
}

fn policy(before: HousePolicy, typed: &Typed<'_>) -> Result<HousePolicy, ActError> {
    Ok(HousePolicy {
        patch_limit: count(typed, "patch-limit")?,
        places_limit: count(typed, "places-limit")?,
        no_repair_layers: count(typed, "no-repair-layers")?,
        sells_recover: typed.ticked("sells-recover"),
        callback_years: count(typed, "callback-years")?,
        make_safe_weeks: count(typed, "make-safe-weeks")?,
        look_again_years: count(typed, "look-again-years")?,
        look_stands_months: count(typed, "look-stands-months")?,
        installer_answers_years: count(typed, "installer-answers-years")?,
        ..before
    })
}

fn count(typed: &Typed<'_>, field: &'static str) -> Result<u8, ActError> {
    match typed.text(field).parse() {
        Ok(count) if count > 0 => Ok(count),
        _ => Err(wrong(field, "write a whole number from 1 to 255")),
    }
}
