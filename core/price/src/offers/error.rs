//! Why no offer is made.

use crate::worth::WorthError;
use trade::verdict::{Course, Narrowed, Reason, Refused};
use trade::words::Said;

/// Why no offer is made.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum OfferError {
    /// A rule forbids the course: it is never offered.
    #[error("a rule forbids {course:?}")]
    Forbidden {
        /// The course.
        course: Course,
        /// What of it.
        narrowed: Narrowed,
        /// Why.
        reasons: Vec<Reason>,
    },
    /// Judgement refuses the course, and no reason is recorded for offering it.
    #[error("{0:?} is refused and offered without a reason")]
    NoReason(Course),
    /// The verdict has nothing against the course: what it advises is offered anyhow.
    #[error("the verdict does not refuse {0:?}")]
    NotRefused(Course),
    /// The takeoff is of another structure.
    #[error("the takeoff is of another structure")]
    OtherStructure,
    /// The verdict has no step.
    #[error("there is nothing to do")]
    NothingToDo,
    /// An amount or a date is beyond reckoning.
    #[error("an amount is too great")]
    TooGreat,
    /// Time and rate are not ones to be reckoned with.
    #[error(transparent)]
    Worth(#[from] WorthError),
}

impl OfferError {
    pub(super) fn forbidden(refused: &Refused) -> Self {
        Self::Forbidden {
            course: refused.course,
            narrowed: refused.narrowed,
            reasons: refused.reasons.clone(),
        }
    }

    /// What it says to the roofer.
    pub fn says(&self) -> Said {
        let of =
            |key: &str, course: &Course| Said::new(key).with("course", Said::new(course.key()));
        match self {
            Self::Forbidden {
                course, reasons, ..
            } => {
                let reasons: Vec<Said> = reasons.iter().map(|reason| reason.says.clone()).collect();
                of("offer-error-forbidden", course).with("reasons", reasons)
            }
            Self::NoReason(course) => of("offer-error-no-reason", course),
            Self::NotRefused(course) => of("offer-error-not-refused", course),
            Self::OtherStructure => Said::new("offer-error-other-structure"),
            Self::NothingToDo => Said::new("offer-error-nothing-to-do"),
            Self::TooGreat => Said::new("worth-error-too-great"),
            Self::Worth(error) => error.says(),
        }
    }
}
