//! What the fonts can print: other characters are shown as �, and overlong words get places to break at.

use super::world;
use serde::Serialize;
use serde_json::Value;

/// Shown for a character that no font here has (PDF/A forbids an empty glyph in its place).
const REPLACEMENT: char = '\u{FFFD}';
/// Words up to this long are left whole.
const LONGEST_WORD: usize = 40;
/// So far apart are the places to break at in a longer one: no column of the letter is narrower.
const BREAK_EVERY: usize = 8;
/// The field that names a file and is not shown.
const NAMES_A_FILE: &str = "photo";
/// A place to break at that shows nothing.
const BREAK_HERE: char = '\u{200B}';

/// Turns data into JSON that can be printed.
#[derive(Default)]
pub struct Printable {
    replaced: bool,
}

impl Printable {
    /// A fresh one.
    pub fn new() -> Self {
        Self::default()
    }

    /// The data as JSON, every text printable; `unprintable` beside it says whether a character was replaced.
    pub fn apply(mut self, data: &impl Serialize) -> serde_json::Result<String> {
        let mut value = serde_json::to_value(data)?;
        self.walk(&mut value);
        if let Value::Object(fields) = &mut value {
            fields.insert("unprintable".to_owned(), Value::Bool(self.replaced));
        }
        serde_json::to_string(&value)
    }

    fn walk(&mut self, value: &mut Value) {
        match value {
            Value::String(text) => *text = self.text(text),
            Value::Array(items) => items.iter_mut().for_each(|item| self.walk(item)),
            Value::Object(fields) => {
                let shown = fields.iter_mut().filter(|(name, _)| *name != NAMES_A_FILE);
                shown.for_each(|(_, field)| self.walk(field));
            }
            Value::Null | Value::Bool(_) | Value::Number(_) => {}
        }
    }

    fn text(&mut self, text: &str) -> String {
        let mut out = String::with_capacity(text.len());
        for (at, word) in text.split(' ').enumerate() {
            if at > 0 {
                out.push(' ');
            }
            let is_long = word.chars().count() > LONGEST_WORD;
            for (at, c) in word.chars().enumerate() {
                if is_long && at > 0 && at % BREAK_EVERY == 0 {
                    out.push(BREAK_HERE);
                }
                out.push(self.printed(c));
            }
        }
        out
    }

    fn printed(&mut self, c: char) -> char {
        let known = world::fonts()
            .iter()
            .any(|font| font.info().coverage.contains(u32::from(c)));
        if known || c.is_whitespace() {
            return c;
        }
        self.replaced = true;
        REPLACEMENT
    }
}
