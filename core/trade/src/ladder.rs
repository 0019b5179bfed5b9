//! The ladder: the picture of a rung. Three whole rungs are sound, one sagging is ageing, one snapped is failing, two
//! snapped and one gone is failed; dotted rails without rungs were not seen, rails alone were taken down.
//!
//! Its strokes are worked out here once and drawn by every renderer, so that paper and screen show the same ladder.

use crate::mark::{Condition, Rung};
use serde::Serialize;

/// What a ladder shows.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Ladder {
    /// Three whole rungs.
    Sound,
    /// One rung sags.
    Ageing,
    /// One rung is snapped.
    Failing,
    /// Two are snapped, one is gone.
    Failed,
    /// Dotted rails, no rungs.
    NotSeen,
    /// Rails alone.
    Gone,
}

impl Ladder {
    /// All of them.
    pub const ALL: [Self; 6] = [
        Self::Sound,
        Self::Ageing,
        Self::Failing,
        Self::Failed,
        Self::NotSeen,
        Self::Gone,
    ];
}

impl From<Rung> for Ladder {
    fn from(rung: Rung) -> Self {
        match rung {
            Rung::Sound => Self::Sound,
            Rung::Ageing => Self::Ageing,
            Rung::Failing => Self::Failing,
            Rung::Failed => Self::Failed,
        }
    }
}

impl From<Option<Rung>> for Ladder {
    fn from(rung: Option<Rung>) -> Self {
        rung.map_or(Self::NotSeen, Self::from)
    }
}

impl From<Condition> for Ladder {
    fn from(condition: Condition) -> Self {
        match condition {
            Condition::Seen { rung, .. } => rung.into(),
            Condition::NotSeen { .. } => Self::NotSeen,
            Condition::Gone => Self::Gone,
        }
    }
}

/// A point, x to the right and y downward, in units of which the ladder is 62 wide and 100 high.
pub type Point = [f64; 2];

/// One stroke, [`WEIGHT`] thick, with round ends.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Stroke {
    /// Where it begins.
    pub from: Point,
    /// The point that pulls it down where it sags (a quadratic Bézier curve).
    #[serde(skip_serializing_if = "Option::is_none")]
    pub by: Option<Point>,
    /// Where it ends.
    pub to: Point,
}

/// Width of the picture.
pub const WIDTH: f64 = 62.0;
/// Height of the picture.
pub const HEIGHT: f64 = 100.0;
/// Thickness of a stroke.
pub const WEIGHT: f64 = 9.0;
/// Distance between the dots of a dotted rail.
const DOT_STEP: f64 = 18.0;
const LEFT: f64 = 10.0;
const RIGHT: f64 = 52.0;
const RUNGS: [f64; 3] = [20.0, 50.0, 80.0];

#[derive(Clone, Copy)]
enum Step {
    Whole,
    Sags,
    Snapped,
    Missing,
}

impl Ladder {
    /// The strokes that draw it.
    pub fn strokes(self) -> Vec<Stroke> {
        use Step::{Missing, Sags, Snapped, Whole};
        let steps = match self {
            Self::Sound => [Whole, Whole, Whole],
            Self::Ageing => [Whole, Sags, Whole],
            Self::Failing => [Whole, Snapped, Whole],
            Self::Failed => [Snapped, Snapped, Missing],
            Self::NotSeen | Self::Gone => [Missing, Missing, Missing],
        };
        let rails = match self {
            Self::NotSeen => dotted_rails(),
            _ => vec![
                line([LEFT, 5.0], [LEFT, 95.0]),
                line([RIGHT, 5.0], [RIGHT, 95.0]),
            ],
        };
        let rungs = RUNGS.into_iter().zip(steps);
        rails
            .into_iter()
            .chain(rungs.flat_map(|(y, step)| draw(step, y)))
            .collect()
    }
}

fn line(from: Point, to: Point) -> Stroke {
    Stroke { from, by: None, to }
}

/// Dots are short strokes: with round ends each shows as a dot, also where a printer knows no dashes.
fn dotted_rails() -> Vec<Stroke> {
    let heights = (0..6).map(|at| 5.0 + f64::from(at) * DOT_STEP);
    heights
        .flat_map(|y| [LEFT, RIGHT].map(|x| line([x, y], [x, y + 0.5])))
        .collect()
}

fn draw(step: Step, y: f64) -> Vec<Stroke> {
    match step {
        Step::Whole => vec![line([LEFT, y], [RIGHT, y])],
        Step::Sags => vec![Stroke {
            from: [LEFT, y],
            by: Some([WIDTH / 2.0, y + 17.0]),
            to: [RIGHT, y],
        }],
        Step::Snapped => vec![
            line([LEFT, y], [WIDTH * 0.36, y + 7.0]),
            line([RIGHT, y], [WIDTH * 0.7, y + 10.0]),
        ],
        Step::Missing => Vec::new(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn no_two_ladders_look_alike() {
        for (at, one) in Ladder::ALL.iter().enumerate() {
            for other in &Ladder::ALL[at + 1..] {
                assert_ne!(one.strokes(), other.strokes());
            }
        }
    }

    #[test]
    fn every_stroke_lies_within_the_picture() {
        for ladder in Ladder::ALL {
            for stroke in ladder.strokes() {
                for [x, y] in [Some(stroke.from), stroke.by, Some(stroke.to)]
                    .into_iter()
                    .flatten()
                {
                    assert!(
                        (0.0..=WIDTH).contains(&x) && (0.0..=HEIGHT).contains(&y),
                        "{ladder:?}"
                    );
                }
            }
        }
    }
}
