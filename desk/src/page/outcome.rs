//! Outcome.

use super::{Frame, block, layout};
use maud::{Markup, html};
use screens::{Outcome, Told};

pub(crate) fn draw(frame: &Frame<'_>, state: &Outcome) -> Markup {
    let body = html! {
        h2 { (state.record.title) }
        (block::form(frame, &state.record, "fields"))
        @for told in &state.told { (one(frame, told)) }
        h2 { (state.reminders_title) }
        @for (row, done) in &state.reminders {
            div class="spot" {
                p class="label" { strong { (row.title) } span class="note" { (row.says) } }
                (block::button(frame, done, ""))
            }
        }
        (block::folded(frame, &state.remind))
    };
    let hand = html! { (block::button(frame, &state.back, "")) };
    let head = layout::heading(&state.under, &state.title);
    layout::page(frame, &state.title, "outcome", &head, &body, &hand)
}

fn one(frame: &Frame<'_>, told: &Told) -> Markup {
    html! {
        section class="told" {
            (block::rows(std::slice::from_ref(&told.row)))
            @if !told.pictures.is_empty() {
                div class="pictures" { @for one in &told.pictures { (block::picture(one)) } }
            }
            @if let Some(shutter) = &told.shutter { (block::shutter(frame, shutter)) }
        }
    }
}
