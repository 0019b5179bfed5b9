//! Letter.

use super::{Frame, block, layout};
use maud::{Markup, html};
use screens::Letter;

pub(crate) fn draw(frame: &Frame<'_>, state: &Letter) -> Markup {
    let body = html! {
        @if let Some(first) = &state.first { p class="against" { (first) } }
        div class="choices" {
            @for act in &state.acts { (block::button(frame, act, "")) }
        }
        @if !state.sent.is_empty() {
            h2 { (state.sent_title) }
            @for sent in &state.sent {
                section class="sent" {
                    h3 { (sent.title) }
                    @if let Some(overtaken) = &sent.overtaken { p class="against" { (overtaken) } }
                    p class="quoted" { (sent.text) }
                    a class="btn" href=(format!("/paper/{}", sent.letter)) {
                        span class="label" { (sent.open) }
                    }
                }
            }
        }
        h2 { (state.preview_title) }
        dl class="lines" {
            @for (question, says) in &state.preview {
                div { dt { (question) } @for line in says { dd { (line) } } }
            }
        }
    };
    let hand = html! {
        div class="one-two" {
            (block::button(frame, &state.back, ""))
            (block::button(frame, &state.main, "main"))
        }
    };
    let head = layout::heading(&state.under, &state.title);
    layout::page(frame, &state.title, "letter", &head, &body, &hand)
}
