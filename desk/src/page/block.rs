//! Buttons, forms and rows as HTML.

use super::{Frame, ladder};
use maud::{Markup, html};
use screens::{Action, Button, Field, FieldKind, Form, Picture, Place, Row, Shutter};

/// How tall a ladder on a button or row is.
const TALL: f64 = 46.0;

/// The address of a place; a walk opens at the stop where he stands.
pub(crate) fn address(place: &Place) -> String {
    match place {
        Place::Walk { .. } => format!("{place}#here"),
        _ => place.to_string(),
    }
}

/// A button: going somewhere is a link, everything else a form of its own.
pub(crate) fn button(frame: &Frame<'_>, button: &Button, class: &str) -> Markup {
    let class = if button.chosen {
        format!("btn {class} on")
    } else {
        format!("btn {class}")
    };
    if let Action::Go { to } = &button.action {
        return html! {
            a class=(class) href=(address(to)) aria-current=[button.chosen.then_some("true")] {
                (face(button))
            }
        };
    }
    html! {
        form class="tap" method="post" action="/act" {
            (hidden(frame, &button.action))
            button class=(class) aria-pressed=[button.chosen.then_some("true")] { (face(button)) }
        }
    }
}

fn face(button: &Button) -> Markup {
    html! {
        @if let Some(kind) = button.ladder { (ladder::draw(kind, TALL)) }
        span class="label" {
            (button.label)
            @if let Some(note) = &button.note { small { (note) } }
        }
    }
}

fn hidden(frame: &Frame<'_>, action: &Action) -> Markup {
    html! {
        input type="hidden" name="at" value=(frame.place.to_string());
        input type="hidden" name="action" value=(json(action));
    }
}

fn json<T: serde::Serialize>(value: &T) -> String {
    serde_json::to_string(value).unwrap_or_default()
}

/// A form with its fields. Half-typed words are kept as they are typed.
pub(crate) fn form(frame: &Frame<'_>, form: &Form, class: &str) -> Markup {
    let action = Action::Submit {
        form: form.form.clone(),
        values: Vec::new(),
    };
    html! {
        form id=(anchor(form)) class=(class) method="post" action="/act" data-form=(json(&form.form)) {
            (hidden(frame, &action))
            @for one in &form.fields { (field(one, &json(&form.form))) }
            button class="btn main" { span class="label" { (form.submit) } }
        }
    }
}

fn field(field: &Field, form: &str) -> Markup {
    let id = format!("{}-{}", field.name, short(form));
    html! {
        p class="field" {
            label for=(id) { (field.label) }
            @match &field.kind {
                FieldKind::Words => textarea id=(id) name=(field.name) rows="3" { (field.value) },
                FieldKind::OneOf { choices } => select id=(id) name=(field.name) {
                    @for choice in choices {
                        option value=(choice.value) selected[choice.value == field.value] {
                            (choice.label)
                        }
                    }
                },
                FieldKind::Line | FieldKind::Inclination => input id=(id) name=(field.name) type="text" value=(field.value) autocomplete="off";,
                FieldKind::Phone => input id=(id) name=(field.name) type="tel" value=(field.value) autocomplete="off";,
                FieldKind::Position { here, failed } => {
                    input id=(id) name=(field.name) type="text" value=(field.value) autocomplete="off";
                    button type="button" class="btn here" data-here=(id) data-failed=(failed) hidden { (here) }
                    span class="note" role="status" {}
                },
                FieldKind::Day => input id=(id) name=(field.name) type="date" value=(field.value);,
            }
        }
    }
}

/// A short name for a form, the same on every drawing, to tell the fields of one page apart (FNV-1a).
fn short(text: &str) -> String {
    let hash = text.bytes().fold(0xcbf2_9ce4_8422_2325_u64, |hash, byte| {
        (hash ^ u64::from(byte)).wrapping_mul(0x0100_0000_01b3)
    });
    format!("{hash:x}")
}

/// A form behind its title: opened with a tap.
pub(crate) fn folded(frame: &Frame<'_>, one: &Form) -> Markup {
    html! {
        details class="fold" open[frame.refused == Some(&one.form)] {
            summary class="btn" { span class="label" { (one.title) } }
            (form(frame, one, "fields"))
        }
    }
}

/// The name of a form's fields on a page, to lead to them.
pub(crate) fn anchor(one: &Form) -> String {
    format!("form-{}", short(&json(&one.form)))
}

/// A list of rows.
pub(crate) fn rows(rows: &[Row]) -> Markup {
    html! {
        ul class="rows" {
            @for one in rows { li { (row(one)) } }
        }
    }
}

fn row(row: &Row) -> Markup {
    let inside = html! {
        @if let Some(kind) = row.ladder { (ladder::draw(kind, TALL)) }
        span class="label" {
            strong { (row.title) }
            @if !row.says.is_empty() { span class="note" { (row.says) } }
        }
    };
    html! {
        @match &row.action {
            Some(Action::Go { to }) => a class="row" href=(address(to)) { (inside) },
            _ => div class="row" { (inside) },
        }
    }
}

/// The shutter: a picture by camera or file.
pub(crate) fn shutter(frame: &Frame<'_>, shutter: &Shutter) -> Markup {
    html! {
        form class="tap shutter" method="post" action="/shoot" enctype="multipart/form-data" {
            input type="hidden" name="at" value=(frame.place.to_string());
            input type="hidden" name="shutter" value=(json(shutter));
            label class="btn main" {
                span class="label" { (shutter.label) }
                input type="file" name="picture" accept="image/*" capture="environment" required;
            }
            noscript { button class="btn" { span class="label" { (shutter.keep) } } }
        }
    }
}

/// A picture.
pub(crate) fn picture(picture: &Picture) -> Markup {
    html! {
        a class="picture" href=(format!("/photo/{}/whole", picture.photo)) {
            img src=(format!("/photo/{}", picture.photo)) alt=(picture.alt) loading="lazy";
        }
    }
}

/// A picture with what it shows under it, for where two stand side by side.
pub(crate) fn named_picture(one: &Picture) -> Markup {
    html! {
        figure {
            (picture(one))
            figcaption aria-hidden="true" { (one.alt) }
        }
    }
}
