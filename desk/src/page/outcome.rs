//! Outcome.

use super::{Frame, block, layout};
use maud::{Markup, html};
use screens::Outcome;

pub(crate) fn draw(frame: &Frame<'_>, state: &Outcome) -> Markup {
    let body = html! {
        h2 { (state.record.title) }
        (block::form(frame, &state.record, "fields"))
        @if !state.told.is_empty() { (block::rows(&state.told)) }
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
