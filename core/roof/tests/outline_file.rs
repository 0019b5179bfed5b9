//! The plain outline file: its published schema and examples are those of this program, and what is wrong with one is told with its place.

#![cfg(test)]

use proptest::prelude::*;
use roof::error::FileFault;
use roof::{ShapeError, outline_file, plan_of, read_outline};
use std::path::{Path, PathBuf};
use trade::roof::{LineKind, RoofPlan};
use trade::sketch::{Drawn, EdgeIs, OutlineOf};
use trade::units::{Got, Length, Pitch};
use trade::words::{Language, Words};

fn docs(name: &str) -> PathBuf {
    Path::new("../../docs").join(name)
}

/// Set `LADDERBOOK_ACCEPT=1` to accept the shape as it is now.
#[test]
fn the_published_schema_is_the_one_of_this_program() {
    let path = docs("outline-file.schema.json");
    let now = serde_json::to_string_pretty(&outline_file::schema()).unwrap() + "\n";
    if std::env::var_os("LADDERBOOK_ACCEPT").is_some() {
        std::fs::write(&path, &now).unwrap();
    }
    let published = std::fs::read_to_string(&path).unwrap();
    assert_eq!(
        published, now,
        "run again with LADDERBOOK_ACCEPT=1 if this change is meant"
    );
}

/// The examples of the page that explains the file, in order.
fn examples() -> Vec<String> {
    let page = std::fs::read_to_string(docs("outline-file.md")).unwrap();
    page.split("```json\n")
        .skip(1)
        .map(|rest| rest.split("```").next().unwrap_or_default().to_owned())
        .collect()
}

fn example(number: usize) -> RoofPlan {
    let drawn = read_outline(&examples()[number], None, Length::ZERO).unwrap();
    plan_of(&drawn, Got::Tape, Got::Tape).unwrap()
}

fn near(value: f64, wanted: f64) {
    assert!((value - wanted).abs() < 0.01, "{value}, not {wanted}");
}

/// A gable 40 by 28 feet at 6/12: 1252.2 ft² by the slope factor (NAVEDTRA 14044, ch. 2).
#[test]
fn the_gable_of_the_page() {
    let plan = example(0);
    near(plan.slope_area().in_square_feet(), 1252.198);
    near(plan.length_of(LineKind::Ridge).in_feet(), 40.0);
    near(plan.length_of(LineKind::Eave).in_feet(), 80.0);
    near(
        plan.length_of(LineKind::Rake).in_feet(),
        4.0 * 14.0 * 1.118_034,
    );
}

/// A hip roof with a courtyard, and a porch below it; by the slope factor, plan area × √(rise² + 144)/12.
#[test]
fn the_house_and_porch_of_the_page() {
    let plan = example(1);
    let house = (60.0 * 50.0 - 20.0 * 10.0) * (8.0_f64.powi(2) + 144.0).sqrt() / 12.0;
    let porch = 20.0 * 8.0 * (3.0_f64.powi(2) + 144.0).sqrt() / 12.0;
    near(plan.slope_area().in_square_feet(), house + porch);
    near(plan.length_of(LineKind::Wall).in_feet(), 20.0);
}

#[test]
fn the_round_of_the_page() {
    let drawn = read_outline(&examples()[2], None, Length::ZERO).unwrap();
    let Drawn::Legs { legs, of, .. } = &drawn else {
        panic!("no legs: {drawn:?}");
    };
    assert_eq!((legs.len(), *of), (6, OutlineOf::Walls));
    assert!(plan_of(&drawn, Got::Tape, Got::Tape).is_ok());
}

/// Two dormers on a house: what stands on it is counted, and what it hides is not.
#[test]
fn the_dormers_of_the_page() {
    let plan = example(4);
    let count = |kind| plan.lines.iter().filter(|line| line.kind == kind).count();
    assert_eq!(count(LineKind::Step), 4);
    assert_eq!(count(LineKind::Valley), 2);
    assert_eq!(count(LineKind::PitchChange), 1);
    near(plan.length_of(LineKind::Wall).in_feet(), 16.0);
    assert_eq!(plan.walls.len(), 6);
}

