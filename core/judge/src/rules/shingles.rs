//! Asphalt shingles (IRC R905.2).

use trade::answer::Answer;
use trade::units::{Measured, Pitch};

/// Lowest slope for asphalt shingles: 2:12 (IRC R905.2.2).
pub const LOWEST_SLOPE: Pitch = Pitch::rise(2);

/// Whether a slope is too low for asphalt shingles; unknown where the measure is not exact enough to tell.
pub fn too_low(pitch: &Measured<Pitch>) -> Answer {
    let value = pitch.value.in_twelfths();
    let lowest = LOWEST_SLOPE.in_twelfths();
    if value * (1.0 + pitch.within) < lowest {
        Answer::Yes
    } else if value * (1.0 - pitch.within) < lowest {
        Answer::Unknown
    } else {
        Answer::No
    }
}
