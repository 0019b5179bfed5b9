//! Draws the plans and laid coverings of a few roofs into a folder, to be looked at: `cargo run -p roof --example pictures -- FOLDER`.

#[path = "../tests/roofs/mod.rs"]
mod roofs;

use roof::draw::{
    Colours, Marks, PHONE, Picture, Placed, Stained, laid_plane, laid_roof, plan, svg,
};
use roof::laying::lay;
use roof::leak::suspects;
use roofs::{FOOT, ell, gable, gable_planes, hip, hole, lean_to, tee};
use std::path::Path;
use std::time::Instant;
use trade::catalogue::StopKey;
use trade::ids::PartId;
use trade::laid::{Pieces, ValleyIs};
use trade::leak::{Candidate, LetsIn, Lies, Stain};
use trade::roof::{LineKind, RoofPlan};
use trade::units::{Length, Pitch};
use trade::words::{Language, Said, Words};

fn parts() -> Vec<Placed> {
    let part = |letter: &str, number, at, near| Placed {
        letter: letter.to_owned(),
        number,
        at,
        near,
        chosen: number == 3,
    };
    vec![
        part("A", 1, None, Some(LineKind::Eave)),
        part("A", 2, Some((4.0, 2.0)), None),
        part("A", 3, Some((4.6, 2.6)), None),
        part("A", 4, None, Some(LineKind::Ridge)),
        part("B", 1, None, None),
        part("B", 2, None, None),
        part("B", 3, None, Some(LineKind::Rake)),
        part("C", 1, None, Some(LineKind::Valley)),
        part("C", 2, None, Some(LineKind::Valley)),
    ]
}

/// A stain under the first slope, and the ways to it from two parts up the slope.
fn leak(roof: &RoofPlan, below: Option<Said>) -> Marks {
    let at = (5.0, 1.6);
    let candidate = |number: u128, lies| Candidate {
        part: PartId(uuid::Uuid::from_u128(number)),
        name: Said::default(),
        stop: StopKey::from("pipes"),
        plane: 0,
        lies,
        rung: None,
        lets_in: LetsIn::default(),
    };
    let chimney = Lies::Through {
        at: (5.4, 2.6),
        wide: Length::feet(4),
        deep: Length::feet(2),
    };
    let candidates = [
        candidate(1, chimney),
        candidate(2, Lies::Spot { at: (5.2, 3.6) }),
    ];
    let stain = Stain {
        at,
        within: Length::feet(2),
        when: None,
        wind_from: None,
    };
    let found = suspects(roof, &stain, &candidates).unwrap_or_default();
    Marks {
        stain: Some(Stained { at, within: 0.6 }),
        water: found.into_iter().map(|one| one.way).collect(),
        below,
        ..Marks::default()
    }
}

fn keep(folder: &Path, name: &str, picture: &Picture) {
    let text = svg(&picture.drawing, name, "", Colours::SHEET);
    println!(
        "{name}: {} bytes, not written: {:?}",
        text.len(),
        picture.left_out
    );
    if let Err(error) = std::fs::write(folder.join(format!("{name}.svg")), text) {
        eprintln!("{name}: {error}");
    }
}

fn main() {
    let folder = std::env::args().nth(1).unwrap_or_else(|| ".".to_owned());
    let folder = Path::new(&folder);
    let six = Pitch::rise(6);
    let mut holed = gable_planes(46.0 * FOOT, 28.0 * FOOT, six);
    holed[0].holes.push(hole((6.0, 1.8), (7.2, 2.9)));
    let roofs: Vec<(&str, RoofPlan)> = vec![
        ("gable", gable(46.0 * FOOT, 28.0 * FOOT, six)),
        ("hip", hip(60.0 * FOOT, 50.0 * FOOT, Pitch::rise(8))),
        ("ell", ell(50.0 * FOOT, 60.0 * FOOT, 24.0 * FOOT, six)),
        (
            "tee",
            tee(
                50.0 * FOOT,
                30.0 * FOOT,
                (8.0 * FOOT, 26.0 * FOOT),
                10.0 * FOOT,
                six,
            ),
        ),
        ("lean-to", lean_to(20.0 * FOOT, 10.0 * FOOT, Pitch::rise(3))),
        ("holed", roofs::plan(&holed, &[])),
    ];
    let words = Words::of(Language::English);
    for (name, roof) in &roofs {
        let below = Some(Said::new("plan-street"));
        let plain = Marks {
            below: below.clone(),
            ..Marks::default()
        };
        keep(
            folder,
            &format!("{name}-plain"),
            &plan(roof, &plain, words, PHONE),
        );
        let marked = Marks {
            parts: parts(),
            chosen: Some(1),
            below: below.clone(),
            ..Marks::default()
        };
        keep(
            folder,
            &format!("{name}-marked"),
            &plan(roof, &marked, Words::of(Language::Spanish), PHONE),
        );
        keep(
            folder,
            &format!("{name}-leak"),
            &plan(roof, &leak(roof, below), words, PHONE),
        );
        let started = Instant::now();
        match lay(roof, &Pieces::laminated(), ValleyIs::ClosedCut) {
            Ok((laid, pieces)) => {
                println!(
                    "{name}: {} pieces laid in {:?}, {:.1} % fell",
                    pieces.len(),
                    started.elapsed(),
                    laid.waste * 100.0
                );
                keep(
                    folder,
                    &format!("{name}-laid"),
                    &laid_roof(roof, &laid, &pieces, words, PHONE),
                );
                if let Some(picture) = laid_plane(roof, &laid, &pieces, 0, words, PHONE) {
                    keep(folder, &format!("{name}-laid-a"), &picture);
                }
            }
            Err(error) => eprintln!("{name}: {error}"),
        }
    }
}
