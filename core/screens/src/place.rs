//! Where a person is: a screen and identifiers, written as a web address.

use acts::walk::Spot;
use serde::{Deserialize, Serialize};
use std::fmt::{self, Write as _};
use std::str::FromStr;
use trade::catalogue::{Family, KindKey, StopKey};
use trade::ids::{PartId, PropertyId, SlopeId, StructureId, VisitId};
use trade::units::Length;
use trade::visit::WetWhen;

/// A screen and what it shows.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case", tag = "place")]
pub enum Place {
    /// Find the address.
    Arrive {
        /// What was typed.
        find: String,
    },
    /// Before he climbs.
    Doorstep {
        /// The property.
        property: PropertyId,
    },
    /// What stands there, who lives there, what else it is called.
    Property {
        /// The property.
        property: PropertyId,
        /// What was typed to find the same place under another address.
        like: String,
    },
    /// May he climb at all.
    Safety {
        /// The visit.
        visit: VisitId,
    },
    /// The round.
    Walk {
        /// The visit.
        visit: VisitId,
        /// The structure.
        structure: StructureId,
        /// The stop; the first open one where none is named.
        stop: Option<StopKey>,
    },
    /// One part.
    Mark {
        /// The visit.
        visit: VisitId,
        /// The part, or the place where one will be born.
        spot: Spot,
        /// The family whose defects are listed.
        family: Option<Family>,
    },
    /// What is not yet tied to a part.
    Tray {
        /// The visit.
        visit: VisitId,
    },
    /// What changed.
    ThenAndNow {
        /// The visit.
        visit: VisitId,
    },
    /// What to do.
    Verdict {
        /// The visit.
        visit: VisitId,
        /// The structure.
        structure: StructureId,
    },
    /// The roof as it was measured.
    Roof {
        /// The structure.
        structure: StructureId,
    },
    /// Where water that is seen inside comes in.
    Leak {
        /// The structure.
        structure: StructureId,
        /// Where it shows; `None` before anybody said.
        stain: Option<Shows>,
    },
    /// What it costs.
    Offer {
        /// The visit.
        visit: VisitId,
        /// The structure.
        structure: StructureId,
    },
    /// What the owner gets.
    Letter {
        /// The visit.
        visit: VisitId,
    },
    /// What came of it.
    Outcome {
        /// The property.
        property: PropertyId,
    },
    /// What to come back to.
    Reminders,
    /// The firm, the code, the policy.
    Settings,
}

/// Where water shows inside, and in which weather.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
pub struct Shows {
    /// To the right, seen from the street, on the plan of the roof.
    pub x: Length,
    /// Away from the street.
    pub y: Length,
    /// How far off that may be.
    pub within: Length,
    /// The weather that it comes with.
    pub when: Option<WetWhen>,
    /// Where the wind comes from then, in degrees from the plan's way up to the right.
    pub wind_from: Option<u16>,
}

/// A web address that leads nowhere here.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[error("there is no such place: {0}")]
pub struct PlaceError(String);

impl Place {
    /// Where a day begins.
    pub fn start() -> Self {
        Self::Arrive {
            find: String::new(),
        }
    }
}

impl fmt::Display for Place {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Arrive { find } if find.is_empty() => f.write_str("/"),
            Self::Arrive { find } => write!(f, "/?find={}", escaped(find)),
            Self::Doorstep { property } => write!(f, "/doorstep/{property}"),
            Self::Property { property, like } if like.is_empty() => {
                write!(f, "/property/{property}")
            }
            Self::Property { property, like } => {
                write!(f, "/property/{property}?like={}", escaped(like))
            }
            Self::Safety { visit } => write!(f, "/safety/{visit}"),
            Self::Walk {
                visit,
                structure,
                stop: None,
            } => write!(f, "/walk/{visit}/{structure}"),
            Self::Walk {
                visit,
                structure,
                stop: Some(stop),
            } => {
                write!(f, "/walk/{visit}/{structure}/{stop}")
            }
            Self::Mark {
                visit,
                spot,
                family,
            } => {
                write!(f, "/mark/{visit}/{}", spot_path(spot))?;
                match family {
                    Some(family) => write!(f, "?family={}", family.key()),
                    None => Ok(()),
                }
            }
            Self::Tray { visit } => write!(f, "/tray/{visit}"),
            Self::ThenAndNow { visit } => write!(f, "/then-and-now/{visit}"),
            Self::Verdict { visit, structure } => write!(f, "/verdict/{visit}/{structure}"),
            Self::Roof { structure } => write!(f, "/roof/{structure}"),
            Self::Leak {
                structure,
                stain: None,
            } => write!(f, "/leak/{structure}"),
            Self::Leak {
                structure,
                stain: Some(shows),
            } => write!(f, "/leak/{structure}?{shows}"),
            Self::Offer { visit, structure } => write!(f, "/offer/{visit}/{structure}"),
            Self::Letter { visit } => write!(f, "/letter/{visit}"),
            Self::Outcome { property } => write!(f, "/outcome/{property}"),
            Self::Reminders => f.write_str("/reminders"),
            Self::Settings => f.write_str("/settings"),
        }
    }
}

