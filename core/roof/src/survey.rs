//! An outline taped or paced round: it never quite closes, and is closed by least squares.
//!
//! Each side and each turn is an observation; three conditions hold: the turns make one round, and the sides lead back to where they began. The least
//! changes that meet them, each weighed by how exact it is, are found by the method of condition equations, repeated until nothing
//! changes (C. D. Ghilani, "Adjustment Computations"). A length is as exact as a share of itself, by how it was got; a turn is exact to [`TURN`]. A turn
//! that is a multiple of 45° is taken as built so and stays, unless the turns don't make a round: what they lack is then shared out first.

use crate::error::ShapeError;
use trade::sketch::Leg;
use trade::units::{Got, Length};

/// How exact a turn read off a corner that is not square usually is, in degrees. Common practice, no source.
const TURN: f64 = 2.0;
/// A turn taken as built still may be off by so little, in degrees: it gives way only where nothing else can.
const BUILT: f64 = 0.01;
/// How far the turns may be from a round, in degrees.
const ROUND: f64 = 15.0;
/// How far the sides may end from where they began, as a share of the way round. Common practice, no source: beyond it a side is missing.
const FAR_OFF: f64 = 0.1;
/// The longest side in metres: no house has one.
const LONGEST: f64 = 1000.0;
/// Rounds of the adjustment, at most.
const ROUNDS: usize = 50;
/// In metres and radians: nothing.
const NOTHING: f64 = 1e-12;
/// In metres: what closes.
const CLOSES: f64 = 1e-9;

/// How far the measures were from closing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Misclosure {
    /// From where they began to where they ended.
    pub length: Length,
    /// The same as a share of the way round.
    pub share: f64,
    /// Which way the end lies from the beginning, in degrees to the left of the first side.
    pub direction: f64,
    /// What the turns lack to a round, in degrees.
    pub turn: f64,
}

/// An outline that closes.
#[derive(Clone, Debug, PartialEq)]
pub struct Closed {
    /// Where each side begins: to the right and away from the street. The first begins at nothing.
    pub corners: Vec<(Length, Length)>,
    /// The sides as they were adjusted.
    pub lengths: Vec<Length>,
    /// The turns as they were adjusted, in degrees.
    pub turns: Vec<f64>,
    /// How far the measures were from closing.
    pub misclosure: Misclosure,
}

/// Closes an outline whose lengths were got in one way.
///
/// # Errors
/// Where there are fewer than three sides, one has no length or none that a house has, the turns make no round, or the end lies too far off.
pub fn close(legs: &[Leg], got: Got) -> Result<Closed, ShapeError> {
    let mut traverse = Traverse::of(legs, got)?;
    let turned: f64 = traverse.turns.iter().sum::<f64>().to_degrees();
    let round = 360.0_f64.copysign(turned);
    if (turned - round).abs() > ROUND {
        return Err(ShapeError::NotRound { degrees: turned });
    }
    let misclosure = traverse.misclosure(round - turned);
    let far_off = || ShapeError::EndsFarOff {
        length: misclosure.length,
        share: misclosure.share,
        back: turned_half(misclosure.direction),
    };
    if misclosure.share > FAR_OFF {
        return Err(far_off());
    }
    traverse.make_round(round.to_radians());
    traverse.adjust(round.to_radians());
    if !traverse.closes() {
        return Err(far_off());
    }
    Ok(Closed {
        corners: traverse.corners(),
        lengths: traverse
            .lengths
            .iter()
            .map(|&length| Length::from_metres(length))
            .collect(),
        turns: traverse
            .turns
            .iter()
            .map(|turn| turn.to_degrees())
            .collect(),
        misclosure,
    })
}

/// The opposite direction, in degrees between -180 and 180.
fn turned_half(direction: f64) -> f64 {
    if direction > 0.0 {
        direction - 180.0
    } else {
        direction + 180.0
    }
}

/// Sides and turns, with how exact each is.
struct Traverse {
    /// Lengths in metres, and their variances.
    lengths: Vec<f64>,
    length_variances: Vec<f64>,
    /// Turns at the end of each side in radians, and their variances.
    turns: Vec<f64>,
    turn_variances: Vec<f64>,
}

