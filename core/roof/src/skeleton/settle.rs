//! Corners that have no path of their own: their two edges are parallel. They are settled in the moment in which they arise.

use super::support::SupportId;
use super::wavefront::{CornerId, Trace, Wavefront};
use std::cmp::Ordering;

/// Where the line between two edges that lie on each other runs to.
enum RunsTo {
    /// To the corner before, swallowing the edge that ends here.
    Previous,
    /// To the corner after, swallowing the edge that begins here.
    Next,
    /// To both, which are in one place.
    Both,
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
        let node = self.corners[corner].born.max(self.corners[other].born);
        self.retire(corner, node);
        if other != corner {
            self.retire(other, node);
        }
    }

    /// The edges at a corner lie on each other, or one behind the other at different speed: the line between them runs on at once. Gives the
    /// corner that stands at its far end.
    fn run_along(&mut self, corner: CornerId) -> CornerId {
        let (before, after) = (self.corners[corner].before, self.corners[corner].after);
        let (previous, next) = (self.corners[corner].previous, self.corners[corner].next);
        let outer = (self.corners[previous].before, self.corners[next].after);
        let (node, met) = match self.runs_to(corner) {
            RunsTo::Previous => {
                let node = self.node([outer.0, before, after]);
                self.retire(previous, node);
                let met = self.add(outer.0, after, node);
                self.link(self.corners[previous].previous, met);
                self.link(met, next);
                (node, met)
            }
            RunsTo::Next => {
                let node = self.node([before, after, outer.1]);
                self.retire(next, node);
                let met = self.add(before, outer.1, node);
                self.link(met, self.corners[next].next);
                self.link(previous, met);
                (node, met)
            }
            RunsTo::Both => {
                let node = self.node([outer.0, before, after]);
                self.retire(previous, node);
                self.retire(next, node);
                let met = self.add(outer.0, outer.1, node);
                if self.corners[next].next != previous {
                    self.link(self.corners[previous].previous, met);
                    self.link(met, self.corners[next].next);
                }
                (node, met)
            }
        };
        self.trace(Trace {
            from: self.corners[corner].born,
            to: node,
            left: before,
            right: after,
        });
        self.forget(corner);
        met
    }

    fn runs_to(&self, corner: CornerId) -> RunsTo {
        let (before, after) = (self.corners[corner].before, self.corners[corner].after);
        if self.supports.run_alike(before, after) {
            return if self.supports.outruns(after, before) {
                RunsTo::Previous
            } else {
                RunsTo::Next
            };
        }
        match self.nearer(corner, before, after) {
            Ordering::Greater => RunsTo::Previous,
            Ordering::Less => RunsTo::Next,
            Ordering::Equal => RunsTo::Both,
        }
    }

    /// Which neighbour of a corner is nearer along the line that its edges share, facing each other: `Greater` for the one before.
    fn nearer(&self, corner: CornerId, before: SupportId, after: SupportId) -> Ordering {
        let (previous, next) = (self.corners[corner].previous, self.corners[corner].next);
        let far = [self.corners[previous].before, before, after];
        let stop = self.corners[next].after;
        let side = self.supports.side(stop, far);
        match self.supports.turn(after, stop) {
            Ordering::Less => side.reverse(),
            _ => side,
        }
    }
}
