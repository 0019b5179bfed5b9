//! The likely six, measured on marks that they were not counted from. Common practice, no source for the bar of 85 %; the marks are the
//! demo's own, so the figure says how the ranking works, not how often a roofer will be right.

use acts::likely;
use acts::record::file::{PartPart, StructurePart, VisitFile};
use fixtures::Story;
use std::collections::BTreeMap;
use trade::catalogue::{Catalogue, DefectKey, KindKey};
use trade::stack::{Covering, LayerIs};

const BAR: f64 = 0.85;

type Counts = BTreeMap<KindKey, BTreeMap<DefectKey, u32>>;

#[test]
fn the_likely_six_hold_most_of_what_is_found() {
    let demo = fixtures::demo();
    let stories: Vec<&Story> = demo.stories.iter().chain(&demo.others).collect();
    let (held_out, training): (Vec<_>, Vec<_>) =
        stories.iter().enumerate().partition(|(at, _)| at % 10 >= 7);
    let counts = counts(training.into_iter().map(|(_, story)| *story));
    let mut tally = Tally::default();
    for (_, story) in held_out {
        story_measured(story, &counts, &mut tally);
    }
    let share = f64::from(tally.hit) / f64::from(tally.all);
    println!(
        "the likely six hold {} of {} held-out defects: {:.1} %",
        tally.hit,
        tally.all,
        100.0 * share
    );
    println!("missed most often: {:?}", tally.missed());
    assert!(
        tally.all > 200,
        "there is something to measure: {}",
        tally.all
    );
    assert!(share >= BAR, "{share} is under {BAR}");
}

#[derive(Default)]
struct Tally {
    hit: u32,
    all: u32,
    missed: BTreeMap<(KindKey, DefectKey), u32>,
}

impl Tally {
    fn missed(&self) -> Vec<(&(KindKey, DefectKey), &u32)> {
        let mut missed: Vec<_> = self.missed.iter().collect();
        missed.sort_by_key(|(_, times)| std::cmp::Reverse(**times));
        missed.truncate(8);
        missed
    }
}

fn counts<'a>(stories: impl Iterator<Item = &'a Story>) -> Counts {
    let mut counts = Counts::new();
    let parts = stories
        .flat_map(Story::visits)
        .flat_map(|file| &file.structures)
        .flat_map(|structure| &structure.parts);
    for part in parts {
        for seen in &part.defects {
            let of_kind = counts.entry(part.kind.clone()).or_default();
            *of_kind.entry(seen.defect.clone()).or_default() += 1;
        }
    }
    counts
}

fn story_measured(story: &Story, counts: &Counts, tally: &mut Tally) {
    let visits: Vec<&VisitFile> = story.visits().collect();
    let none = BTreeMap::new();
    for (at, file) in visits.iter().enumerate() {
        let before = &visits[..at];
        for structure in &file.structures {
            for part in &structure.parts {
                let six = likely::rank(
                    Catalogue::standard(),
                    &part.kind,
                    covering(before, structure),
                    &earlier(before, structure, part),
                    counts.get(&part.kind).unwrap_or(&none),
                );
                for seen in &part.defects {
                    tally.all += 1;
                    if six.contains(&seen.defect) {
                        tally.hit += 1;
                    } else {
                        *tally
                            .missed
                            .entry((part.kind.clone(), seen.defect.clone()))
                            .or_default() += 1;
                    }
                }
            }
        }
    }
}

fn the_same<'a>(
    visits: &'a [&VisitFile],
    structure: &'a StructurePart,
) -> impl Iterator<Item = &'a StructurePart> {
    let same =
        |known: &&StructurePart| known.kind == structure.kind && known.name == structure.name;
    visits
        .iter()
        .rev()
        .flat_map(|file| &file.structures)
        .filter(same)
}

/// What was read on an earlier visit.
fn covering(before: &[&VisitFile], structure: &StructurePart) -> Covering {
    the_same(before, structure)
        .flat_map(|known| known.layers.iter().rev())
        .find_map(|stack| match stack.layers.first()?.layer {
            LayerIs::Covering(covering) => Some(covering),
            _ => None,
        })
        .unwrap_or(Covering::Unclear)
}

fn earlier(before: &[&VisitFile], structure: &StructurePart, part: &PartPart) -> Vec<DefectKey> {
    the_same(before, structure)
        .flat_map(|known| &known.parts)
        .filter(|known| {
            known.kind == part.kind && known.slope == part.slope && known.which == part.which
        })
        .flat_map(|known| known.defects.iter().map(|seen| seen.defect.clone()))
        .collect()
}
