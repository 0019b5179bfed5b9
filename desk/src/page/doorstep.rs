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
        @for danger in &state.dangers { p class="danger" { (danger) } }
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
            @if let Some(title) = &state.look_more {
                details class="fold" {
                    summary class="btn" { span class="label" { (title) } }
                    (block::rows(&state.look_rest))
                }
            }
        }
        @if !state.lines.is_empty() {
            dl class="lines" {
                @for line in &state.lines {
                    div { dt { (line.title) } dd { (line.says) } }
                }
            }
        }
        @if let Some(open) = &state.open {
            h2 id="ask" { (open.title) }
            (block::form(frame, open, "fields"))
        }
        div class="doors" {
            @for door in state.doors.iter().skip(1) { (block::button(frame, door, "")) }
        }
    };
    let hand = html! {
        div class="one-two" {
            @for door in state.doors.iter().take(1) { (block::button(frame, door, "")) }
            @if let Some(main) = &state.main { (block::button(frame, main, "main")) }
            @else if let Some(open) = &state.open {
                a class="btn main" href="#ask" { span class="label" { (open.title) } }
            }
        }
    };
    layout::page(frame, &state.address, "doorstep", &head, &body, &hand)
}
