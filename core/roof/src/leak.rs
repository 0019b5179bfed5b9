//! Where does it leak from: water followed down from every part that may let it in, and the parts ranked by how well that explains a stain.

mod above;
mod entries;
mod ground;
mod water;
mod weigh;

use crate::frame::Place;
use above::{above, rounded};
pub(crate) use entries::off_length;
use entries::{Entry, Weather, entries};
use ground::{Ground, grounds};
use trade::catalogue::StopKey;
use trade::leak::{Candidate, Lies, LookTo, Stain, Suspected, Why};
use trade::roof::RoofPlan;
use trade::units::Length;
use trade::visit::WetWhen;
use trade::words::Said;
use water::{Round, Way};

/// A part that explains a stain less well than this, a share for each square metre, explains nothing. Common practice, no source.
const NOTHING: f64 = 1e-4;

/// Why a leak can't be traced.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum LeakError {
    /// The stain lies under no plane of the plan.
    #[error("the stain at {0:?} lies under no plane of this roof")]
    Outside(Place),
    /// A part lies on a plane that the plan doesn't have.
    #[error("a part lies on a plane that this plan does not have")]
    NoPlane {
        /// What the part is called.
        name: Said,
    },
    /// A part's place is not a number, or beyond any roof.
    #[error("the place of a part is no place")]
    NoPlace {
        /// What the part is called.
        name: Said,
    },
}

impl LeakError {
    /// The message for a reader.
    pub fn says(&self) -> Said {
        match self {
            Self::Outside(_) => Said::new("leak-outside"),
            Self::NoPlane { name } => Said::new("leak-no-plane").with("name", name.clone()),
            Self::NoPlace { name } => Said::new("leak-no-place").with("name", name.clone()),
        }
    }
}

/// What may let in the water of a stain, the likeliest first. Where no known part lies up the slope, the lines of the roof that do.
///
/// # Errors
/// Where the stain is not under the roof, or a part is not on it.
pub fn suspects(
    plan: &RoofPlan,
    stain: &Stain,
    parts: &[Candidate],
) -> Result<Vec<Suspected>, LeakError> {
    check(plan, parts)?;
    let mut grounds = grounds(plan);
    let within = stain.within.in_metres().max(0.0);
    let over = plane_over(&grounds, stain.at, within).ok_or(LeakError::Outside(stain.at))?;
    stand(&mut grounds, parts);
    let trace = Trace {
        plan,
        grounds: &grounds,
        parts,
        stain,
        within,
        weather: weigh::weather_of(stain),
    };
    let mut found: Vec<Suspected> = parts.iter().filter_map(|part| trace.part(part)).collect();
    if found.is_empty() {
        let empty = ground::grounds(plan);
        found = above(plan, &empty, over, stain.at, within, trace.weather.thaw);
    }
    if stain.when == Some(WetWhen::DryCold) {
        let most = found.iter().map(|one| one.share).fold(0.0, f64::max);
        found.push(attic(stain.at, most.max(NOTHING) * 4.0));
    }
    Ok(shared_out(found))
}

fn check(plan: &RoofPlan, parts: &[Candidate]) -> Result<(), LeakError> {
    for part in parts {
        let name = || part.name.clone();
        if part.plane >= plan.planes.len() {
            return Err(LeakError::NoPlane { name: name() });
        }
        let usable = |place: Place| place.0.abs() < 1e6 && place.1.abs() < 1e6;
        let placed = match part.lies {
            Lies::Spot { at } | Lies::Through { at, .. } => usable(at),
            Lies::Along { from, to } => usable(from) && usable(to),
        };
        if !placed {
            return Err(LeakError::NoPlace { name: name() });
        }
    }
    Ok(())
}

/// The plane over a place on plan, the lowest where one roof hangs over another; where it lies just outside, the one that comes nearest within `within`.
fn plane_over(grounds: &[Ground], at: Place, within: f64) -> Option<usize> {
    grounds
        .iter()
        .map(|ground| (ground.outside(at), ground.height(at)))
        .enumerate()
        .filter(|(_, (outside, _))| *outside <= within)
        .min_by(|(_, a), (_, b)| a.0.total_cmp(&b.0).then(a.1.total_cmp(&b.1)))
        .map(|(plane, _)| plane)
}

/// Parts that stand through the roof stand in the way of other parts' water.
fn stand(grounds: &mut [Ground], parts: &[Candidate]) {
    for (at, part) in parts.iter().enumerate() {
        if let (
            Lies::Through {
                at: middle,
                wide,
                deep,
            },
            Some(ground),
        ) = (part.lies, grounds.get_mut(part.plane))
        {
            ground.stand(middle, wide.in_metres(), deep.in_metres(), at);
        }
    }
}

struct Trace<'a> {
    plan: &'a RoofPlan,
    grounds: &'a [Ground],
    parts: &'a [Candidate],
    stain: &'a Stain,
    within: f64,
    weather: Weather,
}

