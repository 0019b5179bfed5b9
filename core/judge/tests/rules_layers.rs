//! Counting layers: from a reading down to the deck, and from butt lines measured at a rake edge.
//!
//! That courses repeat at the exposure and a starter shows no second repeat is common practice, no source; the arithmetic
//! is computed.

#![allow(clippy::unwrap_used, reason = "a test may stop at the first surprise")]

mod roof;

use judge::layers::{BUTT_TOLERANCE, LayerCount, count, layers_at_edge};
use proptest::prelude::*;
use roof::{Books, Roof, near};
use trade::answer::Answer;
use trade::ids::StackId;
use trade::mark::Rung;
use trade::stack::{Covering, EdgeCourses, Layer, LayerIs, Learned, Stack};
use trade::units::Length;
use trade::verdict::Question;
use uuid::Uuid;

const STRIP: LayerIs = LayerIs::Covering(Covering::AsphaltStrip);
const LAMINATED: LayerIs = LayerIs::Covering(Covering::AsphaltLaminated);

fn stack(roof: &Roof, number: u128, layers: &[LayerIs], learned: Learned) -> Stack {
    Stack {
        id: StackId::from(Uuid::from_u128(number)),
        visit: roof.history.visits[0].id,
        structure: roof.house,
        slope: Some(roof.front),
        spot: String::new(),
        rebuilt: false,
        layers: layers
            .iter()
            .map(|is| Layer {
                is: *is,
                colour: None,
                thickness: None,
            })
            .collect(),
        edge: None,
        learned,
    }
}

fn a_roof() -> Roof {
    let mut roof = Roof::new();
    roof.visit("2024-05-01");
    roof
}

#[test]
fn only_coverings_are_layers() {
    let roof = a_roof();
    let rows: [(&[LayerIs], u8); 5] = [
        (&[LAMINATED, LayerIs::Membrane, LayerIs::Deck], 1),
        (&[LAMINATED, STRIP, LayerIs::Membrane, LayerIs::Deck], 2),
        // Sheathing laid over an old covering is no layer; the covering under it is.
        (
            &[
                LAMINATED,
                LayerIs::Membrane,
                LayerIs::Sheathing,
                STRIP,
                LayerIs::Deck,
            ],
            2,
        ),
        (&[STRIP, STRIP, LAMINATED, LayerIs::Deck], 3),
        (&[LayerIs::Membrane, LayerIs::Deck], 0),
    ];
    for (layers, expected) in rows {
        let read = stack(&roof, 1, layers, Learned::Drilled);
        assert_eq!(count([&read]).most, expected, "{layers:?}");
    }
}

#[test]
fn worst_governs_and_the_spread_is_kept() {
    let roof = a_roof();
    let one = stack(&roof, 1, &[LAMINATED, LayerIs::Deck], Learned::CutEdge);
    let two = stack(
        &roof,
        2,
        &[LAMINATED, STRIP, LayerIs::Deck],
        Learned::Drilled,
    );
    let word = stack(&roof, 3, &[STRIP, STRIP, STRIP], Learned::OwnersWord);
    let LayerCount { least, most, spots } = count([&one, &two, &word]);
    assert_eq!((least, most), (1, 2));
    assert_eq!(spots.len(), 3);
}

#[test]
fn an_overlay_nested_on_longer_shingles_shows_a_second_line_two_inches_off() {
    // 12 in shingles at 5 in shows: 12 mod 5 = 2 (computed).
    let exposure = Length::inches(5);
    let butts = |offset: i64| (0..6).map(move |course| Length::inches(offset + 5 * course));
    let edge = EdgeCourses {
        exposure,
        butts: butts(0).chain(butts(2)).collect(),
    };
    assert_eq!(layers_at_edge(&edge), 2);
}

#[test]
fn a_starter_is_no_layer() {
    let mut butts: Vec<Length> = (0..5).map(|course| Length::inches(5 * course)).collect();
    // The starter's upper edge shows once, 7 in up.
    butts.push(Length::inches(7));
    let edge = EdgeCourses {
        exposure: Length::inches(5),
        butts,
    };
    assert_eq!(layers_at_edge(&edge), 1);
}

#[test]
fn nothing_is_told_from_lines_that_do_not_repeat() {
    for butts in [
        vec![],
        vec![Length::inches(3)],
        vec![Length::ZERO, Length::inches(2)],
    ] {
        let edge = EdgeCourses {
            exposure: Length::inches(5),
            butts,
        };
        assert_eq!(layers_at_edge(&edge), 0);
    }
    let no_exposure = EdgeCourses {
        exposure: Length::ZERO,
        butts: vec![Length::inches(5), Length::inches(10)],
    };
    assert_eq!(layers_at_edge(&no_exposure), 0);
}

