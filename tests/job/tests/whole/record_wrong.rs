//! A visit file that is wrong in any way is refused with the place and the reason, and changes nothing. The place is a JSON pointer
//! (RFC 6901). Common practice, no source, for what is wrong.

use crate::trouble::in_both;
use acts::Book;
use acts::record::{self, NotTaken, PictureFiles, Problem, Wrong};
use job::scene::{self, Scene};
use serde_json::{Value, json};
use std::collections::BTreeSet;
use trade::history::History;
use trade::words::Said;

/// Two names are pictures, one is something else, the rest cannot be read.
struct Folder;

impl PictureFiles for Folder {
    fn read(&self, name: &str) -> Result<Vec<u8>, Said> {
        match name {
            "eave.jpg" => Ok(vec![0xff, 0xd8, 0xff, 0xe0, 0, 0]),
            "note.txt" => Ok(b"no picture at all".to_vec()),
            _ => Err(Said::new("system-not-found")),
        }
    }
}

/// A right file that has one of everything.
fn right() -> Value {
    json!({
        "ladderbook-visit": 1,
        "property": {
            "address": { "line": "41 Halyard St", "town": "Merrow Bight", "region": "Hathe", "postcode": "00017" },
            "also": [{ "line": "3 Quay Row", "town": "Merrow Bight", "region": "Hathe", "postcode": "00017" }],
            "position": { "latitude": -48.9, "longitude": -123.4 },
            "people": [{ "name": "Rosalba Teal", "role": "owner", "phones": ["(291) 555-0143"], "email": "rosalba@teal.example" }],
            "built": 1961
        },
        "visit": {
            "on": "2025-05-06", "by": "Ottilie Pask", "scope": "quick-look",
            "request": { "words": "The gutter runs over.", "asks": [{ "kind": "gutter", "remedy": "clean-gutter" }] },
            "weather": { "sky": "dry", "celsius": 18 },
            "safety": [{ "check": "ladder-stands", "holds": "yes" }]
        },
        "structures": [{
            "kind": "house", "reached": "on-roof",
            "slopes": [
                { "letter": "A", "side": "front", "pitch": "6:12", "pitch-got": "inclination" },
                { "letter": "B", "side": "rear" }
            ],
            "layers": [
                { "slope": "A", "learned": "lifted", "layers": [
                    { "layer": { "is": "covering", "of": "asphalt-strip" }, "thickness": "0.2 in" },
                    { "layer": { "is": "membrane" } },
                    { "layer": { "is": "deck" } }
                ] },
                { "slope": "B", "learned": "rake-edge", "exposure": "5 in", "butts": ["2 in", "5 in"] }
            ],
            "parts": [
                { "kind": "gutter", "slope": "A", "rung": "ageing", "seen": "touched",
                  "defects": [{ "defect": "gutter-clogged" }], "advised": ["clean-gutter"],
                  "measures": [{ "of": "width", "value": "5 in", "got": "tape" }],
                  "photos": [{ "file": "eave.jpg", "caption": "Front gutter" }],
                  "work": [{ "remedy": "clean-gutter", "by": "not-us", "when": "2024-10-01", "evidence": "told" }] },
                { "kind": "covering", "slope": "A", "rung": "sound", "seen": "touched",
                  "answers": [{ "question": "brittle", "answer": "no" }] },
                { "kind": "attic-deck", "not-seen": "locked" }
            ]
        }]
    })
}

