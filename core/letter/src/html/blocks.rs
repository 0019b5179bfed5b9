//! The blocks of a section, drawn for the page.

use super::{led, roof};
use crate::Pictures;
use crate::content::{
    Block, Change, Content, Finding, Line, PartLine, PartName, Picture, Rated, ReasonLine, Refused,
};
use crate::picture;
use crate::plain::Plain;
use maud::{Markup, html as page};
use trade::ladder::{HEIGHT, Ladder, WEIGHT, WIDTH};

/// One block.
pub fn draw(content: &Content, block: &Block, pictures: &dyn Pictures) -> Markup {
    match block {
        Block::Heading { says } => page! { h3 { (says) } },
        Block::Words { says } => page! { p { (says) } },
        Block::List { lines } => list(lines),
        Block::Drawing(it) => roof::drawing(it),
        Block::Table(it) => roof::table(it),
        Block::Offered(it) => roof::offered(it, &content.labels),
        Block::Change(it) => change(content, it, pictures),
        Block::Finding(it) => finding(content, it, pictures),
        Block::Roster { parts } => roster(parts),
        Block::Reasons { reasons: all } => reasons(all),
        Block::Refused(it) => refused(it),
        Block::Choices { choices: all } => choices(all),
        Block::Signatures { who, date } => signatures(who, date),
        Block::Own { paragraphs } => page! { @for says in paragraphs { p { (says) } } },
    }
}

fn list(lines: &[Line]) -> Markup {
    page! { ul { @for line in lines { li { (led(line)) } } } }
}

fn part_head(part: &PartName) -> Markup {
    page! { span.address { (part.address) } (part.name) }
}

fn rated(rated: &Rated, label: Option<&Plain>) -> Markup {
    page! {
        div.rated {
            @if let Some(label) = label { small { (label) } }
            (ladder(rated.ladder))
            (rated.word)
        }
    }
}

/// The ladder; its word always stands beside it, so that it is hidden from a screen reader.
fn ladder(ladder: Ladder) -> Markup {
    page! {
        svg viewBox=(format!("0 0 {WIDTH} {HEIGHT}")) aria-hidden="true" width=(WIDTH / 2.0) height=(HEIGHT / 2.0) {
            @for stroke in ladder.strokes() {
                @let [x1, y1] = stroke.from;
                @let [x2, y2] = stroke.to;
                @let way = match stroke.by {
                    Some([x, y]) => format!("M{x1} {y1}Q{x} {y} {x2} {y2}"),
                    None => format!("M{x1} {y1}L{x2} {y2}"),
                };
                path d=(way) fill="none" stroke="#000" stroke-width=(WEIGHT) stroke-linecap="round" {}
            }
        }
    }
}

fn change(content: &Content, it: &Change, pictures: &dyn Pictures) -> Markup {
    page! {
        div.item.twice {
            div.ladders { (rated(&it.then, Some(&content.labels.then))) (rated(&it.now, Some(&content.labels.now))) }
            div {
                h3.part-name { (part_head(&it.part)) }
                p { strong { (it.became) } }
                @for says in &it.says { p { (says) } }
            }
            (photos(content, &it.pictures, pictures))
        }
    }
}

fn finding(content: &Content, it: &Finding, pictures: &dyn Pictures) -> Markup {
    page! {
        div.item {
            (rated(&it.rated, None))
            div {
                h4.part-name { (part_head(&it.part)) }
                p { (it.seen) }
                @if let Some(words) = &it.words { p { (words) } }
                @for says in &it.measures { p { (says) } }
                @for defect in &it.defects {
                    p { strong { (defect.name) } }
                    @for says in &defect.says { p { (led(says)) } }
                }
                @for says in &it.remedies { p { (led(says)) } }
                @if let Some(corrected) = &it.corrected { p.corrected { (corrected) } }
            }
            (photos(content, &it.pictures, pictures))
        }
    }
}

fn photos(content: &Content, all: &[Picture], pictures: &dyn Pictures) -> Markup {
    page! {
        @if !all.is_empty() {
            div.pictures { @for one in all { (photo(content, one, pictures)) } }
        }
    }
}

fn photo(content: &Content, it: &Picture, pictures: &dyn Pictures) -> Markup {
    page! {
        figure {
            @match picture::shrunk(pictures, it) {
                Some(shrunk) => {
                    img src=(format!("data:image/jpeg;base64,{}", base64(&shrunk.jpeg))) alt=(it.alt)
                        width=(shrunk.width) height=(shrunk.height);
                }
                None => p.none { (content.labels.no_picture) },
            }
            figcaption.caption { (it.caption) }
        }
    }
}

fn roster(parts: &[PartLine]) -> Markup {
    page! {
        ul.roster {
            @for it in parts {
                li {
                    (ladder(it.rated.ladder))
                    span {
                        span.address { (it.part.address) } (it.part.name) ", " (it.rated.word)
                        @if let Some(says) = &it.says { ", " (says) }
                    }
                }
            }
        }
    }
}

/// Reasons, each with what it stands on.
pub fn reasons(all: &[ReasonLine]) -> Markup {
    page! {
        ul {
            @for it in all {
                li {
                    (it.says) " "
                    small {
                        "(" (it.source)
                        @for (at, part) in it.parts.iter().enumerate() { (if at == 0 { "; " } else { ", " }) (part) }
                        ")"
                    }
                }
            }
        }
    }
}

fn refused(it: &Refused) -> Markup {
    page! { div.refused { p { s { (it.course) } " " (it.how) } (reasons(&it.reasons)) } }
}

fn choices(all: &[Line]) -> Markup {
    page! { ul.choices { @for choice in all { li { span.tick {} span { (led(choice)) } } } } }
}

fn signatures(who: &[Plain], date: &Plain) -> Markup {
    page! { div.sign { @for one in who { div { (one) } div { (date) } } } }
}

/// Base64 with the standard alphabet and padding (RFC 4648, section 4).
pub fn base64(bytes: &[u8]) -> String {
    const ALPHABET: &[u8; 64] = b"ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
    let mut out = String::with_capacity(bytes.len().div_ceil(3) * 4);
    for chunk in bytes.chunks(3) {
        let three = [
            chunk[0],
            chunk.get(1).copied().unwrap_or(0),
            chunk.get(2).copied().unwrap_or(0),
        ];
        let all = u32::from_be_bytes([0, three[0], three[1], three[2]]);
        for at in 0..4 {
            let sextet = (all >> (18 - 6 * at)) & 63;
            out.push(if at <= chunk.len() {
                char::from(ALPHABET[sextet as usize])
            } else {
                '='
            });
        }
    }
    out
}

#[cfg(test)]
mod tests {
    use super::base64;

    #[test]
    fn base64_as_rfc_4648_section_10_has_it() {
        let cases = [
            ("", ""),
            ("f", "Zg=="),
            ("fo", "Zm8="),
            ("foo", "Zm9v"),
            ("foob", "Zm9vYg=="),
            ("foobar", "Zm9vYmFy"),
        ];
        for (bytes, text) in cases {
            assert_eq!(base64(bytes.as_bytes()), text);
        }
    }
}
