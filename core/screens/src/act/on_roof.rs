//! The forms of a visit: words, measures, layers, work, parts, corrections.

use super::typed::{celsius, day, length, length_of, readings, wrong};
use super::{Next, walk};
use crate::form::{FormOf, Typed};
use crate::place::Place;
use acts::walk::Spot;
use acts::{ActError, Book, Moment, found, ladder, mark, tray, visit};
use trade::catalogue::{KindKey, RemedyKey};
use trade::ids::{StructureId, VisitId};
use trade::mark::{Condition, Measure, MeasureOf, Rung};
use trade::stack::{Covering, EdgeCourses, Layer, LayerIs, Learned};
use trade::units::{Got, Measured};
use trade::visit::LadderStood;
use trade::words::Words;
use trade::work::{By, Did, Evidence};

pub(super) fn filled(
    book: &mut Book,
    form: &FormOf,
    typed: &Typed<'_>,
    words: &Words,
    moment: Moment,
) -> Result<Next, ActError> {
    match form {
        FormOf::Temperature { visit } => {
            let celsius = celsius(typed, "degrees")?;
            visit::change(book, *visit, moment, |visit| {
                visit.weather.celsius = celsius;
            })?;
            Ok(Next::saved(Place::Safety { visit: *visit }, words, "saved"))
        }
        FormOf::Ladder { visit } => {
            ladder::set(book, *visit, stood(typed)?, moment)?;
            Ok(Next::saved(Place::Safety { visit: *visit }, words, "saved"))
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
        _ => Ok(Next::at(Place::start())),
    }
}

/// A ladder as it was measured: nothing typed was not measured.
fn stood(typed: &Typed<'_>) -> Result<LadderStood, ActError> {
    let measured = |field| match typed.text(field) {
        "" => Ok(None),
        text => length_of(text, field).map(Some),
    };
    let readings = readings(typed.text("readings"));
    let leans = if readings.is_empty() {
        None
    } else {
        Some(ladder::lean_of_readings(&readings)?)
    };
    Ok(LadderStood {
        working: measured("working")?,
        base: measured("base")?,
        leans,
        landing: measured("landing")?,
    })
}

fn on_part(visit: VisitId, part: trade::ids::PartId) -> Place {
    Place::Mark {
        visit,
        spot: Spot::Known { part },
        family: None,
    }
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
    let reading = found::Reading {
        place: typed.text("where").to_owned(),
        rebuilt: typed.ticked("rebuilt"),
        layers: stacked(covering, count, typed),
        edge,
        learned: typed.choice("learned").unwrap_or(Learned::RakeEdge),
    };
    found::layers(book, visit, spot, reading, moment)
}

/// The layers from the top down to the deck. Only the top one's colour can be seen from above.
fn stacked(covering: Covering, count: u8, typed: &Typed<'_>) -> Vec<Layer> {
    if count == 0 {
        return Vec::new();
    }
    let plain = |is| Layer {
        is,
        colour: None,
        thickness: None,
    };
    let colour = Some(typed.text("colour").to_owned()).filter(|colour| !colour.is_empty());
    let between = match typed.text("between") {
        "membrane" => Some(LayerIs::Membrane),
        "sheathing" => Some(LayerIs::Sheathing),
        _ => None,
    };
    let top = Layer {
        colour,
        ..plain(LayerIs::Covering(covering))
    };
    let older = (1..count).map(|_| plain(LayerIs::Covering(covering)));
    std::iter::once(top)
        .chain(between.map(plain))
        .chain(older)
        .chain(std::iter::once(plain(LayerIs::Deck)))
        .collect()
}

/// Butt lines as typed: "2 in, 5 in, 7 in, 10 in".
fn edge(typed: &Typed<'_>) -> Result<Option<EdgeCourses>, ActError> {
    let text = typed.text("butts");
    if text.is_empty() {
        return Ok(None);
    }
    let butts = text
        .split(',')
        .map(|butt| length_of(butt, "butts"))
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
        exact: typed.text("exact") != "no",
        evidence: typed.choice("evidence").unwrap_or(Evidence::Seen),
    };
    found::work(book, visit, spot, done, moment)
}

fn add_part(visit: VisitId, structure: StructureId, typed: &Typed<'_>) -> Result<Next, ActError> {
    let kind = typed.text("kind");
    if kind.is_empty() {
        return Err(wrong("kind", "wrong-no-kind"));
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
