//! The forms of Roof: ways to measure it, the edges of its outline, the pitch of a slope, the place of a part.

use super::EdgeRow;
use crate::action::Action;
use crate::block::{Button, Choice, FieldKind, Form};
use crate::filling::Filling;
use crate::form::{FormOf, value_of};
use crate::name;
use crate::screens::Context;
use acts::dormer::Shape;
use acts::measure::{self, EdgeAt, Street};
use acts::measured;
use serde::Serialize;
use trade::history::History;
use trade::ids::StructureId;
use trade::property::Side;
use trade::roof::{Plane, RoofPlan};
use trade::sketch::{Body, Drawn, EdgeIs, HighEdge, OutlineOf, SideEdge, SketchEdge};
use trade::units::{Got, Length};
use trade::words::Said;

pub(super) fn all(
    context: &Context<'_>,
    history: &History,
    structure: StructureId,
    plan: Option<&RoofPlan>,
) -> Vec<Form> {
    let mut forms = vec![
        a_box(context, structure),
        sides(context, structure),
        file(context, structure),
        plane(context, structure),
        slope_pitch(context, history, structure),
        slope_rise(context, history, structure),
        slope_rafter(context, history, structure),
    ];
    if let Some(plan) = plan {
        if is_outlined(history, structure) {
            forms.push(a_dormer(context, structure));
        }
        forms.extend(tie_plane(context, history, structure, plan));
        forms.push(place_part(context, history, structure));
    }
    forms
}

fn choices<T: Serialize>(
    context: &Context<'_>,
    all: &[T],
    key: impl Fn(&T) -> &'static str,
) -> FieldKind {
    FieldKind::OneOf {
        choices: all
            .iter()
            .map(|one| Choice {
                value: value_of(one),
                label: context.text(key(one)),
            })
            .collect(),
    }
}

fn named(context: &Context<'_>, all: &[(&str, &str)]) -> FieldKind {
    FieldKind::OneOf {
        choices: all
            .iter()
            .map(|(value, label)| Choice {
                value: (*value).to_owned(),
                label: context.text(label),
            })
            .collect(),
    }
}

fn lengths_got(context: &Context<'_>) -> FieldKind {
    choices(
        context,
        &[
            Got::Tape,
            Got::Paced,
            Got::Picture,
            Got::Footprint,
            Got::Told,
        ],
        |got| got.key(),
    )
}

fn outline_of(context: &Context<'_>) -> FieldKind {
    named(
        context,
        &[
            (value_of(&OutlineOf::Walls).as_str(), "outline-walls"),
            (value_of(&OutlineOf::Roof).as_str(), "outline-roof"),
        ],
    )
}

fn a_box(context: &Context<'_>, structure: StructureId) -> Form {
    let ends = [
        ("hip", "ends-hip"),
        ("gable-sides", "ends-gable-sides"),
        ("gable-front", "ends-gable-front"),
    ];
    Filling::new(context, FormOf::RoofBox { structure })
        .blank("across", "roof-across", FieldKind::Line)
        .blank("deep", "roof-deep", FieldKind::Line)
        .blank("pitch", "roof-pitch", FieldKind::Line)
        .blank("overhang", "roof-overhang", FieldKind::Line)
        .blank("ends", "roof-ends", named(context, &ends))
        .blank("of", "roof-of", outline_of(context))
        .blank("got", "measure-got", lengths_got(context))
        .done(context.text("roof-box"), "measure-keep")
}

fn sides(context: &Context<'_>, structure: StructureId) -> Form {
    Filling::new(context, FormOf::RoofSides { structure })
        .blank("sides", "roof-sides-how", FieldKind::Words)
        .blank("pitch", "roof-pitch", FieldKind::Line)
        .blank("overhang", "roof-overhang", FieldKind::Line)
        .blank("of", "roof-of", outline_of(context))
        .blank("got", "measure-got", lengths_got(context))
        .done(context.text("roof-sides"), "measure-keep")
}

