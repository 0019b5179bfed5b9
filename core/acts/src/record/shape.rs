//! Why a file is not a visit file, from what the JSON reader (`serde_json`) says of it.

use jiff::civil::Date;
use serde_json::Value;
use serde_json::error::Category;
use trade::units::{Length, Pitch};
use trade::words::Said;

/// Why a member of the file, named by its JSON pointer, is not of the published shape. What the reader says seldom is quoted as it came.
pub(super) fn why(json: &str, at: &str, error: &serde_json::Error) -> Said {
    let message = without_place(error);
    of_a_measure(json, at, &message)
        .or_else(|| of_a_name(&message))
        .or_else(|| of_a_type(&message))
        .unwrap_or_else(|| Said::new("shape-other").with("detail", message))
}

/// Why the file is no JSON. The place is said beside it.
pub(super) fn no_json(error: &serde_json::Error) -> Said {
    Said::new(match error.classify() {
        Category::Eof => "shape-breaks-off",
        _ if error.to_string().starts_with("trailing characters") => "shape-goes-on",
        _ => "shape-no-json",
    })
}

/// The reader puts the place behind its message.
fn without_place(error: &serde_json::Error) -> String {
    let text = error.to_string();
    let place = format!(" at line {} column {}", error.line(), error.column());
    text.strip_suffix(&place).unwrap_or(&text).to_owned()
}

/// A length, pitch or day that could not be read: it is read once more, for its own error.
fn of_a_measure(json: &str, at: &str, message: &str) -> Option<Said> {
    let file: Value = serde_json::from_str(json).ok()?;
    let text = file.pointer(at)?.as_str()?;
    let units = [text.parse::<Length>().err(), text.parse::<Pitch>().err()];
    let unit = units
        .into_iter()
        .flatten()
        .find(|error| error.to_string() == message);
    let day = || {
        let error = text.parse::<Date>().err()?;
        (error.to_string() == message).then(|| Said::new("shape-not-a-day").with("text", text))
    };
    unit.map(|error| error.says()).or_else(day)
}

/// A name that is missing, unknown or there twice.
fn of_a_name(message: &str) -> Option<Said> {
    let cases = [
        ("missing field `", "shape-missing"),
        ("unknown field `", "shape-unknown-member"),
        ("unknown variant `", "shape-unknown-word"),
        ("duplicate field `", "shape-twice"),
    ];
    cases.into_iter().find_map(|(start, key)| {
        let (name, rest) = message.strip_prefix(start)?.split_once('`')?;
        let said = Said::new(key).with("name", name);
        Some(said.with("known", in_quotes(rest)))
    })
}

/// The names that stand in back quotes, as a list.
fn in_quotes(text: &str) -> String {
    let names: Vec<&str> = text.split('`').skip(1).step_by(2).collect();
    names.join(", ")
}

/// A value of another type than is needed.
fn of_a_type(message: &str) -> Option<Said> {
    let wrong = ["invalid type: ", "invalid value: ", "invalid length "];
    wrong.iter().find(|start| message.starts_with(**start))?;
    let (_, expected) = message.rsplit_once(", expected ")?;
    let key = match expected {
        "a string" | "a borrowed string" => "shape-wants-text",
        "a boolean" => "shape-wants-yes-or-no",
        "a character" => "shape-wants-letter",
        "a sequence" => "shape-wants-list",
        "a map" => "shape-wants-object",
        "f32" | "f64" => "shape-wants-number",
        "i8" | "i16" | "i32" | "i64" | "u8" | "u16" | "u32" | "u64" => "shape-wants-whole-number",
        other if other.starts_with("struct ") || other.contains("tagged enum ") => {
            "shape-wants-object"
        }
        other if other.starts_with("enum ") => "shape-wants-text",
        _ => return None,
    };
    Some(Said::new(key))
}
