//! What the record knows of a roof before it is counted.

#![cfg(test)]

mod support;

use price::Standing;
use price::takeoff::deck_sheets;
use support::{add_part, history, structure};
use trade::answer::Answer;
use trade::catalogue::Catalogue;
use trade::mark::{Condition, Extent, Measure, MeasureOf};
use trade::takeoff::Spread;
use trade::units::{Got, Length, Measured, Pitch};
use trade::worksheet::{ChimneySize, Worksheet};

fn measure(of: MeasureOf, value: Length) -> Measure {
    let (got, within) = (Got::Tape, 0.01);
    let value = Measured { value, got, within };
    Measure { of, value }
}

#[test]
fn parts_and_measures_are_read_and_what_is_gone_is_not() {
    let mut history = history(Pitch::rise(6));
    let inches = Length::inches;
    let pipe = vec![measure(MeasureOf::Diameter, inches(3))];
    let boot = add_part(&mut history, 1, "pipe-boot", None, pipe.clone());
    add_part(&mut history, 2, "pipe-boot", None, pipe);
    history.marks[1].condition = Condition::Gone;
    let wide = vec![
        measure(MeasureOf::Width, inches(36)),
        measure(MeasureOf::Distance, Length::ZERO),
    ];
    let chimney = add_part(&mut history, 3, "masonry-chimney", None, wide);
    add_part(&mut history, 4, "roof-vent", None, Vec::new());
    for (number, overhang) in [(5, 12), (6, 16)] {
        let overhang = vec![measure(MeasureOf::Overhang, inches(overhang))];
        add_part(&mut history, number, "eave-edge", None, overhang);
    }
    let standing = Standing::of(&history, structure());
    let pipes: Vec<_> = standing
        .pipes
        .iter()
        .map(|pipe| (pipe.part, pipe.diameter))
        .collect();
    assert_eq!(pipes, [(boot, Some(inches(3)))]);
    assert_eq!(standing.chimneys.len(), 1);
    let found = standing.chimneys[0];
    assert_eq!((found.part, found.astride_ridge), (chimney, Answer::Yes));
    assert_eq!(found.width.map(|width| width.value), Some(inches(36)));
    assert_eq!(
        (standing.high_vents, standing.overhang),
        (1, Some(inches(16)))
    );
}

/// A mark's width goes before that of the worksheet; the depth stands there alone.
#[test]
fn a_chimney_is_as_large_as_a_mark_or_the_worksheet_says() {
    let mut history = history(Pitch::rise(6));
    let inches = Length::inches;
    let marked = add_part(
        &mut history,
        1,
        "masonry-chimney",
        None,
        vec![measure(MeasureOf::Width, inches(36))],
    );
    let bare = add_part(&mut history, 2, "masonry-chimney", None, Vec::new());
    let mut sheet = Worksheet::blank(
        uuid::Uuid::from_u128(9).into(),
        structure(),
        jiff::Timestamp::UNIX_EPOCH,
    );
    for part in [marked, bare] {
        sheet.set_chimney(ChimneySize {
            part,
            width: Some(inches(32)),
            depth: Some(inches(20)),
        });
    }
    history.worksheets.push(sheet);
    let standing = Standing::of(&history, structure());
    let sizes: Vec<_> = standing
        .chimneys
        .iter()
        .map(|chimney| (chimney.width.map(|width| width.value), chimney.depth))
        .collect();
    assert_eq!(
        sizes,
        [
            (Some(inches(36)), Some(inches(20))),
            (Some(inches(32)), Some(inches(20)))
        ]
    );
}

/// A sheet a place: one place is one or two sheets, two or three places two to four. Common practice, no source.
#[test]
fn sheets_of_deck_by_what_was_found_soft() {
    let catalogue = Catalogue::standard();
    let mut history = history(Pitch::rise(6));
    let sheets = |history: &trade::history::History| deck_sheets(history, structure(), catalogue);
    assert_eq!(sheets(&history), None);
    add_part(
        &mut history,
        1,
        "deck",
        Some(("deck-soft-spot", Extent::Spot)),
        Vec::new(),
    );
    let one = Spread {
        least: 1.0,
        likely: 1.0,
        most: 2.0,
    };
    assert_eq!(sheets(&history), Some(one));
    add_part(
        &mut history,
        2,
        "deck",
        Some(("deck-soft-spot", Extent::Several)),
        Vec::new(),
    );
    let four = Spread {
        least: 3.0,
        likely: 4.0,
        most: 6.0,
    };
    assert_eq!(sheets(&history), Some(four));
    add_part(
        &mut history,
        3,
        "deck",
        Some(("deck-soft-broad", Extent::Spot)),
        Vec::new(),
    );
    assert_eq!(sheets(&history), None);
}
