//! The shrinking outline, followed from event to event.

use super::support::{FLOOR, Moment, SupportId, Supports};
use super::{Carried, Start};
use std::cmp::Ordering;

/// The name of a corner of the wavefront: its place in [`Wavefront::corners`].
pub(super) type CornerId = usize;

/// Events for each edge of the outline, at most. There are far fewer; an endless loop would be our own mistake, and must not become the reader's.
const EVENTS_PER_EDGE: usize = 64;

/// Three planes that meet in a point.
pub(super) type Place = [SupportId; 3];

/// A corner of the wavefront, between two of its edges. It stands for the edge after it too.
#[derive(Debug)]
pub(super) struct Corner {
    /// The plane of the edge that ends in it.
    pub(super) before: SupportId,
    /// The plane of the edge that begins in it.
    pub(super) after: SupportId,
    /// The corner before it in its loop.
    pub(super) previous: CornerId,
    /// The corner after it.
    pub(super) next: CornerId,
    /// The node from which its path began.
    pub(super) born: usize,
    /// Three planes that meet there.
    pub(super) place: Place,
    /// Whether it still moves.
    pub(super) live: bool,
    /// When the edge after it collapses.
    collapse: Option<Moment>,
    /// The edges in whose way it is, by plane, and when; only where it is reflex.
    strikes: Vec<(Moment, SupportId)>,
    /// The first of them.
    strike: Option<usize>,
}

/// The path of a corner: from one node to another, between two planes.
#[derive(Clone, Copy, Debug)]
pub(super) struct Trace {
    pub(super) from: usize,
    pub(super) to: usize,
    pub(super) left: SupportId,
    pub(super) right: SupportId,
}

/// What the wavefront left behind.
#[derive(Debug)]
pub(super) struct Traced {
    pub(super) nodes: Vec<[f64; 3]>,
    pub(super) traces: Vec<Trace>,
    /// The planes of the edges that never closed in.
    pub(super) open: Vec<SupportId>,
    /// See [`super::Skeleton::choices`].
    pub(super) choices: usize,
}

/// What happens next.
#[derive(Clone, Copy, Debug)]
enum Event {
    /// The edge after the corner collapses.
    Collapse(CornerId),
    /// The corner reaches the line of an edge.
    Strike(CornerId),
}

/// The shrinking outline.
#[derive(Debug)]
pub(super) struct Wavefront<'a> {
    pub(super) carried: &'a Carried,
    pub(super) supports: &'a Supports,
    pub(super) corners: Vec<Corner>,
    /// How many live edges each plane has.
    pieces: Vec<usize>,
    nodes: Vec<[f64; 3]>,
    traces: Vec<Trace>,
    pub(super) choices: usize,
    now: Moment,
}

impl<'a> Wavefront<'a> {
    /// The outline itself.
    pub(super) fn set_out(carried: &'a Carried) -> Self {
        let mut front = Self {
            carried,
            supports: &carried.supports,
            corners: Vec::new(),
            pieces: vec![0; carried.supports.len()],
            nodes: Vec::new(),
            traces: Vec::new(),
            choices: 0,
            now: Moment::height(0.0),
        };
        for ring in &carried.rings {
            front.set_out_ring(ring);
        }
        front
    }

    #[allow(clippy::cast_precision_loss)]
    fn set_out_ring(&mut self, ring: &[super::Carrying]) {
        let mut nodes = Vec::with_capacity(ring.len());
        for (at, edge) in ring.iter().enumerate() {
            if at == 0 || ring[at - 1].from != edge.from {
                let (x, y) = edge.from;
                self.nodes.push([x as f64, y as f64, 0.0]);
            }
            nodes.push(self.nodes.len() - 1);
        }
        // A step before the first edge stands on the first edge's own corner, which is where the ring ends.
        let begun = self.corners.len();
        for (at, edge) in ring.iter().enumerate() {
            let before = ring[(at + ring.len() - 1) % ring.len()].first;
            if before != edge.first {
                self.add(before, edge.first, nodes[at], [before, edge.first, FLOOR]);
            }
        }
        let ended = self.corners.len();
        for corner in begun..ended {
            let next = if corner + 1 == ended {
                begun
            } else {
                corner + 1
            };
            self.link(corner, next);
        }
    }

