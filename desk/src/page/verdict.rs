//! Verdict: read in time.

use super::{Frame, block, layout};
use maud::{Markup, html};
use screens::{StepBlock, Verdict, WHY_FIRST};

pub(crate) fn draw(frame: &Frame<'_>, state: &Verdict) -> Markup {
    let body = html! {
        @if state.structures.len() > 1 {
            div class="tabs" {
                @for one in &state.structures { (block::button(frame, one, "")) }
            }
        }
        @for step in &state.steps {
            section class="when" {
                h2 { (step.when) }
                p class="big" { (step.what) }
                @if let Some(until) = &step.until { p class="until" { (until) } }
                @if !step.tasks.is_empty() {
                    ul class="tasks" { @for task in &step.tasks { li { (task) } } }
                }
                (first_and_more(step))
            }
        }
        @for refused in &state.refused {
            section class="refused" {
                h2 { (refused.label) }
                p class="big" { del { (refused.what) } }
                (why(&refused.why))
            }
        }
        @if !state.look.is_empty() {
            section class="look" {
                h2 { (state.look_title) }
                (block::rows(&state.look))
                @if let Some(turns) = &state.turns_to { p { (turns) } }
            }
        }
        @if !state.cautions.is_empty() {
            section class="cautions" {
                h2 { (state.cautions_title) }
                ul { @for caution in &state.cautions { li { (caution) } } }
            }
        }
        @if !state.limits.is_empty() {
            ul class="limits" { @for limit in &state.limits { li { (limit) } } }
        }
        @if !state.unseen.is_empty() {
            details class="fold" {
                summary class="btn" { span class="label" { (state.unseen_title) } }
                ul class="facts" { @for one in &state.unseen { li { (one) } } }
            }
        }
    };
    let hand = html! {
        div class="three-doors" {
            (block::button(frame, &state.back, ""))
            (block::button(frame, &state.offer, ""))
            (block::button(frame, &state.main, "main"))
        }
    };
    let head = layout::heading(&state.under, &state.title);
    layout::page(frame, &state.title, "verdict", &head, &body, &hand)
}

fn first_and_more(step: &StepBlock) -> Markup {
    let (first, more) = step.why.split_at(step.why.len().min(WHY_FIRST));
    html! {
        (why(first))
        @if let Some(title) = &step.why_more {
            details class="fold" {
                summary class="btn" { span class="label" { (title) } }
                (why(more))
            }
        }
    }
}

fn why(reasons: &[(String, String)]) -> Markup {
    html! {
        @for (says, source) in reasons {
            p class="why" { (says) " " span class="source" { (source) } }
        }
    }
}