#[test]
fn a_file_says_how_its_lengths_were_got() {
    let file = |got: &str| format!(r#"{{"unit":"ft",{got}"outline":[[0,0],[40,0],[40,28]]}}"#);
    assert_eq!(
        outline_file::got(&file("\"got\":\"tape\",")),
        Ok(Some(Got::Tape))
    );
    assert_eq!(outline_file::got(&file("")), Ok(None));
    assert!(outline_file::got(&file("\"got\":\"guess\",")).is_err());
}

#[test]
fn all_units_mean_the_same_roof() {
    let read = |text: &str| read_outline(text, Some(Pitch::rise(6)), Length::ZERO).unwrap();
    let feet = read(r#"{"unit":"ft","outline":[[0,0],[40,0],[40,28],[0,28]]}"#);
    for other in [
        r#"{"unit":"in","outline":[[0,0],[480,0],[480,336],[0,336]]}"#,
        r#"{"unit":"m","outline":[[0,0],[12.192,0],[12.192,8.5344],[0,8.5344]]}"#,
        r#"{"unit":"mm","outline":[[0,0],[12192,0],[12192,8534.4],[0,8534.4],[0,0]]}"#,
        r#"{"unit":"m","outline":[[0,0],["40 ft",0],["40'","28 ft"],[0,"336 in"]]}"#,
        r#"{"unit":"ft","rings":[[{"x":0,"y":0},{"x":40,"y":0},{"x":40,"y":28},{"x":0,"y":28}]]}"#,
        "\u{feff}{\"unit\":\"ft\",\"bodies\":[{\"rings\":[[{\"x\":0,\"y\":0},{\"x\":40,\"y\":0},{\"x\":40,\"y\":28},{\"x\":0,\"y\":28}]]}]}",
    ] {
        assert_eq!(read(other), feet, "{other}");
    }
}

#[test]
fn what_a_side_says_goes_before_the_file_and_the_file_before_the_default() {
    let text = r#"{"unit":"ft","pitch":"8/12","overhang":1,
        "outline":[[-20,0],["20 ft",0],[20,28],["-20 ft",28]],
        "edges":[{"pitch":"4/12","overhang":"16 in"},"gable",{},{"is":"wall"}]}"#;
    let Drawn::Outlines { bodies } =
        read_outline(text, Some(Pitch::rise(5)), Length::feet(2)).unwrap()
    else {
        panic!("no outline");
    };
    let body = &bodies[0];
    assert_eq!(
        (body.pitch, body.overhang),
        (Pitch::rise(8), Length::feet(1))
    );
    let rim = &body.rings[0];
    assert_eq!(rim[0].pitch, Some(Pitch::rise(4)));
    assert_eq!(rim[0].overhang, Some(Length::inches(16)));
    assert_eq!(
        rim.iter().map(|edge| edge.is).collect::<Vec<_>>(),
        [EdgeIs::Hip, EdgeIs::Gable, EdgeIs::Hip, EdgeIs::Wall]
    );
    assert_eq!(
        rim[3].x,
        Length::of_nanometres(-Length::feet(20).nanometres())
    );
}

/// What is wrong, where, and the file.
const WRONG: &[(&str, &str)] = &[
    ("line 1, column 14", r#"{"unit":"ft",}"#),
    ("line 1, column 0", ""),
    ("curly brackets", "[]"),
    ("\"unit\": \"ft\"", r#"{"outline":[[0,0],[40,0],[40,28]]}"#),
    (
        "At unit: “yd”",
        r#"{"unit":"yd","outline":[[0,0],[40,0],[40,28]]}"#,
    ),
    (
        "pitch is missing",
        r#"{"unit":"ft","outline":[[0,0],[40,0],[40,28]]}"#,
    ),
    (
        "At pitch: “steep”",
        r#"{"unit":"ft","pitch":"steep","outline":[[0,0],[40,0],[40,28]]}"#,
    ),
    (
        "At pitch: A text",
        r#"{"unit":"ft","pitch":6,"outline":[[0,0],[40,0],[40,28]]}"#,
    ),
    (
        "At overhang: “16”",
        r#"{"unit":"ft","pitch":"6/12","overhang":"16","outline":[[0,0],[40,0],[40,28]]}"#,
    ),
    ("one of these", r#"{"unit":"ft","pitch":"6/12"}"#),
    (
        "one of these",
        r#"{"unit":"ft","pitch":"6/12","outline":[[0,0],[40,0],[40,28]],"rings":[]}"#,
    ),
    (
        "“outline” is missing",
        r#"{"unit":"ft","pitch":"6/12","rings":[],"holes":[]}"#,
    ),
    ("No outline", r#"{"unit":"ft","pitch":"6/12","bodies":[]}"#),
    ("No outline", r#"{"unit":"ft","pitch":"6/12","planes":[]}"#),
    (
        "Known are: unit, pitch",
        r#"{"unit":"ft","slope":"6/12","outline":[[0,0],[40,0],[40,28]]}"#,
    ),
    (
        "At outline[1]: A corner",
        r#"{"unit":"ft","pitch":"6/12","outline":[[0,0],[40],[40,28]]}"#,
    ),
    (
        "At outline[2][0]: A number",
        r#"{"unit":"ft","pitch":"6/12","outline":[[0,0],[40,0],[true,28]]}"#,
    ),
    (
        "“-1e300” is no length",
        r#"{"unit":"m","pitch":"6/12","outline":[[-1e300,0],[1e300,0],[1,28]]}"#,
    ),
    (
        "At edges: There must be one entry",
        r#"{"unit":"ft","pitch":"6/12","outline":[[0,0],[40,0],[40,28]],"edges":["hip"]}"#,
    ),
    (
        "Known are: hip, gable, wall",
        r#"{"unit":"ft","pitch":"6/12","outline":[[0,0],[40,0],[40,28]],"edges":["hip","eave","hip"]}"#,
    ),
    (
        "At rings[0][0].is: “eave”",
        r#"{"unit":"ft","pitch":"6/12","rings":[[{"x":0,"y":0,"is":"eave"},{"x":40,"y":0},{"x":40,"y":28}]]}"#,
    ),
    (
        "At rings[0][1]: “y” is missing",
        r#"{"unit":"ft","pitch":"6/12","rings":[[{"x":0,"y":0},{"x":40},{"x":40,"y":28}]]}"#,
    ),
    (
        "has 2 corners",
        r#"{"unit":"ft","pitch":"6/12","outline":[[0,0],[40,0]]}"#,
    ),
    (
        "Side 2 of the outline",
        r#"{"unit":"ft","pitch":"6/12","outline":[[0,0],[40,0],[40,0],[40,28]]}"#,
    ),
    (
        "cross or touch at (20, 14)",
        r#"{"unit":"ft","pitch":"6/12","outline":[[0,0],[40,0],[0,28],[40,28]]}"#,
    ),
    (
        "cross or touch at (240, 168)",
        r#"{"unit":"in","pitch":"6/12","outline":[[0,0],[480,0],[0,336],[480,336]]}"#,
    ),
    (
        "cross or touch at (6000, 4000)",
        r#"{"unit":"mm","pitch":"6/12","outline":[[0,0],[12000,0],[0,8000],[12000,8000]]}"#,
    ),
    (
        "Hole 1 lies outside",
        r#"{"unit":"ft","pitch":"6/12","outline":[[0,0],[40,0],[40,28]],"holes":[[[50,0],[60,0],[60,9]]]}"#,
    ),
    (
        "Look at the unit",
        r#"{"unit":"m","pitch":"6/12","outline":[[0,0],[12192,0],[12192,8534]]}"#,
    ),
    (
        "has no pitch",
        r#"{"unit":"ft","pitch":"0/12","outline":[[0,0],[40,0],[40,28]]}"#,
    ),
    (
        "more than 20 feet",
        r#"{"unit":"ft","pitch":"6/12","overhang":"-1 ft","outline":[[0,0],[40,0],[40,28]]}"#,
    ),
    (
        "Number 2 is no measure",
        r#"{"unit":"ft","pitch":"6/12","legs":[{"length":40,"turn":90},{"length":0,"turn":90},{"length":40,"turn":90}]}"#,
    ),
    (
        "add up to 270.0°",
        r#"{"unit":"ft","pitch":"6/12","legs":[{"length":40,"turn":90},{"length":28,"turn":90},{"length":40,"turn":90}]}"#,
    ),
    (
        "At dormers: A dormer stands",
        r#"{"unit":"ft","pitch":"6/12","planes":[{"side":"front","eave":40,"high":40,"up":15}],"dormers":[{"outline":[[0,0],[4,0],[4,4]],"above_roof":1}]}"#,
    ),
    (
        "At dormers[0]: “above_roof” is missing",
        r#"{"unit":"ft","pitch":"6/12","outline":[[0,0],[40,0],[40,28]],"dormers":[{"outline":[[30,1],[34,1],[34,4]]}]}"#,
    ),
    (
        "At dormers[0].edges: There must be one entry",
        r#"{"unit":"ft","pitch":"6/12","outline":[[0,0],[40,0],[40,28]],"dormers":[{"outline":[[30,1],[34,1],[34,4]],"above_roof":1,"edges":["hip"]}]}"#,
    ),
    (
        "At planes[0].sides: Two",
        r#"{"unit":"ft","pitch":"6/12","planes":[{"side":"front","eave":40,"high":40,"up":15,"sides":["rake"]}]}"#,
    ),
];

#[test]
fn what_is_wrong_is_told_with_its_place_in_both_languages() {
    for (told, text) in WRONG {
        let error = read_outline(text, None, Length::ZERO).expect_err(text);
        let said = error.says();
        let english = Words::of(Language::English).say(&said);
        assert!(english.contains(told), "{text}: {english}");
        let spanish = Words::of(Language::Spanish).say(&said);
        assert!(
            !spanish.contains("[outline") && spanish != english,
            "{spanish}"
        );
    }
}

#[test]
fn no_pitch_is_wanted_where_every_side_has_its_own() {
    let text = r#"{"unit":"ft","outline":[[0,0],[40,0],[40,28],[0,28]],
        "edges":[{"pitch":"4/12"},"gable",{"pitch":"6/12"},"gable"]}"#;
    assert!(read_outline(text, None, Length::ZERO).is_ok());
    let text = text.replace(r#"{"pitch":"6/12"}"#, r#""hip""#);
    let error = read_outline(&text, None, Length::ZERO).unwrap_err();
    assert!(matches!(
        error,
        ShapeError::File {
            fault: FileFault::NoPitch,
            ..
        }
    ));
}

/// Pieces that files are made of, whole and broken.
const PIECES: &[&str] = &[
    "{",
    "}",
    "[",
    "]",
    ",",
    ":",
    "\"unit\"",
    "\"ft\"",
    "\"type\"",
    "\"Polygon\"",
    "\"coordinates\"",
    "\"outline\"",
    "\"rings\"",
    "\"legs\"",
    "\"x\"",
    "\"y\"",
    "\"-4 ft\"",
    "1e308",
    "-1e308",
    "0",
    "180",
    "90",
    "null",
    "\"6/12\"",
    "\"pitch\"",
    "\u{feff}",
    "\\",
    "\"",
];

proptest! {
    #[test]
    fn no_text_breaks_the_reader(text in ".{0,60}", pieces in prop::collection::vec(prop::sample::select(PIECES), 0..40)) {
        let _ = read_outline(&text, None, Length::ZERO);
        let _ = read_outline(&pieces.concat(), Some(Pitch::rise(6)), Length::feet(1));
    }

    #[test]
    fn no_number_breaks_the_reader(
        places in prop::collection::vec((prop::num::f64::ANY, prop::num::f64::ANY), 0..6), overhang in prop::num::f64::ANY, turn in prop::num::f64::ANY,
        unit in prop::sample::select(vec!["ft", "m", "in", "mm"]),
    ) {
        let file = serde_json::json!({"unit": unit, "pitch": "6/12", "overhang": overhang, "outline": places, "of": "walls"});
        let _ = read_outline(&file.to_string(), None, Length::ZERO);
        let legs: Vec<_> = places.iter().map(|(length, _)| serde_json::json!({"length": length, "turn": turn})).collect();
        let file = serde_json::json!({"unit": unit, "pitch": "6/12", "legs": legs});
        let _ = read_outline(&file.to_string(), None, Length::ZERO);
        let footprint = serde_json::json!({"type": "Polygon", "coordinates": [places]});
        let _ = read_outline(&footprint.to_string(), Some(Pitch::rise(6)), Length::ZERO);
    }
}