impl Traverse {
    fn of(legs: &[Leg], got: Got) -> Result<Self, ShapeError> {
        if legs.len() < 3 {
            return Err(ShapeError::TooFewCorners {
                ring: crate::error::RingAt::default(),
                corners: legs.len(),
            });
        }
        let wrong = legs.iter().position(|leg| {
            leg.length <= Length::ZERO
                || leg.length.in_metres() > LONGEST
                || !leg.turn.is_finite()
                || leg.turn.abs() >= 180.0
        });
        if let Some(wrong) = wrong {
            return Err(ShapeError::NoMeasure(wrong));
        }
        let lengths: Vec<f64> = legs.iter().map(|leg| leg.length.in_metres()).collect();
        let turn_variance = |leg: &Leg| {
            let built = leg.turn.rem_euclid(45.0) == 0.0;
            (if built { BUILT } else { TURN }).to_radians().powi(2)
        };
        Ok(Self {
            length_variances: lengths
                .iter()
                .map(|length| (length * got.within()).powi(2))
                .collect(),
            lengths,
            turns: legs.iter().map(|leg| leg.turn.to_radians()).collect(),
            turn_variances: legs.iter().map(turn_variance).collect(),
        })
    }

    /// The direction of each side as a unit vector: exactly along or across the street where its turns make it so.
    fn directions(&self) -> Vec<(f64, f64)> {
        let mut heading = 0.0_f64;
        self.turns
            .iter()
            .map(|turn| {
                let direction = unit(heading);
                heading += turn;
                direction
            })
            .collect()
    }

    fn end(&self) -> (f64, f64) {
        self.lengths
            .iter()
            .zip(self.directions())
            .fold((0.0, 0.0), |(x, y), (length, (dx, dy))| {
                (x + length * dx, y + length * dy)
            })
    }

    fn misclosure(&self, turn: f64) -> Misclosure {
        let (x, y) = self.end();
        let length = x.hypot(y);
        Misclosure {
            length: Length::from_metres(length),
            share: length / self.lengths.iter().sum::<f64>(),
            direction: y.atan2(x).to_degrees(),
            turn,
        }
    }

    /// Shares out what the turns lack to a round; those taken as built give way only where nothing else can, and stand firm from then on.
    fn make_round(&mut self, round: f64) {
        let lacking = round - self.turns.iter().sum::<f64>();
        let total: f64 = self.turn_variances.iter().sum();
        let built = BUILT.to_radians().powi(2);
        for (turn, variance) in self.turns.iter_mut().zip(&mut self.turn_variances) {
            if lacking.abs() > 1e-12 {
                *turn += lacking * *variance / total;
            }
            if *variance <= built {
                *variance = 0.0;
            }
        }
    }

    /// Whether the sides lead back to where they began, none of them backwards.
    fn closes(&self) -> bool {
        let (x, y) = self.end();
        x.hypot(y) <= CLOSES && self.lengths.iter().all(|&length| length > 0.0)
    }

    /// The least changes of what was measured that meet the conditions, by rounds from one place to the next until nothing changes.
    fn adjust(&mut self, round: f64) {
        let measured = (self.lengths.clone(), self.turns.clone());
        for _ in 0..ROUNDS {
            if self.one_round(round, &measured.0, &measured.1) <= NOTHING {
                break;
            }
        }
    }

    /// One round: the least changes from what was measured by the conditions as they run here. The conditions are: end x, end y, sum of the turns. Gives
    /// the greatest step that was taken.
    fn one_round(&mut self, round: f64, lengths: &[f64], turns: &[f64]) -> f64 {
        let directions = self.directions();
        let (x, y) = self.end();
        let by_length: Vec<[f64; 3]> = directions.iter().map(|&(dx, dy)| [dx, dy, 0.0]).collect();
        let by_turn = self.effects_of_turns(&directions);
        let mut normal = [[0.0; 3]; 3];
        let mut off = [-x, -y, round - self.turns.iter().sum::<f64>()];
        for (rows, variances, here, measured) in [
            (&by_length, &self.length_variances, &self.lengths, lengths),
            (&by_turn, &self.turn_variances, &self.turns, turns),
        ] {
            for (((row, variance), here), measured) in
                rows.iter().zip(variances).zip(here).zip(measured)
            {
                for i in 0..3 {
                    off[i] += row[i] * (here - measured);
                    for j in 0..3 {
                        normal[i][j] += row[i] * row[j] * variance;
                    }
                }
            }
        }
        // No turn can give way: that condition is met already.
        if normal[2][2] == 0.0 {
            normal[2][2] = 1.0;
            off[2] = 0.0;
        }
        let Some(factors) = solved(normal, off) else {
            return 0.0;
        };
        let step = |here: &mut f64, measured: f64, row: &[f64; 3], variance: f64| {
            let change: f64 = row.iter().zip(factors).map(|(a, k)| a * k).sum();
            let there = measured + variance * change;
            let step = (there - *here).abs();
            *here = there;
            step
        };
        let mut greatest = 0.0_f64;
        for (at, here) in self.lengths.iter_mut().enumerate() {
            greatest = greatest.max(step(
                here,
                lengths[at],
                &by_length[at],
                self.length_variances[at],
            ));
        }
        for (at, here) in self.turns.iter_mut().enumerate() {
            greatest = greatest.max(step(here, turns[at], &by_turn[at], self.turn_variances[at]));
        }
        greatest
    }

