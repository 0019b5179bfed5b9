//! A visit that was written down as a file, walked tap by tap.

use crate::hand::{Hand, button};
use acts::record::file::{PartPart, StackPart, StructurePart, VisitFile, WorkPart};
use screens::{Button, Place, SpotRow};
use std::collections::BTreeMap;
use trade::answer::Answer;
use trade::catalogue::Catalogue;
use trade::ids::PhotoId;
use trade::mark::{Rung, Seen};
use trade::stack::{LayerIs, Learned};
use trade::words::Said;

/// The pictures that a visit file names, as bytes.
pub type Pictures = BTreeMap<String, Vec<u8>>;

/// A picture in the tray, and what it is to be tied to.
struct Shot {
    photo: PhotoId,
    caption: String,
    part: String,
    structure: String,
}

/// Answers the safety screen as the file does, and goes on to the walk.
pub fn safety(hand: &mut Hand, file: &VisitFile) {
    for answer in &file.visit.safety {
        let asks = hand.text(answer.check.key());
        let row = hand
            .safety()
            .checks
            .into_iter()
            .find(|row| row.asks == asks);
        let row = row.unwrap_or_else(|| panic!("{asks:?} is not asked"));
        hand.act(if answer.holds == Answer::Yes {
            &row.yes.action
        } else {
            &row.no.action
        });
    }
    let sky = hand.text(file.visit.weather.sky.key());
    hand.tap(&hand.safety().sky, &sky);
    for structure in &file.structures {
        let name = structure_name(hand, structure);
        let row = hand
            .safety()
            .reach
            .into_iter()
            .find(|row| row.structure == name);
        let how = hand.text(structure.reached.key());
        hand.tap(
            &row.unwrap_or_else(|| panic!("{name:?} is not asked for"))
                .ways,
            &how,
        );
    }
    let main = hand.safety().main;
    hand.act(&main.action);
}

/// Marks every part of the file, shoots its pictures into the tray, and ties them there. The hand stands on the walk then.
pub fn walk(hand: &mut Hand, file: &VisitFile, pictures: &Pictures) {
    let mut shots = Vec::new();
    for structure in &file.structures {
        for part in &structure.parts {
            one(hand, structure, part);
            shoot(hand, structure, part, pictures, &mut shots);
        }
    }
    tie(hand, &shots);
}

fn structure_name(hand: &Hand, structure: &StructurePart) -> String {
    structure
        .name
        .clone()
        .unwrap_or_else(|| hand.text(structure.kind.key()))
}

/// What the screens call a part.
fn part_name(hand: &Hand, structure: &StructurePart, part: &PartPart) -> String {
    let kind = hand.text(&part.kind.message());
    let side = part.slope.map(|letter| {
        let slope = structure.slopes.iter().find(|slope| slope.letter == letter);
        hand.text(slope.expect("the file names the slope").side.key())
    });
    let twins = structure
        .parts
        .iter()
        .filter(|twin| twin.kind == part.kind && twin.which == part.which);
    match (&part.which, side) {
        (Some(which), Some(side)) if twins.count() > 1 => hand.say(
            &Said::new("part-which-side")
                .with("kind", kind)
                .with("which", which.as_str())
                .with("side", side),
        ),
        (Some(which), _) => hand.say(
            &Said::new("part-which")
                .with("kind", kind)
                .with("which", which.as_str()),
        ),
        (None, Some(side)) => {
            hand.say(&Said::new("part-side").with("kind", kind).with("side", side))
        }
        (None, None) => kind,
    }
}

/// Stands at the stop of a part on the walk over its structure.
fn to_stop(hand: &mut Hand, structure: &StructurePart, part: &PartPart) {
    if matches!(hand.at, Place::Mark { .. }) {
        let back = hand.mark().back;
        hand.act(&back.action);
    }
    let name = structure_name(hand, structure);
    let structures = hand.walk().structures;
    if !button(&structures, &name).chosen {
        hand.tap(&structures, &name);
    }
    let kind = Catalogue::standard()
        .kind(&part.kind)
        .expect("the kind is in the catalogue");
    let stop = hand.text(&kind.stop.message());
    let row = hand.walk().stops.into_iter().find(|row| row.name == stop);
    if let Some(row) = row {
        hand.act(&row.go);
    }
}

