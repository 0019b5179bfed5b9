//! Measures beside limits: a measure is a range, and what the range does not settle is unknown.

use trade::answer::Answer;
use trade::units::{Length, Measured};

/// The least that a measured length can be.
pub fn least(measured: &Measured<Length>) -> Length {
    measured.value.scaled(1.0 - measured.within)
}

/// The most that a measured length can be.
pub fn most(measured: &Measured<Length>) -> Length {
    measured.value.scaled(1.0 + measured.within)
}

/// Whether it is more than a limit.
pub fn exceeds(measured: &Measured<Length>, limit: Length) -> Answer {
    if least(measured) > limit {
        Answer::Yes
    } else if most(measured) > limit {
        Answer::Unknown
    } else {
        Answer::No
    }
}

/// Whether it is less than a limit.
pub fn falls_short(measured: &Measured<Length>, limit: Length) -> Answer {
    if most(measured) < limit {
        Answer::Yes
    } else if least(measured) < limit {
        Answer::Unknown
    } else {
        Answer::No
    }
}
