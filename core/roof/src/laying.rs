//! A covering laid on a plan: course by course over each plane as it is shaped, so that what it takes and what falls is that of this roof.

mod joints;
mod offcuts;
mod runs;
pub mod shape;

use joints::Rule;
use offcuts::{Ledger, Trimmed};
use trade::laid::{CutFrom, Laid, LaidPiece, LaidPlane, Pieces, Practice, StarterAt};
use trade::roof::{LineKind, Plane, RoofLine, RoofPlan};
use trade::units::{Area, Length};
use trade::words::Said;

/// A course thinner than a micrometre is rounding.
const NOTHING: f64 = 1e-6;
/// Caps cut from one piece. Common practice, no source.
const CAPS_FROM_ONE: u32 = 3;

/// Why a covering can't be laid.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum LayingError {
    /// A piece has no width, height, exposure or bundle.
    #[error(
        "the pieces need a width, a height, an exposure and a count in the bundle above nothing"
    )]
    NoSize,
    /// More is to be seen of a piece than there is.
    #[error("the exposure {exposure} is more than the height {height} of a piece")]
    ExposureOverHeight {
        /// What is to be seen.
        exposure: Length,
        /// What there is.
        height: Length,
    },
    /// The joints can't stand off from those below.
    #[error(
        "with an offset of {offset}, joints come nearer than {shortest} to those below on pieces {width} wide"
    )]
    JointsMeet {
        /// The offset.
        offset: Length,
        /// The shortest piece.
        shortest: Length,
        /// The width of a piece.
        width: Length,
    },
    /// The pieces are so small that no roof is laid with them.
    #[error("the pieces are too small to be laid on a roof: at least 1/2 in each way")]
    TooSmall,
}

impl LayingError {
    /// The message for a reader.
    pub fn says(&self) -> Said {
        match self {
            Self::NoSize => Said::new("laying-no-size"),
            Self::ExposureOverHeight { exposure, height } => {
                Said::new("laying-exposure-over-height")
                    .with("exposure", *exposure)
                    .with("height", *height)
            }
            Self::JointsMeet {
                offset,
                shortest,
                width,
            } => Said::new("laying-joints-meet")
                .with("offset", *offset)
                .with("shortest", *shortest)
                .with("width", *width),
            Self::TooSmall => Said::new("laying-too-small"),
        }
    }
}

/// Lays pieces over a plan: what it takes, and every piece where it lies.
///
/// Joints keep at least the shortest piece off those of the course below on pieces at least five times as wide as that; on narrower ones
/// there is not always a place that does, and the nearest to it is taken.
///
/// # Errors
/// Where the pieces can't be laid as they are described.
pub fn lay(
    plan: &RoofPlan,
    pieces: &Pieces,
    practice: impl Into<Practice>,
) -> Result<(Laid, Vec<LaidPiece>), LayingError> {
    let all: Vec<usize> = (0..plan.planes.len()).collect();
    lay_on(plan, &all, pieces, practice)
}

/// Lays pieces over some planes of a plan, by their place in it. A line that bounds one of them is dressed whole: a ridge is capped anew from
/// end to end where either side of it is covered anew.
///
/// # Errors
/// As [`lay`].
pub fn lay_on(
    plan: &RoofPlan,
    planes: &[usize],
    pieces: &Pieces,
    practice: impl Into<Practice>,
) -> Result<(Laid, Vec<LaidPiece>), LayingError> {
    check(pieces)?;
    let mut layer = Layer::new(plan, planes, pieces, practice.into());
    for (place, plane) in plan.planes.iter().enumerate() {
        if planes.contains(&place) {
            layer.plane(place, plane);
        }
    }
    Ok(layer.done())
}

fn check(pieces: &Pieces) -> Result<(), LayingError> {
    let least = Length::sixteenths(8);
    let (width, height, exposure) = (pieces.width, pieces.height, pieces.exposure);
    if [width, height, exposure]
        .iter()
        .any(|size| *size <= Length::ZERO)
        || pieces.bundle == 0
    {
        return Err(LayingError::NoSize);
    }
    if width < least || exposure < least {
        return Err(LayingError::TooSmall);
    }
    if exposure > height {
        return Err(LayingError::ExposureOverHeight { exposure, height });
    }
    let off = pieces.offset.in_inches();
    let apart = off.min(width.in_inches() - off);
    if off <= 0.0 || apart < pieces.shortest.in_inches() || pieces.shortest <= Length::ZERO {
        return Err(LayingError::JointsMeet {
            offset: pieces.offset,
            shortest: pieces.shortest,
            width,
        });
    }
    Ok(())
}

