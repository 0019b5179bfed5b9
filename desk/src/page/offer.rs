//! Offer: what it costs, in order of time.

use super::{Frame, block, layout};
use maud::{Markup, html};
use screens::{CourseBlock, Offer};

pub(crate) fn draw(frame: &Frame<'_>, state: &Offer) -> Markup {
    let body = html! {
        p class="say" { (state.put) }
        @if let Some(trouble) = &state.trouble { p class="against" { (trouble) } }
        @for course in &state.courses { (one(course)) }
        @for form in &state.nevertheless { (block::folded(frame, form)) }
        @if let Some(form) = &state.worksheet { (block::folded(frame, form)) }
        h2 { (state.takes_title) }
        (block::rows(&state.takes))
        @if !state.weighs.is_empty() {
            h2 { (state.weighs_title) }
            ul class="facts" { @for one in &state.weighs { li { (one) } } }
        }
        div class="doors" { (block::button(frame, &state.roof, "")) }
    };
    let hand = html! {
        div class="one-two" {
            (block::button(frame, &state.back, ""))
            @if let Some(main) = &state.main { (block::button(frame, main, "main")) }
        }
    };
    let head = layout::heading(&state.under, &state.title);
    layout::page(frame, &state.title, "offer", &head, &body, &hand)
}

fn one(course: &CourseBlock) -> Markup {
    html! {
        section class="when" {
            h2 { (course.when) }
            p class="big" { (course.what) }
            @if let Some(until) = &course.until { p class="until" { (until) } }
            @if let Some(price) = &course.price { p class="price" { (price) } }
            @for says in &course.unpriced { p class="against" { (says) } }
            @for says in &course.beside { p class="note" { (says) } }
            @if !course.includes.is_empty() {
                h3 { (course.includes_title) }
                ul class="tasks" { @for line in &course.includes { li { (line) } } }
            }
            @if !course.leaves.is_empty() {
                details class="fold" {
                    summary class="btn" { span class="label" { (course.leaves_title) } }
                    ul class="tasks" { @for line in &course.leaves { li { (line) } } }
                }
            }
            details class="fold" {
                summary class="btn" { span class="label" { (course.made_title) } }
                table class="sums" {
                    @for (what, amount) in &course.made { tr { th scope="row" { (what) } td { (amount) } } }
                }
            }
        }
    }
}
