//! What lies on either side of a piece of line, where one roof stands on others.

use super::TOUCHES;
use super::overlay::Overlay;
use super::surface::{Surface, holds};
use crate::frame::Place;

/// How far beside a piece it is asked what lies there, in metres; nearer where the piece is shorter than five times that.
const BESIDE: f64 = 1e-5;

/// What lies over one place.
#[derive(Clone, Debug, Default, PartialEq)]
pub(super) struct Over {
    /// The planes that are there to be covered, by number: those below first, then those of what stands on them.
    pub(super) laid: Vec<usize>,
    /// The highest plane below, covered or not.
    pub(super) lower: Option<usize>,
    /// The plane of what stands above, seen or not.
    pub(super) upper: Option<usize>,
    /// Whether it lies within the walls, and the roof over them is seen.
    pub(super) inside: bool,
}

/// A piece of line and what lies beside it.
pub(super) struct Beside {
    /// Its nodes.
    pub(super) ends: (usize, usize),
    /// Its middle.
    pub(super) middle: Place,
    /// To its left.
    pub(super) left: Over,
    /// To its right.
    pub(super) right: Over,
}

/// All pieces with something else on either side.
pub(super) struct Seen<'a> {
    lower: &'a [Surface],
    upper: &'a [Surface],
    pub(super) pieces: Vec<Beside>,
}

impl<'a> Seen<'a> {
    pub(super) fn new(
        overlay: &Overlay,
        lower: &'a [Surface],
        upper: &'a [Surface],
        walls: &[Vec<Place>],
    ) -> Self {
        let mut seen = Self {
            lower,
            upper,
            pieces: Vec::new(),
        };
        seen.pieces = overlay
            .pieces
            .iter()
            .map(|&ends| seen.beside(overlay, ends, walls))
            .filter(|beside| beside.left.laid != beside.right.laid)
            .collect();
        seen
    }

    fn beside(&self, overlay: &Overlay, ends: (usize, usize), walls: &[Vec<Place>]) -> Beside {
        let (from, to) = (overlay.nodes[ends.0], overlay.nodes[ends.1]);
        let way = (to.0 - from.0, to.1 - from.1);
        let length = way.0.hypot(way.1);
        let off = BESIDE.min(length / 5.0) / length;
        let middle = (f64::midpoint(from.0, to.0), f64::midpoint(from.1, to.1));
        let place = |side: f64| (middle.0 - way.1 * off * side, middle.1 + way.0 * off * side);
        Beside {
            ends,
            middle,
            left: self.over(place(1.0), walls),
            right: self.over(place(-1.0), walls),
        }
    }

    fn over(&self, place: Place, walls: &[Vec<Place>]) -> Over {
        let below: Vec<usize> = (0..self.lower.len())
            .filter(|&plane| self.lower[plane].holds(place))
            .collect();
        let lower = below.iter().copied().max_by(|&one, &other| {
            let height = |plane: usize| self.lower[plane].height(place);
            height(one).total_cmp(&height(other))
        });
        let upper = (0..self.upper.len())
            .find(|&plane| self.upper[plane].holds(place))
            .map(|plane| self.lower.len() + plane);
        let is_seen = upper.is_some_and(|upper| {
            let height = self.surface(upper).height(place);
            lower.is_none_or(|lower| height > self.lower[lower].height(place))
        });
        let inside = is_seen && holds(walls, place);
        let mut laid = if inside { Vec::new() } else { below };
        laid.extend(upper.filter(|_| is_seen));
        Over {
            laid,
            lower,
            upper,
            inside,
        }
    }

    /// A plane by its number.
    pub(super) fn surface(&self, number: usize) -> &'a Surface {
        match number.checked_sub(self.lower.len()) {
            None => &self.lower[number],
            Some(upper) => &self.upper[upper],
        }
    }

    /// Whether a plane is one of what stands above.
    pub(super) fn is_upper(&self, number: usize) -> bool {
        number >= self.lower.len()
    }

    /// The pieces round what is to be covered of a plane, it to their left.
    pub(super) fn round(&self, number: usize) -> impl Iterator<Item = (usize, usize)> + '_ {
        self.pieces.iter().filter_map(move |beside| {
            let (from, to) = beside.ends;
            let of = |over: &Over| over.laid.contains(&number);
            match (of(&beside.left), of(&beside.right)) {
                (true, false) => Some((from, to)),
                (false, true) => Some((to, from)),
                _ => None,
            }
        })
    }

    /// The plane below that one above dies into beside a piece, at which it is seen on one side only.
    pub(super) fn dies_into(&self, beside: &Beside, upper: usize) -> Option<usize> {
        let other = if beside.left.laid.contains(&upper) {
            &beside.right
        } else {
            &beside.left
        };
        let lower = other.lower?;
        let apart =
            self.surface(upper).height(beside.middle) - self.lower[lower].height(beside.middle);
        (apart < TOUCHES).then_some(lower)
    }
}
