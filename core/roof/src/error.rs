//! What can be wrong with an outline, and where.

use std::fmt;
use trade::units::Length;
use trade::words::Said;

/// In what the numbers of a place are.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum PlaceUnit {
    /// Feet.
    #[default]
    Feet,
    /// Metres.
    Metres,
    /// Inches.
    Inches,
    /// Millimetres.
    Millimetres,
    /// Degrees of longitude and latitude.
    Degrees,
}

impl PlaceUnit {
    fn metres(self) -> Option<f64> {
        match self {
            Self::Feet => Some(0.3048),
            Self::Metres => Some(1.0),
            Self::Inches => Some(0.0254),
            Self::Millimetres => Some(0.001),
            Self::Degrees => None,
        }
    }
}

/// A place on plan, in the numbers of whoever gave it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct At {
    /// To the right, or the longitude.
    pub x: f64,
    /// Away from the street, or the latitude.
    pub y: f64,
    /// In what they are.
    pub unit: PlaceUnit,
}

impl At {
    /// A place by its lengths, in feet.
    pub fn of(x: Length, y: Length) -> Self {
        Self {
            x: x.in_feet(),
            y: y.in_feet(),
            unit: PlaceUnit::Feet,
        }
    }

    /// The same in another unit of length; degrees stay what they are.
    #[must_use]
    pub fn written_in(self, unit: PlaceUnit) -> Self {
        match (self.unit.metres(), unit.metres()) {
            (Some(from), Some(to)) => Self {
                x: self.x * from / to,
                y: self.y * from / to,
                unit,
            },
            _ => self,
        }
    }
}

impl fmt::Display for At {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let places = match self.unit {
            PlaceUnit::Feet => 2,
            PlaceUnit::Metres => 3,
            PlaceUnit::Inches => 1,
            PlaceUnit::Millimetres => 0,
            PlaceUnit::Degrees => 7,
        };
        let short = |number: f64| {
            let text = format!("{number:.places$}");
            let text = if text.contains('.') {
                text.trim_end_matches('0').trim_end_matches('.').to_owned()
            } else {
                text
            };
            if text == "-0" { "0".to_owned() } else { text }
        };
        write!(f, "({}, {})", short(self.x), short(self.y))
    }
}

/// A ring: which body's, and which of its rings, both counted from 0; ring 0 is the rim, the others are holes.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub struct RingAt {
    /// The body.
    pub body: usize,
    /// The ring.
    pub ring: usize,
}

impl RingAt {
    fn says(self) -> Said {
        let count = |number: usize| i64::try_from(number).unwrap_or(i64::MAX);
        match (self.body, self.ring) {
            (0, 0) => Said::new("outline-rim"),
            (0, hole) => Said::new("outline-hole").with("hole", count(hole)),
            (body, 0) => Said::new("outline-rim-of").with("body", count(body + 1)),
            (body, hole) => Said::new("outline-hole-of")
                .with("hole", count(hole))
                .with("body", count(body + 1)),
        }
    }
}

impl RingAt {
    /// The same where a sentence begins with it.
    fn begins(self) -> Said {
        let mut said = self.says();
        said.key.push_str(".start");
        said
    }
}

impl fmt::Display for RingAt {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.ring {
            0 => write!(f, "rim of body {}", self.body + 1),
            hole => write!(f, "hole {hole} of body {}", self.body + 1),
        }
    }
}

/// An edge, or the corner in which it begins: its ring and its number, counted from 0.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct EdgeAt {
    /// The ring.
    pub of: RingAt,
    /// The edge.
    pub edge: usize,
}

impl EdgeAt {
    /// As people count, from 1.
    fn number(self) -> i64 {
        i64::try_from(self.edge + 1).unwrap_or(i64::MAX)
    }
}

impl fmt::Display for EdgeAt {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "edge {} of the {}", self.edge + 1, self.of)
    }
}

