//! A covering over some slopes: what they take alone adds up to what the whole roof takes, but for the lines that two of them share.

#![cfg(test)]

mod support;

use price::takeoff::{TakeoffError, planes_of, takeoff};
use price::{Basis, Choices, Reading, Standing, Supplies, Weights, tear_off};
use proptest::prelude::*;
use support::{STRIP, example_list, gable, history, icy, laid_on, need, slope_id};
use trade::firm::Edition;
use trade::laid::Pieces;
use trade::property::Slope;
use trade::roof::RoofPlan;
use trade::takeoff::{Item, RoofTask, Spread, Takeoff, TearOff};
use trade::units::{Length, Pitch};

fn counted(plan: &RoofPlan, planes: &[usize]) -> Takeoff {
    let list = example_list();
    let basis = Basis {
        profile: &icy(Edition::E2018),
        supplies: &Supplies::of(&list),
        standing: &Standing::default(),
        choices: &Choices::default(),
    };
    takeoff(plan, &laid_on(plan, planes, Pieces::strip(), 0.05), &basis).unwrap()
}

fn down(plan: &RoofPlan, planes: &[usize]) -> TearOff {
    let layers = |plane: usize| Reading {
        slope: Some(slope_id(plane)),
        coverings: vec![STRIP; plane + 1],
        layers: u8::try_from(plane).unwrap() + 1,
        sheathing: 0.0,
    };
    let trailer = example_list().disposal.trailer.expect("a trailer");
    tear_off(
        plan,
        planes,
        &[layers(0), layers(1)],
        &Weights::default(),
        &trailer,
    )
    .unwrap()
}

fn is_near(one: Spread, other: Spread, give: f64) -> bool {
    let near = |one: f64, other: f64| (one - other).abs() <= give + 1e-6 * one.abs();
    near(one.least, other.least) && near(one.likely, other.likely) && near(one.most, other.most)
}

fn work(takeoff: &Takeoff, task: RoofTask) -> Spread {
    takeoff
        .tasks
        .iter()
        .filter(|row| row.task == task)
        .map(|row| row.amount)
        .sum()
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 200, failure_persistence: None, ..ProptestConfig::default() })]

    /// Both slopes of a gable alone, and together: areas, eaves and rakes add up; the ridge between them is capped by either. What is bought
    /// adds up within the pack that each begins.
    #[test]
    fn the_covered_planes_add_up_to_the_whole(
        long in 12.0..90.0_f64,
        wide in 10.0..60.0_f64,
        rise in 4_u32..13,
        within in 0.0..0.05_f64,
    ) {
        let mut plan = gable(long, wide, Pitch::rise(rise), Length::inches(12));
        plan.length_within = within;
        let (front, rear, whole) = (counted(&plan, &[0]), counted(&plan, &[1]), counted(&plan, &[0, 1]));
        prop_assert!(is_near(front.squares + rear.squares, whole.squares, 1e-9));
        for task in [RoofTask::LayShingles, RoofTask::LayUnderlayment, RoofTask::LayStarter, RoofTask::SetDripEdge] {
            prop_assert!(is_near(work(&front, task) + work(&rear, task), work(&whole, task), 1e-6), "{task:?}");
        }
        let caps = work(&whole, RoofTask::LayCap);
        prop_assert!(is_near(work(&front, RoofTask::LayCap), caps, 1e-6));
        prop_assert!(is_near(work(&rear, RoofTask::LayCap), caps, 1e-6));
        for item in [Item::DripEdge, Item::IceBarrier, Item::Underlayment] {
            let (a, b, all) = (need(&front, item), need(&rear, item), need(&whole, item));
            prop_assert!(is_near(a.amount + b.amount, all.amount, 1e-6), "{item:?}");
            let packs = a.order + b.order;
            prop_assert!(packs == all.order || packs == all.order + 1, "{item:?}: {packs} for {}", all.order);
        }
        let (front, rear, whole) = (down(&plan, &[0]), down(&plan, &[1]), down(&plan, &[0, 1]));
        prop_assert!(is_near(front.pounds + rear.pounds, whole.pounds, 1e-6));
        prop_assert!(is_near(front.layer_squares + rear.layer_squares, whole.layer_squares, 1e-9));
        prop_assert!(is_near(front.cubic_yards + rear.cubic_yards, whole.cubic_yards, 1e-6));
    }
}

/// Which slopes a verdict names, and which planes are covered then.
#[test]
fn planes_are_those_of_the_slopes_that_are_named() {
    let history = history(Pitch::rise(6));
    let slopes: Vec<&Slope> = history.slopes.iter().collect();
    let whole = gable(40.0, 30.0, Pitch::rise(6), Length::inches(12));
    let mut rear_untied = whole.clone();
    rear_untied.planes[1].slope = None;
    let not_on_plan = |letter: &str| Err(TakeoffError::NotOnPlan(vec![letter.to_owned()]));
    for (plan, named, wanted) in [
        (&whole, &[][..], Ok(vec![0, 1])),
        (&whole, &slopes[..1], Ok(vec![0])),
        (&whole, &slopes[1..], Ok(vec![1])),
        (&whole, &slopes[..], Ok(vec![0, 1])),
        (&rear_untied, &[], Ok(vec![0, 1])),
        (&rear_untied, &slopes[..1], Ok(vec![0])),
        (&rear_untied, &slopes[1..], not_on_plan("B")),
        (&rear_untied, &slopes[..], not_on_plan("B")),
    ] {
        assert_eq!(planes_of(plan, named), wanted);
    }
}

/// A plane that nobody tied to a slope is not taken for one that was judged and stays: it is named apart, with how much roof it is.
#[test]
fn what_belongs_to_no_slope_is_named_with_its_area() {
    let mut plan = gable(40.0, 30.0, Pitch::rise(6), Length::ZERO);
    let tied = counted(&plan, &[0]);
    assert_eq!(tied.untied, None);
    plan.planes[1].slope = None;
    let front = counted(&plan, &[0]);
    assert!(front.planes_left.is_empty());
    let untied = front.untied.expect("the rear is untied");
    assert_eq!(untied.letters, ["B"]);
    // 40 ft by a rafter of 15 ft × √1.25.
    assert_eq!(untied.square_feet, 671);
    assert_eq!(counted(&plan, &[0, 1]).untied, None);
}

#[test]
fn what_is_left_is_named_by_its_letter() {
    let plan = gable(40.0, 30.0, Pitch::rise(6), Length::inches(12));
    let front = counted(&plan, &[0]);
    assert_eq!(front.planes, ["A"]);
    assert_eq!(front.planes_left, ["B"]);
}
