//! Property.

use super::{Frame, block, layout};
use maud::{Markup, html};
use screens::{Property, Twin};

pub(crate) fn draw(frame: &Frame<'_>, state: &Property) -> Markup {
    let body = html! {
        @for form in &state.place { (block::folded(frame, form)) }
        @if !state.also.is_empty() {
            h2 { (state.also_title) }
            (block::rows(&state.also))
        }
        h2 { (state.people_title) }
        @for form in &state.people { (block::folded(frame, form)) }
        h2 { (state.structures_title) }
        @for form in &state.structures { (block::folded(frame, form)) }
        h2 id="same" { (state.same_title) }
        @for twin in &state.joined { (row(frame, twin)) }
        (block::form(frame, &state.same, "search"))
        @if let Some(none) = &state.none { p class="say" { (none) } }
        @for twin in &state.found { (row(frame, twin)) }
        h2 { (state.erase.title) }
        p class="note" { (state.erase_says) }
        (block::folded(frame, &state.erase))
    };
    let hand = html! { (block::button(frame, &state.back, "")) };
    let head = layout::heading(&state.address, &state.title);
    layout::page(frame, &state.title, "property", &head, &body, &hand)
}

fn row(frame: &Frame<'_>, twin: &Twin) -> Markup {
    html! {
        div class="spot" {
            p class="label" { strong { (twin.row.title) } span class="note" { (twin.row.says) } }
            (block::button(frame, &twin.tap, ""))
        }
    }
}
