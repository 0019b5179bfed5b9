//! Roofs by hand, from closed forms: planes by their corners on plan, eave first; lines follow from how planes meet.

#![allow(dead_code)]

use trade::roof::{Corner, LineKind, Plane, RoofLine, RoofPlan};
use trade::units::{Area, Got, Length, Pitch};

pub const FOOT: f64 = 0.3048;

/// One plane on plan: its corners anticlockwise, its eave from the first to the second.
#[derive(Clone)]
pub struct Drawn {
    pub corners: Vec<(f64, f64)>,
    pub holes: Vec<Vec<(f64, f64)>>,
    pub pitch: Pitch,
    /// Height of its eave.
    pub raised: f64,
}

pub fn drawn(corners: &[(f64, f64)], pitch: Pitch) -> Drawn {
    Drawn {
        corners: corners.to_vec(),
        holes: Vec::new(),
        pitch,
        raised: 0.0,
    }
}

/// A plan of planes; `kinds` overrules what a free edge whose middle lies at a place is.
pub fn plan(planes: &[Drawn], kinds: &[((f64, f64), LineKind)]) -> RoofPlan {
    let built: Vec<Plane> = planes
        .iter()
        .enumerate()
        .map(|(at, plane)| build(at, plane))
        .collect();
    let height = built
        .iter()
        .flat_map(|plane| &plane.corners)
        .map(|corner| corner.z)
        .fold(0.0, f64::max);
    RoofPlan {
        structure: None,
        got: Got::Tape,
        length_within: 0.01,
        pitch_within: 0.02,
        lines: lines(&built, kinds),
        planes: built,
        outlines: Vec::new(),
        walls: Vec::new(),
        height: Length::from_metres(height),
    }
}

fn build(at: usize, drawn: &Drawn) -> Plane {
    let (a, b) = (drawn.corners[0], drawn.corners[1]);
    let length = (b.0 - a.0).hypot(b.1 - a.1);
    let downhill = ((b.1 - a.1) / length, (a.0 - b.0) / length);
    let rise = drawn.pitch.in_twelfths() / 12.0;
    let corner = |&(x, y): &(f64, f64)| {
        let down = (x - a.0) * downhill.0 + (y - a.1) * downhill.1;
        Corner {
            x,
            y,
            z: drawn.raised - down * rise,
        }
    };
    let plan_area = area(&drawn.corners) + drawn.holes.iter().map(|hole| area(hole)).sum::<f64>();
    Plane {
        letter: ('A'..).nth(at).map_or_else(String::new, String::from),
        slope: None,
        pitch: drawn.pitch,
        downhill,
        corners: drawn.corners.iter().map(corner).collect(),
        holes: drawn
            .holes
            .iter()
            .map(|hole| hole.iter().map(corner).collect())
            .collect(),
        plan_area: Area::square_metres(plan_area),
        slope_area: Area::square_metres(plan_area * drawn.pitch.slope_factor()),
    }
}

fn lines(planes: &[Plane], kinds: &[((f64, f64), LineKind)]) -> Vec<RoofLine> {
    let mut lines: Vec<RoofLine> = Vec::new();
    let mut ways: Vec<Vec<f64>> = Vec::new();
    for (at, plane) in planes.iter().enumerate() {
        let next = plane.corners.iter().cycle().skip(1);
        for (from, to) in plane.corners.iter().zip(next) {
            let run = (to.x - from.x).hypot(to.y - from.y);
            let out = ((to.y - from.y) / run, (from.x - to.x) / run);
            let way = plane.downhill.0 * out.0 + plane.downhill.1 * out.1;
            let same =
                |a: &Corner, b: &Corner| (a.x - b.x).hypot(a.y - b.y) + (a.z - b.z).abs() < 1e-6;
            let shared = lines.iter().position(|line| {
                (same(&line.from, from) && same(&line.to, to))
                    || (same(&line.from, to) && same(&line.to, from))
            });
            if let Some(shared) = shared {
                lines[shared].planes.push(at);
                ways[shared].push(way);
                continue;
            }
            let (low, high) = if from.z <= to.z {
                (from, to)
            } else {
                (to, from)
            };
            lines.push(RoofLine {
                kind: LineKind::Eave,
                from: *low,
                to: *high,
                length: Length::from_metres(run.hypot(to.z - from.z)),
                planes: vec![at],
                overhang: None,
            });
            ways.push(vec![way]);
        }
    }
    for (line, ways) in lines.iter_mut().zip(&ways) {
        let level = (line.from.z - line.to.z).abs() < 1e-6;
        line.kind = match ways.as_slice() {
            [one] if *one > 0.99 => LineKind::Eave,
            [one] if *one < -0.99 => LineKind::Top,
            [_] => LineKind::Rake,
            [a, b] if *a > 1e-6 && *b > 1e-6 => LineKind::Valley,
            [a, b] if *a * *b < 0.0 => LineKind::PitchChange,
            _ if level => LineKind::Ridge,
            _ => LineKind::Hip,
        };
        let middle = (
            f64::midpoint(line.from.x, line.to.x),
            f64::midpoint(line.from.y, line.to.y),
        );
        let named = kinds
            .iter()
            .find(|(place, _)| (place.0 - middle.0).hypot(place.1 - middle.1) < 1e-6);
        if let Some((_, kind)) = named {
            line.kind = *kind;
        }
        if matches!(line.kind, LineKind::Eave | LineKind::Rake) {
            line.overhang = Some(Length::inches(16));
        }
    }
    lines
}

