//! Reading what was typed as the measures it stands for.

use crate::form::Typed;
use acts::ActError;
use trade::units::Length;

pub(super) fn wrong(field: &'static str, problem: impl ToString) -> ActError {
    ActError::Wrong {
        field,
        problem: problem.to_string(),
    }
}

pub(super) fn length(typed: &Typed<'_>, field: &'static str) -> Result<Length, ActError> {
    typed
        .text(field)
        .parse()
        .map_err(|error| wrong(field, error))
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
            .map_err(|_| wrong(field, "write the day as 2024-05-31")),
    }
}

pub(super) fn count(typed: &Typed<'_>, field: &'static str) -> Result<u8, ActError> {
    match typed.text(field).parse() {
        Ok(count) if count > 0 => Ok(count),
        _ => Err(wrong(field, "write a whole number from 1 to 255")),
    }
}
