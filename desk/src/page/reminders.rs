//! Reminders.

use super::{Frame, block, layout};
use maud::{Markup, html};
use screens::{Action, Reminders};

pub(crate) fn draw(frame: &Frame<'_>, state: &Reminders) -> Markup {
    let body = html! {
        @if let Some(none) = &state.none { p class="say" { (none) } }
        @for (row, done) in &state.rows {
            div class="spot" {
                @if let Some(Action::Go { to }) = &row.action {
                    a class="label" href=(to.to_string()) {
                        strong { (row.title) }
                        span class="note" { (row.says) }
                    }
                }
                (block::button(frame, done, ""))
            }
        }
    };
    let hand = html! {
        div class="one-two" {
            (block::button(frame, &state.back, ""))
            a class="btn main" href="/calendar.ics" { span class="label" { (state.calendar) } }
        }
    };
    let head = layout::heading("", &state.title);
    layout::page(frame, &state.title, "reminders", &head, &body, &hand)
}