/// `part/ID`, or `new/STRUCTURE/SLOPE or -/KIND/WHICH or nothing`.
fn spot_path(spot: &Spot) -> String {
    match spot {
        Spot::Known { part } => format!("part/{part}"),
        Spot::Unborn {
            structure,
            slope,
            kind,
            which,
        } => {
            let slope = slope.map_or_else(|| "-".to_owned(), |slope| slope.to_string());
            let which = which.as_deref().map(escaped).unwrap_or_default();
            format!("new/{structure}/{slope}/{kind}/{which}")
        }
    }
}

impl FromStr for Place {
    type Err = PlaceError;

    fn from_str(address: &str) -> Result<Self, PlaceError> {
        let nowhere = || PlaceError(address.to_owned());
        let (path, query) = address.split_once('?').unwrap_or((address, ""));
        let steps: Vec<&str> = path.trim_start_matches('/').split('/').collect();
        read(&steps, query).ok_or_else(nowhere)
    }
}

fn read(steps: &[&str], query: &str) -> Option<Place> {
    Some(match *steps {
        [""] => Place::Arrive {
            find: asked(query, "find").unwrap_or_default(),
        },
        ["doorstep", property] => Place::Doorstep {
            property: property.parse().ok()?,
        },
        ["property", property] => Place::Property {
            property: property.parse().ok()?,
            like: asked(query, "like").unwrap_or_default(),
        },
        ["safety", visit] => Place::Safety {
            visit: visit.parse().ok()?,
        },
        ["walk", visit, structure] => Place::Walk {
            visit: visit.parse().ok()?,
            structure: structure.parse().ok()?,
            stop: None,
        },
        ["walk", visit, structure, stop] => Place::Walk {
            visit: visit.parse().ok()?,
            structure: structure.parse().ok()?,
            stop: Some(StopKey::from(stop)),
        },
        ["mark", visit, ref spot @ ..] => Place::Mark {
            visit: visit.parse().ok()?,
            spot: read_spot(spot)?,
            family: asked(query, "family").and_then(|family| read_family(&family)),
        },
        ["tray", visit] => Place::Tray {
            visit: visit.parse().ok()?,
        },
        ["then-and-now", visit] => Place::ThenAndNow {
            visit: visit.parse().ok()?,
        },
        ["verdict", visit, structure] => Place::Verdict {
            visit: visit.parse().ok()?,
            structure: structure.parse().ok()?,
        },
        ["roof", structure] => Place::Roof {
            structure: structure.parse().ok()?,
        },
        ["leak", structure] => Place::Leak {
            structure: structure.parse().ok()?,
            stain: read_shows(query),
        },
        ["offer", visit, structure] => Place::Offer {
            visit: visit.parse().ok()?,
            structure: structure.parse().ok()?,
        },
        ["letter", visit] => Place::Letter {
            visit: visit.parse().ok()?,
        },
        ["outcome", property] => Place::Outcome {
            property: property.parse().ok()?,
        },
        ["reminders"] => Place::Reminders,
        ["settings"] => Place::Settings,
        _ => return None,
    })
}

impl fmt::Display for Shows {
    /// Lengths in nanometres, so that nothing is lost on the way.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let nm = Length::nanometres;
        write!(
            f,
            "x={}&y={}&within={}",
            nm(self.x),
            nm(self.y),
            nm(self.within)
        )?;
        if let Some(when) = self.when {
            write!(f, "&when={}", when.key())?;
        }
        if let Some(wind) = self.wind_from {
            write!(f, "&wind={wind}")?;
        }
        Ok(())
    }
}

fn read_shows(query: &str) -> Option<Shows> {
    let length = |name| {
        let nm = asked(query, name)?.parse().ok()?;
        Some(Length::of_nanometres(nm))
    };
    let when = asked(query, "when");
    Some(Shows {
        x: length("x")?,
        y: length("y")?,
        within: length("within")?,
        when: when.and_then(|key| WetWhen::ALL.into_iter().find(|when| when.key() == key)),
        wind_from: asked(query, "wind").and_then(|wind| wind.parse().ok()),
    })
}

