//! Why a roof cannot be counted.

use trade::stack::Covering;
use trade::takeoff::Item;
use trade::units::Pitch;
use trade::words::Said;

/// Why a roof cannot be counted.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
pub enum TakeoffError {
    /// No plane was laid.
    #[error("nothing was laid on this roof")]
    NothingLaid,
    /// The laying names a plane that the plan does not have.
    #[error("the laying is of another plan: it has no plane {0}")]
    OtherPlan(usize),
    /// Slopes that are to be covered, by their letters, whose measures are not on the plan.
    #[error("the plan does not show the slopes {0:?}")]
    NotOnPlan(Vec<String>),
    /// What was laid is no asphalt shingle.
    #[error("only asphalt shingles are counted, not {0:?}")]
    NoShingle(Covering),
    /// Slopes below 2:12 take no asphalt shingles (IRC R905.2.2).
    #[error("too low for asphalt shingles: {0:?}")]
    TooLow(Vec<(String, Pitch)>),
    /// A roll or length is no longer or wider than its lap, or a pack holds nothing.
    #[error("the size of {0:?} is not one that can be laid")]
    BadSupply(Item),
}

impl TakeoffError {
    /// What it says to the roofer.
    pub fn says(&self) -> Said {
        match self {
            Self::NothingLaid => Said::new("takeoff-error-nothing-laid"),
            Self::OtherPlan(_) => Said::new("takeoff-error-other-plan"),
            Self::NotOnPlan(letters) => {
                let letters: Vec<Said> = letters.iter().map(Said::verbatim).collect();
                Said::new("takeoff-error-not-on-plan").with("slopes", letters)
            }
            Self::NoShingle(covering) => {
                Said::new("takeoff-error-no-shingle").with("covering", Said::new(covering.key()))
            }
            Self::TooLow(planes) => Said::new("takeoff-error-too-low").with(
                "slopes",
                planes
                    .iter()
                    .map(|(letter, pitch)| {
                        Said::new("takeoff-slope-at")
                            .with("letter", letter.as_str())
                            .with("pitch", *pitch)
                    })
                    .collect::<Vec<_>>(),
            ),
            Self::BadSupply(item) => {
                Said::new("takeoff-error-bad-supply").with("item", Said::new(item.key()))
            }
        }
    }
}
