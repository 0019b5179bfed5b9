//! What comes down and what a roof carries, against the books' weights.

#![cfg(test)]

mod support;

use price::{Reading, TearOffError, Weights, load, tear_off};
use proptest::prelude::*;
use rust_decimal::Decimal;
use support::{STRIP, gable, slope_id};
use trade::price_list::Trailer;
use trade::stack::{Covering, Layer, LayerIs, Learned, Stack};
use trade::takeoff::{Binding, Layers, RoofTask, Spread};
use trade::units::{Length, Pitch};

fn reading(plane: usize, coverings: &[Covering]) -> Reading {
    Reading {
        slope: Some(slope_id(plane)),
        coverings: coverings.to_vec(),
        layers: u8::try_from(coverings.len()).unwrap(),
        sheathing: 0.0,
    }
}

fn trailer(pounds: i64, cubic_yards: i64) -> Trailer {
    Trailer {
        pounds: Decimal::from(pounds),
        cubic_yards: Decimal::from(cubic_yards),
    }
}

/// Weights as plain numbers, so that the arithmetic can be followed.
fn plain_weights() -> Weights {
    let mut weights = Weights::default();
    weights.a_square.insert(STRIP, Spread::exactly(235.0));
    weights.a_cubic_yard = Spread::exactly(731.0);
    weights
}

/// Two layers over 1252.2 ft² (a gable of 40 × 28 ft at 6:12): 25.04 layer squares at 235 lb (a municipal minimum for strips) are 5885 lb, 8.05 cubic
/// yards at 731 lb (EPA 2016, from memory).
#[test]
fn two_layers_over_a_gable() {
    let plan = gable(40.0, 28.0, Pitch::rise(6), Length::ZERO);
    let readings = [reading(0, &[STRIP, STRIP]), reading(1, &[STRIP, STRIP])];
    let by_weight = tear_off(
        &plan,
        &[0, 1],
        &readings,
        &plain_weights(),
        &trailer(3000, 10),
    )
    .unwrap();
    assert!((by_weight.squares.likely - 12.522).abs() < 0.001);
    assert!((by_weight.pounds.likely - 5885.2).abs() < 0.5);
    assert!((by_weight.cubic_yards.likely - 8.051).abs() < 0.001);
    assert_eq!(by_weight.layers, Layers { least: 2, most: 2 });
    assert_eq!(
        (by_weight.loads.likely, by_weight.bound_by),
        (2, Binding::Weight)
    );
    let by_volume = tear_off(
        &plan,
        &[0, 1],
        &readings,
        &plain_weights(),
        &trailer(30_000, 3),
    )
    .unwrap();
    assert_eq!(
        (by_volume.loads.likely, by_volume.bound_by),
        (3, Binding::Volume)
    );
    let squares: f64 = by_weight
        .tasks
        .iter()
        .map(|task| {
            assert_eq!(task.task, RoofTask::TearOff);
            task.amount.likely
        })
        .sum();
    assert!((squares - 25.044).abs() < 0.001);
}

#[test]
fn layers_that_differ_make_a_range() {
    let plan = gable(40.0, 28.0, Pitch::rise(6), Length::ZERO);
    let readings = [
        reading(0, &[STRIP]),
        reading(0, &[STRIP, STRIP]),
        reading(0, &[STRIP, STRIP]),
        reading(1, &[STRIP]),
    ];
    let down = tear_off(
        &plan,
        &[0, 1],
        &readings,
        &plain_weights(),
        &trailer(3000, 10),
    )
    .unwrap();
    assert_eq!(down.layers, Layers { least: 1, most: 2 });
    let half = 6.261;
    let wanted = [2.0 * half, 3.0 * half, 3.0 * half];
    let got = down.layer_squares;
    for (got, wanted) in [got.least, got.likely, got.most].into_iter().zip(wanted) {
        assert!((got - wanted).abs() < 0.001, "{got} {wanted}");
    }
}

#[test]
fn suspect_asbestos_stops_the_tear_off() {
    let plan = gable(40.0, 28.0, Pitch::rise(6), Length::ZERO);
    let readings = [
        reading(0, &[STRIP]),
        reading(1, &[STRIP, Covering::AsbestosCement]),
    ];
    let weights = Weights::default();
    let limits = trailer(3000, 10);
    assert_eq!(
        tear_off(&plan, &[0, 1], &readings, &weights, &limits),
        Err(TearOffError::Asbestos)
    );
    assert!(tear_off(&plan, &[0], &readings, &weights, &limits).is_ok());
}

