//! A round taped or paced is closed by the least changes, whichever way it was walked.

#![cfg(test)]

use proptest::prelude::*;
use roof::ShapeError;
use roof::survey::{Closed, close};
use trade::sketch::{EdgeIs, Leg};
use trade::units::{Got, Length};
use trade::words::{Language, Words};

fn leg(feet: f64, turn: f64) -> Leg {
    Leg {
        length: Length::from_inches(feet * 12.0),
        turn,
        is: EdgeIs::default(),
        pitch: None,
        overhang: None,
        slope: None,
    }
}

fn legs(sides: &[(f64, f64)]) -> Vec<Leg> {
    sides.iter().map(|&(feet, turn)| leg(feet, turn)).collect()
}

/// The sides and turns of a ring of corners in feet.
fn round(corners: &[(f64, f64)]) -> Vec<Leg> {
    let count = corners.len();
    let side = |at: usize| {
        let (from, to) = (corners[at % count], corners[(at + 1) % count]);
        (to.0 - from.0, to.1 - from.1)
    };
    (0..count)
        .map(|at| {
            let (one, next) = (side(at), side(at + 1));
            let turn = (one.0 * next.1 - one.1 * next.0).atan2(one.0 * next.0 + one.1 * next.1);
            leg(one.0.hypot(one.1), turn.to_degrees())
        })
        .collect()
}

/// A star: corners at even angles, at the distances given.
fn star(distances: &[f64]) -> Vec<(f64, f64)> {
    #[allow(clippy::cast_precision_loss)]
    let even = std::f64::consts::TAU / distances.len() as f64;
    let mut angle = 0.0;
    distances
        .iter()
        .map(|distance| {
            angle += even;
            (distance * f64::cos(angle), distance * f64::sin(angle))
        })
        .collect()
}

fn misread(mut legs: Vec<Leg>, by: &[(f64, f64)]) -> Vec<Leg> {
    for (leg, &(share, degrees)) in legs.iter_mut().zip(by) {
        leg.length = leg.length.scaled(1.0 + share);
        leg.turn += degrees;
    }
    legs
}

fn feet(length: Length) -> f64 {
    length.in_feet()
}

fn near(value: f64, wanted: f64, within: f64) {
    assert!((value - wanted).abs() <= within, "{value}, not {wanted}");
}

/// By hand: the sides along the street end 0.5 ft too far; each gives way by the square of its length, as its variance is.
#[test]
fn a_rectangle_gives_way_by_the_squares_of_its_lengths() {
    let closed = close(
        &legs(&[(40.5, 90.0), (28.0, 90.0), (40.0, 90.0), (28.0, 90.0)]),
        Got::Tape,
    )
    .unwrap();
    let squares = 40.5_f64.powi(2) + 40.0_f64.powi(2);
    near(
        feet(closed.lengths[0]),
        40.5 - 0.5 * 40.5_f64.powi(2) / squares,
        1e-7,
    );
    near(feet(closed.lengths[2]), feet(closed.lengths[0]), 1e-7);
    near(feet(closed.lengths[1]), 28.0, 1e-7);
    assert_eq!(closed.turns, [90.0; 4]);
    near(feet(closed.misclosure.length), 0.5, 1e-7);
    near(closed.misclosure.share, 0.5 / 136.5, 1e-9);
    near(closed.misclosure.direction, 0.0, 1e-9);
    assert_eq!(closed.corners[1], (closed.lengths[0], Length::ZERO));
}

/// The compass rule (Bowditch 1808): each corner is moved by its share of the way round. It weighs otherwise, so that it agrees to a part of the misclosure only.
fn by_the_compass_rule(legs: &[Leg]) -> Vec<(f64, f64)> {
    let mut heading = 0.0_f64;
    let (mut at, mut walked) = ((0.0, 0.0), 0.0);
    let mut corners = vec![(at, walked)];
    for leg in legs {
        let length = leg.length.in_metres();
        at = (at.0 + length * heading.cos(), at.1 + length * heading.sin());
        heading += leg.turn.to_radians();
        walked += length;
        corners.push((at, walked));
    }
    corners.pop();
    let end = at;
    corners
        .iter()
        .map(|((x, y), so_far)| (x - end.0 * so_far / walked, y - end.1 * so_far / walked))
        .collect()
}

/// Where the turns are all as built, the compass rule skews the roof by some of the misclosure, and the least squares keep it square.
#[test]
fn the_compass_rule_agrees_within_the_misclosure() {
    let ell = legs(&[
        (40.1, 90.0),
        (28.0, 90.0),
        (16.0, 90.0),
        (12.2, -90.0),
        (24.0, 90.0),
        (16.1, 90.0),
    ]);
    let closed = close(&ell, Got::Tape).unwrap();
    let off = closed.misclosure.length.in_metres();
    assert!(off > 0.05);
    for ((x, y), (bx, by)) in closed.corners.iter().zip(by_the_compass_rule(&ell)) {
        assert!((x.in_metres() - bx).hypot(y.in_metres() - by) < off);
    }
}

fn wrong(sides: &[(f64, f64)]) -> ShapeError {
    close(&legs(sides), Got::Paced).unwrap_err()
}

