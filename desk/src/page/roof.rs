//! Roof: the plan, and measuring it.

use super::{Frame, block, layout};
use maud::{Markup, PreEscaped, html};
use screens::{Drawn, EdgeRow, LaidRoof, Roof};

pub(crate) fn draw(frame: &Frame<'_>, state: &Roof) -> Markup {
    let body = html! {
        @if state.structures.len() > 1 {
            div class="tabs" {
                @for one in &state.structures { (block::button(frame, one, "")) }
            }
        }
        @if let Some(none) = &state.none { p class="say" { (none) } }
        @if let Some(plan) = &state.plan { (picture(plan)) }
        (block::rows(&state.numbers))
        @if !state.planes.is_empty() {
            h2 { (state.planes_title) }
            (block::rows(&state.planes))
            @if let Some(untied) = &state.untied { p class="say" { (untied) } }
            h2 { (state.lines_title) }
            (block::rows(&state.lines))
        }
        @if !state.edges.is_empty() {
            h2 { (state.edges_title) }
            @for edge in &state.edges { (one_edge(frame, edge)) }
        }
        @if !state.standing.is_empty() {
            h2 { (state.standing_title) }
            div class="choices" {
                @for one in &state.standing { (block::button(frame, one, "")) }
            }
        }
        @if !state.pitches.is_empty() {
            h2 { (state.pitches_title) }
            (block::rows(&state.pitches))
        }
        @if let Some(laid) = &state.laid { (as_laid(laid)) }
        h2 { (state.measure_title) }
        @for form in &state.forms { (block::folded(frame, form)) }
        @if !state.files.is_empty() {
            h2 { (state.files_title) }
            div class="choices" {
                @for (file, label) in &state.files {
                    a class="btn" href=(format!("/plan/{}/{}", state.structure, file.name())) download {
                        span class="label" { (label) }
                    }
                }
            }
        }
    };
    let hand = html! {
        div class="one-two" {
            (block::button(frame, &state.back, ""))
            (block::button(frame, &state.leak, "main"))
        }
    };
    let head = layout::heading(&state.under, &state.title);
    layout::page(frame, &state.title, "roof", &head, &body, &hand)
}

/// A drawing in the colours of the page.
pub(crate) fn picture(drawn: &Drawn) -> Markup {
    let svg = acts::measure::svg_of(&drawn.drawing, &drawn.title, &drawn.says);
    html! { figure class="plan" { (PreEscaped(svg)) } }
}

fn as_laid(laid: &LaidRoof) -> Markup {
    html! {
        details class="fold" {
            summary class="btn" { span class="label" { (laid.title) } }
            (picture(&laid.drawn))
            (block::rows(&laid.numbers))
        }
    }
}

fn one_edge(frame: &Frame<'_>, edge: &EdgeRow) -> Markup {
    html! {
        details class="fold" open[frame.refused == Some(&edge.form.form)] {
            summary class="btn" { span class="label" { (edge.name) } }
            div class="choices" { @for one in &edge.is { (block::button(frame, one, "")) } }
            h3 { (edge.form.title) }
            (block::form(frame, &edge.form, "fields"))
        }
    }
}
