//! Walk: one tall ladder, climbed from the bottom up.

use super::{Frame, block, ladder, layout};
use maud::{Markup, html};
use screens::{Action, Here, SpotRow, StopRow, Walk};

pub(crate) fn draw(frame: &Frame<'_>, state: &Walk) -> Markup {
    let body = html! {
        @if state.structures.len() > 1 {
            div class="tabs" {
                @for one in &state.structures { (block::button(frame, one, "")) }
            }
        }
        ol class="climb" reversed {
            @for stop in state.stops.iter().rev() {
                (rung(stop, state.here.as_ref().filter(|_| stop.here).map(|here| here_block(frame, here)).as_ref()))
            }
        }
        (block::folded(frame, &state.say))
        details class="fold" {
            summary class="btn" { span class="label" { (state.more_title) } }
            div class="choices" {
                @for one in &state.more { (block::button(frame, one, "")) }
            }
        }
        details class="fold" {
            summary class="btn" { span class="label" { (state.close_title) } }
            div class="choices" {
                @for one in &state.close { (block::button(frame, one, "")) }
            }
        }
    };
    let hand = html! {
        div class="shoot-row" {
            a class="btn" href=(format!("#{}", block::anchor(&state.say))) {
                span class="label" { (state.say.title) }
            }
            (block::shutter(frame, &state.shutter))
            (block::button(frame, &state.undo, ""))
        }
    };
    let head = layout::heading(&state.under, &state.title);
    layout::page(frame, &state.title, "walk", &head, &body, &hand)
}

/// A rung of the tall ladder; the present one holds what is to be looked at there.
fn rung(stop: &StopRow, here: Option<&Markup>) -> Markup {
    let class = match (stop.done, stop.here) {
        (_, true) => "stop here",
        (true, false) => "stop done",
        (false, false) => "stop open",
    };
    html! {
        li class=(class) {
            div class="rung" {
                i {}
                @if let Action::Go { to } = &stop.go {
                    a href=(block::address(to)) aria-current=[stop.here.then_some("step")] {
                        b { (stop.name) }
                        span { (stop.says) }
                    }
                }
            }
            @if let Some(here) = here { (here) }
        }
    }
}

fn here_block(frame: &Frame<'_>, here: &Here) -> Markup {
    html! {
        section class="here" id="here" {
            h2 { (here.title) }
            @for spot in &here.spots { (spot_row(frame, spot)) }
            details class="fold" {
                summary class="btn" { span class="label" { (here.not_seen_title) } }
                div class="choices" {
                    @for one in &here.not_seen { (block::button(frame, one, "")) }
                }
            }
            (block::folded(frame, &here.add))
            @if let Some(next) = &here.next { div class="next" { (block::button(frame, next, "main")) } }
        }
    }
}

fn spot_row(frame: &Frame<'_>, spot: &SpotRow) -> Markup {
    html! {
        div class="spot" role="group" aria-label=(spot.name) {
            p class="label" {
                (ladder::draw(spot.ladder, 52.0))
                span {
                    strong { (spot.name) }
                    @match &spot.look_again {
                        Some(again) => span class="again" { (again) },
                        None => span class="note" { (spot.says) },
                    }
                }
            }
            (block::button(frame, &spot.sound, ""))
            (block::button(frame, &spot.mark, ""))
        }
    }
}
