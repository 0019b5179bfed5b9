//! The firm: its name on the letter, the code that is adopted where it works, and its own policy.

use crate::answer::Answer;
use crate::words::{Language, Said};
use serde::{Deserialize, Serialize};
use std::fmt;

/// A firm.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
pub struct Firm {
    /// Its name.
    pub name: String,
    /// Who signs.
    pub person: String,
    /// Its telephone.
    pub phone: String,
    /// Its electronic mail.
    pub email: String,
    /// Its address, in lines.
    pub address: Vec<String>,
    /// Its licence, as the law where it works wants it shown.
    pub licence: String,
    /// The language of its screens.
    pub language: Language,
    /// Its own contract text; empty where there is none yet.
    pub contract: String,
    /// Its legal notices, such as that of cancellation; empty where there is none yet.
    pub notices: String,
}

/// The edition of the International Residential Code that is adopted.
#[derive(
    Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize,
)]
#[serde(into = "u16", try_from = "u16")]
pub enum Edition {
    /// 2006.
    E2006,
    /// 2009.
    E2009,
    /// 2012.
    E2012,
    /// 2015.
    E2015,
    /// 2018.
    #[default]
    E2018,
    /// 2021.
    E2021,
    /// 2024.
    E2024,
}

impl Edition {
    /// All, oldest first.
    pub const ALL: [Self; 7] = [
        Self::E2006,
        Self::E2009,
        Self::E2012,
        Self::E2015,
        Self::E2018,
        Self::E2021,
        Self::E2024,
    ];

    /// The year.
    pub fn year(self) -> u16 {
        match self {
            Self::E2006 => 2006,
            Self::E2009 => 2009,
            Self::E2012 => 2012,
            Self::E2015 => 2015,
            Self::E2018 => 2018,
            Self::E2021 => 2021,
            Self::E2024 => 2024,
        }
    }
}

impl From<Edition> for u16 {
    fn from(edition: Edition) -> Self {
        edition.year()
    }
}

impl TryFrom<u16> for Edition {
    type Error = UnknownEdition;

    fn try_from(year: u16) -> Result<Self, UnknownEdition> {
        Self::ALL
            .into_iter()
            .find(|edition| edition.year() == year)
            .ok_or(UnknownEdition(year))
    }
}

/// A year in which no edition of the code appeared.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct UnknownEdition(pub u16);

impl UnknownEdition {
    /// What to tell whoever typed it.
    pub fn says(self) -> Said {
        Said::new("code-no-edition").with("year", self.0.to_string())
    }
}

impl fmt::Display for UnknownEdition {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.says().in_english())
    }
}

impl std::error::Error for UnknownEdition {}

/// What is adopted where a property stands.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
pub struct Profile {
    /// The jurisdiction.
    pub place: String,
    /// The edition adopted.
    pub edition: Edition,
    /// Layers of covering allowed by local amendment; `None` where the model code stands.
    pub layers_allowed: Option<u8>,
    /// Whether the locality designates a history of ice backup.
    pub ice_barrier: Answer,
    /// Whether it lies in moderate or severe hail exposure.
    pub hail: Answer,
    /// Climate zone 1 to 8, if known.
    pub climate_zone: Option<u8>,
    /// Other amendments, in words.
    pub amendments: Vec<String>,
}

impl Default for Profile {
    fn default() -> Self {
        Self {
            place: String::new(),
            edition: Edition::default(),
            layers_allowed: None,
            ice_barrier: Answer::Unknown,
            hail: Answer::Unknown,
            climate_zone: None,
            amendments: Vec::new(),
        }
    }
}

/// The firm's own policy: starting points that it can change, never hidden constants. Common practice, no source.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
pub struct HousePolicy {
    /// Patches on one cause after which no further one is sold.
    pub patch_limit: u8,
    /// Separate places on one slope from which it is thought of whole.
    pub places_limit: u8,
    /// Layers from which nothing beyond making safe is sold.
    pub no_repair_layers: u8,
    /// Whether a re-cover is sold at all where code allows it.
    pub sells_recover: bool,
    /// Years within which a cure that leaks again is a callback.
    pub callback_years: u8,
    /// Weeks that a temporary cover may stay.
    pub make_safe_weeks: u8,
    /// Years until the next look at a sound roof.
    pub look_again_years: u8,
    /// Months for which a close look that found nothing still counts, where the part was not seen again.
    pub look_stands_months: u8,
    /// Years within which a fault that was built in is the installer's to answer for.
    pub installer_answers_years: u8,
    /// Lowest air temperature at which a tab is lifted, in degrees Celsius.
    pub lift_from_celsius: i16,
    /// Highest air temperature at which a tab is lifted, in degrees Celsius.
    pub lift_to_celsius: i16,
    /// Days until an unanswered letter is asked after.
    pub ask_after_days: u16,
}

impl Default for HousePolicy {
    fn default() -> Self {
        Self {
            patch_limit: 2,
            places_limit: 4,
            no_repair_layers: 3,
            sells_recover: false,
            callback_years: 2,
            make_safe_weeks: 6,
            look_again_years: 3,
            look_stands_months: 12,
            installer_answers_years: 5,
            lift_from_celsius: 5,
            lift_to_celsius: 32,
            ask_after_days: 21,
        }
    }
}
