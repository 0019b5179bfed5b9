//! The plane that each edge carries, and the three questions that the wavefront asks of them.
//!
//! An edge of the outline carries the plane `a·x + b·y + c − u·z = 0`, where `(a, b)` is the inward normal of its line in whole numbers without a
//! common divisor, `c` is whole, and `u = |(a, b)| / slope`. An upright edge (a gable, a wall) has `u = 0`. Read as a line that moves as `z` rises,
//! it is the wavefront's edge: `z` is the time.
//!
//! Only `u` may be rounded, once, when it is computed. It is the same float for all edges of equal slope whose normals are equally long: for parallel
//! and perpendicular edges, whatever way they lie. From there every decision is exact. So what is simultaneous, parallel or coplanar in the
//! outline is so here, and is decided as such, not by a tolerance.
//!
//! Each question is the sign of a determinant of the planes' numbers. It is computed in floats together with a bound of its error, and again
//! in [`Exact`] numbers only where the bound doesn't settle it.

use super::exact::Exact;
use super::whole;
use std::cmp::Ordering;

/// The name of a plane: its place in [`Supports`].
pub(super) type SupportId = usize;

/// The level plane `z = 0`, which no edge carries: it is there to be met by others.
pub(super) const FLOOR: SupportId = 0;

/// Relative error of one rounding.
const EPSILON: f64 = f64::EPSILON / 2.0;
/// Bounds the roundings on the way to a determinant of three rows, in units of [`EPSILON`] times the sum of its products taken positive.
const ROUNDINGS_OF_3: f64 = 16.0 * EPSILON;
/// The same for four rows.
const ROUNDINGS_OF_4: f64 = 32.0 * EPSILON;
/// How far a determinant may be off, as a share of it, for a point to be computed from it in floats.
const EXACT_ENOUGH: f64 = 1e-12;

/// One plane.
#[derive(Clone, Debug)]
pub(super) struct Support {
    /// Inward normal of its line: whole numbers.
    a: f64,
    b: f64,
    /// How far the line runs along its normal for each unit of height; 0 where the plane is upright.
    u: f64,
    /// The float next to the constant, and the constant itself.
    c: f64,
    c_exactly: Exact,
    /// The same four numbers, `a b u c`, where all are whole.
    whole: Option<[i64; 4]>,
    /// The plane that takes over from it where it waits, upright, for the height at which its edge begins to rise.
    becomes: Option<SupportId>,
}

impl Support {
    /// The plane over the line `a·x + b·y + c = 0`, inside of which `a·x + b·y + c` is positive, that leaves the line at the height `from`.
    #[allow(clippy::cast_precision_loss)]
    pub(super) fn over(normal: (i64, i64), c: i64, slope: Option<f64>, from: f64) -> Self {
        let (a, b) = (normal.0 as f64, normal.1 as f64);
        let u = slope.map_or(0.0, |slope| squared(normal).sqrt() / slope);
        let whole = whole(u)
            .filter(|_| from == 0.0)
            .map(|u| [normal.0, normal.1, u, c]);
        let raised = Exact::float(u).times(&Exact::float(from));
        let c_exactly = Exact::whole(c).plus(&raised);
        Self {
            a,
            b,
            u,
            c: c_exactly.near(),
            c_exactly,
            whole,
            becomes: None,
        }
    }

    /// The same, waiting for another plane of the same line.
    pub(super) fn becoming(self, later: SupportId) -> Self {
        Self {
            becomes: Some(later),
            ..self
        }
    }

    fn floor() -> Self {
        Self {
            a: 0.0,
            b: 0.0,
            u: 1.0,
            c: 0.0,
            c_exactly: Exact::default(),
            whole: Some([0, 0, 1, 0]),
            becomes: None,
        }
    }

    /// The inward normal of its line.
    pub(super) fn normal(&self) -> (f64, f64) {
        (self.a, self.b)
    }

    /// The same in whole numbers.
    #[allow(clippy::cast_possible_truncation)]
    pub(super) fn whole_normal(&self) -> (i64, i64) {
        (self.a as i64, self.b as i64)
    }