fn row(hand: &Hand, name: &str) -> Option<SpotRow> {
    let mut rows = hand
        .walk()
        .here?
        .spots
        .into_iter()
        .filter(|row| row.name == name);
    let first = rows.next();
    assert!(
        rows.next().is_none(),
        "two parts at one stop are called {name:?}"
    );
    first
}

fn one(hand: &mut Hand, structure: &StructurePart, part: &PartPart) {
    to_stop(hand, structure, part);
    let name = part_name(hand, structure, part);
    let row = row(hand, &name);
    if let (Some(row), true) = (&row, is_plainly_sound(part)) {
        hand.act(&row.sound.action);
        return;
    }
    match row {
        Some(row) => {
            hand.act(&row.mark.action);
        }
        None => add(hand, structure, part),
    }
    for work in &part.work {
        send_work(hand, work);
    }
    if part.kind.as_str() == "layers" {
        for stack in structure
            .layers
            .iter()
            .filter(|stack| stack.slope == part.slope)
        {
            send_layers(hand, stack);
        }
    }
    if !part.words.is_empty() {
        let form = form(hand, "say-it");
        hand.send(&form, &[("words", &part.words)]);
    }
    for seen in &part.defects {
        name_defect(hand, &seen.defect);
    }
    condition(hand, part);
}

/// What one tap on the walk says: sound, from as near as the roof was reached.
fn is_plainly_sound(part: &PartPart) -> bool {
    part.rung == Some(Rung::Sound)
        && part.seen == Some(Seen::Near)
        && part.words.is_empty()
        && part.work.is_empty()
        && part.answers.is_empty()
}

fn add(hand: &mut Hand, structure: &StructurePart, part: &PartPart) {
    let kind = hand.text(&part.kind.message());
    let slope = part.slope.map(|letter| {
        let slope = structure.slopes.iter().find(|slope| slope.letter == letter);
        let side = slope.expect("the file names the slope").side;
        hand.say(
            &Said::new("slope-name")
                .with("letter", letter.to_string())
                .with("side", Said::new(side.key())),
        )
    });
    let form = hand.walk().here.expect("there is a stop").add;
    let mut filled = vec![("kind", kind.as_str())];
    filled.extend(slope.as_deref().map(|slope| ("slope", slope)));
    filled.extend(part.which.as_deref().map(|which| ("which", which)));
    hand.send(&form, &filled);
}

fn form(hand: &Hand, title: &str) -> screens::Form {
    let title = hand.text(title);
    let form = hand
        .mark()
        .forms
        .into_iter()
        .find(|form| form.title == title);
    form.unwrap_or_else(|| panic!("there is no form {title:?}"))
}

fn send_work(hand: &mut Hand, work: &WorkPart) {
    let did = match work.done() {
        trade::work::Did::Remedy(remedy) => hand.text(&remedy.message()),
        trade::work::Did::Replaced => hand.text("did-replaced"),
        trade::work::Did::Covered => hand.text("did-covered"),
        trade::work::Did::TakenDown => hand.text("did-taken-down"),
        trade::work::Did::Something => hand.text("did-something"),
    };
    let form = form(hand, "work-title");
    let by = hand.text(work.by.key());
    let evidence = hand.text(work.evidence.key());
    let when = work.when.to_string();
    hand.send(
        &form,
        &[
            ("did", &did),
            ("by", &by),
            ("when", &when),
            ("evidence", &evidence),
        ],
    );
}

