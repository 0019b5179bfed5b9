//! The worksheet of an offer as a form: what this roof and this verdict leave to be counted and chosen, and no more.

use crate::block::{Choice, FieldKind, Form};
use crate::filling::Filling;
use crate::form::FormOf;
use crate::screens::Context;
use crate::worksheet::{Field, Takes, vent_fields};
use acts::judge::Judged;
use acts::offer::{self, Reckoning};
use acts::worksheet;
use trade::ids::{StructureId, VisitId};
use trade::offer::Offer;
use trade::price_list::PriceList;
use trade::verdict::Course;

/// What the form is made from.
pub(super) struct Sheet<'a> {
    pub judged: &'a Judged,
    pub visit: VisitId,
    pub structure: StructureId,
    pub list: Option<&'a PriceList>,
    pub reckoned: Option<&'a Reckoning>,
    pub offer: Option<&'a Offer>,
}

/// The form; `None` where nothing is to be counted or chosen.
pub(super) fn form(context: &Context<'_>, sheet: &Sheet<'_>) -> Option<Form> {
    let fields = fields(sheet);
    if fields.is_empty() {
        return None;
    }
    let history = &sheet.judged.history;
    let stands = worksheet::of(history, sheet.structure, context.moment);
    let form = FormOf::Worksheet {
        visit: sheet.visit,
        structure: sheet.structure,
    };
    let filled = fields
        .iter()
        .fold(Filling::new(context, form), |filling, field| {
            filling.labelled(
                &field.name(history),
                context.say(&field.label(history, context.words)),
                &field.text(&stands),
                kind(context, field),
            )
        });
    Some(filled.done(context.text("worksheet-title"), "worksheet-keep"))
}

fn kind(context: &Context<'_>, field: &Field) -> FieldKind {
    match field.takes() {
        Takes::Line => FieldKind::Line,
        Takes::OneOf(all) => FieldKind::OneOf {
            choices: all
                .into_iter()
                .map(|(value, label)| Choice {
                    value,
                    label: context.text(label),
                })
                .collect(),
        },
    }
}

fn fields(sheet: &Sheet<'_>) -> Vec<Field> {
    let mut fields = of_work(sheet);
    if sheet.reckoned.is_some() && covers_anew(sheet) {
        fields.extend(of_covering(sheet));
    }
    fields
}

fn has(sheet: &Sheet<'_>, is: impl Fn(Course) -> bool) -> bool {
    let offered = sheet.offer.into_iter().flat_map(|offer| &offer.courses);
    let advised = sheet
        .judged
        .verdict(sheet.structure)
        .into_iter()
        .flat_map(|verdict| &verdict.steps);
    offered
        .map(|course| course.course)
        .chain(advised.map(|step| step.course))
        .any(is)
}

fn covers_anew(sheet: &Sheet<'_>) -> bool {
    has(sheet, |course| {
        matches!(course, Course::Recover | Course::TearOff)
    })
}

/// What is counted for work on single parts, and how long that lasts.
fn of_work(sheet: &Sheet<'_>) -> Vec<Field> {
    let history = &sheet.judged.history;
    let mut fields = Vec::new();
    if has(sheet, |course| course == Course::Repair) {
        fields.push(Field::RepairLasts);
    }
    if covers_anew(sheet) && offer::patch_asked(sheet.judged, sheet.structure).is_some() {
        fields.push(Field::PatchHolds);
    }
    if let Some(list) = sheet.list {
        let plan = sheet.reckoned.map(|reckoned| &reckoned.plan);
        let counts = worksheet::to_count(history, sheet.structure, list, plan, sheet.offer);
        fields.extend(counts.into_iter().map(Field::Count));
    }
    fields
}

/// What is chosen for a new covering.
fn of_covering(sheet: &Sheet<'_>) -> Vec<Field> {
    let mut fields = Vec::new();
    for chimney in worksheet::chimneys(&sheet.judged.history, sheet.structure) {
        if !chimney.is_width_measured {
            fields.push(Field::ChimneyWidth(chimney.part));
        }
        fields.push(Field::ChimneyDepth(chimney.part));
    }
    fields.extend([
        Field::Overhang,
        Field::CounterFlashing,
        Field::Valleys,
        Field::Starter,
        Field::DeckSheets,
    ]);
    fields.extend(vent_fields(sheet.judged.going.profile.edition).map(Field::Vent));
    fields.extend([Field::Nails, Field::Sealant, Field::Cement, Field::OrderAt]);
    fields
}
