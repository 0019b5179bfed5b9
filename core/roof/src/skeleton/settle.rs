//! Corners that have no path of their own: their two edges are parallel. They are settled in the moment in which they arise.

use super::support::SupportId;
use super::wavefront::{Corner, CornerId, Place, Trace, Wavefront};
use std::cmp::Ordering;

/// Which of its two edges a corner between parallel edges swallows as it runs along them, and where it then is.
struct Run {
    before: bool,
    after: bool,
    place: Place,
}

impl Wavefront<'_> {
    /// Gives a new corner its events, or, where its edges are parallel, puts in its place what comes of it.
    pub(super) fn settle(&mut self, corner: CornerId) {
        let mut unsettled = Some(corner);
        while let Some(corner) = unsettled.take() {
            if !self.corners[corner].live {
                return;
            }
            let (before, after) = (self.corners[corner].before, self.corners[corner].after);
            if before == after {
                self.join(corner);
            } else if self.is_last_but_one(corner) {
                self.close(corner);
            } else if self.supports.turn(before, after).is_ne() {
                let previous = self.corners[corner].previous;
                self.foresee(corner);
                self.foresee_collapse(previous);
            } else {
                unsettled = Some(self.run_along(corner));
            }
        }
    }

    /// Two edges of one plane are one edge.
    fn join(&mut self, corner: CornerId) {
        let (previous, next) = (self.corners[corner].previous, self.corners[corner].next);
        self.forget(corner);
        if previous == corner {
            return;
        }
        self.link(previous, next);
        if self.corners[previous].before == self.corners[previous].after {
            return;
        }
        if self.is_last_but_one(previous) {
            self.close(previous);
        } else {
            self.foresee_collapse(previous);
        }
    }

    fn is_last_but_one(&self, corner: CornerId) -> bool {
        self.corners[corner].next == self.corners[corner].previous
    }

    /// A loop of two edges encloses nothing: both its corners are in one place.
    fn close(&mut self, corner: CornerId) {
        let other = self.corners[corner].next;
        let node = self.corners[self.younger(corner, other)].born;
        self.retire(corner, node);
        if other != corner {
            self.retire(other, node);
        }
    }

    /// The edges at a corner lie on each other, or one behind the other at different speed: the line between them runs on at once. Gives the
    /// corner that stands at its far end.
    fn run_along(&mut self, corner: CornerId) -> CornerId {
        let Corner {
            before,
            after,
            previous,
            next,
            born,
            place,
            ..
        } = self.corners[corner];
        let run = self.swallowed(corner);
        let node = if run.place == place {
            born
        } else {
            self.node(run.place)
        };
        self.trace(Trace {
            from: born,
            to: node,
            left: before,
            right: after,
        });
        self.forget(corner);
        let (mut first, mut start) = (before, previous);
        if run.before {
            (first, start) = (
                self.corners[previous].before,
                self.corners[previous].previous,
            );
            self.retire(previous, node);
        }
        let (mut last, mut end) = (after, next);
        if run.after {
            (last, end) = (self.corners[next].after, self.corners[next].next);
            self.retire(next, node);
        }
        let met = self.add(first, last, node, run.place);
        // Where nothing else of the loop is left, the corner stays its own neighbour.
        if self.corners[start].live && self.corners[end].live {
            self.link(start, met);
            self.link(met, end);
        }
        met
    }

    fn swallowed(&mut self, corner: CornerId) -> Run {
        let Corner {
            before,
            after,
            previous,
            next,
            place,
            ..
        } = self.corners[corner];
        let (outer_before, outer_after) = (self.corners[previous].before, self.corners[next].after);
        self.choices += usize::from(self.supports.run_alike(before, after));
        let no_before = self.supports.side(outer_before, place).is_eq();
        let no_after = self.supports.side(outer_after, place).is_eq();
        let (swallows_before, swallows_after) = if no_before || no_after {
            (no_before, no_after)
        } else if self.supports.run_alike(before, after) {
            let second = self.goes_on(after, before);
            (second, !second)
        } else {
            let nearer = self.nearer([outer_before, before, after], outer_after);
            (nearer.is_ge(), nearer.is_le())
        };
        let place = match (no_before || no_after, swallows_before) {
            (true, _) => place,
            (false, true) => [outer_before, before, after],
            (false, false) => [before, after, outer_after],
        };
        Run {
            before: swallows_before,
            after: swallows_after,
            place,
        }
    }

    /// Whether of two edges that have come into one line the first goes on over the second: the steeper, if it is not upright.
    fn goes_on(&self, one: SupportId, other: SupportId) -> bool {
        let upright = |support: SupportId| self.supports.get(support).is_upright();
        upright(other) || (!upright(one) && self.supports.outruns(other, one))
    }

    /// Which neighbour of a corner is nearer along the line that its edges share, facing each other: `Greater` for the one before. It is
    /// given by where it is, the one after by the edge that leaves it.
    fn nearer(&self, before: Place, leaving: SupportId) -> Ordering {
        let [_, _, after] = before;
        let side = self.supports.side(leaving, before);
        match self.supports.turn(after, leaving) {
            Ordering::Less => side.reverse(),
            _ => side,
        }
    }
}
