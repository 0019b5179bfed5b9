//! Settings.

use super::{Frame, block, layout};
use maud::{Markup, html};
use screens::Settings;

pub(crate) fn draw(frame: &Frame<'_>, state: &Settings) -> Markup {
    let body = html! {
        @for form in &state.forms {
            h2 { (form.title) }
            (block::form(frame, form, "fields"))
        }
    };
    let hand = html! { (block::button(frame, &state.back, "")) };
    let head = layout::heading("", &state.title);
    layout::page(frame, &state.title, "settings", &head, &body, &hand)
}
