//! Roof: the plan as it was measured, its numbers, its parts, and measuring it.

mod forms;
mod laid;
mod plan;
mod standing;

use crate::action::Action;
use crate::block::{Button, Form, Row};
use crate::name;
use crate::place::Place;
use crate::screens::Context;
use acts::measure::PlanFile;
use acts::{ActError, measure, measured};
use serde::Serialize;
use trade::drawing::Drawing;
use trade::history::History;
use trade::ids::StructureId;
use trade::roof::RoofPlan;
use trade::units::Length;
use trade::words::Said;

/// A drawing with what it shows, for those who do not see it.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Drawn {
    /// The drawing.
    pub drawing: Drawing,
    /// What it is.
    pub title: String,
    /// What it shows.
    pub says: String,
}

/// One edge of the outline, folded behind its name: what stands there, and its own pitch and overhang.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct EdgeRow {
    /// Which edge, its length, and what stands there.
    pub name: String,
    /// To say what stands there.
    pub is: Vec<Button>,
    /// Its own pitch and overhang.
    pub form: Form,
}

/// A covering laid on the roof.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct LaidRoof {
    /// What it is: it is folded away until asked for.
    pub title: String,
    /// Every piece as it lies.
    pub drawn: Drawn,
    /// Pieces, bundles and waste, and what books say.
    pub numbers: Vec<Row>,
}

/// The state of Roof.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Roof {
    /// The address and the structure.
    pub under: String,
    /// The heading.
    pub title: String,
    /// The structures that stand.
    pub structures: Vec<Button>,
    /// The plan, where it was measured.
    pub plan: Option<Drawn>,
    /// What to say where nobody measured it yet.
    pub none: Option<String>,
    /// Area, height, how exact it is.
    pub numbers: Vec<Row>,
    /// Over the planes.
    pub planes_title: String,
    /// Each plane: its letter, pitch and area.
    pub planes: Vec<Row>,
    /// The planes that are of no slope of the walk yet, where there are some.
    pub untied: Option<String>,
    /// Over the lines.
    pub lines_title: String,
    /// Each kind of line and its length.
    pub lines: Vec<Row>,
    /// Over the edges.
    pub edges_title: String,
    /// The edges of the outline, where it was drawn by its corners.
    pub edges: Vec<EdgeRow>,
    /// Over what stands on the roof.
    pub standing_title: String,
    /// Each dormer; a tap takes it off.
    pub standing: Vec<Button>,
    /// Over the pitches that were measured.
    pub pitches_title: String,
    /// Each slope whose pitch was measured, how, and how exactly.
    pub pitches: Vec<Row>,
    /// The shingles as they lie, where the roof was measured and they can be laid.
    pub laid: Option<LaidRoof>,
    /// Over the ways to measure.
    pub measure_title: String,
    /// The ways to measure, the pitch of a slope, the place of a part.
    pub forms: Vec<Form>,
    /// Where water comes in.
    pub leak: Button,
    /// The structure, for the names of the plan's files.
    pub structure: StructureId,
    /// Over the files.
    pub files_title: String,
    /// Files of the plan, each with what it is called.
    pub files: Vec<(PlanFile, String)>,
    /// The way back.
    pub back: Button,
}

pub(crate) fn show(context: &Context<'_>, structure: StructureId) -> Result<Roof, ActError> {
    let history = measure::of_structure(context.book, structure)?;
    let plan = measure::plan(&history, structure)?;
    Ok(Roof {
        under: name::under(context.words, &history, structure),
        title: context.text("roof-title"),
        structures: structures(context, &history, structure),
        none: plan.is_none().then(|| context.text("roof-none")),
        numbers: plan
            .as_ref()
            .map_or_else(Vec::new, |plan| numbers(context, plan)),
        planes_title: context.text("roof-planes"),
        planes: plan
            .as_ref()
            .map_or_else(Vec::new, |plan| planes(context, plan)),
        untied: plan
            .as_ref()
            .and_then(|plan| untied(context, &history, structure, plan)),
        lines_title: context.text("roof-lines"),
        lines: plan
            .as_ref()
            .map_or_else(Vec::new, |plan| lines(context, plan)),
        edges_title: context.text("roof-edges"),
        edges: forms::edges(context, &history, structure),
        standing_title: context.text("roof-standing"),
        standing: standing::all(context, &history, structure),
        pitches_title: context.text("roof-pitches"),
        pitches: pitches(context, &history, structure),
        laid: plan
            .as_ref()
            .and_then(|plan| laid::on(context, &history, structure, plan)),
        measure_title: context.text("roof-measure"),
        forms: forms::all(context, &history, structure, plan.as_ref()),
        leak: Button::new(
            context.text("leak-title"),
            Action::Go {
                to: Place::Leak {
                    structure,
                    stain: None,
                },
            },
        ),
        structure,
        files_title: context.text("roof-files"),
        files: plan.as_ref().map_or_else(Vec::new, |_| files(context)),
        back: Button::new(
            context.text("back-doorstep"),
            Action::Go {
                to: Place::Doorstep {
                    property: history.property.id,
                },
            },
        ),
        plan: plan.map(|measured| plan::drawn(context, &history, structure, &measured)),
    })
}