/// What is wrong with a file of an outline; each is found at a path such as `bodies[0].rings[0][2].pitch`.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum FileFault {
    /// It is no JSON from this line and column on.
    NoJson {
        /// The line, from 1.
        line: usize,
        /// The column, from 1.
        column: usize,
    },
    /// Something else is wanted here.
    Wants(Wanted),
    /// It is missing here.
    Missing(String),
    /// It is not known here.
    Unknown {
        /// What stands there.
        name: String,
        /// What may stand there.
        known: String,
    },
    /// No such unit.
    Unit(String),
    /// The unit is missing.
    NoUnit,
    /// It is no pitch.
    Pitch(String),
    /// It is no length.
    Length(String),
    /// It is a kind of GeoJSON without an area.
    Kind(String),
    /// No pitch is given here and none for all.
    NoPitch,
    /// Not exactly one of `outline`, `rings`, `bodies`, `legs` and `planes` is there.
    OneOf,
    /// No outline is in it.
    Nothing,
    /// Dormers are told, but no outline that they could stand on.
    NoOutline,
}

/// What is wanted at a place in a file.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Wanted {
    /// A text.
    Text,
    /// A number.
    Number,
    /// A list.
    List,
    /// An object with members.
    Object,
    /// A position: two numbers.
    Position,
    /// A longitude between -180 and 180 and a latitude between -90 and 90.
    Degrees,
    /// As many as there are edges, for each ring.
    AsManyAsEdges,
    /// A corner: two lengths.
    Corner,
    /// What two sloping edges are.
    TwoSides,
}

impl Wanted {
    fn key(self) -> &'static str {
        match self {
            Self::Text => "outline-wants-text",
            Self::Number => "outline-wants-number",
            Self::List => "outline-wants-list",
            Self::Object => "outline-wants-object",
            Self::Position => "outline-wants-position",
            Self::Degrees => "outline-wants-degrees",
            Self::AsManyAsEdges => "outline-wants-as-many",
            Self::Corner => "outline-wants-corner",
            Self::TwoSides => "outline-wants-two-sides",
        }
    }
}

impl FileFault {
    fn says(&self) -> Said {
        match self {
            Self::NoJson { line, column } => Said::new("outline-no-json")
                .with("line", line.to_string())
                .with("column", column.to_string()),
            Self::Wants(wanted) => Said::new(wanted.key()),
            Self::Missing(name) => Said::new("outline-missing").with("name", name.as_str()),
            Self::Unknown { name, known } => Said::new("outline-unknown")
                .with("name", name.as_str())
                .with("known", known.as_str()),
            Self::Unit(text) => Said::new("outline-unit").with("text", text.as_str()),
            Self::Pitch(text) => Said::new("outline-pitch").with("text", text.as_str()),
            Self::Length(text) => Said::new("outline-length").with("text", text.as_str()),
            Self::Kind(text) => Said::new("outline-kind").with("text", text.as_str()),
            Self::NoUnit => Said::new("outline-no-unit"),
            Self::NoPitch => Said::new("outline-no-pitch"),
            Self::OneOf => Said::new("outline-one-of"),
            Self::Nothing => Said::new("outline-file-empty"),
            Self::NoOutline => Said::new("outline-no-outline"),
        }
    }
}

