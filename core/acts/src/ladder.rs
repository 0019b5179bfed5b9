//! How a ladder stands: what was measured of it, kept with the visit, and what the rule says.

use crate::{ActError, Moment, visit};
use book::Book;
use trade::ids::VisitId;
use trade::visit::LadderStood;
use trade::words::Said;

/// Keeps with a visit how the ladder stood.
///
/// # Errors
/// Where the visit is not open, too little was measured, or the book cannot be written.
pub fn set(
    book: &mut Book,
    visit: VisitId,
    stood: LadderStood,
    moment: Moment,
) -> Result<(), ActError> {
    says(&stood)?;
    visit::change(book, visit, moment, |visit| visit.ladder = Some(stood))
}

/// What the rule says of a ladder as it was measured: the angle first. Never that it may be climbed.
///
/// # Errors
/// Where too little was measured.
pub fn says(stood: &LadderStood) -> Result<Vec<Said>, ActError> {
    Ok(roof::angles::ladder_says(stood)?)
}

/// How a ladder leans, in tenths of a degree, from what a phone on its rail read, in degrees.
///
/// # Errors
/// Where one is no number, or that of no ladder.
pub fn lean_of_readings(readings: &[&str]) -> Result<u16, ActError> {
    let degrees = crate::measure::degrees_of(readings)?;
    Ok(roof::angles::lean_of_readings(&degrees)?)
}

/// What is said before all numbers of a ladder.
pub fn caution() -> Said {
    Said::new("ladder-caution")
}