    /// Whether it is upright.
    pub(super) fn is_upright(&self) -> bool {
        self.u == 0.0
    }

    /// Whether the two are one plane.
    fn is(&self, other: &Self) -> bool {
        (self.a, self.b, self.u, self.c) == (other.a, other.b, other.u, other.c)
            && self.becomes == other.becomes
            && self.c_exactly.minus(&other.c_exactly).sign() == Ordering::Equal
    }

    fn exactly(&self) -> [Exact; 4] {
        [
            Exact::float(self.a),
            Exact::float(self.b),
            Exact::float(self.u),
            self.c_exactly.clone(),
        ]
    }
}

/// A float as a whole number, where it is one.
#[allow(clippy::cast_possible_truncation)]
fn whole(value: f64) -> Option<i64> {
    (value.fract() == 0.0 && value.abs() < 1e15).then_some(value as i64)
}

#[allow(clippy::cast_precision_loss)]
fn squared((x, y): (i64, i64)) -> f64 {
    (i128::from(x).pow(2) + i128::from(y).pow(2)) as f64
}

/// A number in floats, and how far it may be off.
#[derive(Clone, Copy, Debug, Default)]
struct Near {
    value: f64,
    off: f64,
}

impl Near {
    fn sign(self) -> Option<Ordering> {
        if self.value > self.off {
            Some(Ordering::Greater)
        } else if self.value < -self.off {
            Some(Ordering::Less)
        } else {
            None
        }
    }
}

/// The six minors of two rows `a b u c`, and the same with every product taken positive.
struct Minors {
    ab: f64,
    au: f64,
    ac: f64,
    bu: f64,
    bc: f64,
    uc: f64,
}

impl Minors {
    fn of(p: &Support, q: &Support) -> (Self, Self) {
        let minor = |m: f64, n: f64, k: f64, l: f64| (m * l - n * k, (m * l).abs() + (n * k).abs());
        let (ab, ab_abs) = minor(p.a, p.b, q.a, q.b);
        let (au, au_abs) = minor(p.a, p.u, q.a, q.u);
        let (ac, ac_abs) = minor(p.a, p.c, q.a, q.c);
        let (bu, bu_abs) = minor(p.b, p.u, q.b, q.u);
        let (bc, bc_abs) = minor(p.b, p.c, q.b, q.c);
        let (uc, uc_abs) = minor(p.u, p.c, q.u, q.c);
        (
            Self {
                ab,
                au,
                ac,
                bu,
                bc,
                uc,
            },
            Self {
                ab: ab_abs,
                au: au_abs,
                ac: ac_abs,
                bu: bu_abs,
                bc: bc_abs,
                uc: uc_abs,
            },
        )
    }

    /// `|a b u|` and `|a b c|` with a third row below.
    fn with(&self, abs: &Self, r: &Support) -> (Near, Near) {
        let det = |xy: f64, xz: f64, yz: f64, x: f64, y: f64, z: f64| x * yz - y * xz + z * xy;
        let sum = |xy: f64, xz: f64, yz: f64, x: f64, y: f64, z: f64| {
            (x.abs() * yz + y.abs() * xz + z.abs() * xy) * ROUNDINGS_OF_3
        };
        (
            Near {
                value: det(self.ab, self.au, self.bu, r.a, r.b, r.u),
                off: sum(abs.ab, abs.au, abs.bu, r.a, r.b, r.u),
            },
            Near {
                value: det(self.ab, self.ac, self.bc, r.a, r.b, r.c),
                off: sum(abs.ab, abs.ac, abs.bc, r.a, r.b, r.c),
            },
        )
    }
}

/// The places of `u` and `c` in the row of a plane.
const U: usize = 2;
const C: usize = 3;

/// The determinant of `a`, `b` and another column of three planes in whole numbers.
fn whole_column(rows: [[i64; 4]; 3], last: usize) -> i128 {
    whole::det3(rows.map(|row| [row[0], row[1], row[last]]))
}