fn told(error: &ShapeError) -> String {
    Words::of(Language::English).say(&error.says())
}

#[test]
fn what_does_not_close_is_told() {
    assert!(matches!(
        wrong(&[(40.0, 90.0), (28.0, 90.0)]),
        ShapeError::TooFewCorners { corners: 2, .. }
    ));
    assert_eq!(
        wrong(&[(40.0, 120.0), (0.0, 120.0), (40.0, 120.0)]),
        ShapeError::NoMeasure(1)
    );
    assert_eq!(
        wrong(&[(40.0, 120.0), (40.0, 180.0), (40.0, 120.0)]),
        ShapeError::NoMeasure(1)
    );
    assert_eq!(
        wrong(&[(40.0, 120.0), (40.0, f64::NAN), (40.0, 120.0)]),
        ShapeError::NoMeasure(1)
    );
    assert_eq!(
        wrong(&[(40.0, 120.0), (4000.0, 120.0), (40.0, 120.0)]),
        ShapeError::NoMeasure(1)
    );
    let round = wrong(&[(40.0, 90.0), (28.0, 90.0), (40.0, 90.0), (28.0, -90.0)]);
    assert!(told(&round).contains("180.0°"), "{}", told(&round));
}

/// An L whose fifth side, 24 ft back to the left of the first, was left out: the way back is that side.
#[test]
fn the_side_that_is_missing_is_told() {
    let error = wrong(&[
        (40.0, 90.0),
        (28.0, 90.0),
        (16.0, 90.0),
        (12.0, 0.0),
        (16.0, 90.0),
    ]);
    let ShapeError::EndsFarOff {
        length,
        share,
        back,
    } = error
    else {
        panic!("{error:?}");
    };
    near(feet(length), 24.0, 1e-7);
    near(share, 24.0 / 112.0, 1e-9);
    near(back.abs(), 180.0, 1e-9);
    let error = wrong(&[(40.0, 90.0), (28.0, 90.0), (40.0, 90.0), (8.0, 90.0)]);
    assert!(
        told(&error).contains("20'") && told(&error).contains("90° to the right"),
        "{}",
        told(&error)
    );
}

/// A triangle with no turn as built: all three turns give way.
#[test]
fn a_triangle_closes() {
    let closed = close(
        &legs(&[(30.2, 126.0), (50.0, 145.0), (39.8, 91.0)]),
        Got::Tape,
    )
    .unwrap();
    near(closed.turns.iter().sum(), 360.0, 1e-9);
    near(closed.misclosure.turn, -2.0, 1e-9);
}

fn same(one: &Closed, lengths: &[Length], turns: &[f64]) {
    for (one, other) in one.lengths.iter().zip(lengths) {
        near(one.in_metres(), other.in_metres(), 1e-6);
    }
    for (one, other) in one.turns.iter().zip(turns) {
        near(*one, *other, 1e-6);
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(128))]

    #[test]
    fn a_true_round_is_left_as_it_is(distances in prop::collection::vec(15.0..40.0_f64, 3..12)) {
        let legs = round(&star(&distances));
        let closed = close(&legs, Got::Tape).unwrap();
        prop_assert!(closed.misclosure.length.in_metres() < 1e-6);
        let lengths: Vec<Length> = legs.iter().map(|leg| leg.length).collect();
        let turns: Vec<f64> = legs.iter().map(|leg| leg.turn).collect();
        same(&closed, &lengths, &turns);
    }

    #[test]
    fn it_is_the_same_from_whichever_corner_and_whichever_way(
        distances in prop::collection::vec(15.0..40.0_f64, 3..10), by in prop::collection::vec((-0.01..0.01_f64, -1.0..1.0_f64), 10), from in 0_usize..10,
    ) {
        let legs = misread(round(&star(&distances)), &by);
        let closed = close(&legs, Got::Tape).unwrap();
        let from = from % legs.len();
        let mut elsewhere = legs.clone();
        elsewhere.rotate_left(from);
        let other = close(&elsewhere, Got::Tape).unwrap();
        let (mut lengths, mut turns) = (closed.lengths.clone(), closed.turns.clone());
        lengths.rotate_left(from);
        turns.rotate_left(from);
        same(&other, &lengths, &turns);
        prop_assert!((other.misclosure.turn - closed.misclosure.turn).abs() < 1e-9);

        let mirrored: Vec<Leg> = legs.iter().map(|leg| Leg { turn: -leg.turn, ..*leg }).collect();
        let mirrored = close(&mirrored, Got::Tape).unwrap();
        let turns: Vec<f64> = closed.turns.iter().map(|turn| -turn).collect();
        same(&mirrored, &closed.lengths, &turns);
    }

    #[test]
    fn no_measures_break_it(sides in prop::collection::vec((prop::num::f64::ANY, prop::num::f64::ANY), 0..8), tame in prop::collection::vec((0.1..99.0_f64, -179.0..179.0_f64), 0..8)) {
        let _ = close(&legs(&sides), Got::Tape);
        let _ = close(&legs(&tame), Got::Paced);
    }
}
