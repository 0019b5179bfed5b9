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

/// Several readings in one field, parted by commas, semicolons or lines.
pub(super) fn readings(text: &str) -> Vec<&str> {
    text.split([',', ';', '\n'])
        .map(str::trim)
        .filter(|reading| !reading.is_empty())
        .collect()
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

/// Degrees, Fahrenheit unless a C stands behind them: `85`, `85 F`, `-4 C`. `None` where nothing was typed.
pub(super) fn celsius(typed: &Typed<'_>, field: &'static str) -> Result<Option<i16>, ActError> {
    let text = typed.text(field).to_uppercase().replace('°', "");
    if text.is_empty() {
        return Ok(None);
    }
    let refused = || wrong(field, "wrong-degrees");
    let degrees = |number: &str| number.trim().parse::<f64>().map_err(|_| refused());
    let celsius = match text.strip_suffix('C') {
        Some(number) => degrees(number)?,
        None => (degrees(text.trim_end_matches('F'))? - 32.0) / 1.8,
    };
    // Colder or hotter than any weather station ever measured (WMO: -89.2 and 56.7 °C) is a slip of the thumb.
    if !(-90.0..=57.0).contains(&celsius) {
        return Err(refused());
    }
    #[allow(
        clippy::cast_possible_truncation,
        reason = "within 90 degrees of nothing"
    )]
    Ok(Some(celsius.round() as i16))
}
