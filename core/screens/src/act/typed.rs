//! Reading what was typed as the measures it stands for.

use crate::form::Typed;
use acts::ActError;
use trade::units::{Length, UnitError};
use trade::words::Said;

/// A field that cannot be read, by the key of what to tell.
pub(super) fn wrong(field: &'static str, problem: &str) -> ActError {
    ActError::wrong(field, Said::new(problem))
}

pub(super) fn length(typed: &Typed<'_>, field: &'static str) -> Result<Length, ActError> {
    length_of(typed.text(field), field)
}

/// A length out of a field that holds several.
pub(super) fn length_of(text: &str, field: &'static str) -> Result<Length, ActError> {
    text.parse()
        .map_err(|error: UnitError| ActError::wrong(field, error.says()))
}

pub(super) fn day(
    typed: &Typed<'_>,
    field: &'static str,
) -> Result<Option<jiff::civil::Date>, ActError> {
    match typed.text(field) {
        "" => Ok(None),
        text => text
            .parse()
            .map(Some)
            .map_err(|_| wrong(field, "wrong-day")),
    }
}

pub(super) fn count(typed: &Typed<'_>, field: &'static str) -> Result<u8, ActError> {
    match typed.text(field).parse() {
        Ok(count) if count > 0 => Ok(count),
        _ => Err(wrong(field, "wrong-count")),
    }
}
