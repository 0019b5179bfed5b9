//! Mark: one part.

use super::{Frame, block, ladder, layout};
use maud::{Markup, html};
use screens::{DefectRow, Mark};

pub(crate) fn draw(frame: &Frame<'_>, state: &Mark) -> Markup {
    let body = html! {
        @if let Some(then) = &state.then {
            div class="then-strip" {
                @if let Some(kind) = then.ladder { (ladder::draw(kind, 40.0)) }
                p { strong { (then.title) } span class="note" { (then.says) } }
            }
        }
        div class="rungs" {
            @for rung in &state.rungs { (block::button(frame, rung, "rung")) }
        }
        @for row in &state.named { (named(frame, row)) }
        h2 { (state.defects_title) }
        div class="likely" {
            @for defect in &state.defects { (block::button(frame, defect, "wide")) }
        }
        h2 { (state.families_title) }
        div class="families" {
            @for family in &state.families { (block::button(frame, family, "")) }
        }
        @for question in &state.questions {
            div class="check three" role="group" aria-label=(question.asks) {
                p { (question.asks) }
                @for answer in &question.answers { (block::button(frame, answer, "")) }
            }
        }
        @if !state.seen.is_empty() {
            h2 { (state.seen_title) }
            div class="choices" {
                @for one in &state.seen { (block::button(frame, one, "")) }
            }
        }
        details class="fold" {
            summary class="btn" { span class="label" { (state.not_seen_title) } }
            div class="choices" {
                @for one in &state.not_seen { (block::button(frame, one, "")) }
            }
        }
        @if !state.facts.is_empty() {
            ul class="facts" { @for fact in &state.facts { li { (fact) } } }
        }
        @if !state.pictures.is_empty() {
            div class="pictures" { @for one in &state.pictures { (block::picture(one)) } }
        }
        @for form in &state.forms { (block::folded(frame, form)) }
    };
    let hand = html! {
        div class="shoot-row" {
            (block::button(frame, &state.back, ""))
            (block::shutter(frame, &state.shutter))
            (block::button(frame, &state.undo, ""))
        }
    };
    let head = layout::heading(&state.under, &state.title);
    layout::page(frame, &state.under, "mark", &head, &body, &hand)
}

fn named(frame: &Frame<'_>, row: &DefectRow) -> Markup {
    html! {
        section class="named" {
            h2 { (row.name) }
            p class="note" { (row.what) }
            p class="note" { (row.photo) }
            div class="choices" {
                @for one in &row.extents { (block::button(frame, one, "")) }
                (block::button(frame, &row.remove, ""))
            }
            @if !row.advise.is_empty() {
                details class="fold" {
                    summary class="btn" { span class="label" { (row.advise_title) } }
                    div class="likely" {
                        @for one in &row.advise { (block::button(frame, one, "wide")) }
                    }
                }
            }
        }
    }
}