struct Layer<'a> {
    plan: &'a RoofPlan,
    /// The planes that are covered, by their place in the plan.
    on: &'a [usize],
    pieces: &'a Pieces,
    practice: Practice,
    rule: Rule,
    ledger: Ledger,
    /// Cover that a slanting edge cut away, in square metres.
    slanted: f64,
    planes: Vec<LaidPlane>,
    laid: Vec<LaidPiece>,
}

impl<'a> Layer<'a> {
    fn new(plan: &'a RoofPlan, on: &'a [usize], pieces: &'a Pieces, practice: Practice) -> Self {
        let rule = Rule {
            width: pieces.width.in_metres(),
            offset: pieces.offset.in_metres(),
            shortest: pieces.shortest.in_metres(),
        };
        Self {
            plan,
            on,
            pieces,
            practice,
            rule,
            ledger: Ledger::new(rule.width, rule.shortest),
            slanted: 0.0,
            planes: Vec::with_capacity(plan.planes.len()),
            laid: Vec::new(),
        }
    }

    fn plane(&mut self, place: usize, plane: &Plane) {
        let overhang = self.pieces.overhang.in_metres();
        let cover = shape::cover(self.plan, place, plane, overhang, self.practice.valleys);
        let outline = runs::outline(&cover.rings);
        let places = || cover.rings.iter().flatten();
        let start = places().map(|at| at.0).fold(f64::INFINITY, f64::min);
        let bottom = places().map(|at| at.1).fold(f64::INFINITY, f64::min);
        let top = places().map(|at| at.1).fold(f64::NEG_INFINITY, f64::max);
        let before = (self.ledger.opened, self.ledger.reused);
        let exposure = self.pieces.exposure.in_metres();
        let height = self.pieces.height.in_metres();
        let (mut course, mut seen, mut below) = (0_u32, 0.0, Vec::new());
        loop {
            let low = bottom + f64::from(course) * exposure;
            if low >= top - NOTHING {
                break;
            }
            let course_runs = runs::runs(&outline, low, (low + exposure).min(top), height);
            // Two runs may meet above what is seen of them, at the head of a valley: that is a joint as well.
            let mut joints: Vec<f64> = course_runs
                .windows(2)
                .filter(|pair| (pair[0].reach.1 - pair[1].reach.0).abs() < NOTHING)
                .map(|pair| pair[0].reach.1)
                .collect();
            for run in course_runs {
                let wanted = self.rule.pattern(start, course);
                let parted = self.rule.joints(run.reach, wanted, &below);
                seen += self.run(place, course, &run, &parted);
                joints.extend(parted);
            }
            below = joints;
            course += 1;
        }
        self.planes.push(LaidPlane {
            plane: place,
            courses: course,
            opened: self.ledger.opened - before.0,
            reused: self.ledger.reused - before.1,
            covered: Area::square_metres(seen - cover.lapped),
            lapped: Area::square_metres(cover.lapped),
        });
    }

    /// Lays one run; answers the area that it covers, in square metres.
    fn run(&mut self, plane: usize, course: u32, run: &runs::Run, joints: &[f64]) -> f64 {
        let ends: Vec<f64> = std::iter::once(run.reach.0)
            .chain(joints.iter().copied())
            .chain(std::iter::once(run.reach.1))
            .collect();
        let last = ends.len().saturating_sub(2);
        let mut covered = 0.0;
        for (at, pair) in ends.windows(2).enumerate() {
            let [from, to] = pair else { continue };
            let trimmed = match (at == 0, at == last) {
                (true, true) => Trimmed::Both,
                (true, false) => Trimmed::Left,
                (false, true) => Trimmed::Right,
                (false, false) => Trimmed::Neither,
            };
            let cut = self.ledger.take(to - from, trimmed);
            let seen = run.seen(*from, *to);
            let area: f64 = seen.iter().map(|rim| shape::area(rim)).sum();
            let whole = (to - from) * self.pieces.exposure.in_metres();
            self.slanted += whole - area;
            covered += area;
            let trimmed_away = whole - area > NOTHING && cut == CutFrom::Whole;
            self.laid.push(LaidPiece {
                plane,
                course,
                along: (*from, *to),
                seen,
                from: if trimmed_away { CutFrom::Piece } else { cut },
            });
        }
        covered
    }

