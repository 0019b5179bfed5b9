//! The whole letter of 18 Teasel Row as snapshots, and what holds of every letter.

#![allow(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

mod made_up;

use letter::content::{Asks, Block, Content, Finding, SectionIs};
use letter::{compose, html, pdf, text};
use made_up::MadeUp;
use made_up::photo::{Drawn, Lost};
use trade::firm::Firm;
use trade::history::History;
use trade::ladder::Ladder;
use trade::mark::Condition;
use trade::verdict::{Source, Strength};
use trade::words::Said;

fn letter_of(made_up: &MadeUp) -> Content {
    compose(&made_up.material())
}

#[test]
fn the_tree_of_teasel_row() {
    let tree = serde_json::to_string_pretty(&letter_of(&made_up::teasel_row())).unwrap();
    insta::assert_snapshot!(tree);
}

#[test]
fn the_short_text_of_teasel_row() {
    insta::assert_snapshot!(text(&letter_of(&made_up::teasel_row())));
}

/// The page's elements without their words: those stand in the tree.
#[test]
fn the_elements_of_teasel_row() {
    let page = html(&letter_of(&made_up::teasel_row()), &Lost);
    let body = page.split_once("<body>").unwrap().1;
    let mut depth = 0;
    let mut elements = String::new();
    for tag in body
        .split('<')
        .skip(1)
        .map(|tag| tag.split('>').next().unwrap())
    {
        if tag.starts_with('/') {
            depth = usize::saturating_sub(depth, 1);
            continue;
        }
        if !tag.starts_with("path") {
            elements.push_str(&"  ".repeat(depth));
            elements.push_str(tag);
            elements.push('\n');
        }
        depth += usize::from(!tag.starts_with("br"));
    }
    insta::assert_snapshot!(elements);
}

#[test]
fn the_same_letter_is_the_same_bytes() {
    let made_up = made_up::teasel_row();
    let pictures = Drawn::new(800, 600, 1);
    let draw = || {
        let content = letter_of(&made_up);
        (
            pdf(&content, &pictures).unwrap(),
            html(&content, &pictures),
            text(&content),
        )
    };
    assert!(draw() == draw());
}

#[test]
fn the_page_needs_nothing_from_elsewhere() {
    let page = html(&letter_of(&made_up::teasel_row()), &Drawn::new(800, 600, 1));
    assert!(page.contains("<html lang=\"en\">"));
    assert!(
        !page.contains("<script")
            && !page.contains("http:")
            && !page.contains("https:")
            && !page.contains("@import")
    );
    for source in page
        .split("src=\"")
        .skip(1)
        .chain(page.split("url(").skip(1))
    {
        assert!(source.starts_with("data:"), "{}", &source[..60]);
    }
    let pictures = page.matches("<img ").count();
    assert_eq!(pictures, page.matches(" alt=\"Picture of ").count());
    assert_eq!(
        pictures,
        letter_of(&made_up::teasel_row()).pictures().count()
    );
}

#[test]
fn a_picture_that_is_lost_leaves_a_line() {
    let content = letter_of(&made_up::teasel_row());
    let page = html(&content, &Lost);
    assert_eq!(
        page.matches(content.labels.no_picture.as_str()).count(),
        content.pictures().count()
    );
}

#[test]
fn every_question_is_answered() {
    use Asks::{Advice, Lasting, Leaking, NotSeen, Patch, Permit, Waiting, Warranty, Wood, Wrong};
    let content = letter_of(&made_up::teasel_row());
    let asked: Vec<Asks> = content.answers.iter().map(|answer| answer.asks).collect();
    assert_eq!(
        asked,
        [
            Leaking, Wrong, Advice, Waiting, Patch, Lasting, Wood, Permit, Warranty, NotSeen
        ]
    );
    for answer in &content.answers {
        assert!(!answer.says.is_empty(), "{:?}", answer.asks);
    }
}

#[test]
fn a_property_of_which_nothing_is_known_still_makes_a_letter() {
    let mut made_up = made_up::teasel_row();
    made_up.firm = Firm::default();
    made_up.history = History::of(made_up.history.property.clone());
    made_up.history.property.people.clear();
    made_up.threads.clear();
    made_up.verdicts.clear();
    let content = letter_of(&made_up);
    assert!(pdf(&content, &Lost).unwrap().starts_with(b"%PDF"));
    assert!(
        content.section(SectionIs::Findings).is_none()
            && content.section(SectionIs::Changes).is_none()
    );
}

