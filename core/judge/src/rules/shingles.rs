//! Asphalt shingles (IRC R905.2): slope, underlayment, ice barrier, nails.

use trade::answer::Answer;
use trade::firm::Edition;
use trade::units::{Length, Measured, Pitch};

/// Lowest slope for asphalt shingles: 2:12 (R905.2.2).
pub const LOWEST_SLOPE: Pitch = Pitch::rise(2);
/// Below this slope underlayment is doubled; exactly here one layer does (R905.2.2; a municipal handout on R905.2.7).
pub const SINGLE_UNDERLAYMENT_FROM: Pitch = Pitch::rise(4);
/// Head lap of a single underlayment (R905.1.1, as a trade bulletin has it).
pub const SINGLE_HEAD_LAP: Length = Length::inches(2);
/// How far inside the outer face of the wall an ice barrier reaches, in plan (R905.1.2).
pub const ICE_BARRIER_INSIDE: Length = Length::inches(24);
/// How far along the slope it reaches at least, on steep slopes (R905.1.2 of 2018).
pub const ICE_BARRIER_STEEP: Length = Length::inches(36);
/// From this slope on.
pub const ICE_BARRIER_STEEP_FROM: Pitch = Pitch::rise(8);
/// Thinnest nail shank: 12 gauge, 0.105 in (R905.2.5).
pub const NAIL_SHANK: Length = Length::mils(105);
/// Smallest nail head: 3/8 in (R905.2.5).
pub const NAIL_HEAD: Length = Length::sixteenths(6);
/// How deep a nail goes into the deck, or through it where it is thinner: 3/4 in (R905.2.5).
pub const NAIL_DEPTH: Length = Length::sixteenths(12);
/// Nails to a strip shingle at least (R905.2.6).
pub const NAILS_A_SHINGLE: u8 = 4;
/// Steeper than this, nails go by the maker's instructions (R905.2.6 of 2018).
pub const MAKERS_NAILING_OVER: Pitch = Pitch::rise(21);

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

/// Whether shingles on this slope need doubled underlayment: from 2:12 to under 4:12.
pub fn needs_doubled_underlayment(pitch: Pitch) -> bool {
    (LOWEST_SLOPE..SINGLE_UNDERLAYMENT_FROM).contains(&pitch)
}

/// How far each full sheet of doubled underlayment overlaps the last: half its width and an inch (R905.1.1): 19 in for a
/// 36 in sheet.
pub fn doubled_overlap(sheet: Length) -> Length {
    Length::from_inches(sheet.in_inches() / 2.0 + 1.0)
}

/// How far up the slope from the lowest edge an ice barrier must reach, along the slope.
///
/// `overhang` is the eave's, in plan, from the outer face of the wall.
pub fn ice_barrier_along_slope(overhang: Length, pitch: Pitch, edition: Edition) -> Length {
    let plan = Length::from_inches(overhang.in_inches() + ICE_BARRIER_INSIDE.in_inches());
    let along = plan.scaled(pitch.slope_factor());
    if edition >= Edition::E2018 && pitch >= ICE_BARRIER_STEEP_FROM {
        along.max(ICE_BARRIER_STEEP)
    } else {
        along
    }
}

/// Courses of a sheet that reach so far, end to end, laps apart.
#[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)] // a few courses, never negative
pub fn courses_of(sheet: Length, reach: Length) -> u32 {
    if sheet <= Length::ZERO {
        return 0;
    }
    (reach.in_inches() / sheet.in_inches()).ceil() as u32
}
