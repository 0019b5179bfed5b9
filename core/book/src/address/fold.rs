//! What somebody wrote, brought to plain capital words: accents, case, points, apostrophes and spaces no longer tell two spellings apart.

use super::direction::Direction;
use unicode_normalization::{UnicodeNormalization, char::is_combining_mark};

/// Capital letters, without apostrophes and without the accents of Latin letters. Other scripts keep their marks, which tell letters
/// apart there.
pub(crate) fn fold(text: &str) -> String {
    let mut out = String::with_capacity(text.len());
    let mut last_is_latin = false;
    for c in text.nfd().filter(|c| !is_apostrophe(*c)) {
        if is_combining_mark(c) && last_is_latin {
            continue;
        }
        match spelled_out(c) {
            Some(letters) => out.push_str(letters),
            None => out.extend(c.to_uppercase()),
        }
        last_is_latin = out.ends_with(|c: char| c.is_ascii_alphabetic());
    }
    out.nfc().collect()
}

/// Latin letters that are no letter with an accent.
fn spelled_out(c: char) -> Option<&'static str> {
    Some(match c {
        'Æ' | 'æ' => "AE",
        'Œ' | 'œ' => "OE",
        'Ø' | 'ø' => "O",
        'Đ' | 'đ' | 'Ð' | 'ð' => "D",
        'Ł' | 'ł' => "L",
        'Þ' | 'þ' => "TH",
        'ŉ' => "N",
        _ => return None,
    })
}

/// The words of a text, in the parts that commas, line ends and brackets set off; no part is empty.
///
/// Inside a word only `-`, `/` and a decimal point are left beside letters and digits, and those only beside a digit. `#` and `AND` (for
/// `&`) are words of their own.
pub(crate) fn parts(text: &str) -> Vec<Vec<String>> {
    let letters: Vec<char> = fold(text).chars().collect();
    let mut reader = Reader::default();
    for at in 0..letters.len() {
        reader.take(&letters, at);
    }
    reader.end_part();
    reader.parts
}

/// The words of a text, commas or not, in folded form: capitals without accents, apostrophes and points. People's names are compared so.
pub fn words(text: &str) -> Vec<String> {
    parts(text).concat()
}

#[derive(Default)]
struct Reader {
    parts: Vec<Vec<String>>,
    part: Vec<String>,
    word: String,
    /// Whether the word so far is made of initials: `N.` of `N.W.`.
    initials: bool,
}

impl Reader {
    fn take(&mut self, letters: &[char], at: usize) {
        let c = letters[at];
        let next = letters.get(at + 1).copied().unwrap_or(' ');
        if let Some(fraction) = vulgar_fraction(c) {
            self.end_word();
            self.part.push(fraction.to_owned());
        } else if is_combining_mark(c) {
            self.mark(c);
        } else if c.is_alphanumeric() {
            self.word.push(c);
        } else if is_dash(c) {
            self.dash(letters, at);
        } else if matches!(c, '/' | '\u{2044}') && self.joins(next) {
            self.word.push('/');
        } else if c == '.' {
            self.point(next, letters.get(at + 2).copied().unwrap_or(' '));
        } else if matches!(c, ',' | ';' | '\n' | '\r' | '(' | ')' | '[' | ']') {
            self.end_part();
        } else {
            self.end_word();
            match c {
                '#' | '№' => self.part.push("#".to_owned()),
                '&' => self.part.push("AND".to_owned()),
                _ => {}
            }
        }
    }

    /// A mark belongs to a letter of another script before it, else to nothing.
    fn mark(&mut self, c: char) {
        if self.word.ends_with(|letter: char| !letter.is_ascii()) {
            self.word.push(c);
        }
    }

    /// Whether a sign after the word so far stands inside a word.
    fn joins(&self, next: char) -> bool {
        next.is_alphanumeric()
            && !is_combining_mark(next)
            && vulgar_fraction(next).is_none()
            && self.word.ends_with(char::is_alphanumeric)
    }

    fn dash(&mut self, letters: &[char], at: usize) {
        let next = letters.get(at + 1).copied().unwrap_or(' ');
        if self.joins(next) {
            self.word.push('-');
        } else if self.is_spaced_range(&letters[at + 1..]) {
            self.word = self.part.pop().unwrap_or_default();
            self.word.push('-');
        } else {
            self.end_word();
        }
    }

    /// `12 - 14`: a dash with spaces between the numbers that open a part. The spaces after it are skipped as the word is not ended by them.
    fn is_spaced_range(&mut self, after: &[char]) -> bool {
        let follows = after.iter().find(|c| **c != ' ');
        if !follows.is_some_and(char::is_ascii_digit) {
            return false;
        }
        self.end_word();
        matches!(self.part.as_slice(), [only] if only.bytes().all(|b| b.is_ascii_digit()))
    }

    fn point(&mut self, next: char, after_next: char) {
        let decimal = self.word.ends_with(|c: char| c.is_ascii_digit()) && next.is_ascii_digit();
        let one_letter = self.word.chars().count() == 1 && self.word.ends_with(char::is_alphabetic);
        let initial =
            (one_letter || self.initials) && next.is_alphabetic() && !after_next.is_alphanumeric();
        if decimal {
            self.word.push('.');
        } else if initial {
            self.initials = true;
        } else {
            self.end_word();
        }
    }

