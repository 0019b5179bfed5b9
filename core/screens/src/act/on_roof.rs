//! The forms of a visit: words, measures, layers, work, parts, corrections.

use super::typed::{day, length, length_of, wrong};
use super::{Next, walk};
use crate::form::Typed;
use crate::place::Place;
use acts::walk::Spot;
use acts::{ActError, Book, Moment, found, mark, tray};
use trade::catalogue::{KindKey, RemedyKey};
use trade::ids::{StructureId, VisitId};
use trade::mark::{Condition, Measure, MeasureOf, Rung};
use trade::stack::{Covering, EdgeCourses, Layer, LayerIs, Learned};
use trade::units::{Got, Measured};
use trade::work::{By, Did, Evidence};

pub(super) fn on_part(visit: VisitId, part: trade::ids::PartId) -> Place {
    Place::Mark {
        visit,
        spot: Spot::Known { part },
        family: None,
    }
}

pub(super) fn say(
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

pub(super) fn measure(typed: &Typed<'_>) -> Result<Measure, ActError> {
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

pub(super) fn layers(
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

pub(super) fn work(
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

pub(super) fn add_part(
    visit: VisitId,
    structure: StructureId,
    typed: &Typed<'_>,
) -> Result<Next, ActError> {
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

pub(super) fn correct(
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