    /// The lines of some kinds that bound what is covered.
    fn lines(&self, kinds: &'static [LineKind]) -> impl Iterator<Item = &'a RoofLine> + use<'a> {
        let on = self.on;
        self.plan.lines.iter().filter(move |line| {
            kinds.contains(&line.kind) && line.planes.iter().any(|plane| on.contains(plane))
        })
    }

    /// The area that is covered.
    fn roof(&self) -> Area {
        let planes = self.plan.planes.iter().enumerate();
        planes
            .filter(|(place, _)| self.on.contains(place))
            .map(|(_, plane)| plane.slope_area)
            .sum()
    }

    fn done(self) -> (Laid, Vec<LaidPiece>) {
        let covered: Area = self.planes.iter().map(|plane| plane.covered).sum();
        let lapped: Area = self.planes.iter().map(|plane| plane.lapped).sum();
        let exposure = self.pieces.exposure.in_metres();
        let dropped = self.ledger.dropped() * exposure + self.slanted;
        let field = self.ledger.opened;
        let opened = self.pieces.cover().in_square_metres() * f64::from(field);
        let starter_length = length_of(self.lines(starter_at(self.practice.starter)));
        let starter = pieces_for(starter_length, self.pieces.width);
        let capped: &[LineKind] = &[LineKind::Ridge, LineKind::Hip];
        let cap_length = length_of(self.lines(capped));
        let caps = self
            .lines(capped)
            .map(|line| pieces_for(line.length, self.pieces.exposure))
            .sum::<u32>();
        let cap = caps.div_ceil(CAPS_FROM_ONE);
        let roof = self.roof().in_square_metres();
        let is_broken = self
            .lines(&[LineKind::Hip, LineKind::Valley])
            .next()
            .is_some();
        let laid = Laid {
            pieces: self.pieces.clone(),
            valleys: self.practice.valleys,
            planes: self.planes,
            field,
            starter,
            starter_length,
            cap,
            cap_length,
            caps,
            bundles: bundles(self.pieces, field, starter + cap),
            covered,
            lapped,
            dropped: Area::square_metres(dropped),
            waste: share(dropped, opened),
            extra: share(opened - roof, roof),
            handbook: handbook(is_broken),
        };
        (laid, self.laid)
    }
}

fn bundles(pieces: &Pieces, field: u32, starter_and_caps: u32) -> u32 {
    let besides = if pieces.give_starter_and_caps() {
        starter_and_caps
    } else {
        0
    };
    (field + besides).div_ceil(pieces.bundle)
}

fn share(of: f64, whole: f64) -> f64 {
    if whole > 0.0 { of / whole } else { 0.0 }
}

fn starter_at(at: StarterAt) -> &'static [LineKind] {
    match at {
        StarterAt::Eaves => &[LineKind::Eave],
        StarterAt::EavesAndRakes => &[LineKind::Eave, LineKind::Rake],
    }
}

fn length_of<'l>(lines: impl Iterator<Item = &'l RoofLine>) -> Length {
    lines.fold(Length::ZERO, |sum, line| {
        sum.plus(line.length).unwrap_or(sum)
    })
}

/// Pieces laid end to end along a length; what is left at one edge goes on at the next.
fn pieces_for(length: Length, piece: Length) -> u32 {
    let pieces = (length.in_inches() / piece.in_inches() - NOTHING).ceil();
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let pieces = pieces.clamp(0.0, f64::from(u32::MAX)) as u32;
    pieces
}

/// Textbooks, which disagree: 5 to 8 % on average, 10 % and more where hips and valleys break the slopes.
fn handbook(is_broken: bool) -> (f64, Option<f64>) {
    if is_broken {
        (0.10, None)
    } else {
        (0.05, Some(0.08))
    }
}