#[test]
fn what_is_not_known_is_asked_for() {
    let plan = gable(40.0, 28.0, Pitch::rise(6), Length::ZERO);
    let weights = Weights::default();
    let limits = trailer(3000, 10);
    assert_eq!(
        tear_off(&plan, &[0], &[], &weights, &limits),
        Err(TearOffError::LayersNotCounted("A".into()))
    );
    assert_eq!(
        tear_off(
            &plan,
            &[0],
            &[reading(0, &[Covering::Unclear])],
            &weights,
            &limits
        ),
        Err(TearOffError::WeightNotKnown(Covering::Unclear))
    );
    assert_eq!(
        tear_off(&plan, &[9], &[reading(0, &[STRIP])], &weights, &limits),
        Err(TearOffError::NoSuchPlane(9))
    );
    assert_eq!(
        tear_off(
            &plan,
            &[0],
            &[reading(0, &[STRIP])],
            &weights,
            &trailer(0, 10)
        ),
        Err(TearOffError::Trailer)
    );
}

/// Asphalt 2 psf a layer, HUD's guide 3; slate at 1/4 in 10; sheathing 3 an inch (ASCE 7 Table C3.1 family). On plan × √(rise² + 144) / 12.
#[test]
fn what_the_roof_carries() {
    let plan = gable(40.0, 28.0, Pitch::rise(12), Length::ZERO);
    let boarded = Reading {
        sheathing: 0.5,
        ..reading(1, &[STRIP, Covering::WoodShingle])
    };
    let readings = [reading(0, &[STRIP]), boarded];
    let loads = load(&plan, &readings, Some(STRIP), &Weights::default()).unwrap();
    let first = &loads[0];
    assert!((first.on_slope.likely - 2.0).abs() < 1e-9);
    assert!((first.on_slope.most - 3.0).abs() < 1e-9);
    assert!((first.on_plan.likely - 2.0 * 2f64.sqrt()).abs() < 1e-9);
    let another = first.with_another.unwrap();
    assert!((another.likely - 4.0 * 2f64.sqrt()).abs() < 1e-9);
    // One layer at most 3 psf over one: IEBC 706.2 exception 2.
    assert_eq!(first.excepted, Some(true));
    // Strips 2, shingles of wood 3, half an inch of sheathing 1.5.
    assert!((loads[1].on_slope.likely - 6.5).abs() < 1e-9);
    assert_eq!(loads[1].excepted, Some(false));
    let slate = load(&plan, &readings, Some(Covering::Slate), &Weights::default()).unwrap();
    assert_eq!(slate[0].excepted, Some(false));
}

#[test]
fn readings_come_from_stacks() {
    let layer = |is| Layer {
        is,
        colour: None,
        thickness: None,
    };
    let stack = Stack {
        id: support::id(1),
        visit: support::visit(),
        structure: support::structure(),
        slope: Some(slope_id(0)),
        spot: String::new(),
        rebuilt: false,
        layers: vec![
            layer(LayerIs::Covering(STRIP)),
            layer(LayerIs::Membrane),
            layer(LayerIs::Sheathing),
            layer(LayerIs::Covering(Covering::WoodShingle)),
            layer(LayerIs::Deck),
        ],
        edge: None,
        learned: Learned::CutEdge,
    };
    let read = Reading::of(&stack, 2).unwrap();
    assert_eq!(read.coverings, [STRIP, Covering::WoodShingle]);
    assert_eq!(read.layers, 2);
    assert!((read.sheathing - 0.5).abs() < 1e-9);
    // A third line at the edge that nobody named is taken to be like the lowest layer that was.
    let more = Reading::of(&stack, 3).unwrap();
    let layers: Vec<_> = more.each_layer().collect();
    assert_eq!(
        layers,
        [STRIP, Covering::WoodShingle, Covering::WoodShingle]
    );
    let told = Stack {
        learned: Learned::OwnersWord,
        ..stack
    };
    assert_eq!(Reading::of(&told, 2), None);
}

proptest! {
    /// Another layer never weighs less, fills less or takes fewer loads; all ranges stand in order.
    #[test]
    fn more_layers_never_weigh_less(
        long in 10.0..100.0f64,
        wide in 10.0..60.0f64,
        rise in 2u32..16,
        layers in 1usize..4,
        pounds in 500i64..20_000,
        yards in 1i64..40,
        within in 0.0..0.1f64,
    ) {
        let mut plan = gable(long, wide, Pitch::rise(rise), Length::ZERO);
        plan.length_within = within;
        let limits = trailer(pounds, yards);
        let weights = Weights::default();
        let down = |layers: usize| {
            let readings = [reading(0, &vec![STRIP; layers])];
            tear_off(&plan, &[0, 1], &readings, &weights, &limits).unwrap()
        };
        let (few, more) = (down(layers), down(layers + 1));
        prop_assert!(few.pounds.likely < more.pounds.likely);
        prop_assert!(few.loads.most <= more.loads.most);
        for spread in [more.pounds, more.cubic_yards, more.layer_squares, more.loads.spread()] {
            prop_assert!(spread.least <= spread.likely && spread.likely <= spread.most);
        }
        let carried = f64::from(more.loads.most) * f64::from(u32::try_from(pounds).unwrap());
        prop_assert!(carried * (1.0 + 1e-5) >= more.pounds.most);
    }
}