fn area(ring: &[(f64, f64)]) -> f64 {
    ring.iter()
        .zip(ring.iter().cycle().skip(1))
        .map(|(a, b)| a.0 * b.1 - b.0 * a.1)
        .sum::<f64>()
        / 2.0
}

/// One plane over a rectangle, its eave at the street, its high edge free.
pub fn shed(wide: f64, deep: f64, pitch: Pitch) -> RoofPlan {
    plan(&[shed_plane(wide, deep, pitch)], &[])
}

pub fn shed_plane(wide: f64, deep: f64, pitch: Pitch) -> Drawn {
    drawn(&[(0.0, 0.0), (wide, 0.0), (wide, deep), (0.0, deep)], pitch)
}

/// A lean-to whose high edge and right side end at a wall.
pub fn lean_to(wide: f64, deep: f64, pitch: Pitch) -> RoofPlan {
    plan(
        &[shed_plane(wide, deep, pitch)],
        &[
            ((wide / 2.0, deep), LineKind::Wall),
            ((wide, deep / 2.0), LineKind::Step),
        ],
    )
}

/// Two planes with the ridge along the street.
pub fn gable_planes(wide: f64, deep: f64, pitch: Pitch) -> [Drawn; 2] {
    let half = deep / 2.0;
    [
        drawn(&[(0.0, 0.0), (wide, 0.0), (wide, half), (0.0, half)], pitch),
        drawn(
            &[(wide, deep), (0.0, deep), (0.0, half), (wide, half)],
            pitch,
        ),
    ]
}

pub fn gable(wide: f64, deep: f64, pitch: Pitch) -> RoofPlan {
    plan(&gable_planes(wide, deep, pitch), &[])
}

/// Four planes of one pitch; at least as wide as deep.
pub fn hip_planes(wide: f64, deep: f64, pitch: Pitch) -> [Drawn; 4] {
    let half = deep / 2.0;
    let (left, right) = ((half, half), (wide - half, half));
    [
        drawn(&[(0.0, 0.0), (wide, 0.0), right, left], pitch),
        drawn(&[(wide, 0.0), (wide, deep), right], pitch),
        drawn(&[(wide, deep), (0.0, deep), left, right], pitch),
        drawn(&[(0.0, deep), (0.0, 0.0), left], pitch),
    ]
}

pub fn hip(wide: f64, deep: f64, pitch: Pitch) -> RoofPlan {
    plan(&hip_planes(wide, deep, pitch), &[])
}

/// An L of two hipped wings, each `span` wide: `wide` along the street, `deep` away from it.
pub fn ell_planes(wide: f64, deep: f64, span: f64, pitch: Pitch) -> [Drawn; 6] {
    let half = span / 2.0;
    let bend = (half, half);
    let (right, back) = ((wide - half, half), (half, deep - half));
    [
        drawn(&[(0.0, 0.0), (wide, 0.0), right, bend], pitch),
        drawn(&[(wide, 0.0), (wide, span), right], pitch),
        drawn(&[(wide, span), (span, span), bend, right], pitch),
        drawn(&[(span, span), (span, deep), back, bend], pitch),
        drawn(&[(span, deep), (0.0, deep), back], pitch),
        drawn(&[(0.0, deep), (0.0, 0.0), bend, back], pitch),
    ]
}

pub fn ell(wide: f64, deep: f64, span: f64, pitch: Pitch) -> RoofPlan {
    plan(&ell_planes(wide, deep, span, pitch), &[])
}

/// A gable along the street with a gabled wing towards it, `from` to `to`, standing out by `out`: two valleys.
pub fn tee_planes(wide: f64, deep: f64, wing: (f64, f64), out: f64, pitch: Pitch) -> [Drawn; 4] {
    let half = deep / 2.0;
    let (from, to) = wing;
    let middle = f64::midpoint(from, to);
    let reach = (to - from) / 2.0;
    let top = (middle, reach);
    [
        drawn(
            &[
                (0.0, 0.0),
                (from, 0.0),
                top,
                (to, 0.0),
                (wide, 0.0),
                (wide, half),
                (0.0, half),
            ],
            pitch,
        ),
        drawn(
            &[(wide, deep), (0.0, deep), (0.0, half), (wide, half)],
            pitch,
        ),
        drawn(&[(from, 0.0), (from, -out), (middle, -out), top], pitch),
        drawn(&[(to, -out), (to, 0.0), top, (middle, -out)], pitch),
    ]
}

pub fn tee(wide: f64, deep: f64, wing: (f64, f64), out: f64, pitch: Pitch) -> RoofPlan {
    plan(&tee_planes(wide, deep, wing, out, pitch), &[])
}

/// A rectangle to be cut out of a plane, clockwise.
pub fn hole(from: (f64, f64), to: (f64, f64)) -> Vec<(f64, f64)> {
    vec![from, (from.0, to.1), to, (to.0, from.1)]
}