fn send_layers(hand: &mut Hand, stack: &StackPart) {
    let coverings: Vec<_> = stack
        .layers
        .iter()
        .filter_map(|layer| match layer.layer {
            LayerIs::Covering(covering) => Some(covering),
            _ => None,
        })
        .collect();
    let form = form(hand, "layers-title");
    let covering = hand.text(coverings.first().expect("a covering was read").key());
    let learned: Learned = stack.learned;
    let learned = hand.text(learned.key());
    let count = coverings.len().to_string();
    hand.send(
        &form,
        &[
            ("count", &count),
            ("covering", &covering),
            ("learned", &learned),
            ("where", &stack.spot),
        ],
    );
}

/// From the likely six where it is among them; else from its family.
fn name_defect(hand: &mut Hand, defect: &trade::catalogue::DefectKey) {
    let label = hand.text(&defect.message());
    let likely = hand.mark().defects;
    if likely.iter().any(|button| button.label == label) {
        hand.tap(&likely, &label);
        return;
    }
    let known = Catalogue::standard()
        .defect(defect)
        .expect("the defect is in the catalogue");
    let family = hand.text(known.family.key());
    hand.tap(&hand.mark().families, &family);
    hand.tap(&hand.mark().defects, &label);
}

fn condition(hand: &mut Hand, part: &PartPart) {
    if let Some(why) = part.not_seen {
        let label = hand.text(why.key());
        hand.tap(&hand.mark().not_seen, &label);
    } else if part.gone {
        let label = hand.text("condition-gone");
        hand.tap(&hand.mark().not_seen, &label);
    } else if let (Some(rung), Some(seen)) = (part.rung, part.seen) {
        let label = hand.text(rung.key());
        hand.tap(&hand.mark().rungs, &label);
        let label = hand.text(seen.key());
        hand.tap(&hand.mark().seen, &label);
        for answered in &part.answers {
            let asks = hand.text(answered.question.key());
            let row = hand
                .mark()
                .questions
                .into_iter()
                .find(|row| row.asks == asks);
            let label = hand.text(if answered.answer.is_yes() {
                "answer-yes"
            } else {
                "answer-no"
            });
            let answers: Vec<Button> = row
                .unwrap_or_else(|| panic!("{asks:?} is not asked"))
                .answers;
            hand.tap(&answers, &label);
        }
    }
}

fn shoot(
    hand: &mut Hand,
    structure: &StructurePart,
    part: &PartPart,
    pictures: &Pictures,
    shots: &mut Vec<Shot>,
) {
    if part.photos.is_empty() {
        return;
    }
    to_stop(hand, structure, part);
    let shutter = hand.walk().shutter;
    for photo in &part.photos {
        let bytes = pictures
            .get(&photo.file)
            .unwrap_or_else(|| panic!("no picture {}", photo.file));
        shots.push(Shot {
            photo: hand.shoot(&shutter, bytes),
            caption: photo.caption.clone(),
            part: part_name(hand, structure, part),
            structure: structure_name(hand, structure),
        });
    }
}

/// Empties the tray, as at the tailgate.
fn tie(hand: &mut Hand, shots: &[Shot]) {
    let tray = hand.text("tray-title");
    hand.tap(&hand.walk().more, &tray);
    for shot in shots {
        let form = loose(hand, shot.photo)
            .caption
            .expect("a picture takes a caption");
        hand.send(&form, &[("caption", &shot.caption)]);
        let tie = loose(hand, shot.photo).tie;
        let tie = tie.iter().find(|tie| {
            tie.label == shot.part
                && tie
                    .note
                    .as_ref()
                    .is_none_or(|structure| *structure == shot.structure)
        });
        let action = tie
            .unwrap_or_else(|| panic!("nothing is called {:?}", shot.part))
            .action
            .clone();
        hand.act(&action);
    }
    assert!(hand.tray().empty.is_some(), "the tray is empty in the end");
    let back = hand.tray().back;
    hand.act(&back.action);
}

fn loose(hand: &Hand, photo: PhotoId) -> screens::Loose {
    hand.tray()
        .loose
        .into_iter()
        .find(|loose| {
            loose
                .picture
                .as_ref()
                .is_some_and(|picture| picture.photo == photo)
        })
        .unwrap_or_else(|| panic!("the picture does not lie in the tray"))
}
