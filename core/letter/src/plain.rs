//! Text that a page can carry: the gate through which every word of a letter goes.

use serde::Serialize;
use std::fmt;

/// Text without control characters, without characters that turn the reading direction, and with single spaces.
///
/// Names and words come from callers, phones and files. What would break a line, hide a word or turn a sentence round
/// is taken out here, once, so that no renderer has to think of it.
#[derive(Clone, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize)]
#[serde(transparent)]
pub struct Plain(String);

impl Plain {
    /// The text, cleaned. Line breaks become spaces.
    pub fn new(text: &str) -> Self {
        let mut out = String::with_capacity(text.len());
        for c in text.chars() {
            if c.is_whitespace() {
                if !out.ends_with(' ') && !out.is_empty() {
                    out.push(' ');
                }
            } else if !is_unwelcome(c) {
                out.push(c);
            }
        }
        out.truncate(out.trim_end().len());
        Self(out)
    }

    /// The text in paragraphs, cleaned; empty ones are left out.
    pub fn paragraphs(text: &str) -> Vec<Self> {
        text.split(['\n', '\r', '\u{2028}', '\u{2029}'])
            .map(Self::new)
            .filter(|paragraph| !paragraph.is_empty())
            .collect()
    }

    /// The text.
    pub fn as_str(&self) -> &str {
        &self.0
    }

    /// Whether nothing is left.
    pub fn is_empty(&self) -> bool {
        self.0.is_empty()
    }
}

impl fmt::Display for Plain {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.0)
    }
}

impl maud::Render for Plain {
    fn render_to(&self, buffer: &mut String) {
        self.0.render_to(buffer);
    }
}

impl From<&str> for Plain {
    fn from(text: &str) -> Self {
        Self::new(text)
    }
}

impl From<String> for Plain {
    fn from(text: String) -> Self {
        Self::new(&text)
    }
}

/// Controls, direction marks and overrides (Unicode UAX 9), invisible separators, tags, private and unassigned-by-rule characters.
fn is_unwelcome(c: char) -> bool {
    c.is_control()
        || matches!(c,
            '\u{061C}' | '\u{200B}' | '\u{200E}' | '\u{200F}' | '\u{202A}'..='\u{202E}' | '\u{2060}'..='\u{206F}'
            | '\u{FEFF}' | '\u{FFF9}'..='\u{FFFB}' | '\u{FDD0}'..='\u{FDEF}' | '\u{E0000}'..='\u{E0FFF}'
            | '\u{E000}'..='\u{F8FF}' | '\u{F0000}'..='\u{10FFFF}' | '\u{AD}')
        || (u32::from(c) & 0xFFFE) == 0xFFFE
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn breaks_and_controls_are_taken_out() {
        assert_eq!(Plain::new(" a\tb\r\n c\0\u{7} ").as_str(), "a b c");
        assert_eq!(Plain::new("owner\u{202E}gnp.exe").as_str(), "ownergnp.exe");
        assert_eq!(Plain::new("\u{200B}").as_str(), "");
    }

    #[test]
    fn what_people_write_stays() {
        for text in [
            "Ñandú ¿sí? § 4 ½″ × 30°",
            "#panic() *b* $x$ <t> \\",
            "שלום",
            "Nguyễn 阮 👷",
        ] {
            assert_eq!(Plain::new(text).as_str(), text);
        }
    }

    #[test]
    fn own_text_keeps_its_paragraphs() {
        let paragraphs = Plain::paragraphs("First.\r\n\r\nSecond\u{2028}third");
        let texts: Vec<&str> = paragraphs.iter().map(Plain::as_str).collect();
        assert_eq!(texts, ["First.", "Second", "third"]);
    }
}