    /// Follows it until it has closed, or nothing moves any more.
    pub(super) fn run(mut self) -> Traced {
        for corner in 0..self.corners.len() {
            self.foresee(corner);
        }
        let mut starts = self.carried.starts.iter().peekable();
        for _ in 0..EVENTS_PER_EDGE * (self.corners.len() + 1) {
            let event = self.next_event();
            let start = starts.next_if(|start| {
                event.is_none_or(|(at, _)| {
                    self.supports.compare(Moment::height(start.at), at).is_le()
                })
            });
            match (start, event) {
                (Some(start), _) => self.start(*start),
                (None, Some((at, event))) => {
                    self.now = at;
                    self.take(event);
                }
                (None, None) => break,
            }
        }
        Traced {
            open: self
                .corners
                .iter()
                .filter(|corner| corner.live)
                .map(|corner| corner.after)
                .collect(),
            nodes: self.nodes,
            traces: self.traces,
            choices: self.choices,
        }
    }

    fn take(&mut self, event: Event) {
        match event {
            Event::Collapse(corner) => self.collapse(corner),
            Event::Strike(corner) => self.strike(corner),
        }
    }

    /// The earliest event. Of several at one moment a collapse comes first: it leaves less to be struck.
    fn next_event(&self) -> Option<(Moment, Event)> {
        let mut first: Option<(Moment, Event)> = None;
        let mut consider = |at: Moment, event: Event| {
            let earlier = match first {
                None => true,
                Some((best, kind)) => match self.supports.compare(at, best) {
                    Ordering::Less => true,
                    Ordering::Equal => {
                        matches!((event, kind), (Event::Collapse(_), Event::Strike(_)))
                    }
                    Ordering::Greater => false,
                },
            };
            if earlier {
                first = Some((at, event));
            }
        };
        for (id, corner) in self.corners.iter().enumerate().filter(|(_, c)| c.live) {
            if let Some(at) = corner.collapse {
                consider(at, Event::Collapse(id));
            }
            if let Some(strike) = corner.strike {
                consider(corner.strikes[strike].0, Event::Strike(id));
            }
        }
        first
    }

    /// The edge after the corner has no length any more: its neighbours meet.
    fn collapse(&mut self, corner: CornerId) {
        let end = self.corners[corner].next;
        let (before, edge) = (self.corners[corner].before, self.corners[corner].after);
        let after = self.corners[end].after;
        let place = [before, edge, after];
        let (node, place) = if self.supports.meet(place).at.is_some() {
            (self.node(place), place)
        } else {
            // Three planes through one line: the younger corner was born where they are now.
            let younger = &self.corners[self.younger(corner, end)];
            (younger.born, younger.place)
        };
        let (previous, next) = (self.corners[corner].previous, self.corners[end].next);
        self.retire(corner, node);
        self.retire(end, node);
        if previous == end {
            return;
        }
        let turned = self
            .carried
            .turned(edge)
            .filter(|_| self.supports.turn(before, after).is_eq() && before != after);
        if let Some(step) = turned {
            let one = self.add(before, step, node, place);
            let other = self.add(step, after, node, place);
            self.link(previous, one);
            self.link(one, other);
            self.link(other, next);
            self.settle(one);
            self.settle(other);
        } else {
            let met = self.add(before, after, node, place);
            self.link(previous, met);
            self.link(met, next);
            self.settle(met);
        }
    }

    /// A reflex corner has come to the line of an edge: where it hits the edge itself, that is cut in two.
    fn strike(&mut self, corner: CornerId) {
        let Some(first) = self.corners[corner].strike else {
            return;
        };
        let (_, plane) = self.corners[corner].strikes.swap_remove(first);
        let hit = self.hit(corner, plane);
        let Some(start) = hit else {
            self.order_strikes(corner);
            return;
        };
        let Corner {
            before,
            after,
            previous,
            next,
            ..
        } = self.corners[corner];
        let (struck, end) = (self.corners[start].after, self.corners[start].next);
        let place = [before, after, plane];
        let node = self.node(place);
        self.retire(corner, node);
        let left = self.add(before, struck, node, place);
        let right = self.add(struck, after, node, place);
        self.link(previous, left);
        self.link(left, end);
        self.link(start, right);
        self.link(right, next);
        self.settle(left);
        self.settle(right);
    }

    /// The piece of a plane that a corner hits, by the corner in which it begins.
    fn hit(&self, corner: CornerId, plane: SupportId) -> Option<CornerId> {
        let Corner { before, after, .. } = self.corners[corner];
        let point = [before, after, plane];
        self.corners
            .iter()
            .enumerate()
            .filter(|(_, start)| start.live && start.after == plane)
            .find_map(|(start, _)| match self.lies_on(point, start)? {
                OnEdge::Within => Some(start),
                OnEdge::At(end) => self.hit_corner(corner, end),
            })
    }

