//! How a command answers.

use crate::failure::Failure;
use serde::Serialize;
use std::io::{self, Write};

/// Prints as JSON where that was asked for, as text otherwise. A reader that has gone away is no failure.
pub(super) fn answer<T: Serialize>(
    json: bool,
    value: &T,
    text: impl FnOnce() -> String,
) -> Result<(), Failure> {
    if json {
        say(&serde_json::to_string_pretty(value)?);
    } else {
        say(text().trim_end());
    }
    Ok(())
}

/// Prints a text.
pub(super) fn say(text: &str) {
    let _ = writeln!(io::stdout(), "{text}");
}
