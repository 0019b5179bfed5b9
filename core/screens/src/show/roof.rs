//! Roof: the plan as it was measured, its numbers, its parts, and measuring it.

mod forms;
mod plan;

use crate::action::Action;
use crate::block::{Button, Form, Row};
use crate::name;
use crate::place::Place;
use crate::screens::Context;
use acts::{ActError, measure};
use serde::Serialize;
use trade::drawing::Drawing;
use trade::history::History;
use trade::ids::StructureId;
use trade::roof::{LineKind, RoofPlan};
use trade::takeoff::Spread;
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

/// One edge of the outline: what stands there, and its own pitch and overhang.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct EdgeRow {
    /// Which edge: its length and where it faces.
    pub name: String,
    /// What stands there.
    pub is: Vec<Button>,
    /// Its own pitch and overhang.
    pub form: Form,
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
    /// Over the lines.
    pub lines_title: String,
    /// Each kind of line and its length.
    pub lines: Vec<Row>,
    /// Over the edges.
    pub edges_title: String,
    /// The edges of the outline, where it was drawn by its corners.
    pub edges: Vec<EdgeRow>,
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

/// A file of a plan.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum PlanFile {
    /// The plan as a picture.
    Svg,
    /// The plan for a drawing program.
    Dxf,
    /// Planes and lines for a map.
    Geojson,
    /// Planes as a table.
    PlanesCsv,
    /// Lines as a table.
    LinesCsv,
}

impl PlanFile {
    /// All of them, in the order they are offered.
    pub const ALL: [Self; 5] = [
        Self::Svg,
        Self::Dxf,
        Self::Geojson,
        Self::PlanesCsv,
        Self::LinesCsv,
    ];

    pub(crate) fn of(self) -> measure::PlanFile {
        match self {
            Self::Svg => measure::PlanFile::Svg,
            Self::Dxf => measure::PlanFile::Dxf,
            Self::Geojson => measure::PlanFile::Geojson,
            Self::PlanesCsv => measure::PlanFile::Planes,
            Self::LinesCsv => measure::PlanFile::Lines,
        }
    }

    /// The name that the file bears.
    pub fn name(self) -> &'static str {
        match self {
            Self::Svg => "plan.svg",
            Self::Dxf => "plan.dxf",
            Self::Geojson => "plan.geojson",
            Self::PlanesCsv => "slopes.csv",
            Self::LinesCsv => "lines.csv",
        }
    }

    /// What a browser calls its kind.
    pub fn media(self) -> &'static str {
        match self {
            Self::Svg => "image/svg+xml",
            Self::Dxf => "image/vnd.dxf",
            Self::Geojson => "application/geo+json",
            Self::PlanesCsv | Self::LinesCsv => "text/csv; charset=utf-8",
        }
    }

    fn key(self) -> &'static str {
        match self {
            Self::Svg => "roof-file-svg",
            Self::Dxf => "roof-file-dxf",
            Self::Geojson => "roof-file-geojson",
            Self::PlanesCsv => "roof-file-planes",
            Self::LinesCsv => "roof-file-lines",
        }
    }
}

pub(crate) fn show(context: &Context<'_>, structure: StructureId) -> Result<Roof, ActError> {
    let history = measure::of_structure(context.book, structure)?;
    let plan = measure::plan(&history, structure)?;
    Ok(Roof {
        under: context.say(
            &Said::new("verdict-under")
                .with("address", history.property.address.line.clone())
                .with(
                    "structure",
                    name::structure(context.words, &history, structure),
                ),
        ),
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
        lines_title: context.text("roof-lines"),
        lines: plan
            .as_ref()
            .map_or_else(Vec::new, |plan| lines(context, plan)),
        edges_title: context.text("roof-edges"),
        edges: forms::edges(context, &history, structure),
        measure_title: context.text("roof-measure"),
        forms: forms::all(context, &history, structure, plan.is_some()),
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

/// A length to the inch: no roof is known better.
pub(crate) fn length(context: &Context<'_>, length: Length) -> String {
    let inches = Length::from_inches(length.in_inches().round());
    context.say(&Said::new("length-alone").with("length", inches))
}

fn numbers(context: &Context<'_>, plan: &RoofPlan) -> Vec<Row> {
    let squares = Spread::within(plan.slope_area().in_squares(), plan.area_within());
    let per_cent = format!("{:.0}", plan.length_within * 100.0);
    vec![
        row(
            context.text("roof-area"),
            context.say(
                &Said::new("roof-squares")
                    .with("squares", squares.says(1))
                    .with("plan", format!("{:.0}", plan.plan_area().in_square_feet())),
            ),
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
    ]
}

fn planes(context: &Context<'_>, plan: &RoofPlan) -> Vec<Row> {
    plan.planes
        .iter()
        .map(|plane| {
            row(
                context.say(
                    &Said::new("slope-name")
                        .with("letter", plane.letter.clone())
                        .with("side", Said::new(measure::faces(plane).key())),
                ),
                context.say(
                    &Said::new("roof-plane")
                        .with("pitch", plane.pitch)
                        .with("area", format!("{:.0}", plane.slope_area.in_square_feet())),
                ),
            )
        })
        .collect()
}

fn lines(context: &Context<'_>, plan: &RoofPlan) -> Vec<Row> {
    LineKind::ALL
        .into_iter()
        .filter_map(|kind| {
            let count = plan.lines.iter().filter(|line| line.kind == kind).count();
            (count > 0).then(|| {
                row(
                    context.text(kind.key()),
                    length(context, plan.length_of(kind)),
                )
            })
        })
        .collect()
}