/// The determinant of three rows, exactly.
fn det3([p, q, r]: [[&Exact; 3]; 3]) -> Exact {
    let minor = |i: usize, j: usize| p[i].times(q[j]).minus(&p[j].times(q[i]));
    r[0].times(&minor(1, 2))
        .minus(&r[1].times(&minor(0, 2)))
        .plus(&r[2].times(&minor(0, 1)))
}

/// Where on its way a moment is known from.
#[derive(Clone, Copy, Debug)]
enum Known {
    /// It is the height itself.
    Height,
    /// Three planes meet at it.
    Meet([SupportId; 3]),
}

impl Known {
    /// The same three planes are the same moment, in whatever order they were named.
    fn meet(mut ids: [SupportId; 3]) -> Self {
        ids.sort_unstable();
        Self::Meet(ids)
    }
}

/// A height of the wavefront: the float next to it, a bound of the error, and where it is known from exactly.
#[derive(Clone, Copy, Debug)]
pub(super) struct Moment {
    near: Near,
    known: Known,
}

impl Moment {
    /// A height that is a float.
    pub(super) fn height(z: f64) -> Self {
        Self {
            near: Near { value: z, off: 0.0 },
            known: Known::Height,
        }
    }
}

/// How two planes' common line runs against a third plane as it rises, and where it meets it.
pub(super) struct Meeting {
    /// The sign of `|a b u|` of the three, in their order.
    pub(super) turn: Ordering,
    /// When they meet, unless they never do or always.
    pub(super) at: Option<Moment>,
}

/// Two planes, prepared to be met by many others.
pub(super) struct Pair<'a> {
    supports: &'a Supports,
    ids: (SupportId, SupportId),
    minors: Minors,
    abs: Minors,
}

impl Pair<'_> {
    /// Where a third plane meets the common line of the two.
    pub(super) fn meet(&self, third: SupportId) -> Meeting {
        let (d, n) = self.minors.with(&self.abs, &self.supports.0[third]);
        let ids = [self.ids.0, self.ids.1, third];
        let Some(turn) = d.sign() else {
            return self.supports.meet_exactly(ids);
        };
        let value = n.value / d.value;
        let off = (n.off + value.abs() * d.off) / (d.value.abs() - d.off)
            + 2.0 * f64::EPSILON * value.abs();
        Meeting {
            turn,
            at: Some(Moment {
                near: Near { value, off },
                known: Known::meet(ids),
            }),
        }
    }
}

/// All planes of one roof.
#[derive(Debug)]
pub(super) struct Supports(Vec<Support>);

impl Supports {
    pub(super) fn new() -> Self {
        Self(vec![Support::floor()])
    }

    /// Takes a plane in; one that is there already keeps its name.
    pub(super) fn take(&mut self, support: Support) -> SupportId {
        if let Some(known) = self.0.iter().position(|known| known.is(&support)) {
            return known;
        }
        self.0.push(support);
        self.0.len() - 1
    }

    pub(super) fn len(&self) -> usize {
        self.0.len()
    }

    pub(super) fn get(&self, id: SupportId) -> &Support {
        &self.0[id]
    }

    /// Which way the line of `q` turns off from that of `p`: `Greater` to the left, `Equal` where they are parallel.
    pub(super) fn turn(&self, p: SupportId, q: SupportId) -> Ordering {
        let (p, q) = (&self.0[p], &self.0[q]);
        let near = p.a * q.b - p.b * q.a;
        let off = ((p.a * q.b).abs() + (p.b * q.a).abs()) * 4.0 * EPSILON;
        Near { value: near, off }.sign().unwrap_or_else(|| {
            let [pa, pb, qa, qb] = [p.a, p.b, q.a, q.b].map(Exact::float);
            pa.times(&qb).minus(&pb.times(&qa)).sign()
        })
    }

    /// Whether parallel lines run the same way.
    pub(super) fn run_alike(&self, p: SupportId, q: SupportId) -> bool {
        let (p, q) = (&self.0[p], &self.0[q]);
        p.a * q.a + p.b * q.b > 0.0
    }

    /// Whether `p` moves faster than the parallel `q`.
    pub(super) fn outruns(&self, p: SupportId, q: SupportId) -> bool {
        self.0[p].u > self.0[q].u
    }