    fn end_word(&mut self) {
        self.initials = false;
        if self.word.ends_with('-') {
            return;
        }
        if !self.word.is_empty() {
            self.part.extend(apart(&std::mem::take(&mut self.word)));
        }
    }

    fn end_part(&mut self) {
        self.end_word();
        if !self.part.is_empty() {
            self.parts.push(std::mem::take(&mut self.part));
        }
    }
}

/// A word whose pieces a dash or stroke joins: kept whole where each piece is a number or a letter or two beside one (`12-14`, `1/2`, `4-B`),
/// and where they name a direction; else apart (`SMITH-JONES`, `I-95`, `3-MILE`).
fn apart(word: &str) -> Vec<String> {
    if let Some(direction) = Direction::read(word).filter(|_| word.contains('-')) {
        return vec![direction.word().to_owned()];
    }
    let pieces: Vec<&str> = word.split(['-', '/']).collect();
    let numbered = |piece: &&str| piece.contains(|c: char| c.is_ascii_digit());
    let lettered = |piece: &&str| piece.len() <= 2 && !ROADS.contains(piece);
    let whole = pieces.iter().any(numbered) && pieces.iter().all(|p| numbered(p) || lettered(p));
    if whole {
        return vec![word.to_owned()];
    }
    pieces.into_iter().map(str::to_owned).collect()
}

/// Kinds of numbered road in two letters or one, whose number follows a dash: `I-95`, `CR-12`.
const ROADS: [&str; 8] = ["CR", "FM", "I", "IH", "RM", "RT", "SR", "US"];

fn is_apostrophe(c: char) -> bool {
    matches!(c, '\'' | '`' | '´' | '‘' | '’' | 'ʼ' | 'ʻ')
}

fn is_dash(c: char) -> bool {
    matches!(c, '-' | '\u{2010}'..='\u{2015}' | '\u{2212}')
}

fn vulgar_fraction(c: char) -> Option<&'static str> {
    Some(match c {
        '½' => "1/2",
        '⅓' => "1/3",
        '⅔' => "2/3",
        '¼' => "1/4",
        '¾' => "3/4",
        '⅛' => "1/8",
        '⅜' => "3/8",
        '⅝' => "5/8",
        '⅞' => "7/8",
        _ => return None,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn joined(text: &str) -> String {
        let parts: Vec<String> = parts(text).iter().map(|part| part.join(" ")).collect();
        parts.join(" | ")
    }

    #[test]
    fn spellings_come_to_the_same_words() {
        let cases = [
            ("123 Peña St.", "123 PENA ST"),
            ("123  pena   st", "123 PENA ST"),
            ("5 O'Neill Ct", "5 ONEILL CT"),
            ("5 O’Neill Ct", "5 ONEILL CT"),
            ("9 Main St. N.W.", "9 MAIN ST NW"),
            ("9 N. Main", "9 N MAIN"),
            ("9 N.Main", "9 N MAIN"),
            ("9 St.James Ct", "9 ST JAMES CT"),
            ("P.O. Box 4", "PO BOX 4"),
            ("P.O.Box 4", "PO BOX 4"),
            ("U.S. Hwy 9", "US HWY 9"),
            ("12½ Elm", "12 1/2 ELM"),
            ("12 ½ Elm", "12 1/2 ELM"),
            ("12 1⁄2 Elm", "12 1/2 ELM"),
            ("12 - 14 Oak", "12-14 OAK"),
            ("12 – 14 Oak", "12-14 OAK"),
            ("12- 14 Oak", "12-14 OAK"),
            ("12–14 Oak", "12-14 OAK"),
            ("101 39.2 Rd", "101 39.2 RD"),
            ("1 Smith-Jones Rd", "1 SMITH JONES RD"),
            ("1 I-95", "1 I 95"),
            ("12-B 4-C", "12-B 4-C"),
            ("3-Mile Rd", "3 MILE RD"),
            ("1 North-West Rd", "1 NORTHWEST RD"),
            ("Straße", "STRASSE"),
            ("1 Sørensen Łódź Æsop", "1 SORENSEN LODZ AESOP"),
            ("1 Elm St, Apt #4 (rear)", "1 ELM ST | APT # 4 | REAR"),
            ("Main & 3rd", "MAIN AND 3RD"),
            (" , ;", ""),
        ];
        for (text, words) in cases {
            assert_eq!(joined(text), words, "{text}");
        }
    }

    #[test]
    fn other_scripts_keep_what_tells_their_letters_apart() {
        assert_ne!(fold("й"), fold("и"));
    }

    proptest! {
        #[test]
        fn folding_twice_changes_nothing(text in any::<String>()) {
            prop_assert_eq!(fold(&fold(&text)), fold(&text));
        }

        #[test]
        fn words_stand_when_they_are_read_again(text in "[ -~½éß’–]{0,40}") {
            for part in parts(&text) {
                let again = parts(&part.join(" "));
                prop_assert_eq!(again, vec![part]);
            }
        }
    }
}