fn read_spot(steps: &[&str]) -> Option<Spot> {
    match *steps {
        ["part", part] => Some(Spot::Known {
            part: part.parse::<PartId>().ok()?,
        }),
        ["new", structure, slope, kind, which] => Some(Spot::Unborn {
            structure: structure.parse().ok()?,
            slope: match slope {
                "-" => None,
                id => Some(id.parse::<SlopeId>().ok()?),
            },
            kind: KindKey::from(kind),
            which: Some(unescaped(which)).filter(|which| !which.is_empty()),
        }),
        _ => None,
    }
}

fn read_family(key: &str) -> Option<Family> {
    Family::ALL.into_iter().find(|family| family.key() == key)
}

fn asked(query: &str, name: &str) -> Option<String> {
    query
        .split('&')
        .filter_map(|pair| pair.split_once('='))
        .find(|(key, _)| *key == name)
        .map(|(_, value)| unescaped(value))
}

/// Percent-encoding of RFC 3986: all but the unreserved characters.
fn escaped(text: &str) -> String {
    text.bytes().fold(String::new(), |mut out, byte| {
        if byte.is_ascii_alphanumeric() || matches!(byte, b'-' | b'.' | b'_' | b'~') {
            out.push(char::from(byte));
        } else {
            let _ = write!(out, "%{byte:02X}");
        }
        out
    })
}

fn unescaped(text: &str) -> String {
    let bytes = text.as_bytes();
    let mut out = Vec::with_capacity(bytes.len());
    let mut at = 0;
    while at < bytes.len() {
        let hex = bytes
            .get(at + 1..at + 3)
            .and_then(|hex| std::str::from_utf8(hex).ok())
            .and_then(|hex| u8::from_str_radix(hex, 16).ok());
        match (bytes[at], hex) {
            (b'%', Some(byte)) => {
                out.push(byte);
                at += 3;
            }
            (b'+', _) => {
                out.push(b' ');
                at += 1;
            }
            (byte, _) => {
                out.push(byte);
                at += 1;
            }
        }
    }
    String::from_utf8_lossy(&out).into_owned()
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;
    use uuid::Uuid;

    fn places() -> impl Strategy<Value = Place> {
        let id = || any::<u128>().prop_map(Uuid::from_u128);
        let spot = prop_oneof![
            id().prop_map(|part| Spot::Known { part: part.into() }),
            (
                id(),
                proptest::option::of(id()),
                proptest::option::of(".{1,12}")
            )
                .prop_map(|(structure, slope, which)| Spot::Unborn {
                    structure: structure.into(),
                    slope: slope.map(Into::into),
                    kind: "pipe-boot".into(),
                    which,
                }),
        ];
        prop_oneof![
            ".{0,24}".prop_map(|find| Place::Arrive { find }),
            id().prop_map(|id| Place::Doorstep {
                property: id.into()
            }),
            (
                id(),
                proptest::option::of((
                    any::<i64>(),
                    any::<i64>(),
                    proptest::option::of(0..WetWhen::ALL.len()),
                    proptest::option::of(0..360_u16)
                ))
            )
                .prop_map(|(structure, stain)| Place::Leak {
                    structure: structure.into(),
                    stain: stain.map(|(x, y, when, wind_from)| Shows {
                        x: Length::of_nanometres(x),
                        y: Length::of_nanometres(y),
                        within: Length::feet(2),
                        when: when.map(|at| WetWhen::ALL[at]),
                        wind_from,
                    }),
                }),
            (id(), ".{0,24}").prop_map(|(property, like)| Place::Property {
                property: property.into(),
                like
            }),
            (id(), spot, proptest::option::of(0..6_usize)).prop_map(|(visit, spot, family)| {
                Place::Mark {
                    visit: visit.into(),
                    spot,
                    family: family.map(|at| Family::ALL[at]),
                }
            }),
            (id(), id(), proptest::option::of("[a-z-]{1,9}")).prop_map(
                |(visit, structure, stop)| {
                    Place::Walk {
                        visit: visit.into(),
                        structure: structure.into(),
                        stop: stop.map(|stop| StopKey::from(stop.as_str())),
                    }
                }
            ),
        ]
    }

    proptest! {
        #[test]
        fn a_place_survives_its_address(place in places()) {
            prop_assert_eq!(place.to_string().parse::<Place>(), Ok(place));
        }

        #[test]
        fn no_address_breaks_the_reader(address in ".{0,60}") {
            let _ = address.parse::<Place>();
        }
    }
}
