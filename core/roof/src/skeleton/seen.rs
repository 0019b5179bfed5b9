//! From which corner and which side an outline is looked at.
//!
//! Where several events that a weighted skeleton leaves open fall together, their order can decide. So that it hangs on the outline alone, and not on
//! where its rings begin or which side lies to the left, the wavefront always sets out from the same view of it: of all corners of the rim, and of the
//! outline and its mirror image, the one from which its numbers (places along and beside the first edge, slopes, bases) come first in order. Two views
//! that are alike in all of them give the same roof; of those the one whose first corner lies nearest to the street and farthest left is taken.

use super::{Arc, Edge, Face, Grid, Skeleton};
use std::cmp::Ordering;

/// What one edge looks like from a view: where it begins, along and beside the first edge, its slope and its base. Within [`FARTHEST`] all fit.
///
/// [`FARTHEST`]: super::FARTHEST
type Look = (i64, i64, Option<u64>, u64);

/// A view of an outline.
pub(super) struct Seen {
    /// Whether it is the mirror image.
    mirrored: bool,
    /// Each edge of the view by its place in the outline.
    edges: Vec<Vec<(usize, usize)>>,
}

impl Seen {
    /// The first view of an outline in order.
    pub(super) fn first(rings: &[Vec<Edge>]) -> Self {
        let corners = rings.first().map_or(0, Vec::len);
        let views = [false, true]
            .into_iter()
            .flat_map(|mirrored| (0..corners).map(move |start| (mirrored, start)));
        let mut first: Option<(View<'_>, bool, usize)> = None;
        for (mirrored, start) in views {
            let view = View::new(rings, mirrored, start);
            if first
                .as_ref()
                .is_none_or(|(best, ..)| view.comes_before(best))
            {
                first = Some((view, mirrored, start));
            }
        }
        let Some((view, mirrored, start)) = first else {
            return Self {
                mirrored: false,
                edges: Vec::new(),
            };
        };
        let rim = view.rim(start).map(|edge| (0, edge)).collect();
        Self {
            mirrored,
            edges: std::iter::once(rim).chain(view.holes()).collect(),
        }
    }

    /// The outline in this view.
    pub(super) fn of(&self, rings: &[Vec<Edge>]) -> Vec<Vec<Edge>> {
        self.edges
            .iter()
            .map(|ring| {
                ring.iter()
                    .map(|&(of, edge)| Edge {
                        from: self.place(begins(&rings[of], edge, self.mirrored)),
                        ..rings[of][edge]
                    })
                    .collect()
            })
            .collect()
    }

    /// Edges of this view as edges of the outline.
    pub(super) fn back(&self, edges: &[(usize, usize)]) -> Vec<(usize, usize)> {
        edges
            .iter()
            .map(|&(ring, edge)| self.edges[ring][edge])
            .collect()
    }

    /// The skeleton of the outline from that of this view.
    pub(super) fn turned_back(&self, seen: Skeleton) -> Skeleton {
        let faces = seen.faces.into_iter().map(|face| Face {
            edges: self.back(&face.edges),
            ..face
        });
        if !self.mirrored {
            return Skeleton {
                faces: faces.collect(),
                ..seen
            };
        }
        Skeleton {
            nodes: seen.nodes.iter().map(|&[x, y, z]| [-x, y, z]).collect(),
            arcs: seen
                .arcs
                .iter()
                .map(|arc| Arc {
                    left: arc.right,
                    right: arc.left,
                    ..*arc
                })
                .collect(),
            faces: faces
                .map(|mut face| {
                    face.normal.0 = -face.normal.0;
                    face.loops.iter_mut().for_each(|rim| rim.reverse());
                    face
                })
                .collect(),
            choices: seen.choices,
        }
    }

    fn place(&self, (x, y): Grid) -> Grid {
        if self.mirrored { (-x, y) } else { (x, y) }
    }
}

/// Where an edge begins, the way that the view goes round.
fn begins(ring: &[Edge], edge: usize, mirrored: bool) -> Grid {
    ring[(edge + usize::from(mirrored)) % ring.len()].from
}

/// The outline from one corner of its rim and one side.
struct View<'a> {
    rings: &'a [Vec<Edge>],
    mirrored: bool,
    start: usize,
    origin: Grid,
    way: Grid,
}

impl<'a> View<'a> {
    fn new(rings: &'a [Vec<Edge>], mirrored: bool, start: usize) -> Self {
        let origin = begins(&rings[0], start, mirrored);
        let end = begins(&rings[0], start, !mirrored);
        Self {
            rings,
            mirrored,
            start,
            origin,
            way: (end.0 - origin.0, end.1 - origin.1),
        }
    }

    /// The edges of a ring in the order of the view, from one of them on.
    fn round(&self, ring: usize, start: usize) -> impl Iterator<Item = usize> + use<> {
        let count = self.rings[ring].len();
        let mirrored = self.mirrored;
        (0..count).map(move |step| {
            if mirrored {
                (start + count - step) % count
            } else {
                (start + step) % count
            }
        })
    }

    fn rim(&self, start: usize) -> impl Iterator<Item = usize> + use<> {
        self.round(0, start)
    }

    fn looks_round(&self) -> impl Iterator<Item = Look> + '_ {
        self.rim(self.start).map(|edge| self.look(0, edge))
    }

    fn look(&self, ring: usize, edge: usize) -> Look {
        let (x, y) = begins(&self.rings[ring], edge, self.mirrored);
        let (off, way) = ((x - self.origin.0, y - self.origin.1), self.way);
        let beside = way.0 * off.1 - way.1 * off.0;
        let of = self.rings[ring][edge];
        (
            way.0 * off.0 + way.1 * off.1,
            if self.mirrored { -beside } else { beside },
            of.slope.map(f64::to_bits),
            of.base.to_bits(),
        )
    }

    /// The holes, each from its first corner on, the first hole first.
    fn holes(&self) -> Vec<Vec<(usize, usize)>> {
        let mut holes: Vec<(Look, usize, usize)> = (1..self.rings.len())
            .filter_map(|ring| {
                let looks = (0..self.rings[ring].len()).map(|edge| (self.look(ring, edge), edge));
                let (look, edge) = looks.min()?;
                Some((look, ring, edge))
            })
            .collect();
        holes.sort_unstable();
        holes
            .into_iter()
            .map(|(_, ring, edge)| self.round(ring, edge).map(|edge| (ring, edge)).collect())
            .collect()
    }

    fn comes_before(&self, other: &Self) -> bool {
        let holes = |view: &Self| -> Vec<Look> {
            let holes = view.holes();
            let edges = holes.into_iter().flatten();
            edges.map(|(ring, edge)| view.look(ring, edge)).collect()
        };
        let longer = |view: &Self| view.way.0.pow(2) + view.way.1.pow(2);
        let nearest = |view: &Self| (view.origin.1, view.origin.0);
        let looks = longer(self)
            .cmp(&longer(other))
            .then_with(|| self.looks_round().cmp(other.looks_round()))
            .then_with(|| holes(self).cmp(&holes(other)));
        looks.then_with(|| nearest(self).cmp(&nearest(other))) == Ordering::Less
    }
}
