//! Tray: pictures and words taken first, emptied at the tailgate.

use crate::action::Action;
use crate::block::{Button, FieldKind, Form, Onto, Picture, Row, Shutter};
use crate::filling::Filling;
use crate::form::FormOf;
use crate::name;
use crate::place::Place;
use crate::screens::Context;
use acts::walk::{self, Spot};
use acts::{ActError, tray, visit};
use serde::Serialize;
use trade::catalogue::Catalogue;
use trade::history::History;
use trade::ids::VisitId;
use trade::visit::{Photo, Visit};
use trade::words::Said;

/// One loose picture or note.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Loose {
    /// The picture, where it is one.
    pub picture: Option<Picture>,
    /// The words, or when the picture was taken.
    pub words: String,
    /// What the picture shows.
    pub caption: Option<Form>,
    /// The parts it can be tied to.
    pub tie: Vec<Button>,
}

/// The state of Tray.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Tray {
    /// The address.
    pub under: String,
    /// The heading.
    pub title: String,
    /// What lies in it.
    pub loose: Vec<Loose>,
    /// The heading over the parts to tie to.
    pub tie_title: String,
    /// What to say of an empty tray.
    pub empty: Option<String>,
    /// The heading over parts that still need a rung.
    pub half_title: String,
    /// Parts that still need a rung.
    pub half: Vec<Row>,
    /// The shutter.
    pub shutter: Shutter,
    /// Back to the walk.
    pub back: Button,
}

pub(crate) fn show(context: &Context<'_>, visit: VisitId) -> Result<Tray, ActError> {
    let (history, visit) = visit::find_open(context.book, visit)?;
    let spots = spots(&history, &visit);
    let mut loose: Vec<Loose> = tray::loose_photos(&history, visit.id)
        .into_iter()
        .map(|photo| picture(context, &history, &visit, photo, &spots))
        .collect();
    loose.extend(
        tray::loose_notes(&history, visit.id)
            .into_iter()
            .map(|note| Loose {
                picture: None,
                words: note.words.clone(),
                caption: None,
                tie: tie(context, &history, &spots, |spot| Action::TieNote {
                    visit: visit.id,
                    note: note.id,
                    spot,
                }),
            }),
    );
    let half = half(context, &history, &visit);
    let structure = visit.structures.first().copied();
    Ok(Tray {
        under: history.property.address.line.clone(),
        title: context.text("tray-title"),
        empty: loose.is_empty().then(|| context.text("tray-empty")),
        tie_title: context.text("tray-tie"),
        half_title: context.text("tray-half"),
        half,
        loose,
        shutter: Shutter {
            label: context.text("shutter"),
            keep: context.text("shutter-keep"),
            onto: Onto::Tray { visit: visit.id },
        },
        back: Button::new(
            context.text("back-walk"),
            Action::Go {
                to: structure.map_or_else(Place::start, |structure| Place::Walk {
                    visit: visit.id,
                    structure,
                    stop: None,
                }),
            },
        ),
    })
}

/// Everything on the walk, what is answered already included: a picture may come late.
fn spots(history: &History, visit: &Visit) -> Vec<Spot> {
    walk::plan(history, visit, Catalogue::standard())
        .into_iter()
        .flat_map(|walk| walk.stops)
        .flat_map(|stop| stop.spots)
        .map(|planned| planned.spot)
        .collect()
}

fn picture(
    context: &Context<'_>,
    history: &History,
    visit: &Visit,
    photo: &Photo,
    spots: &[Spot],
) -> Loose {
    let form = FormOf::Caption {
        visit: visit.id,
        photo: photo.id,
    };
    Loose {
        picture: Some(Picture {
            photo: photo.id,
            alt: context.text("tray-photo"),
        }),
        words: context.say(&Said::new("tray-taken").with("at", context.moment.clock(photo.taken))),
        caption: Some(
            Filling::new(context, form)
                .field("caption", "caption-words", &photo.caption, FieldKind::Line)
                .done(String::new(), "say-keep"),
        ),
        tie: tie(context, history, spots, |spot| Action::TiePhoto {
            visit: visit.id,
            photo: photo.id,
            spot,
        }),
    }
}

fn tie(
    context: &Context<'_>,
    history: &History,
    spots: &[Spot],
    action: impl Fn(Spot) -> Action,
) -> Vec<Button> {
    spots
        .iter()
        .map(|spot| {
            Button::new(
                name::spot(context.words, history, spot),
                action(spot.clone()),
            )
            .note(structure_of(context, history, spot))
        })
        .collect()
}

/// The structure that a part belongs to, where there are several: each may have a ridge.
fn structure_of(context: &Context<'_>, history: &History, spot: &Spot) -> Option<String> {
    let structure = match spot {
        Spot::Known { part } => history.part(*part)?.structure,
        Spot::Unborn { structure, .. } => *structure,
    };
    (history.structures.len() > 1).then(|| name::structure(context.words, history, structure))
}

fn half(context: &Context<'_>, history: &History, visit: &Visit) -> Vec<Row> {
    tray::half_done(history, visit.id)
        .into_iter()
        .map(|part| Row {
            title: name::part(context.words, history, part),
            says: context.text("tray-needs-rung"),
            ladder: None,
            action: Some(Action::Go {
                to: Place::Mark {
                    visit: visit.id,
                    spot: Spot::Known { part },
                    family: None,
                },
            }),
        })
        .collect()
}