/// Why no roof comes of what was measured.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum ShapeError {
    /// There is nothing to make a roof of.
    #[error("nothing was drawn")]
    Nothing,
    /// A file could not be read.
    #[error("at {path}: {fault:?}")]
    File {
        /// Where in the file; empty for all of it.
        path: String,
        /// What is wrong.
        fault: FileFault,
    },
    /// A ring that must end where it began does not.
    #[error("the {ring} is open: it ends at {end}, not where it began")]
    Open {
        /// The ring.
        ring: RingAt,
        /// Where it ends.
        end: At,
    },
    /// A ring has fewer than three corners.
    #[error("the {ring} has {corners} corners")]
    TooFewCorners {
        /// The ring.
        ring: RingAt,
        /// How many it has.
        corners: usize,
    },
    /// An edge has no length: two corners in a row are one.
    #[error("{edge} has no length, at {at}")]
    NoLength {
        /// The edge.
        edge: EdgeAt,
        /// Where.
        at: At,
    },
    /// Two corners are in one place.
    #[error("corners {} and {} of the {} are both at {at}", .one.edge + 1, .other.edge + 1, .one.of)]
    SameCorner {
        /// One of them.
        one: EdgeAt,
        /// The other.
        other: EdgeAt,
        /// Where.
        at: At,
    },
    /// An edge runs back on the one before it.
    #[error("{edge} runs back on the edge before it, at {at}")]
    Spike {
        /// The edge that runs back.
        edge: EdgeAt,
        /// The tip.
        at: At,
    },
    /// Two edges cross or touch.
    #[error("{one} and {other} cross or touch at {at}")]
    Crossing {
        /// One of them.
        one: EdgeAt,
        /// The other.
        other: EdgeAt,
        /// Where.
        at: At,
    },
    /// A hole lies outside of the rim.
    #[error("the {hole} lies outside of the rim, at {at}")]
    HoleOutside {
        /// The hole.
        hole: RingAt,
        /// One of its corners.
        at: At,
    },
    /// A hole lies in another hole.
    #[error("the {hole} lies in the {within}, at {at}")]
    HoleInHole {
        /// The hole.
        hole: RingAt,
        /// The one around it.
        within: RingAt,
        /// One of its corners.
        at: At,
    },
    /// An edge that a plane must rise from is flat.
    #[error("{edge} has no pitch: a plane must rise from it")]
    Flat {
        /// The edge.
        edge: EdgeAt,
    },
    /// An overhang is less than nothing or wider than any.
    #[error("the overhang of {edge} is no overhang")]
    Overhang {
        /// The edge.
        edge: EdgeAt,
    },
    /// With its overhangs the outline runs into itself.
    #[error("with the overhangs the outline runs into itself at {one} and {other}")]
    OverhangsMeet {
        /// An edge there.
        one: EdgeAt,
        /// Another edge there.
        other: EdgeAt,
        /// Where.
        at: At,
    },
    /// No house is so large.
    #[error("the outline is {} m across", .across.in_metres())]
    TooLarge {
        /// Its greater extent.
        across: Length,
    },
    /// Several outlines lie too far from each other to be one property's.
    #[error("the outlines are {} m across together", .across.in_metres())]
    TooFarApart {
        /// The greater extent of all together.
        across: Length,
    },
    /// No house is so small.
    #[error("the outline is {} m across", .across.in_metres())]
    TooSmall {
        /// Its greater extent.
        across: Length,
    },
    /// The planes never close: too many edges stand upright.
    #[error("the roof never closes between {0:?}")]
    NeverCloses(Vec<EdgeAt>),
    /// The turns of a taped outline do not come round.
    #[error("the turns add up to {degrees}°, not to 360°")]
    NotRound {
        /// Their sum.
        degrees: f64,
    },
    /// A taped outline ends too far from where it began.
    #[error("the sides end {} m from where they began, {share} of the way round", .length.in_metres())]
    EndsFarOff {
        /// How far.
        length: Length,
        /// As a share of the way round.
        share: f64,
        /// Which way leads back, in degrees to the left of the first side; to the right where negative.
        back: f64,
    },
    /// A body that stands on the roofs before it has no wall on any of them.
    #[error("no wall of body {} stands on a roof before it", .0 + 1)]
    NotOnRoof(usize),
    /// Nothing is seen of a body that stands on the roofs before it: it lies below their slopes.
    #[error("nothing of body {} is seen above the roofs before it", .0 + 1)]
    Buried(usize),
    /// A number typed for a leg or plane is no measure of one.
    #[error("number {0} is no measure")]
    NoMeasure(usize),
}

impl ShapeError {
    /// The same with each place as whoever drew it wrote it.
    #[must_use]
    pub fn placed(mut self, place: impl Fn(At) -> At) -> Self {
        match &mut self {
            Self::Open { end: at, .. }
            | Self::NoLength { at, .. }
            | Self::SameCorner { at, .. }
            | Self::Spike { at, .. }
            | Self::Crossing { at, .. }
            | Self::HoleOutside { at, .. }
            | Self::HoleInHole { at, .. }
            | Self::OverhangsMeet { at, .. } => *at = place(*at),
            _ => {}
        }
        self
    }