/// The answers about layers of a structure on which only these readings were made, on the front slope alone.
fn answers(roof: &mut Roof, stacks: Vec<Stack>) -> (Answer, Answer) {
    roof.history.slopes.retain(|slope| slope.id == roof.front);
    roof.history.stacks = stacks;
    let visit = roof.history.visits[0].id;
    let books = Books::new();
    let rules = books.rules();
    let as_of = judge::as_of::AsOf::read(&roof.history, roof.house, visit, &rules).unwrap();
    let facts = judge::facts::Facts::gather(&as_of, &judge::faults::faults(&as_of));
    (
        facts.answer(Question::TwoLayers),
        facts.answer(Question::ThreeLayers),
    )
}

#[test]
fn what_a_reading_answers() {
    use Answer::{No, Unknown, Yes};
    let deck = LayerIs::Deck;
    let rows: [(&[LayerIs], Learned, Answer, Answer); 7] = [
        (&[STRIP, deck], Learned::CutEdge, No, No),
        (&[STRIP, STRIP, deck], Learned::RakeEdge, Yes, No),
        (&[STRIP, STRIP, STRIP, deck], Learned::Drilled, Yes, Yes),
        // A lifted tab shows what lies under it, not that nothing lies under that.
        (&[STRIP], Learned::Lifted, Unknown, Unknown),
        (&[STRIP, STRIP], Learned::Lifted, Yes, Unknown),
        (&[STRIP, LayerIs::Membrane, deck], Learned::Lifted, No, No),
        // The owner's word settles nothing.
        (&[STRIP, STRIP], Learned::OwnersWord, Unknown, Unknown),
    ];
    for (layers, learned, two, three) in rows {
        let mut roof = a_roof();
        let read = stack(&roof, 1, layers, learned);
        assert_eq!(
            answers(&mut roof, vec![read]),
            (two, three),
            "{layers:?} {learned:?}"
        );
    }
}

#[test]
fn one_layer_on_one_slope_says_nothing_of_the_other() {
    let mut roof = a_roof();
    let read = stack(&roof, 1, &[STRIP, LayerIs::Deck], Learned::CutEdge);
    roof.history.stacks = vec![read];
    let visit = roof.history.visits[0].id;
    let part = roof.part("ridge-cap");
    roof.mark(visit, part, near(Rung::Sound), &[]);
    let books = Books::new();
    let rules = books.rules();
    let as_of = judge::as_of::AsOf::read(&roof.history, roof.house, visit, &rules).unwrap();
    let facts = judge::facts::Facts::gather(&as_of, &judge::faults::faults(&as_of));
    assert_eq!(facts.answer(Question::TwoLayers), Answer::Unknown);
}

/// Layers at a rake: each at its own offset within one exposure, far enough apart to be told.
fn offsets(layers: usize, exposure: i64) -> impl Strategy<Value = Vec<i64>> {
    // Sixteenths of an inch. Lines of one layer wander by an eighth each way, and the tolerance joins them.
    let apart = 2 * NOISE + 2 * BUTT_TOLERANCE.nanometres() / Length::sixteenths(1).nanometres();
    prop::collection::vec(0..exposure, layers).prop_filter("too close to be told", move |all| {
        all.iter().enumerate().all(|(at, one)| {
            all.iter().skip(at + 1).all(|other| {
                let gap = (one - other).rem_euclid(exposure);
                gap.min(exposure - gap) > apart
            })
        })
    })
}

const NOISE: i64 = 1;

proptest! {
    #[test]
    fn the_count_comes_back_from_the_butt_lines(
        (exposure, offsets, courses, noise, starter) in (1_usize..=4, 80_i64..=100)
            .prop_flat_map(|(layers, exposure)| (
                Just(exposure),
                offsets(layers, exposure),
                4_usize..12,
                prop::collection::vec(-NOISE..=NOISE, layers * 12),
                prop::option::of(0..exposure),
            ))
    ) {
        let layers = offsets.len();
        let mut butts: Vec<Length> = offsets
            .iter()
            .enumerate()
            .flat_map(|(layer, offset)| {
                let noise = &noise;
                (0..courses).map(move |course| {
                    let up = exposure * i64::try_from(course).unwrap();
                    Length::sixteenths(offset + up + noise[layer * 12 + course])
                })
            })
            .collect();
        // A starter shows one line, where it is told from the layers at all.
        let told = starter.is_none_or(|starter| offsets.iter().all(|offset| {
            let gap = (starter - offset).rem_euclid(exposure);
            gap.min(exposure - gap) > 2 * NOISE + 6
        }));
        if let Some(starter) = starter.filter(|_| told) {
            butts.push(Length::sixteenths(starter));
        }
        let edge = EdgeCourses { exposure: Length::sixteenths(exposure), butts };
        prop_assert_eq!(layers_at_edge(&edge), layers);
    }

    #[test]
    fn the_order_of_the_lines_does_not_matter(
        (butts, shuffled) in prop::collection::vec(0_i64..2_000, 0..24)
            .prop_flat_map(|butts| (Just(butts.clone()), Just(butts).prop_shuffle()))
    ) {
        let edge = |butts: Vec<i64>| EdgeCourses {
            exposure: Length::inches(5),
            butts: butts.into_iter().map(Length::sixteenths).collect(),
        };
        prop_assert_eq!(layers_at_edge(&edge(butts)), layers_at_edge(&edge(shuffled)));
    }
}
