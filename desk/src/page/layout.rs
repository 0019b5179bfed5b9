//! The frame of every page.

use super::Frame;
use maud::{DOCTYPE, Markup, html};

/// A page: its heading, what it holds, and the bottom, which is the hand's.
pub(crate) fn page(
    frame: &Frame<'_>,
    title: &str,
    class: &str,
    head: &Markup,
    body: &Markup,
    hand: &Markup,
) -> Markup {
    html! {
        (DOCTYPE)
        html lang=(frame.language) {
            head {
                meta charset="utf-8";
                meta name="viewport" content="width=device-width, initial-scale=1, viewport-fit=cover";
                meta name="color-scheme" content="light dark";
                title { (title) }
                link rel="stylesheet" href="/style.css";
                link rel="icon" href="/mark.svg" type="image/svg+xml";
                script src="/page.js" defer {}
            }
            body class=(class) {
                header { (head) }
                div class="said" role="status" aria-live="polite" {
                    @if let Some(notice) = frame.notice { p class="notice" { (notice) } }
                }
                @if let Some(trouble) = frame.trouble {
                    div class="trouble" role="alert" { p { (trouble) } }
                }
                main { (body) }
                nav class="hand" { (hand) }
            }
        }
    }
}

/// The usual heading: a small line over a large one.
pub(crate) fn heading(under: &str, title: &str) -> Markup {
    html! {
        @if !under.is_empty() { p class="under" { (under) } }
        h1 { (title) }
    }
}

/// A page that leads nowhere: what went wrong, and the way back.
pub(crate) fn lost(frame: &Frame<'_>) -> Markup {
    let hand = html! { a class="btn main" href="/" { span class="label" { "Ladderbook" } } };
    page(
        frame,
        "Ladderbook",
        "lost",
        &heading("", "Ladderbook"),
        &html! {},
        &hand,
    )
}
