//! The letter as one web page that needs nothing else: style, fonts and pictures are inside, and there is no script.

mod blocks;
mod roof;
mod style;

use crate::Pictures;
use crate::content::{Answer, Asks, Content, Line, Section};
use maud::{DOCTYPE, Markup, PreEscaped, html as page};

/// The letter as a web page. The same content and pictures give the same text.
///
/// A picture that is missing or can't be read leaves a line that says so. At no time is more than one original held.
pub fn html(content: &Content, pictures: &dyn Pictures) -> String {
    let markup = page! {
        (DOCTYPE)
        html lang=(content.language.tag()) {
            head {
                meta charset="utf-8";
                meta name="viewport" content="width=device-width, initial-scale=1";
                title { (content.title.as_str()) }
                style { (PreEscaped(style::sheet())) }
            }
            body { main { (head(content)) (first_page(content)) (rest(content, pictures)) } (foot(content)) }
        }
    };
    markup.into_string()
}

fn head(content: &Content) -> Markup {
    page! {
        div.letterhead {
            p { strong.firm { (content.letterhead.firm) } br; (joined(&content.letterhead.lines)) }
            p.date { (content.date) }
        }
        p { @for (at, line) in content.to.iter().enumerate() { @if at > 0 { br; } (line) } }
        h1 { (content.title) }
        @for line in &content.about { p { (line) } }
    }
}

fn joined(lines: &[crate::plain::Plain]) -> String {
    lines
        .iter()
        .map(crate::plain::Plain::as_str)
        .collect::<Vec<_>>()
        .join(" · ")
}

fn first_page(content: &Content) -> Markup {
    page! { div.answers { @for answer in &content.answers { (answered(answer)) } } }
}

fn answered(answer: &Answer) -> Markup {
    page! {
        section.answer.advice[answer.asks == Asks::Advice] {
            h2 { (answer.question) }
            div { @for says in &answer.says { p { (led(says)) } } }
        }
    }
}

fn rest(content: &Content, pictures: &dyn Pictures) -> Markup {
    page! { @for section in &content.sections { (one_section(content, section, pictures)) } }
}

fn one_section(content: &Content, section: &Section, pictures: &dyn Pictures) -> Markup {
    page! {
        section.part {
            h2 { (section.heading) }
            @for block in &section.blocks { (blocks::draw(content, block, pictures)) }
        }
    }
}

fn foot(content: &Content) -> Markup {
    page! { footer { p { (content.footer) } } }
}

/// A line with what leads it.
fn led(line: &Line) -> Markup {
    page! {
        @if let Some(lead) = &line.lead { strong { (lead) } " " }
        (line.says)
        @if let Some(price) = &line.price { " " strong.price { (price) } }
    }
}
