//! Planes typed in one by one, laid out side by side: the front ones below, the rear ones above, left and right beside them.

use crate::error::ShapeError;
use crate::planes::{Raised, area, line};
use trade::property::Side;
use trade::roof::{Corner, LineKind, Plane, RoofLine};
use trade::sketch::{HighEdge, SideEdge, TypedPlane};
use trade::units::{Area, Length};

/// Between planes laid out beside each other, in metres.
const APART: f64 = 1.0;
/// Two lines within such a share of their length are one, seen from two planes.
const ALIKE: f64 = 0.02;

/// The planes as they were typed, each by itself.
///
/// # Errors
/// Where one has no eave or high edge, or no height.
pub(crate) fn planes(typed: &[TypedPlane]) -> Result<Raised, ShapeError> {
    if typed.is_empty() {
        return Err(ShapeError::Nothing);
    }
    let mut laid_out = Raised::default();
    for side in Side::ALL {
        let mut begun = 0.0;
        for (number, plane) in typed
            .iter()
            .enumerate()
            .filter(|(_, plane)| plane.side == side)
        {
            let shape = Shape::of(plane).ok_or(ShapeError::NoMeasure(number))?;
            let from = begun - shape.least();
            begun += shape.most() - shape.least() + APART;
            put(&mut laid_out, plane, &shape.placed(side, from));
        }
    }
    laid_out.lines = paired(laid_out.lines);
    Ok(laid_out)
}

/// One plane on plan: along its eave from 0, and up.
struct Shape {
    eave: f64,
    /// Where its high edge begins and ends along the eave.
    high: (f64, f64),
    run: f64,
    rise: f64,
}

impl Shape {
    fn of(plane: &TypedPlane) -> Option<Self> {
        let (eave, high, up) = (
            plane.eave.in_metres(),
            plane.high.in_metres(),
            plane.up.in_metres(),
        );
        if eave < 0.0 || high < 0.0 || eave + high <= 0.0 || up <= 0.0 {
            return None;
        }
        let run = up / plane.pitch.slope_factor();
        let (left, right) = leans(plane.sides, eave - high, run);
        Some(Self {
            eave,
            high: (left, eave - right),
            run,
            rise: run * plane.pitch.in_twelfths() / 12.0,
        })
    }

    fn least(&self) -> f64 {
        self.high.0.min(0.0)
    }

    fn most(&self) -> f64 {
        self.high.1.max(self.eave)
    }

    /// Its corners from the left end of its eave on, seen from below.
    fn placed(&self, side: Side, from: f64) -> [Corner; 4] {
        let corner = |along: f64, up: f64, z: f64| {
            let (along, up) = (from + along, APART + self.run - up);
            let (x, y) = match side {
                Side::Front => (along, -up),
                Side::Right => (up, along),
                Side::Rear => (-along, up),
                Side::Left => (-up, -along),
            };
            Corner { x, y, z }
        };
        [
            corner(0.0, 0.0, 0.0),
            corner(self.eave, 0.0, 0.0),
            corner(self.high.1, self.run, self.rise),
            corner(self.high.0, self.run, self.rise),
        ]
    }
}

/// How far each sloping edge leans inward on plan, so that together they take up what the high edge is shorter. Rakes and steps stand square to
/// the eave where the other can give way; a hip beside a valley runs at 45°, give or take what is left.
fn leans((left, right): (SideEdge, SideEdge), shorter: f64, run: f64) -> (f64, f64) {
    let square = |side: SideEdge| matches!(side, SideEdge::Rake | SideEdge::Step);
    match (left, right) {
        (SideEdge::Hip, SideEdge::Valley) => (run + shorter / 2.0, shorter / 2.0 - run),
        (SideEdge::Valley, SideEdge::Hip) => (shorter / 2.0 - run, run + shorter / 2.0),
        (left, right) if square(left) && !square(right) => (0.0, shorter),
        (left, right) if square(right) && !square(left) => (shorter, 0.0),
        _ => (shorter / 2.0, shorter / 2.0),
    }
}

fn put(laid_out: &mut Raised, plane: &TypedPlane, corners: &[Corner; 4]) {
    let number = laid_out.planes.len();
    let [a, b, c, d] = *corners;
    let side = |side: SideEdge| match side {
        SideEdge::Rake => LineKind::Rake,
        SideEdge::Hip => LineKind::Hip,
        SideEdge::Valley => LineKind::Valley,
        SideEdge::Step => LineKind::Step,
    };
    let high = match plane.high_is {
        HighEdge::Ridge => LineKind::Ridge,
        HighEdge::Wall => LineKind::Wall,
        HighEdge::PitchChange => LineKind::PitchChange,
        HighEdge::Top => LineKind::Top,
    };
    let edges = [
        (LineKind::Eave, a, b, plane.eave),
        (side(plane.sides.1), b, c, Length::feet(1)),
        (high, d, c, plane.high),
        (side(plane.sides.0), a, d, Length::feet(1)),
    ];
    laid_out.lines.extend(
        edges
            .into_iter()
            .filter(|(_, _, _, length)| *length > Length::ZERO)
            .map(|(kind, from, to, _)| line(kind, (from, to), vec![number], None)),
    );
    let mut rim = vec![a, b, c, d];
    rim.dedup_by(|one, other| (one.x - other.x).hypot(one.y - other.y) < 1e-9);
    let plan_area = Area::square_metres(area(&rim));
    laid_out.outlines.push(vec![rim.clone()]);
    laid_out.planes.push(Plane {
        letter: String::new(),
        slope: plane.slope,
        pitch: plane.pitch,
        downhill: downhill(plane.side),
        corners: rim,
        holes: Vec::new(),
        plan_area,
        slope_area: plan_area.scaled(plane.pitch.slope_factor()),
    });
}

fn downhill(side: Side) -> (f64, f64) {
    match side {
        Side::Front => (0.0, -1.0),
        Side::Left => (-1.0, 0.0),
        Side::Rear => (0.0, 1.0),
        Side::Right => (1.0, 0.0),
    }
}

/// Ridges, hips, valleys and changes of pitch bound two planes and were typed with both: two alike are one.
fn paired(lines: Vec<RoofLine>) -> Vec<RoofLine> {
    let mut done: Vec<RoofLine> = Vec::new();
    for line in lines {
        let twin = done.iter_mut().find(|other| is_twin(&line, other));
        match twin {
            Some(twin) => twin.planes.extend(line.planes),
            None => done.push(line),
        }
    }
    done
}

fn is_twin(line: &RoofLine, other: &RoofLine) -> bool {
    let shared = matches!(
        line.kind,
        LineKind::Ridge | LineKind::Hip | LineKind::Valley | LineKind::PitchChange
    );
    let (one, two) = (line.length.in_metres(), other.length.in_metres());
    shared
        && line.kind == other.kind
        && other.planes.len() == 1
        && other.planes != line.planes
        && (one - two).abs() <= ALIKE * one.max(two)
}