    /// The message for a reader.
    pub fn says(&self) -> Said {
        match self {
            Self::Nothing => Said::new("outline-nothing"),
            Self::File { path, fault } if path.is_empty() => fault.says(),
            Self::File { path, fault } => Said::new("outline-file")
                .with("path", path.as_str())
                .with("fault", fault.says()),
            Self::Open { ring, end } => of_ring("outline-open", *ring).with("at", end.to_string()),
            Self::TooFewCorners { ring, corners } => of_ring("outline-too-few-corners", *ring)
                .with("corners", i64::try_from(*corners).unwrap_or(i64::MAX)),
            Self::NoLength { edge, at } => at_edge("outline-edge-no-length", *edge, *at),
            Self::SameCorner { one, other, at } => {
                at_edges("outline-same-corner", *one, *other, *at)
            }
            Self::Spike { edge, at } => at_edge("outline-spike", *edge, *at),
            Self::Crossing { one, other, at } => at_edges("outline-crossing", *one, *other, *at),
            Self::HoleOutside { hole, at } => {
                of_ring("outline-hole-outside", *hole).with("at", at.to_string())
            }
            Self::HoleInHole { hole, within, at } => of_ring("outline-hole-in-hole", *hole)
                .with("within", within.says())
                .with("at", at.to_string()),
            Self::Flat { edge } => {
                in_ring("outline-flat", edge.of).with("edge", edge.number().to_string())
            }
            Self::Overhang { edge } => {
                in_ring("outline-overhang", edge.of).with("edge", edge.number().to_string())
            }
            Self::OverhangsMeet { one, other, at } => {
                at_edges("outline-overhangs-meet", *one, *other, *at)
            }
            Self::TooLarge { across } => across_says("outline-too-large", *across),
            Self::TooFarApart { across } => across_says("outline-too-far-apart", *across),
            Self::TooSmall { across } => across_says("outline-too-small", *across),
            Self::NeverCloses(edges) => never_closes(edges),
            Self::NotRound { degrees } => {
                Said::new("outline-not-round").with("degrees", format!("{degrees:.1}"))
            }
            Self::EndsFarOff {
                length,
                share,
                back,
            } => Said::new("outline-ends-far-off")
                .with("length", *length)
                .with("percent", format!("{:.0}", share * 100.0))
                .with("way", way(*back)),
            Self::NotOnRoof(body) => {
                Said::new("outline-not-on-roof").with("body", (body + 1).to_string())
            }
            Self::Buried(body) => Said::new("outline-buried").with("body", (body + 1).to_string()),
            Self::NoMeasure(number) => {
                Said::new("outline-no-measure").with("number", (number + 1).to_string())
            }
        }
    }
}

fn in_ring(key: &str, ring: RingAt) -> Said {
    Said::new(key).with("ring", ring.says())
}

/// A sentence that begins with the ring.
fn of_ring(key: &str, ring: RingAt) -> Said {
    Said::new(key).with("ring", ring.begins())
}

fn at_edge(key: &str, edge: EdgeAt, at: At) -> Said {
    in_ring(key, edge.of)
        .with("edge", edge.number().to_string())
        .with("at", at.to_string())
}

fn at_edges(key: &str, one: EdgeAt, other: EdgeAt, at: At) -> Said {
    at_edge(key, one, at)
        .with("other", other.number().to_string())
        .with("otherring", other.of.says())
}

fn across_says(key: &str, across: Length) -> Said {
    Said::new(key)
        .with("across", across)
        .with("metres", format!("{:.3}", across.in_metres()))
}

/// A direction from the first side, in words.
fn way(degrees: f64) -> Said {
    let key = match degrees {
        left if left > 0.5 => "outline-way-left",
        right if right < -0.5 => "outline-way-right",
        _ => "outline-way-along",
    };
    Said::new(key).with("degrees", format!("{:.0}", degrees.abs()))
}

fn never_closes(edges: &[EdgeAt]) -> Said {
    let edges: Vec<Said> = edges
        .iter()
        .map(|edge| {
            Said::new("outline-edge-of")
                .with("edge", edge.number().to_string())
                .with("ring", edge.of.says())
        })
        .collect();
    Said::new("outline-never-closes").with("edges", edges)
}