    /// Which of the two edges at a corner another corner hits, that comes to lie on it.
    fn hit_corner(&self, corner: CornerId, end: CornerId) -> Option<CornerId> {
        if self.is_knotted(corner, end) {
            return None;
        }
        let Corner {
            before: one,
            after: other,
            previous,
            ..
        } = self.corners[end];
        let (arriving, leaving) = (self.corners[corner].before, self.corners[corner].after);
        // An edge that goes on in one of the two is joined to it. Else the leaving edge crosses the second only if it draws a piece out of it.
        let draws_out = one == leaving
            || other != arriving
                && self.supports.turn(other, leaving).is_ne()
                && self.shrinks(one, other, leaving) == Ordering::Less;
        Some(if draws_out { end } else { previous })
    }

    /// Where on the edge that begins in a corner the point lies in which three planes meet, one of them that of the edge.
    fn lies_on(&self, point: Place, start: CornerId) -> Option<OnEdge> {
        let end = self.corners[start].next;
        let edge = self.corners[start].after;
        let (bound, stop) = (self.corners[start].before, self.corners[end].after);
        let from_start = within(
            self.supports.turn(bound, edge),
            self.supports.side(bound, point),
        );
        let from_end = within(
            self.supports.turn(edge, stop),
            self.supports.side(stop, point),
        );
        match (from_start, from_end) {
            (Ordering::Less, _) | (_, Ordering::Less) => None,
            (Ordering::Equal, _) => Some(OnEdge::At(start)),
            (_, Ordering::Equal) => Some(OnEdge::At(end)),
            _ => Some(OnEdge::Within),
        }
    }

    /// Whether only edges of no length lie between two corners: then they are in one place because they have not parted yet, or are about to vanish.
    fn is_knotted(&self, one: CornerId, other: CornerId) -> bool {
        let leads = |from: CornerId, to: CornerId| {
            let mut at = from;
            while at != to && self.has_no_length(at) {
                at = self.corners[at].next;
                if at == from {
                    return false;
                }
            }
            at == to
        };
        leads(one, other) || leads(other, one)
    }

    /// Whether the edge after a corner has no length now.
    fn has_no_length(&self, corner: CornerId) -> bool {
        let (before, edge, after) = self.around(corner);
        match self.supports.meet([before, edge, after]).at {
            Some(at) => self.supports.compare(at, self.now).is_eq(),
            None => self.supports.side(after, [before, edge, FLOOR]).is_eq(),
        }
    }

    /// An edge begins to rise that has stood upright until now.
    fn start(&mut self, start: Start) {
        self.now = Moment::height(start.at);
        let ends: Vec<CornerId> = (0..self.corners.len())
            .filter(|&id| self.corners[id].live)
            .filter(|&id| {
                self.corners[id].before == start.waiting || self.corners[id].after == start.waiting
            })
            .collect();
        for &end in &ends {
            self.set_in_motion(end, start);
        }
        for corner in 0..self.corners.len() {
            if self.corners[corner].live {
                self.foresee(corner);
            }
        }
    }

    /// A corner of an edge that begins to rise sets out on a new path, and the base of the risen plane is drawn.
    fn set_in_motion(&mut self, corner: CornerId, start: Start) {
        let Start { waiting, later, .. } = start;
        let Corner {
            before,
            after,
            previous,
            next,
            ..
        } = self.corners[corner];
        let (other, ends_here) = if before == waiting {
            (after, true)
        } else {
            (before, false)
        };
        let place = [other, waiting, later];
        let node = self.node(place);
        self.retire(corner, node);
        let risen = if ends_here {
            self.add(later, after, node, place)
        } else {
            self.add(before, later, node, place)
        };
        self.link(previous, risen);
        self.link(risen, next);
        // The end comes round to its beginning once both have been renewed.
        let beginning = self.corners[risen].previous;
        if ends_here && self.corners[beginning].after == later {
            self.draw_base(beginning, risen, start);
        }
        if !ends_here && self.corners[next].before == later {
            self.draw_base(risen, next, start);
        }
    }

    fn draw_base(&mut self, from: CornerId, to: CornerId, start: Start) {
        self.trace(Trace {
            from: self.corners[from].born,
            to: self.corners[to].born,
            left: start.later,
            right: start.waiting,
        });
    }

    /// Of two corners the one that was born later.
    pub(super) fn younger(&self, one: CornerId, other: CornerId) -> CornerId {
        if self.corners[one].born < self.corners[other].born {
            other
        } else {
            one
        }
    }

    /// A node where three planes meet.
    pub(super) fn node(&mut self, place: Place) -> usize {
        self.nodes.push(self.supports.point(place));
        self.nodes.len() - 1
    }

