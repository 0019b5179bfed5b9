//! Tray.

use super::{Frame, block, layout};
use maud::{Markup, html};
use screens::{Loose, Tray};

pub(crate) fn draw(frame: &Frame<'_>, state: &Tray) -> Markup {
    let body = html! {
        @if let Some(empty) = &state.empty { p class="say" { (empty) } }
        @for one in &state.loose { (loose(frame, one, &state.tie_title)) }
        @if !state.half.is_empty() {
            h2 { (state.half_title) }
            (block::rows(&state.half))
        }
    };
    let hand = html! {
        div class="one-two" {
            (block::button(frame, &state.back, ""))
            (block::shutter(frame, &state.shutter))
        }
    };
    let head = layout::heading(&state.under, &state.title);
    layout::page(frame, &state.title, "tray", &head, &body, &hand)
}

fn loose(frame: &Frame<'_>, one: &Loose, tie_title: &str) -> Markup {
    html! {
        section class="loose" {
            @if let Some(picture) = &one.picture { (block::picture(picture)) }
            p class="say" { (one.words) }
            @if let Some(caption) = &one.caption { (block::form(frame, caption, "fields")) }
            details class="fold" {
                summary class="btn" { span class="label" { (tie_title) } }
                div class="choices" {
                    @for tie in &one.tie { (block::button(frame, tie, "")) }
                }
            }
        }
    }
}