fn file(context: &Context<'_>, structure: StructureId) -> Form {
    let got = value_of(&Got::Footprint);
    Filling::new(context, FormOf::RoofFile { structure })
        .blank("file", "roof-file-how", FieldKind::Words)
        .blank(
            "street",
            "roof-street",
            choices(context, &Street::ALL, |street| street.key()),
        )
        .blank("pitch", "roof-pitch", FieldKind::Line)
        .blank("overhang", "roof-overhang", FieldKind::Line)
        .field("got", "measure-got", &got, lengths_got(context))
        .done(context.text("roof-file"), "measure-keep")
}

fn plane(context: &Context<'_>, structure: StructureId) -> Form {
    let high = [
        (HighEdge::Ridge, "line-ridge"),
        (HighEdge::Wall, "line-wall"),
        (HighEdge::PitchChange, "line-pitch-change"),
        (HighEdge::Top, "line-top"),
    ]
    .map(|(edge, label)| (value_of(&edge), label));
    let high: Vec<(&str, &str)> = high
        .iter()
        .map(|(value, label)| (value.as_str(), *label))
        .collect();
    let side = [
        (SideEdge::Rake, "line-rake"),
        (SideEdge::Hip, "line-hip"),
        (SideEdge::Valley, "line-valley"),
        (SideEdge::Step, "line-step"),
    ]
    .map(|(edge, label)| (value_of(&edge), label));
    let side: Vec<(&str, &str)> = side
        .iter()
        .map(|(value, label)| (value.as_str(), *label))
        .collect();
    Filling::new(context, FormOf::RoofPlane { structure })
        .blank(
            "side",
            "plane-side",
            choices(context, &Side::ALL, |side| side.key()),
        )
        .blank("pitch", "roof-pitch", FieldKind::Line)
        .blank("eave", "plane-eave", FieldKind::Line)
        .blank("high", "plane-high", FieldKind::Line)
        .blank("up", "plane-up", FieldKind::Line)
        .blank("high-is", "plane-high-is", named(context, &high))
        .blank("left", "plane-left", named(context, &side))
        .blank("right", "plane-right", named(context, &side))
        .blank("got", "measure-got", lengths_got(context))
        .done(context.text("roof-plane-add"), "measure-keep")
}

fn slope_pitch(context: &Context<'_>, history: &History, structure: StructureId) -> Form {
    let slopes = name::slopes(context.words, history, structure);
    Filling::new(context, FormOf::SlopePitch { structure })
        .one_of("slope", "roof-slope", slopes)
        .blank("readings", "roof-readings", FieldKind::Inclination)
        .done(context.text("roof-slope-pitch"), "measure-keep")
}

fn slope_rise(context: &Context<'_>, history: &History, structure: StructureId) -> Form {
    let slopes = name::slopes(context.words, history, structure);
    Filling::new(context, FormOf::SlopeRise { structure })
        .one_of("slope", "roof-slope", slopes)
        .blank("rise", "roof-rise", FieldKind::Line)
        .blank("run", "roof-run", FieldKind::Line)
        .done(context.text("roof-slope-rise"), "measure-keep")
}

fn slope_rafter(context: &Context<'_>, history: &History, structure: StructureId) -> Form {
    let slopes = name::slopes(context.words, history, structure);
    Filling::new(context, FormOf::SlopeRafter { structure })
        .one_of("slope", "roof-slope", slopes)
        .blank("rafter", "roof-rafter", FieldKind::Line)
        .blank("run", "roof-rafter-run", FieldKind::Line)
        .done(context.text("roof-slope-rafter"), "measure-keep")
}

/// Whether the roof was drawn by an outline, which a dormer can stand on.
fn is_outlined(history: &History, structure: StructureId) -> bool {
    history
        .sketch_of(structure)
        .is_some_and(|sketch| !matches!(sketch.drawn, Drawn::Planes { .. }))
}

fn a_dormer(context: &Context<'_>, structure: StructureId) -> Form {
    Filling::new(context, FormOf::Dormer { structure })
        .blank(
            "faces",
            "dormer-faces",
            choices(context, &Side::ALL, |side| side.key()),
        )
        .blank(
            "shape",
            "dormer-shape",
            choices(context, &Shape::ALL, |shape| shape.key()),
        )
        .blank("x", "dormer-x", FieldKind::Line)
        .blank("y", "dormer-y", FieldKind::Line)
        .blank("wide", "dormer-wide", FieldKind::Line)
        .blank("above", "dormer-above", FieldKind::Line)
        .blank("deep", "dormer-deep", FieldKind::Line)
        .blank("pitch", "roof-pitch", FieldKind::Line)
        .blank("overhang", "roof-overhang", FieldKind::Line)
        .done(context.text("roof-dormer"), "measure-keep")
}

