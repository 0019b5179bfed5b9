//! Doorstep: a door plate.

use super::{Frame, block, layout};
use maud::{Markup, html};
use screens::Doorstep;

pub(crate) fn draw(frame: &Frame<'_>, state: &Doorstep) -> Markup {
    let head = html! {
        h1 class="plate" { (state.address) }
        p class="under" { (state.under) }
    };
    let body = html! {
        @if let Some(asked) = &state.asked {
            section class="asked" {
                h2 { (asked.title) }
                p class="big" { (asked.words) }
            }
        }
        @if let Some(then) = &state.then {
            section class="then" {
                h2 { (then.title) }
                p class="big" { (then.said) }
                @if let Some(contradicts) = &then.contradicts {
                    p class="against" { (contradicts) }
                }
                @for why in &then.why { p class="note" { (why) } }
            }
        }
        @if !state.look_again.is_empty() {
            h2 { (state.look_title) }
            (block::rows(&state.look_again))
        }
        @if !state.lines.is_empty() {
            dl class="lines" {
                @for line in &state.lines {
                    div { dt { (line.title) } dd { (line.says) } }
                }
            }
        }
        @if let Some(open) = &state.open {
            h2 { (open.title) }
            (block::form(frame, open, "fields"))
        }
    };
    let hand = html! {
        div class="doors" {
            @for door in &state.doors { (block::button(frame, door, "")) }
        }
        @if let Some(main) = &state.main { (block::button(frame, main, "main")) }
    };
    layout::page(frame, &state.address, "doorstep", &head, &body, &hand)
}
