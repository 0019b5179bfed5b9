//! Then and now.

use super::{Frame, block, ladder, layout};
use maud::{Markup, html};
use screens::{Changed, ThenAndNow};

pub(crate) fn draw(frame: &Frame<'_>, state: &ThenAndNow) -> Markup {
    let body = html! {
        @for one in &state.changed { (changed(frame, one)) }
        @if let Some(quiet) = &state.quiet { p class="say" { (quiet) } }
    };
    let hand = html! {
        div class="one-two" {
            (block::button(frame, &state.back, ""))
            (block::button(frame, &state.main, "main"))
        }
    };
    let head = layout::heading(&state.under, &state.title);
    layout::page(frame, &state.title, "then-and-now", &head, &body, &hand)
}

fn changed(frame: &Frame<'_>, one: &Changed) -> Markup {
    html! {
        section class="changed" {
            div class="ladders" {
                @if let Some(then) = one.then {
                    (ladder::draw(then, 46.0))
                    span class="to" aria-hidden="true" { "→" }
                }
                (ladder::draw(one.now, 46.0))
            }
            div class="tells" {
                h2 { (one.part) }
                p class="became" { (one.became) }
                @for says in &one.says { p class="note" { (says) } }
            }
            @if one.picture_then.is_some() || one.picture_now.is_some() {
                div class="pictures" {
                    @if let Some(picture) = &one.picture_then { (block::named_picture(picture)) }
                    @if let Some(picture) = &one.picture_now { (block::named_picture(picture)) }
                }
            }
            @if let Some(correct) = &one.correct { (block::folded(frame, correct)) }
        }
    }
}