/// Judgement's first rule for a letter: nothing not seen is ever called sound.
#[test]
fn nothing_not_seen_is_called_sound() {
    let made_up = made_up::teasel_row();
    let content = letter_of(&made_up);
    let history = &made_up.history;
    let unseen = history
        .marks
        .iter()
        .filter(|mark| matches!(mark.condition, Condition::NotSeen { .. }));
    let mut count = 0;
    for mark in unseen {
        let part = history.part(mark.part).unwrap();
        let letter = part
            .slope
            .and_then(|slope| history.slope(slope))
            .map(|slope| slope.letter);
        let address = letter.map_or_else(
            || part.number.to_string(),
            |letter| format!("{letter} {}", part.number),
        );
        for (told, ladder) in rated(&content).iter().filter(|(told, _)| *told == address) {
            assert_eq!(*ladder, Ladder::NotSeen, "{told}");
            count += 1;
        }
    }
    assert!(
        count >= 4,
        "two parts, each among the changes and the findings"
    );
}

/// Every part with the ladder it has now.
fn rated(content: &Content) -> Vec<(String, Ladder)> {
    let mut rated = Vec::new();
    for block in content.sections.iter().flat_map(|section| &section.blocks) {
        match block {
            Block::Change(it) => rated.push((it.part.address.to_string(), it.now.ladder)),
            Block::Finding(it) => rated.push((it.part.address.to_string(), it.rated.ladder)),
            Block::Roster { parts } => {
                rated.extend(
                    parts
                        .iter()
                        .map(|it| (it.part.address.to_string(), it.rated.ladder)),
                );
            }
            _ => {}
        }
    }
    rated
}

fn findings(content: &Content) -> impl Iterator<Item = &Finding> {
    content
        .sections
        .iter()
        .flat_map(|section| &section.blocks)
        .filter_map(|block| match block {
            Block::Finding(finding) => Some(finding),
            _ => None,
        })
}

#[test]
fn a_correction_is_shown_beside_its_finding() {
    let content = letter_of(&made_up::teasel_row());
    let corrected: Vec<&str> = findings(&content)
        .filter_map(|finding| finding.corrected.as_ref())
        .map(letter::plain::Plain::as_str)
        .collect();
    assert_eq!(
        corrected,
        ["Corrected on 7 May 2025: it was the front gutter, not the rear one"]
    );
}

#[test]
fn until_the_firm_fills_it_in_the_letter_is_no_contract() {
    let mut made_up = made_up::teasel_row();
    let decision = |made_up: &MadeUp| {
        let content = letter_of(made_up);
        serde_json::to_string(content.section(SectionIs::Decision).unwrap()).unwrap()
    };
    let without = decision(&made_up);
    assert!(without.contains("It is no contract") && without.contains("16 CFR 429"));
    made_up.firm.contract = "Terms of Lantern Street.\nSecond paragraph.".to_owned();
    made_up.firm.notices = "You may cancel.".to_owned();
    let with = decision(&made_up);
    assert!(!with.contains("It is no contract") && !with.contains("16 CFR 429"));
    for own in [
        "Terms of Lantern Street.",
        "Second paragraph.",
        "You may cancel.",
    ] {
        assert!(with.contains(own), "{own}");
    }
}

#[test]
fn what_stops_work_is_cautioned_first() {
    let mut made_up = made_up::teasel_row();
    let mut stop = made_up.verdicts[0].cautions[0].clone();
    stop.says = Said::verbatim("Do not touch it.");
    stop.source = Source::Practice;
    stop.strength = Strength::Forbids;
    made_up.verdicts[1].cautions.push(stop);
    let content = letter_of(&made_up);
    let Some(Block::Reasons { reasons }) =
        content.section(SectionIs::Cautions).unwrap().blocks.first()
    else {
        panic!("no cautions");
    };
    assert_eq!(reasons[0].says.as_str(), "Do not touch it.");
    assert_eq!(reasons.len(), 2);
}

#[test]
fn one_structure_alone_is_not_named_in_every_line() {
    let mut made_up = made_up::teasel_row();
    made_up.verdicts.pop();
    made_up
        .history
        .marks
        .retain(|mark| mark.part < made_up::part_id(20));
    let content = letter_of(&made_up);
    let advice = serde_json::to_string(content.answer(Asks::Advice).unwrap()).unwrap();
    assert!(
        advice.contains("\"Now:\"") && !advice.contains("house"),
        "{advice}"
    );
}