/// Of which slope of the walk a plane is the measure: those that are of none yet first. No form where no slope was walked.
fn tie_plane(
    context: &Context<'_>,
    history: &History,
    structure: StructureId,
    plan: &RoofPlan,
) -> Option<Form> {
    let slopes = name::slopes(context.words, history, structure);
    let mut planes: Vec<(usize, &Plane)> = plan.planes.iter().enumerate().collect();
    planes.sort_by_key(|(_, plane)| plane.slope.is_some());
    let planes = planes.into_iter().map(|(at, plane)| Choice {
        value: at.to_string(),
        label: context.say(
            &Said::new("roof-plane-named")
                .with(
                    "name",
                    name::slope(context.words, &plane.letter, measure::faces(plane)),
                )
                .with("says", measured::plane_said(plane)),
        ),
    });
    let planes = planes.collect();
    (!slopes.is_empty()).then(|| {
        Filling::new(context, FormOf::TiePlane { structure })
            .one_of("plane", "roof-plane-which", planes)
            .one_of("slope", "roof-slope", slopes)
            .done(context.text("roof-tie"), "measure-keep")
    })
}

fn place_part(context: &Context<'_>, history: &History, structure: StructureId) -> Form {
    let parts = FieldKind::OneOf {
        choices: history
            .parts_of(structure)
            .map(|part| Choice {
                value: part.id.to_string(),
                label: name::part(context.words, history, part.id),
            })
            .collect(),
    };
    Filling::new(context, FormOf::PlacePart { structure })
        .blank("part", "roof-part", parts)
        .blank("x", "roof-x", FieldKind::Line)
        .blank("y", "roof-y", FieldKind::Line)
        .done(context.text("roof-place-part"), "measure-keep")
}

/// The edges of an outline that was drawn by its corners.
pub(super) fn edges(
    context: &Context<'_>,
    history: &History,
    structure: StructureId,
) -> Vec<EdgeRow> {
    let Some(Drawn::Outlines { bodies }) = history.sketch_of(structure).map(|sketch| &sketch.drawn)
    else {
        return Vec::new();
    };
    let mut rows = Vec::new();
    for (body, drawn) in bodies.iter().enumerate() {
        for (ring, edges) in drawn.rings.iter().enumerate() {
            for (edge, from) in edges.iter().enumerate() {
                let to = &edges[(edge + 1) % edges.len()];
                let at = EdgeAt { body, ring, edge };
                rows.push(edge_row(context, structure, at, drawn, (from, to)));
            }
        }
    }
    rows
}

fn edge_row(
    context: &Context<'_>,
    structure: StructureId,
    at: EdgeAt,
    body: &Body,
    (from, to): (&SketchEdge, &SketchEdge),
) -> EdgeRow {
    let (x, y) = (
        to.x.in_metres() - from.x.in_metres(),
        to.y.in_metres() - from.y.in_metres(),
    );
    let key = if body.above_roof.is_some() {
        "roof-edge-of-dormer"
    } else {
        "roof-edge"
    };
    let name = context.say(
        &Said::new(key)
            .with("number", i64::try_from(at.edge + 1).unwrap_or(i64::MAX))
            .with(
                "length",
                super::length(context, Length::from_metres(x.hypot(y))),
            )
            .with("is", Said::new(from.is.key())),
    );
    let is = EdgeIs::ALL
        .into_iter()
        .map(|is| {
            Button::new(
                context.text(is.key()),
                Action::SetEdge { structure, at, is },
            )
            .chosen(from.is == is)
        })
        .collect();
    let pitch = from.pitch.unwrap_or(body.pitch).to_string();
    let overhang = from.overhang.unwrap_or(body.overhang).imperial();
    let form = Filling::new(context, FormOf::Edge { structure, at })
        .field("pitch", "roof-pitch", &pitch, FieldKind::Line)
        .field("overhang", "roof-overhang", &overhang, FieldKind::Line)
        .done(context.text("roof-edge-own"), "measure-keep");
    EdgeRow { name, is, form }
}