    pub(super) fn trace(&mut self, trace: Trace) {
        self.traces.push(trace);
    }

    pub(super) fn add(
        &mut self,
        before: SupportId,
        after: SupportId,
        born: usize,
        place: Place,
    ) -> CornerId {
        let id = self.corners.len();
        self.pieces[after] += 1;
        self.corners.push(Corner {
            before,
            after,
            previous: id,
            next: id,
            born,
            place,
            live: true,
            collapse: None,
            strikes: Vec::new(),
            strike: None,
        });
        id
    }

    pub(super) fn link(&mut self, one: CornerId, other: CornerId) {
        self.corners[one].next = other;
        self.corners[other].previous = one;
    }

    /// The corner's path ends in a node.
    pub(super) fn retire(&mut self, corner: CornerId, node: usize) {
        let ended = &self.corners[corner];
        self.trace(Trace {
            from: ended.born,
            to: node,
            left: ended.before,
            right: ended.after,
        });
        self.forget(corner);
    }

    /// The corner is none.
    pub(super) fn forget(&mut self, corner: CornerId) {
        let ended = &mut self.corners[corner];
        ended.live = false;
        ended.strikes = Vec::new();
        self.pieces[ended.after] -= 1;
    }

    /// The planes of the edge after a corner and of its two neighbours.
    fn around(&self, corner: CornerId) -> (SupportId, SupportId, SupportId) {
        let end = self.corners[corner].next;
        (
            self.corners[corner].before,
            self.corners[corner].after,
            self.corners[end].after,
        )
    }

    /// Looks ahead for all that can become of a corner.
    pub(super) fn foresee(&mut self, corner: CornerId) {
        self.foresee_collapse(corner);
        self.foresee_strikes(corner);
    }

    /// When the edge after a corner collapses.
    pub(super) fn foresee_collapse(&mut self, corner: CornerId) {
        let (before, edge, after) = self.around(corner);
        let meeting = self.supports.meet([before, edge, after]);
        self.corners[corner].collapse = match meeting.at {
            // Three planes through one line: no length now, and none ever.
            None => self.has_no_length(corner).then_some(self.now),
            Some(at) => match self.supports.compare(at, self.now) {
                Ordering::Greater => Some(at),
                Ordering::Equal => {
                    (self.shrinks(before, edge, after) == Ordering::Greater).then_some(self.now)
                }
                Ordering::Less => None,
            },
        };
    }

    /// Whether the middle one of three edges gets shorter (`Greater`) or longer (`Less`).
    fn shrinks(&self, before: SupportId, edge: SupportId, after: SupportId) -> Ordering {
        let turns = [
            self.supports.meet([before, edge, after]).turn,
            self.supports.turn(before, edge),
            self.supports.turn(edge, after),
        ];
        if turns.contains(&Ordering::Equal) {
            return Ordering::Equal;
        }
        let right = turns.iter().filter(|turn| turn.is_lt()).count();
        if right % 2 == 0 {
            Ordering::Greater
        } else {
            Ordering::Less
        }
    }

    /// Which edges lie in the way of a reflex corner. Whether it hits them is asked when it gets there.
    fn foresee_strikes(&mut self, corner: CornerId) {
        let Corner { before, after, .. } = self.corners[corner];
        let mut strikes = std::mem::take(&mut self.corners[corner].strikes);
        strikes.clear();
        if self.supports.turn(before, after).is_lt() {
            let pair = self.supports.pair(before, after);
            strikes.extend(
                (0..self.supports.len())
                    .filter(|&plane| self.pieces[plane] > 0 && plane != before && plane != after)
                    .filter_map(|plane| {
                        let meeting = pair.meet(plane);
                        let at = meeting.at.filter(|_| meeting.turn.is_lt())?;
                        (self.supports.compare(at, self.now).is_ge()).then_some((at, plane))
                    }),
            );
        }
        self.corners[corner].strikes = strikes;
        self.order_strikes(corner);
    }

    fn order_strikes(&mut self, corner: CornerId) {
        let strikes = &self.corners[corner].strikes;
        self.corners[corner].strike = (0..strikes.len())
            .min_by(|&one, &other| self.supports.compare(strikes[one].0, strikes[other].0));
    }
}

/// Where a point lies on an edge.
enum OnEdge {
    /// Between its ends.
    Within,
    /// At one of them.
    At(CornerId),
}

/// Whether a point of an edge's line lies on the edge's side of one of its ends (`Greater`), from the turn there and on which side of the neighbour it lies.
fn within(turn: Ordering, side: Ordering) -> Ordering {
    match turn {
        Ordering::Less => side.reverse(),
        _ => side,
    }
}
