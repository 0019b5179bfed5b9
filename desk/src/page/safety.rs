//! Safety.

use super::{Frame, block, layout};
use maud::{Markup, html};
use screens::{LadderCheck, Safety};

pub(crate) fn draw(frame: &Frame<'_>, state: &Safety) -> Markup {
    let body = html! {
        @for danger in &state.dangers { p class="against" { (danger) } }
        @for check in &state.checks {
            div class="check" role="group" aria-label=(check.asks) {
                p { (check.asks) }
                (block::button(frame, &check.yes, ""))
                (block::button(frame, &check.no, ""))
            }
        }
        h2 { (state.sky_title) }
        div class="choices" {
            @for one in &state.sky { (block::button(frame, one, "")) }
        }
        (block::folded(frame, &state.temperature))
        (ladder(frame, &state.ladder))
        h2 { (state.reach_title) }
        @for reach in &state.reach {
            h3 { (reach.structure) }
            div class="choices" {
                @for way in &reach.ways { (block::button(frame, way, "")) }
            }
        }
        p class="say" { (state.always) }
    };
    let hand = html! {
        @if !state.stops.is_empty() {
            ul class="stops-now" {
                @for stop in &state.stops { li { strong { (stop.title) } " " span class="note" { (stop.says) } } }
            }
        }
        div class="one-two" {
            (block::button(frame, &state.back, ""))
            (block::button(frame, &state.main, "main"))
        }
    };
    let head = layout::heading(&state.address, &state.title);
    layout::page(frame, &state.title, "safety", &head, &body, &hand)
}

/// The caution first, then what the rule says, then what to measure.
fn ladder(frame: &Frame<'_>, check: &LadderCheck) -> Markup {
    html! {
        p class="say" { (check.caution) }
        @if !check.says.is_empty() {
            ul class="facts" { @for says in &check.says { li { (says) } } }
        }
        (block::folded(frame, &check.form))
    }
}
