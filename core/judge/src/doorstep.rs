//! The doorstep: what one address tells you before you climb.
//!
//! One file a question, in the order in which the answers are told. What counts as worth telling is common practice, no source.

mod advice;
mod asked;
mod callback;
mod corrected;
mod danger;
mod due;
mod look_again;
mod named;
mod offered;
mod patched;
mod record;
mod since;
mod stance;
mod unseen;

use crate::Rules;
use jiff::civil::Date;
use record::Record;
use trade::doorstep::Doorstep;
use trade::history::History;
use trade::visit::Request;

/// What one address tells on a day, beside what the caller asks for now, if anybody asked.
///
/// A visit of that day that is still open is under way and tells nothing yet; what lies after the day is left out.
pub fn doorstep(
    history: &History,
    request: Option<&Request>,
    today: Date,
    rules: &Rules<'_>,
) -> Doorstep {
    let record = Record::read(history, request, today, *rules);
    let against = asked::against(&record);
    let lines = [
        danger::lines(&record),
        asked::lines(&record, &against),
        patched::lines(&record),
        offered::lines(&record),
        unseen::lines(&record),
        since::lines(&record),
        due::lines(&record),
        corrected::lines(&record),
        callback::lines(&record),
    ];
    Doorstep {
        lines: lines.into_iter().flatten().collect(),
        then_and_now: asked::then_and_now(&record, &against),
        look_again: look_again::parts(&record),
    }
}