    /// How the end moves with each turn: it swings round the corner where the turn is made.
    fn effects_of_turns(&self, directions: &[(f64, f64)]) -> Vec<[f64; 3]> {
        let mut rest = (0.0, 0.0);
        let mut effects = vec![[0.0; 3]; self.lengths.len()];
        for at in (0..self.lengths.len()).rev() {
            let (x, y): (f64, f64) = rest;
            effects[at] = [-y, x, 1.0];
            rest = (
                x + self.lengths[at] * directions[at].0,
                y + self.lengths[at] * directions[at].1,
            );
        }
        effects
    }

    fn corners(&self) -> Vec<(Length, Length)> {
        let mut at = (0.0, 0.0);
        self.lengths
            .iter()
            .zip(self.directions())
            .map(|(length, (dx, dy))| {
                let corner = (Length::from_metres(at.0), Length::from_metres(at.1));
                at = (at.0 + length * dx, at.1 + length * dy);
                corner
            })
            .collect()
    }
}

/// The unit vector of a heading, exact at right angles.
fn unit(heading: f64) -> (f64, f64) {
    let quarters = heading / std::f64::consts::FRAC_PI_2;
    if (quarters - quarters.round()).abs() > 1e-9 {
        let (sin, cos) = heading.sin_cos();
        return (cos, sin);
    }
    match quarters.round().rem_euclid(4.0) {
        1.0 => (0.0, 1.0),
        2.0 => (-1.0, 0.0),
        3.0 => (0.0, -1.0),
        _ => (1.0, 0.0),
    }
}

/// Three equations solved by Cramer's rule; `None` where they do not determine anything.
fn solved(m: [[f64; 3]; 3], right: [f64; 3]) -> Option<[f64; 3]> {
    let det = |m: [[f64; 3]; 3]| {
        m[0][0] * (m[1][1] * m[2][2] - m[1][2] * m[2][1])
            - m[0][1] * (m[1][0] * m[2][2] - m[1][2] * m[2][0])
            + m[0][2] * (m[1][0] * m[2][1] - m[1][1] * m[2][0])
    };
    let whole = det(m);
    let replaced = |column: usize| {
        let mut other = m;
        for (row, value) in other.iter_mut().zip(right) {
            row[column] = value;
        }
        det(other) / whole
    };
    (whole.abs() > 0.0).then(|| [replaced(0), replaced(1), replaced(2)])
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;
    use trade::sketch::EdgeIs;

    fn leg(metres: f64, turn: f64) -> Leg {
        Leg {
            length: Length::from_metres(metres),
            turn,
            is: EdgeIs::default(),
            pitch: None,
            overhang: None,
            slope: None,
        }
    }

    proptest! {
        #[test]
        fn what_was_closed_ends_where_it_began(sides in prop::collection::vec((3.0..15.0_f64, -2.0..2.0_f64), 3..12)) {
            #[allow(clippy::cast_precision_loss)]
            let even = 360.0 / sides.len() as f64;
            let legs: Vec<Leg> = sides.iter().map(|&(metres, off)| leg(metres, even + off)).collect();
            let mut traverse = Traverse::of(&legs, Got::Paced).unwrap();
            let round = 360.0_f64.to_radians();
            traverse.make_round(round);
            traverse.adjust(round);
            let (x, y) = traverse.end();
            prop_assert!(x.hypot(y) < 1e-9, "{x} {y}");
            prop_assert!((traverse.turns.iter().sum::<f64>() - round).abs() < 1e-9);
        }
    }
}
