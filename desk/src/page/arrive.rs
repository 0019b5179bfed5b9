//! Arrive.

use super::{Frame, block, layout};
use maud::{Markup, html};
use screens::Arrive;

pub(crate) fn draw(frame: &Frame<'_>, state: &Arrive) -> Markup {
    let body = html! {
        (block::form(frame, &state.search, "search"))
        @if let Some(none) = &state.none { p class="say" { (none) } }
        @if !state.found.is_empty() { (block::rows(&state.found)) }
        @if let Some(add) = &state.add { (block::folded(frame, add)) }
        @if !state.open.is_empty() {
            h2 { (state.open_title) }
            (block::rows(&state.open))
        }
        @if !state.today.is_empty() {
            h2 { (state.today_title) }
            (block::rows(&state.today))
        }
    };
    let hand = html! {
        div class="two" {
            @for door in &state.doors { (block::button(frame, door, "")) }
        }
    };
    let head = layout::heading(&state.firm, &state.title);
    layout::page(frame, &state.title, "arrive", &head, &body, &hand)
}