/// What must be said, where, its steps parted by points, and the one thing that is changed for it.
type Case = (Wrong, &'static str, fn(&mut Value));

fn part(file: &mut Value) -> &mut Value {
    &mut file["structures"][0]["parts"][0]
}

fn push(list: &mut Value, value: Value) {
    list.as_array_mut().expect("it is a list").push(value);
}

fn again(list: &mut Value) {
    let first = list[0].clone();
    push(list, first);
}

fn drop_member(object: &mut Value, name: &str) {
    object
        .as_object_mut()
        .expect("it is an object")
        .remove(name);
}

#[rustfmt::skip]
const CASES: &[Case] = &[
    (Wrong::NotOfTheShape, "visit.scope", |file| file["visit"]["scope"] = json!("a-glance")),
    (Wrong::NotOfTheShape, "visit.on", |file| file["visit"]["on"] = json!("2025-02-30")),
    (Wrong::NotOfTheShape, "visit.colour", |file| file["visit"]["colour"] = json!("blue")),
    (Wrong::NotOfTheShape, "structures.0.parts.0.measures.0.value", |file| part(file)["measures"][0]["value"] = json!("wide")),
    (Wrong::NotOfTheShape, "structures.0.slopes.0.pitch", |file| file["structures"][0]["slopes"][0]["pitch"] = json!("steep")),
    (Wrong::NotOfTheShape, "visit", |file| drop_member(&mut file["visit"], "by")),
    (Wrong::NotOfTheShape, "structures", |file| file["structures"] = json!("a house")),
    (Wrong::UnknownVersion, "ladderbook-visit", |file| file["ladderbook-visit"] = json!(9)),
    (Wrong::NoAddress, "property.address.line", |file| file["property"]["address"]["line"] = json!(" - ")),
    (Wrong::AddressTwice, "property.also.1", |file| again(&mut file["property"]["also"])),
    (Wrong::PositionOffTheEarth, "property.position", |file| file["property"]["position"]["latitude"] = json!(123.4)),
    (Wrong::YearCannotBe, "property.built", |file| file["property"]["built"] = json!(2099)),
    (Wrong::NotAPhone, "property.people.0.phones.0", |file| file["property"]["people"][0]["phones"] = json!(["12-34"])),
    (Wrong::NotAMail, "property.people.0.email", |file| file["property"]["people"][0]["email"] = json!("at home")),
    (Wrong::NobodyNamed, "property.people.0.name", |file| file["property"]["people"] = json!([{ "name": " ", "role": "owner" }])),
    (Wrong::NoVisitor, "visit.by", |file| file["visit"]["by"] = json!(" ")),
    (Wrong::DayAhead, "visit.on", |file| file["visit"]["on"] = json!("2026-09-15")),
    (Wrong::DayTooOld, "visit.on", |file| { file["visit"]["on"] = json!("1905-05-06"); part(file)["work"] = json!([]); }),
    (Wrong::TemperatureCannotBe, "visit.weather.celsius", |file| file["visit"]["weather"]["celsius"] = json!(75)),
    (Wrong::SafetyTwice, "visit.safety.1", |file| again(&mut file["visit"]["safety"])),
    (Wrong::UnknownKind, "visit.request.asks.0.kind", |file| file["visit"]["request"]["asks"][0]["kind"] = json!("moat")),
    (Wrong::UnknownRemedy, "visit.request.asks.0.remedy", |file| file["visit"]["request"]["asks"][0]["remedy"] = json!("prayer")),
    (Wrong::NoStructure, "structures", |file| file["structures"] = json!([])),
    (Wrong::StructureTwice, "structures.1", |file| again(&mut file["structures"])),
    (Wrong::SlopeTwice, "structures.0.slopes.2.letter", |file| again(&mut file["structures"][0]["slopes"])),
    (Wrong::NotASlopeLetter, "structures.0.slopes.2.letter", |file| push(&mut file["structures"][0]["slopes"], json!({ "letter": "ß", "side": "left" }))),
    (Wrong::NoSuchSlope, "structures.0.parts.0.slope", |file| part(file)["slope"] = json!("F")),
    (Wrong::NoSuchSlope, "structures.0.layers.1.slope", |file| file["structures"][0]["layers"][1]["slope"] = json!("F")),
    (Wrong::UnknownKind, "structures.0.parts.2.kind", |file| file["structures"][0]["parts"][2]["kind"] = json!("moat")),
    (Wrong::SlopeNeeded, "structures.0.parts.0.slope", |file| drop_member(part(file), "slope")),
    (Wrong::PartTwice, "structures.0.parts.3", |file| push(&mut file["structures"][0]["parts"], json!({ "kind": "attic-deck", "not-seen": "locked" }))),
    (Wrong::NoCondition, "structures.0.parts.2", |file| drop_member(&mut file["structures"][0]["parts"][2], "not-seen")),
    (Wrong::TwoConditions, "structures.0.parts.2", |file| file["structures"][0]["parts"][2]["gone"] = json!(true)),
    (Wrong::HowSeenMissing, "structures.0.parts.0.seen", |file| drop_member(part(file), "seen")),
    (Wrong::SeenWithoutRung, "structures.0.parts.2.seen", |file| file["structures"][0]["parts"][2]["seen"] = json!("afar")),
    (Wrong::SeenButNotReached, "structures.0.parts.0.seen", |file| { file["structures"][0]["reached"] = json!("not-reached"); drop_second(file); }),
    (Wrong::SeenNearerThanReached, "structures.0.parts.0.seen", |file| { file["structures"][0]["reached"] = json!("ground"); drop_second(file); }),
    (Wrong::FindingsUnseen, "structures.0.parts.2", |file| file["structures"][0]["parts"][2]["measures"] = json!([{ "of": "width", "value": "5 in", "got": "tape" }])),
    (Wrong::SoundWithDefect, "structures.0.parts.0.rung", |file| part(file)["rung"] = json!("sound")),
    (Wrong::UnknownDefect, "structures.0.parts.0.defects.0.defect", |file| part(file)["defects"][0]["defect"] = json!("curse")),
    (Wrong::DefectOfOtherPart, "structures.0.parts.0.defects.0.defect", |file| part(file)["defects"][0]["defect"] = json!("shingle-missing")),
    (Wrong::DefectTwice, "structures.0.parts.0.defects.1.defect", |file| again(&mut part(file)["defects"])),
    (Wrong::UnknownRemedy, "structures.0.parts.0.advised.0", |file| part(file)["advised"] = json!(["prayer"])),
    (Wrong::UnknownRemedy, "structures.0.parts.0.work.0.remedy", |file| part(file)["work"][0]["remedy"] = json!("prayer")),
    (Wrong::AnswerTwice, "structures.0.parts.1.answers.1.question", |file| again(&mut file["structures"][0]["parts"][1]["answers"])),
    (Wrong::QuestionOfOtherPart, "structures.0.parts.0.answers.0.question", |file| part(file)["answers"] = json!([{ "question": "brittle", "answer": "no" }])),
    (Wrong::LengthCannotBe, "structures.0.parts.0.measures.0.value", |file| part(file)["measures"][0]["value"] = json!("0 in")),
    (Wrong::LengthCannotBe, "structures.0.layers.0.layers.0.thickness", |file| file["structures"][0]["layers"][0]["layers"][0]["thickness"] = json!("0 in")),
    (Wrong::LengthCannotBe, "structures.0.layers.1.exposure", |file| file["structures"][0]["layers"][1]["exposure"] = json!("0 in")),
    (Wrong::MeasureTwice, "structures.0.parts.0.measures.1", |file| again(&mut part(file)["measures"])),
    (Wrong::NothingRead, "structures.0.layers.0", |file| drop_member(&mut file["structures"][0]["layers"][0], "layers")),
    (Wrong::ExposureMissing, "structures.0.layers.1.exposure", |file| drop_member(&mut file["structures"][0]["layers"][1], "exposure")),
    (Wrong::UnderTheDeck, "structures.0.layers.0.layers.3", |file| push(&mut file["structures"][0]["layers"][0]["layers"], json!({ "layer": { "is": "membrane" } }))),
    (Wrong::WorkUnclear, "structures.0.parts.0.work.0", |file| part(file)["work"][0]["did"] = json!("replaced")),
    (Wrong::WorkUnclear, "structures.0.work.0", |file| file["structures"][0]["work"] = json!([{ "by": "us", "when": "2024-10-01", "evidence": "told" }])),
    (Wrong::WorkAhead, "structures.0.parts.0.work.0.when", |file| part(file)["work"][0]["when"] = json!("2025-05-07")),
    (Wrong::PictureUnreadable, "structures.0.parts.0.photos.0.file", |file| part(file)["photos"][0]["file"] = json!("gone.jpg")),
    (Wrong::NotAPicture, "structures.0.parts.0.photos.0.file", |file| part(file)["photos"][0]["file"] = json!("note.txt")),
    (Wrong::PictureElsewhere, "structures.0.parts.0.photos.0.file", |file| part(file)["photos"][0]["file"] = json!("../eave.jpg")),
    (Wrong::PictureElsewhere, "structures.0.parts.0.photos.0.file", |file| part(file)["photos"][0]["file"] = json!("/eave.jpg")),
];

/// Leaves the part out that was seen from the roof: one thing is to be wrong.
fn drop_second(file: &mut Value) {
    file["structures"][0]["parts"]
        .as_array_mut()
        .expect("it is a list")
        .remove(1);
}

/// What is no JSON at all, and where it breaks off.
const NO_JSON: &[(&str, &str)] = &[
    ("", "line 1, column 0"),
    ("a visit", "line 1, column 1"),
    ("{\n  \"ladderbook-visit\": 1,\n}", "line 3, column 1"),
];

/// Kinds of wrong that the table does not name because they need a visit in the book.
const AGAINST_THE_BOOK: [Wrong; 2] = [Wrong::VisitTwice, Wrong::VisitOpen];

#[test]
fn every_wrong_file_is_refused_at_its_place_and_changes_nothing() {
    let scene = Scene::new();
    let mut book = other_book(&scene);
    let before = state(&book);
    let mut said = Vec::new();
    for (wrong, at, change) in CASES {
        let mut file = right();
        change(&mut file);
        let problems = refused(&mut book, &file.to_string());
        let found: Vec<_> = problems.iter().map(place).collect();
        assert_eq!(found, [(*wrong, pointer(at))], "{problems:?}");
        said.extend(in_both(&problems[0].says()).map(|told| by_table(at, &told)));
        assert_eq!(state(&book), before, "{wrong:?} changes nothing");
    }
    for (text, at) in NO_JSON {
        let problems = refused(&mut book, text);
        assert_eq!(
            place(&problems[0]),
            (Wrong::NotOfTheShape, (*at).to_owned())
        );
        said.extend(in_both(&problems[0].says()));
        assert_eq!(state(&book), before);
    }
    let more = format!("{} {{}}", right());
    let problems = refused(&mut book, &more);
    assert_eq!(problems[0].wrong, Wrong::NotOfTheShape);
    said.extend(in_both(&problems[0].says()));
    assert_eq!(state(&book), before);
    insta::assert_snapshot!("what-is-wrong", said.join("\n"));
    println!("{} wrong files", CASES.len() + NO_JSON.len() + 1);
}

#[test]
fn the_table_names_every_kind_of_wrong() {
    let named: BTreeSet<Wrong> = CASES
        .iter()
        .map(|(wrong, ..)| *wrong)
        .chain(AGAINST_THE_BOOK)
        .collect();
    let all: BTreeSet<Wrong> = Wrong::ALL.iter().copied().collect();
    assert_eq!(named, all, "a kind was added: name it here");
}

#[test]
fn several_things_wrong_are_all_said() {
    let scene = Scene::new();
    let mut book = other_book(&scene);
    let mut file = right();
    file["visit"]["by"] = json!("");
    part(&mut file)["photos"][0]["file"] = json!("gone.jpg");
    file["structures"][0]["parts"][2]["seen"] = json!("afar");
    let mut found: Vec<_> = refused(&mut book, &file.to_string())
        .iter()
        .map(|problem| problem.wrong)
        .collect();
    found.sort();
    assert_eq!(
        found,
        [
            Wrong::NoVisitor,
            Wrong::SeenWithoutRung,
            Wrong::PictureUnreadable
        ]
    );
}

#[test]
fn a_right_file_is_taken_in_whole_and_only_once() {
    let scene = Scene::new();
    let mut book = other_book(&scene);
    let taken = take_in(&mut book, &right().to_string()).expect("it is right");
    let history = scene::history(&book, taken.property);
    assert!(taken.new);
    assert_eq!(
        (
            history.visits.len(),
            history.stacks.len(),
            history.works.len(),
            history.photos.len()
        ),
        (1, 2, 1, 1)
    );
    assert_eq!(history.marks.len(), taken.marks);
    assert!(history.visits[0].closed.is_some());
    let gutter = history
        .marks
        .iter()
        .find(|mark| !mark.defects.is_empty())
        .expect("the gutter is marked");
    assert_eq!(
        (
            gutter.measures.len(),
            gutter.photos.len(),
            gutter.advised.len()
        ),
        (1, 1, 1)
    );
    let before = state(&book);
    let problems = refused(&mut book, &right().to_string());
    assert_eq!(
        place(&problems[0]),
        (Wrong::VisitTwice, "/visit/on".to_owned())
    );
    in_both(&problems[0].says());
    assert_eq!(state(&book), before);
}

#[test]
fn nothing_is_taken_in_beside_an_open_visit() {
    let scene = Scene::new();
    let mut book = other_book(&scene);
    let mut open = right();
    open["visit"]["closed"] = json!(false);
    take_in(&mut book, &open.to_string()).expect("it is right");
    let before = state(&book);
    let mut next = right();
    next["visit"]["on"] = json!("2026-05-06");
    let problems = refused(&mut book, &next.to_string());
    assert_eq!(place(&problems[0]), (Wrong::VisitOpen, "/visit".to_owned()));
    in_both(&problems[0].says());
    assert_eq!(state(&book), before);
}

/// A place in a file as a JSON pointer (RFC 6901).
fn pointer(at: &str) -> String {
    format!("/{}", at.replace('.', "/"))
}

/// A sentence with its place as the table writes it.
fn by_table(at: &str, told: &str) -> String {
    let says = told.strip_prefix(&pointer(at));
    format!("{at}{}", says.expect("the place comes first"))
}

/// What is wrong, and where.
fn place(problem: &Problem) -> (Wrong, String) {
    (problem.wrong, problem.at.to_string())
}

/// A book with one other house in it.
fn other_book(scene: &Scene) -> Book {
    let (hand, ..) = scene::first_visit(scene, trade::visit::Scope::QuickLook);
    hand.screens.into_book()
}

fn state(book: &Book) -> (usize, Vec<History>) {
    let properties = book.properties().expect("the book reads");
    let histories = properties
        .iter()
        .map(|property| scene::history(book, property.id));
    (scene::ink(book), histories.collect())
}

fn take_in(book: &mut Book, text: &str) -> Result<record::Taken, NotTaken> {
    let file = record::read(text)?;
    record::take_in(book, &file, &Folder, scene::after_noon(fixtures::TODAY, 5))
}

fn refused(book: &mut Book, text: &str) -> Vec<Problem> {
    match take_in(book, text) {
        Err(NotTaken::Problems(problems)) => problems,
        other => panic!("{other:?} of {text}"),
    }
}