impl Trace<'_> {
    /// What falls on one part; `None` where its water does not come to the stain.
    fn part(&self, part: &Candidate) -> Option<Suspected> {
        let mut entries = entries(self.plan, self.grounds, part, self.weather);
        for entry in &mut entries {
            entry.ways.retain(|way| self.comes_under(way));
        }
        if self.lies_below(part, &entries) {
            return None;
        }
        let density = weigh::density(&entries, self.stain.at, self.within);
        if density < NOTHING {
            return None;
        }
        let facing = self.facing(part);
        let fits = weigh::weather(part.lets_in, self.stain.when, facing);
        let (entry, way) = self.likeliest(&entries)?;
        let mut why = self.ways_reasons(part, entry, way);
        why.push(part.rung.map_or(Why::NotSeen, |rung| Why::Found { rung }));
        why.extend(self.weather_reasons(part, fits, facing));
        Some(Suspected {
            what: LookTo::Part { part: part.part },
            name: part.name.clone(),
            stop: part.stop.clone(),
            look_at: entry.at,
            way: way.as_far_as(self.stain.at),
            share: density * weigh::rung(part.rung) * fits,
            why,
        })
    }

    /// Whether a way comes under the plane that the stain is seen under: water crosses neither ridge nor hip by straying.
    fn comes_under(&self, way: &Way) -> bool {
        way.planes
            .iter()
            .filter_map(|plane| self.grounds.get(*plane))
            .any(|ground| ground.outside(self.stain.at) <= self.within)
    }

    /// Whether all of a part lies down the slope from the stain on the plane over it: water does not run up.
    fn lies_below(&self, part: &Candidate, entries: &[Entry]) -> bool {
        let Some(ground) = self.grounds.get(part.plane) else {
            return false;
        };
        let stain = ground.frame.on_plane(self.stain.at);
        let lowest = stain.1 - self.within * ground.frame.factor();
        let over_ridge = entries
            .iter()
            .flat_map(|entry| &entry.ways)
            .any(|way| way.turns.over_ridge);
        ground.holds(stain)
            && !over_ridge
            && entries
                .iter()
                .all(|entry| ground.frame.on_plane(entry.at).1 < lowest)
    }

    /// How far a part's slope faces the wind.
    fn facing(&self, part: &Candidate) -> Option<f64> {
        let up = self.grounds.get(part.plane)?.frame.up();
        let wind = self.weather.wind?;
        Some(-(wind.0 * up.0 + wind.1 * up.1))
    }

    fn likeliest<'e>(&self, entries: &'e [Entry]) -> Option<(&'e Entry, &'e Way)> {
        entries
            .iter()
            .flat_map(|entry| entry.ways.iter().map(move |way| (entry, way)))
            .map(|found| (found, weigh::along(found.1, self.stain.at, self.within)))
            .max_by(|a, b| a.1.total_cmp(&b.1))
            .map(|(found, _)| found)
    }

    fn ways_reasons(&self, part: &Candidate, entry: &Entry, way: &Way) -> Vec<Why> {
        let mut why = Vec::new();
        if entry.ice {
            why.push(Why::IceHoldsIt);
        }
        if way.turns.over_ridge {
            why.push(Why::OverTheRidge);
        }
        if way.turns.valley {
            why.push(Why::DownTheValley);
        }
        if way.turns.wall {
            why.push(Why::DownTheWall);
        }
        if way.turns.onto_lower {
            why.push(Why::FromTheRoofAbove);
        }
        why.extend(self.round(part, way));
        why.extend(self.distance(part, entry, way));
        why
    }

    fn round(&self, part: &Candidate, way: &Way) -> Option<Why> {
        if matches!(part.lies, Lies::Through { .. }) {
            return Some(Why::BehindIt);
        }
        let by = match way.turns.round? {
            Round::Part(at) => self.parts.get(at),
            Round::Hole => None,
        };
        Some(Why::RoundIt {
            name: by.map(|by| by.name.clone()),
        })
    }

    /// How far up and to the side it lies: straight over the plane where the way bends nowhere.
    fn distance(&self, part: &Candidate, entry: &Entry, way: &Way) -> Vec<Why> {
        let Some(ground) = self.grounds.get(part.plane) else {
            return Vec::new();
        };
        let off = (self.stain.at.0 - entry.at.0, self.stain.at.1 - entry.at.1);
        let near = self.within.max(0.6);
        if off.0.hypot(off.1) < near {
            return vec![Why::RightAbove];
        }
        let (up, along) = (ground.frame.up(), ground.frame.along());
        let far = -(off.0 * up.0 + off.1 * up.1);
        let aside = (off.0 * along.0 + off.1 * along.1).abs();
        let bends = way.turns.valley || way.turns.round.is_some();
        let mut why = Vec::new();
        if far > 0.3 {
            let far = rounded(Length::from_metres(far));
            why.push(Why::UpTheSlope { far });
        }
        if aside > near && !bends {
            let far = rounded(Length::from_metres(aside));
            why.push(Why::ToTheSide { far });
        }
        why
    }

    fn weather_reasons(&self, part: &Candidate, fits: f64, facing: Option<f64>) -> Vec<Why> {
        let Some(when) = self.stain.when else {
            return Vec::new();
        };
        let mut why = vec![if fits >= 0.35 {
            Why::FitsTheWeather { when }
        } else {
            Why::NotTheWeather { when }
        }];
        if part.lets_in.driven && self.weather.driven {
            why.extend(facing.and_then(|facing| match facing {
                facing if facing > 0.3 => Some(Why::Windward),
                facing if facing < -0.3 => Some(Why::Lee),
                _ => None,
            }));
        }
        why
    }
}

fn attic(at: Place, share: f64) -> Suspected {
    Suspected {
        what: LookTo::Attic,
        name: Said::new("leak-attic"),
        stop: StopKey::from("attic"),
        look_at: at,
        way: Vec::new(),
        share,
        why: vec![Why::DryCold],
    }
}

/// The likeliest first, their shares making up one.
fn shared_out(mut found: Vec<Suspected>) -> Vec<Suspected> {
    let whole: f64 = found.iter().map(|one| one.share).sum();
    if whole > 0.0 {
        for one in &mut found {
            one.share /= whole;
        }
    }
    found.sort_by(|a, b| b.share.total_cmp(&a.share));
    found
}
