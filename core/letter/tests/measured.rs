//! The measured roof in the letter: its plan, its numbers, what a new covering takes.

#![allow(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

mod made_up;

use letter::compose;
use letter::content::{Block, Content, Drawn, Section, SectionIs, Table};
use letter::{Roofed, html, pdf};
use made_up::photo::Lost;
use made_up::roof::{self, MadeRoof};
use std::collections::BTreeSet;
use trade::drawing::Drawing;
use trade::roof::LineKind;
use trade::takeoff::{Spread, Unit, amount_said};
use trade::words::{Language, Said, Words};

fn letter_with(roof: &MadeRoof) -> Content {
    compose(&made_up::teasel_row().with_roofs(&[roof.roofed()]))
}

fn plan_of(content: &Content) -> &Section {
    content.section(SectionIs::Plan).unwrap()
}

fn drawing(content: &Content) -> &Drawn {
    let mut blocks = plan_of(content).blocks.iter();
    blocks
        .find_map(|block| match block {
            Block::Drawing(drawn) => Some(drawn),
            _ => None,
        })
        .unwrap()
}

fn tables(content: &Content) -> Vec<&Table> {
    let blocks = plan_of(content).blocks.iter();
    let tables = blocks.filter_map(|block| match block {
        Block::Table(table) => Some(table),
        _ => None,
    });
    tables.collect()
}

fn english(said: &Said) -> String {
    Words::of(Language::English).say(said)
}

/// Without the drawing and the rows of tables: they are held to the roof below, and where things stand on a drawing is the business of
/// whoever drew it.
#[test]
fn the_plan_and_the_offer_of_teasel_row() {
    let mut content = letter_with(&roof::of(&made_up::teasel_row()));
    for block in content
        .sections
        .iter_mut()
        .flat_map(|section| &mut section.blocks)
    {
        match block {
            Block::Drawing(drawn) => drawn.drawing = Drawing::default(),
            Block::Table(table) => table.rows.clear(),
            _ => {}
        }
    }
    let told = (
        &content.answers,
        &content.offered,
        content.section(SectionIs::Plan),
        content.section(SectionIs::Offer),
        content.section(SectionIs::Decision),
    );
    insta::assert_snapshot!(serde_json::to_string_pretty(&told).unwrap());
}

/// "B3" at the plan's edge is the part whose finding is headed "B 3".
#[test]
fn part_numbers_on_the_plan_are_those_of_the_findings() {
    let made_up = made_up::teasel_row();
    let roof = roof::of(&made_up);
    let content = letter_with(&roof);
    let is_address = |text: &&str| {
        let mut letters = text.chars();
        letters
            .next()
            .is_some_and(|first| first.is_ascii_uppercase())
            && letters.clone().next().is_some()
            && letters.all(|letter| letter.is_ascii_digit())
    };
    let on_plan: BTreeSet<String> = drawing(&content)
        .drawing
        .words()
        .map(|words| words.text.as_str())
        .filter(is_address)
        .map(str::to_owned)
        .collect();
    let told: BTreeSet<String> = of_the_house(&content);
    assert_eq!(on_plan, told);
    assert!(on_plan.contains("B3") && on_plan.len() >= 7, "{on_plan:?}");
    let left_out: Vec<String> = roof.picture.left_out.iter().map(english).collect();
    assert!(
        !left_out.iter().any(|said| told.contains(said)),
        "{left_out:?}"
    );
}

/// The addresses of all parts on slopes of the house that are told part by part, without their spaces.
fn of_the_house(content: &Content) -> BTreeSet<String> {
    let mut told = BTreeSet::new();
    let mut in_house = false;
    for block in &content.section(SectionIs::Findings).unwrap().blocks {
        match block {
            Block::Heading { says } if says.as_str() == "House" => in_house = true,
            Block::Heading { says } if says.as_str() == "Detached garage" => in_house = false,
            Block::Finding(finding) if in_house => {
                told.insert(finding.part.address.to_string());
            }
            Block::Roster { parts } if in_house => {
                told.extend(parts.iter().map(|line| line.part.address.to_string()));
            }
            _ => {}
        }
    }
    let on_slopes = told.into_iter().filter(|address| address.contains(' '));
    on_slopes.map(|address| address.replace(' ', "")).collect()
}

#[test]
fn every_slope_on_the_plan_has_its_pitch_and_area() {
    let roof = roof::of(&made_up::teasel_row());
    let content = letter_with(&roof);
    let slopes = tables(&content)[0];
    assert_eq!(slopes.rows.len(), roof.plan.planes.len());
    for plane in &roof.plan.planes {
        let name = format!("Slope {}", plane.letter);
        let row = slopes
            .rows
            .iter()
            .find(|row| row.name.as_str().split(',').next() == Some(&name))
            .unwrap_or_else(|| panic!("{name} has no row"));
        let area = Spread::within(plane.slope_area.in_square_feet(), roof.plan.area_within());
        assert_eq!(row.cells[0].as_str(), plane.pitch.to_string());
        assert_eq!(
            row.cells[1].as_str(),
            english(&amount_said(area, Unit::SquareFoot))
        );
        let mut words = drawing(&content).drawing.words();
        assert!(words.any(|words| words.text == plane.letter), "{name}");
    }
}

