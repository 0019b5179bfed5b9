//! Leak: the suspects, the likeliest first.

use super::{Frame, block, layout};
use maud::{Markup, html};
use screens::{Leak, Suspect};

pub(crate) fn draw(frame: &Frame<'_>, state: &Leak) -> Markup {
    let body = html! {
        @if let Some(how) = &state.how { p class="say" { (how) } }
        @if let Some(ask) = &state.ask { (block::form(frame, ask, "fields")) }
        @if let Some(plan) = &state.plan { (super::roof::picture(plan)) }
        @if !state.suspects.is_empty() {
            h2 id="suspects" { (state.suspects_title) }
            @for one in &state.suspects { (suspect(one)) }
        }
        @if let Some(caution) = &state.caution { p class="danger" { (caution) } }
        @if let Some(again) = &state.again { (block::folded(frame, again)) }
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