    /// Two planes, to be met by others.
    pub(super) fn pair(&self, p: SupportId, q: SupportId) -> Pair<'_> {
        let (minors, abs) = Minors::of(&self.0[p], &self.0[q]);
        Pair {
            supports: self,
            ids: (p, q),
            minors,
            abs,
        }
    }

    /// Where three planes meet.
    pub(super) fn meet(&self, [p, q, r]: [SupportId; 3]) -> Meeting {
        self.pair(p, q).meet(r)
    }

    #[allow(clippy::cast_precision_loss)]
    fn meet_exactly(&self, ids: [SupportId; 3]) -> Meeting {
        let turn = self.turn_exactly(ids);
        if turn.is_eq() {
            return Meeting { turn, at: None };
        }
        let value = if let Some((n, d)) = self.whole_fraction(ids) {
            n as f64 / d as f64
        } else {
            let (n, d) = self.fraction(ids);
            n.near() / d.near()
        };
        let near = Near {
            value,
            off: 4.0 * f64::EPSILON * value.abs(),
        };
        let known = Known::meet(ids);
        Meeting {
            turn,
            at: Some(Moment { near, known }),
        }
    }

    /// The sign of `|a b u|` of three planes.
    fn turn_exactly(&self, ids: [SupportId; 3]) -> Ordering {
        self.whole_rows(ids).map_or_else(
            || self.column(ids, U).sign(),
            |rows| whole_column(rows, U).cmp(&0),
        )
    }

    /// The height where three planes meet, as a fraction of whole numbers.
    fn whole_fraction(&self, ids: [SupportId; 3]) -> Option<(i128, i128)> {
        let rows = self.whole_rows(ids)?;
        Some((whole_column(rows, C), whole_column(rows, U)))
    }

    fn whole_rows(&self, [p, q, r]: [SupportId; 3]) -> Option<[[i64; 4]; 3]> {
        Some([self.0[p].whole?, self.0[q].whole?, self.0[r].whole?])
    }

    /// The height where three planes meet, as a fraction.
    fn fraction(&self, ids: [SupportId; 3]) -> (Exact, Exact) {
        (self.column(ids, C), self.column(ids, U))
    }

    /// The determinant of `a`, `b` and another column of three planes.
    fn column(&self, ids: [SupportId; 3], last: usize) -> Exact {
        let [p, q, r] = ids.map(|id| self.0[id].exactly());
        det3([
            [&p[0], &p[1], &p[last]],
            [&q[0], &q[1], &q[last]],
            [&r[0], &r[1], &r[last]],
        ])
    }

    /// Which of two moments comes first.
    pub(super) fn compare(&self, one: Moment, other: Moment) -> Ordering {
        let gap = one.near.value - other.near.value;
        let off = one.near.off + other.near.off + EPSILON * gap.abs();
        if let Some(order) = (Near { value: gap, off }).sign() {
            return order;
        }
        if let (Known::Meet(one), Known::Meet(other)) = (one.known, other.known) {
            if one == other {
                return Ordering::Equal;
            }
            if let Some(order) = self.compare_whole(one, other) {
                return order;
            }
        }
        let exactly = |moment: Moment| match moment.known {
            Known::Height => (Exact::float(moment.near.value), Exact::float(1.0)),
            Known::Meet(ids) => self.fraction(ids),
        };
        let ((n1, d1), (n2, d2)) = (exactly(one), exactly(other));
        let order = n1.times(&d2).minus(&n2.times(&d1)).sign();
        if d1.sign() == d2.sign() {
            order
        } else {
            order.reverse()
        }
    }

    fn compare_whole(&self, one: [SupportId; 3], other: [SupportId; 3]) -> Option<Ordering> {
        let ((n1, d1), (n2, d2)) = (self.whole_fraction(one)?, self.whole_fraction(other)?);
        let order = n1.checked_mul(d2)?.cmp(&n2.checked_mul(d1)?);
        Some(if d1.signum() == d2.signum() {
            order
        } else {
            order.reverse()
        })
    }

    /// On which side of a plane the point lies where three others meet: `Greater` where its line hasn't reached the point yet.
    #[allow(clippy::many_single_char_names, reason = "rows and columns")]
    pub(super) fn side(&self, plane: SupportId, of: [SupportId; 3]) -> Ordering {
        if of.contains(&plane) {
            return Ordering::Equal;
        }
        let [i, j, k] = of;
        let (first, first_abs) = Minors::of(&self.0[i], &self.0[j]);
        let (second, second_abs) = Minors::of(&self.0[k], &self.0[plane]);
        let four = |m: &Minors, n: &Minors, sign: f64| {
            m.ab * n.uc - sign * m.au * n.bc + m.ac * n.bu + m.bu * n.ac - sign * m.bc * n.au
                + m.uc * n.ab
        };
        let e = Near {
            value: four(&first, &second, 1.0),
            off: four(&first_abs, &second_abs, -1.0) * ROUNDINGS_OF_4,
        };
        let (d, _) = first.with(&first_abs, &self.0[k]);
        let (e, d) = match (e.sign(), d.sign()) {
            (Some(e), Some(d)) => (e, d),
            _ => (
                self.det4_exactly([i, j, k, plane]),
                self.meet_exactly(of).turn,
            ),
        };
        match d {
            Ordering::Less => e.reverse(),
            _ => e,
        }
    }

    #[allow(clippy::many_single_char_names, reason = "rows and columns")]
    fn det4_exactly(&self, ids: [SupportId; 4]) -> Ordering {
        let rows = ids.map(|id| self.0[id].whole);
        if let [Some(i), Some(j), Some(k), Some(l)] = rows
            && let Some(det) = whole::det4([i, j, k, l])
        {
            return det.cmp(&0);
        }
        let [i, j, k, l] = ids.map(|id| self.0[id].exactly());
        let minor = |p: &[Exact; 4], q: &[Exact; 4], m: usize, n: usize| {
            p[m].times(&q[n]).minus(&p[n].times(&q[m]))
        };
        let product = |m: usize, n: usize, o: usize, p: usize| {
            minor(&i, &j, m, n).times(&minor(&k, &l, o, p))
        };
        product(0, 1, 2, 3)
            .minus(&product(0, 2, 1, 3))
            .plus(&product(0, 3, 1, 2))
            .plus(&product(1, 2, 0, 3))
            .minus(&product(1, 3, 0, 2))
            .plus(&product(2, 3, 0, 1))
            .sign()
    }

    /// The point where three planes meet, in floats.
    pub(super) fn point(&self, ids: [SupportId; 3]) -> [f64; 3] {
        let rows = ids.map(|id| &self.0[id]);
        let near = |column: fn(&Support) -> [f64; 3]| {
            let [p, q, r] = rows.map(column);
            let minor = |m: usize, n: usize| p[m] * q[n] - p[n] * q[m];
            r[0] * minor(1, 2) - r[1] * minor(0, 2) + r[2] * minor(0, 1)
        };
        let (minors, abs) = Minors::of(rows[0], rows[1]);
        let (d, _) = minors.with(&abs, rows[2]);
        if d.off > d.value.abs() * EXACT_ENOUGH {
            return self.point_exactly(ids);
        }
        let x = near(|s| [-s.c, s.b, s.u]);
        let y = near(|s| [s.a, -s.c, s.u]);
        let z = near(|s| [s.a, s.b, s.c]);
        [x / d.value, y / d.value, z / d.value]
    }

    fn point_exactly(&self, ids: [SupportId; 3]) -> [f64; 3] {
        let rows = ids.map(|id| self.0[id].exactly());
        let columns = |order: [usize; 3]| {
            let [p, q, r] = &rows;
            let row = |s: &'_ [Exact; 4]| order.map(|column| s[column].clone());
            let (p, q, r) = (row(p), row(q), row(r));
            det3([
                [&p[0], &p[1], &p[2]],
                [&q[0], &q[1], &q[2]],
                [&r[0], &r[1], &r[2]],
            ])
            .near()
        };
        let d = columns([0, 1, 2]);
        [
            -columns([3, 1, 2]) / d,
            -columns([0, 3, 2]) / d,
            columns([0, 1, 3]) / d,
        ]
    }
}