/// Lengths of 1 % either way along level lines; sloping ones know no more than their pitch, 2 % or less of the slope factor.
#[test]
fn lengths_are_summed_by_kind_with_what_they_are_known_within() {
    let roof = roof::of(&made_up::teasel_row());
    let plan = &roof.plan;
    let content = letter_with(&roof);
    let lines = tables(&content)[1];
    let kinds = [
        (LineKind::Eave, "Eave", plan.length_within),
        (LineKind::Ridge, "Ridge", plan.length_within),
        (
            LineKind::Rake,
            "Rake",
            plan.length_within + plan.pitch_within,
        ),
        (LineKind::Hip, "Hip", plan.length_within + plan.pitch_within),
        (
            LineKind::Valley,
            "Valley",
            plan.length_within + plan.pitch_within,
        ),
    ];
    assert_eq!(lines.rows.len(), kinds.len());
    for (kind, name, within) in kinds {
        let row = lines
            .rows
            .iter()
            .find(|row| row.name.as_str() == name)
            .unwrap();
        let feet = Spread::within(plan.length_of(kind).in_feet(), within);
        assert_eq!(
            row.cells[0].as_str(),
            english(&amount_said(feet, Unit::Foot))
        );
    }
}

#[test]
fn squares_are_a_range_where_a_range_is_known() {
    let roof = roof::of(&made_up::teasel_row());
    let content = letter_with(&roof);
    let squares = Spread::within(roof.plan.slope_area().in_squares(), roof.plan.area_within());
    let wanted = format!("In all {} squares are covered", english(&squares.says(1)));
    let said = serde_json::to_string(plan_of(&content)).unwrap();
    assert!(
        squares.most > squares.least + 0.1 && said.contains(&wanted),
        "{wanted}: {said}"
    );
}

#[test]
fn what_is_ordered_is_told_without_what_it_costs() {
    let roof = roof::of(&made_up::teasel_row());
    let content = letter_with(&roof);
    let ordered = tables(&content)[2];
    assert_eq!(ordered.rows.len(), roof.takeoff.needs.len());
    for (row, need) in ordered.rows.iter().zip(&roof.takeoff.needs) {
        assert_eq!(row.name.as_str(), english(&need.name()));
        assert_eq!(row.cells[0].as_str(), english(&need.says_amount()));
        assert_eq!(row.cells[1].as_str(), english(&need.says_order()));
    }
    let said = serde_json::to_string(plan_of(&content)).unwrap();
    assert!(!said.contains("USD") && !said.contains('$'), "{said}");
    assert!(
        said.contains("one layer of covering, hauled away in one load"),
        "{said}"
    );
}

#[test]
fn what_found_no_room_on_the_plan_is_listed_beside_it() {
    let mut roof = roof::of(&made_up::teasel_row());
    roof.picture.left_out = vec![Said::verbatim("valley 3' 2\"")];
    let said = serde_json::to_string(plan_of(&letter_with(&roof))).unwrap();
    assert!(said.contains("There was no room on the plan for:") && said.contains("Valley 3' 2"));
}

#[test]
fn what_is_not_known_of_a_roof_leaves_no_section() {
    let made_up = made_up::teasel_row();
    let nothing = Roofed {
        structure: made_up::HOUSE,
        planned: None,
        takeoff: None,
        tear_off: None,
        offer: None,
    };
    let content = compose(&made_up.with_roofs(&[nothing]));
    assert!(
        content.section(SectionIs::Plan).is_none() && content.section(SectionIs::Offer).is_none()
    );
    let bare = compose(&made_up.material());
    assert_eq!(
        serde_json::to_string(&content).unwrap(),
        serde_json::to_string(&bare).unwrap()
    );
}

/// The page shows the drawing with a title and what it tells, and asks for nothing from elsewhere: the name of SVG is no address to fetch.
#[test]
fn the_page_shows_the_plan_and_tells_it() {
    let content = letter_with(&roof::of(&made_up::teasel_row()));
    let page = html(&content, &Lost);
    let drawn = drawing(&content);
    assert!(page.contains(&format!("<title>{}</title>", drawn.title)));
    assert!(page.contains(&format!("<desc>{}</desc>", drawn.alt)));
    let page = page.replace("xmlns=\"http://www.w3.org/2000/svg\"", "");
    assert!(!page.contains("http:") && !page.contains("var(--ink)"));
    assert_eq!(page.matches("<th scope=\"col\">").count(), 3 + 2 + 3);
}

/// A sloping word is turned in the PDF as it is on the page: both draw the same shapes, once.
#[test]
fn every_word_of_the_plan_stands_once_in_the_pdf() {
    let content = letter_with(&roof::of(&made_up::teasel_row()));
    let folder = tempfile::tempdir().unwrap();
    let file = folder.path().join("letter.pdf");
    std::fs::write(&file, pdf(&content, &Lost).unwrap()).unwrap();
    let output = std::process::Command::new("pdftotext")
        .arg("-raw")
        .arg(&file)
        .arg("-")
        .output()
        .unwrap();
    // Of a sloping word each letter is a line to pdftotext.
    let squeezed = |text: &str| text.split_whitespace().collect::<String>();
    let said = squeezed(&String::from_utf8(output.stdout).unwrap());
    let words = || {
        drawing(&content)
            .drawing
            .words()
            .map(|words| squeezed(&words.text))
    };
    let is_length = |text: &String| text.len() > 5 && text.ends_with(['\'', '"']);
    let long: BTreeSet<String> = words().filter(is_length).collect();
    assert!(long.len() >= 8, "{long:?}");
    for text in long {
        let drawn = words().filter(|other| *other == text).count();
        assert_eq!(said.matches(&text).count(), drawn, "{text}");
    }
}
