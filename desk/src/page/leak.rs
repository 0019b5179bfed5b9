//! Leak: the suspects, the likeliest first.

use super::{Frame, block, layout};
use maud::{Markup, html};
use screens::{Leak, Suspect};

pub(crate) fn draw(frame: &Frame<'_>, state: &Leak) -> Markup {
    let body = html! {
        p class="say" { (state.how) }
        (block::form(frame, &state.ask, "fields"))
        @if let Some(plan) = &state.plan { (super::roof::picture(plan)) }
        @if !state.suspects.is_empty() {
            h2 id="suspects" { (state.suspects_title) }
            @for one in &state.suspects { (suspect(one)) }
        }
        @if let Some(caution) = &state.caution { p class="danger" { (caution) } }
    };
    let hand = html! { (block::button(frame, &state.back, "")) };
    let head = layout::heading(&state.under, &state.title);
    layout::page(frame, &state.title, "leak", &head, &body, &hand)
}

fn suspect(one: &Suspect) -> Markup {
    html! {
        section class="suspect" {
            (block::rows(std::slice::from_ref(&one.row)))
            ul class="facts" { @for why in &one.why { li { (why) } } }
        }
    }
}