fn structures(context: &Context<'_>, history: &History, chosen: StructureId) -> Vec<Button> {
    history
        .structures
        .iter()
        .filter(|one| one.gone.is_none())
        .map(|one| {
            let to = Place::Roof { structure: one.id };
            Button::new(
                name::structure(context.words, history, one.id),
                Action::Go { to },
            )
            .chosen(one.id == chosen)
        })
        .collect()
}

fn files(context: &Context<'_>) -> Vec<(PlanFile, String)> {
    PlanFile::ALL
        .into_iter()
        .map(|file| (file, context.text(file.key())))
        .collect()
}

fn row(title: String, says: String) -> Row {
    Row {
        title,
        says,
        ladder: None,
        action: None,
    }
}

/// A length to the inch.
pub(crate) fn length(context: &Context<'_>, length: Length) -> String {
    context.say(&measured::length_said(length))
}

fn numbers(context: &Context<'_>, plan: &RoofPlan) -> Vec<Row> {
    let per_cent = format!("{:.0}", plan.length_within * 100.0);
    let walls = (!plan.walls.is_empty()).then(|| {
        let area = format!("{:.0}", plan.wall_area().in_square_feet());
        row(
            context.text("roof-walls"),
            context.say(&Said::new("roof-walls-area").with("area", area)),
        )
    });
    let mut numbers = vec![
        row(
            context.text("roof-area"),
            context.say(&measured::area_said(plan)),
        ),
        row(context.text("roof-height"), length(context, plan.height)),
        row(
            context.text("roof-exact"),
            context.say(
                &Said::new("roof-got")
                    .with("got", Said::new(plan.got.key()))
                    .with("within", per_cent),
            ),
        ),
    ];
    numbers.extend(walls);
    numbers
}

/// The slopes whose pitch was measured: how, and how exactly.
fn pitches(context: &Context<'_>, history: &History, structure: StructureId) -> Vec<Row> {
    history
        .slopes
        .iter()
        .filter(|slope| slope.structure == structure)
        .filter_map(|slope| Some((slope, slope.pitch?)))
        .map(|(slope, pitch)| {
            row(
                name::slope(context.words, slope.letter, slope.side),
                context.say(
                    &Said::new("roof-pitch-got")
                        .with("pitch", pitch.value)
                        .with("degrees", format!("{:.1}", pitch.value.in_degrees()))
                        .with("got", Said::new(pitch.got.key()))
                        .with("within", format!("{:.0}", (pitch.within * 100.0).ceil())),
                ),
            )
        })
        .collect()
}

fn planes(context: &Context<'_>, plan: &RoofPlan) -> Vec<Row> {
    plan.planes
        .iter()
        .map(|plane| {
            row(
                name::slope(context.words, &plane.letter, measure::faces(plane)),
                context.say(&measured::plane_said(plane)),
            )
        })
        .collect()
}

/// That planes are of no slope of the walk, where one was walked: they are left out of what is judged, counted and priced.
fn untied(
    context: &Context<'_>,
    history: &History,
    structure: StructureId,
    plan: &RoofPlan,
) -> Option<String> {
    let walked = history
        .slopes
        .iter()
        .any(|slope| slope.structure == structure);
    let untied = plan.planes.iter().filter(|plane| plane.slope.is_none());
    let letters: Vec<Said> = untied.map(|plane| Said::verbatim(&plane.letter)).collect();
    (walked && !letters.is_empty())
        .then(|| context.say(&Said::new("roof-untied").with("letters", letters)))
}

fn lines(context: &Context<'_>, plan: &RoofPlan) -> Vec<Row> {
    measured::lines(plan)
        .map(|(kind, all)| row(context.text(kind.key()), length(context, all)))
        .collect()
}
