//! Water that is seen inside: where it shows, what may let it in, and why one part is looked at before another.

use crate::catalogue::StopKey;
use crate::ids::PartId;
use crate::mark::Rung;
use crate::roof::LineKind;
use crate::units::Length;
use crate::visit::WetWhen;
use crate::words::Said;
use serde::{Deserialize, Serialize};

/// A stain or drip on the ceiling. Places are in metres on the plan of the roof above it.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct Stain {
    /// Where its middle is.
    pub at: (f64, f64),
    /// How far off its middle may be: half its width, and how well its place is known.
    pub within: Length,
    /// The weather that it comes with, where somebody has noticed.
    #[serde(default)]
    pub when: Option<WetWhen>,
    /// Where the wind came from then, in degrees to the right of the plan's way up (north, where the plan came from a map).
    #[serde(default)]
    pub wind_from: Option<f64>,
}

/// How a part lies on a roof. Places are in metres on plan.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", tag = "is")]
pub enum Lies {
    /// In one place: a pipe, a nail, a tab.
    Spot {
        /// Where.
        at: (f64, f64),
    },
    /// Upright through the roof, so that water goes round it: a chimney, a skylight.
    Through {
        /// Its middle.
        at: (f64, f64),
        /// Its width along the eave.
        wide: Length,
        /// Its depth up the roof, on plan.
        deep: Length,
    },
    /// From one place to another: a valley, an eave, a side wall, a ridge vent.
    Along {
        /// One end.
        from: (f64, f64),
        /// The other.
        to: (f64, f64),
    },
}

/// In which weather a part lets water in, if it does.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
pub struct LetsIn {
    /// In any rain.
    pub rain: bool,
    /// In rain driven by wind.
    pub driven: bool,
    /// When snow or ice melts and stands.
    pub thaw: bool,
}

impl Default for LetsIn {
    /// In any rain, driven or not.
    fn default() -> Self {
        Self {
            rain: true,
            driven: true,
            thaw: false,
        }
    }
}

/// A part that may let the water in.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Candidate {
    /// The part.
    pub part: PartId,
    /// What it is called.
    pub name: Said,
    /// The stop of the walk where it is looked at.
    pub stop: StopKey,
    /// The plane that it is on, by its place in the plan.
    pub plane: usize,
    /// How it lies.
    pub lies: Lies,
    /// The rung it was last seen on; `None` where nobody has seen it.
    pub rung: Option<Rung>,
    /// In which weather it lets water in, if it does.
    #[serde(default)]
    pub lets_in: LetsIn,
}

/// What is to be looked at.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", tag = "is")]
pub enum LookTo {
    /// A part.
    Part {
        /// Which.
        part: PartId,
    },
    /// A line of the roof, where no part is known on it.
    Line {
        /// The line, by its place in the plan.
        line: usize,
        /// What it is.
        kind: LineKind,
    },
    /// What stands through a plane, where no part is known there.
    Opening {
        /// The plane, by its place in the plan.
        plane: usize,
        /// Which of its holes.
        hole: usize,
    },
    /// The air of the house: breath and steam, not the roof.
    Attic,
}

/// The stop of the walk where a line of the roof is looked at.
pub fn stop_at(kind: LineKind) -> StopKey {
    StopKey::from(match kind {
        LineKind::Eave => "eave",
        LineKind::Rake | LineKind::Top => "rake",
        LineKind::Ridge | LineKind::Hip => "ridge",
        LineKind::Valley => "valleys",
        LineKind::Wall | LineKind::Step => "walls",
        LineKind::PitchChange => "field",
    })
}

/// Why something is suspected, or less so.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", tag = "is")]
pub enum Why {
    /// It lies right above.
    RightAbove,
    /// It lies up the slope.
    UpTheSlope {
        /// How far, on plan.
        far: Length,
    },
    /// It lies to the side of the way straight up.
    ToTheSide {
        /// How far, on plan.
        far: Length,
    },
    /// Its water runs into a valley and down along it.
    DownTheValley,
    /// Its water runs down along a wall.
    DownTheWall,
    /// Its water runs off the roof above onto this one.
    FromTheRoofAbove,
    /// Its water is turned aside by what stands in its way.
    RoundIt {
        /// The name of what stands in its way, where it is a known part.
        name: Option<Said>,
    },
    /// Water stands behind it and comes down at its corners.
    BehindIt,
    /// The wind can push its water over the ridge.
    OverTheRidge,
    /// Ice at the eave holds water back up to there.
    IceHoldsIt,
    /// The rung it stands on.
    Found {
        /// The rung.
        rung: Rung,
    },
    /// Nobody has seen it yet.
    NotSeen,
    /// It lets water in in such weather.
    FitsTheWeather {
        /// The weather.
        when: WetWhen,
    },
    /// It seldom lets water in in such weather.
    NotTheWeather {
        /// The weather.
        when: WetWhen,
    },
    /// The wind blew onto its slope.
    Windward,
    /// Its slope lay in the lee.
    Lee,
    /// No known part lies up the slope from the stain; this does.
    NoKnownPart,
    /// Water that shows in dry cold comes from the air of the house.
    DryCold,
}

impl Why {
    /// The message for a reader.
    pub fn says(&self) -> Said {
        match self {
            Self::RightAbove => Said::new("leak-right-above"),
            Self::UpTheSlope { far } => Said::new("leak-up-the-slope").with("far", *far),
            Self::ToTheSide { far } => Said::new("leak-to-the-side").with("far", *far),
            Self::DownTheValley => Said::new("leak-down-the-valley"),
            Self::DownTheWall => Said::new("leak-down-the-wall"),
            Self::FromTheRoofAbove => Said::new("leak-from-the-roof-above"),
            Self::RoundIt { name: Some(name) } => {
                Said::new("leak-round-it").with("name", name.clone())
            }
            Self::RoundIt { name: None } => Said::new("leak-round-what-stands-there"),
            Self::BehindIt => Said::new("leak-behind-it"),
            Self::OverTheRidge => Said::new("leak-over-the-ridge"),
            Self::IceHoldsIt => Said::new("leak-ice-holds-it"),
            Self::Found { rung } => Said::new("leak-found").with("rung", Said::new(rung.key())),
            Self::NotSeen => Said::new("leak-not-seen"),
            Self::FitsTheWeather { .. } => Said::new("leak-fits-the-weather"),
            Self::NotTheWeather { .. } => Said::new("leak-not-the-weather"),
            Self::Windward => Said::new("leak-windward"),
            Self::Lee => Said::new("leak-lee"),
            Self::NoKnownPart => Said::new("leak-no-known-part"),
            Self::DryCold => Said::new("leak-dry-cold"),
        }
    }
}

/// One suspect.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Suspected {
    /// What.
    pub what: LookTo,
    /// What it is called.
    pub name: Said,
    /// The stop of the walk where it is looked at.
    pub stop: StopKey,
    /// Where on plan to look first, in metres.
    pub look_at: (f64, f64),
    /// How its water runs from there to where it comes nearest to the stain: its bends on plan, in metres. Empty where no part is known.
    pub way: Vec<(f64, f64)>,
    /// How much of all suspicion falls on it, from 0 to 1.
    pub share: f64,
    /// Why, what weighs most first.
    pub why: Vec<Why>,
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::catalogue::Catalogue;

    #[test]
    fn each_line_is_looked_at_from_a_stop_of_the_walk() {
        let stops = Catalogue::standard().stops();
        for kind in LineKind::ALL {
            let stop = stop_at(kind);
            assert!(stops.iter().any(|known| known.key == stop), "{stop}");
        }
    }
}
