//! A measured roof and what is offered for it, drawn for the page.

use super::blocks::reasons;
use crate::content::{Drawn, Labels, Offered, Table};
use maud::{Markup, PreEscaped, html as page};
use trade::drawing::svg::{Colours, svg};

/// A drawing, inside the page: its words can be searched, and its title and what it tells can be heard.
pub fn drawing(it: &Drawn) -> Markup {
    let drawn = svg(
        &it.drawing,
        it.title.as_str(),
        it.alt.as_str(),
        Colours::SHEET,
    );
    page! { figure.drawing { (PreEscaped(drawn)) } }
}

/// Rows under a head.
pub fn table(it: &Table) -> Markup {
    page! {
        table {
            thead { tr { @for head in &it.head { th scope="col" { (head) } } } }
            tbody {
                @for row in &it.rows {
                    tr {
                        th scope="row" { (row.name) @if let Some(note) = &row.note { small { (note) } } }
                        @for cell in &row.cells { td { (cell) } }
                    }
                }
            }
        }
    }
}

/// A course that is offered.
pub fn offered(it: &Offered, labels: &Labels) -> Markup {
    page! {
        div.offered {
            h3 { (it.course) }
            @if let Some(price) = &it.price { p.price { (price) } }
            @for says in it.unpriced.iter().chain(&it.beside) { p { (says) } }
            @if !it.against.is_empty() { p { strong { (labels.against) } } (reasons(&it.against)) }
            @for told in &it.told {
                p { strong { (told.lead) } }
                ul { @for says in &told.lines { li { (says) } } }
            }
        }
    }
}
