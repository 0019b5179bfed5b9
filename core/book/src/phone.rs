//! Telephone numbers as somebody wrote them, brought to digits: North American numbers with or without +1, the area code, or an extension.

/// A telephone number in digits.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Phone {
    digits: String,
}

/// How a typed number agrees with a known one, surest first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Agrees {
    /// All digits.
    Whole,
    /// The last seven, where one of the two has no area code.
    LastSeven,
    /// It begins so: typed no further yet.
    Begins,
    /// It ends so, in four digits or more.
    Ends,
    /// The last seven, with another area code.
    OtherArea,
}

impl Phone {
    /// Fewest digits of a number without its area code.
    const LOCAL: usize = 7;
    /// Digits of a North American number with its area code (North American Numbering Plan).
    const NATIONAL: usize = 10;

    /// Reads a number from a text that may say more, "555-0132 (cell)". `None` where there are fewer than seven digits.
    pub fn read(text: &str) -> Option<Self> {
        let digits = national(digits(before_extension(text)));
        (digits.len() >= Self::LOCAL).then_some(Self { digits })
    }

    /// Its digits, without +1.
    pub fn digits(&self) -> &str {
        &self.digits
    }

    /// Its last seven digits: the number without its area code.
    pub fn last_seven(&self) -> &str {
        self.last(Self::LOCAL)
    }

    /// Its last four digits.
    pub fn last_four(&self) -> &str {
        self.last(4)
    }

    fn last(&self, n: usize) -> &str {
        &self.digits[self.digits.len() - n..]
    }

    /// How digits that were typed, as [`typed`] gives them, agree with this number.
    pub fn agrees(&self, typed: &str) -> Option<Agrees> {
        let local = |digits: &str| digits.len() == Self::LOCAL;
        if typed == self.digits {
            return Some(Agrees::Whole);
        }
        if typed.len() >= Self::LOCAL && typed.ends_with(self.last_seven()) {
            let one_is_local = local(typed) || local(&self.digits);
            return Some(if one_is_local {
                Agrees::LastSeven
            } else {
                Agrees::OtherArea
            });
        }
        if typed.len() < 4 {
            None
        } else if self.digits.starts_with(typed) || self.last_seven().starts_with(typed) {
            Some(Agrees::Begins)
        } else {
            self.digits.ends_with(typed).then_some(Agrees::Ends)
        }
    }
}

/// The digits of a text that is nothing but a number or part of one, at least four: what is typed into a search. `None` for any other text.
pub fn typed(text: &str) -> Option<String> {
    let text = text.trim();
    let plain = |c: char| c.is_ascii_digit() || " +-().\u{2013}\u{2011}".contains(c);
    let number = before_extension(text);
    let digits = national(digits(number));
    (number.chars().all(plain) && digits.len() >= 4).then_some(digits)
}

fn digits(text: &str) -> String {
    text.chars().filter(char::is_ascii_digit).collect()
}

/// The part of a text before `x 12`, `ext. 12`, `#12`, where digits stand before it.
fn before_extension(text: &str) -> &str {
    let starts = |(at, c): (usize, char)| {
        let extension = matches!(c, 'x' | 'X' | '#' | ';')
            || text
                .get(at..at + 3)
                .is_some_and(|word| word.eq_ignore_ascii_case("ext"));
        (extension && text[..at].contains(|c: char| c.is_ascii_digit())).then_some(at)
    };
    text.char_indices()
        .find_map(starts)
        .map_or(text, |at| &text[..at])
}

/// Without the 1 that opens a North American number from outside its area.
fn national(digits: String) -> String {
    match digits.strip_prefix('1') {
        Some(rest) if rest.len() == Phone::NATIONAL => rest.to_owned(),
        _ => digits,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn numbers_as_people_write_them() {
        let cases = [
            ("(212) 555-0132", Some("2125550132")),
            ("212.555.0132", Some("2125550132")),
            ("+1 212 555 0132", Some("2125550132")),
            ("1-212-555-0132", Some("2125550132")),
            ("12125550132", Some("2125550132")),
            ("212-555-0132 x12", Some("2125550132")),
            ("212-555-0132 ext. 12", Some("2125550132")),
            ("212-555-0132;ext=12", Some("2125550132")),
            ("tel:+1-212-555-0132", Some("2125550132")),
            ("cell 555-0132", Some("5550132")),
            ("Max 555-0132", Some("5550132")),
            ("+49 30 901820", Some("4930901820")),
            ("555-013", None),
            ("none", None),
            ("", None),
        ];
        for (text, digits) in cases {
            let phone = Phone::read(text);
            assert_eq!(phone.as_ref().map(Phone::digits), digits, "{text}");
        }
    }

    #[test]
    fn typed_numbers() {
        let cases = [
            ("0132", Some("0132")),
            ("555-0132", Some("5550132")),
            ("(212) 555", Some("212555")),
            ("+1 (212) 555-0132 x9", Some("2125550132")),
            ("132", None),
            ("12 Oak St", None),
            ("12/14", None),
            ("", None),
        ];
        for (text, digits) in cases {
            assert_eq!(typed(text).as_deref(), digits, "{text}");
        }
    }

    #[test]
    fn agreement() {
        let cases = [
            ("212-555-0132", "2125550132", Some(Agrees::Whole)),
            ("212-555-0132", "5550132", Some(Agrees::LastSeven)),
            ("555-0132", "2125550132", Some(Agrees::LastSeven)),
            ("212-555-0132", "9145550132", Some(Agrees::OtherArea)),
            ("212-555-0132", "212555", Some(Agrees::Begins)),
            ("212-555-0132", "55501", Some(Agrees::Begins)),
            ("212-555-0132", "0132", Some(Agrees::Ends)),
            ("212-555-0132", "50132", Some(Agrees::Ends)),
            ("212-555-0132", "132", None),
            ("212-555-0132", "9999", None),
            ("212-555-0132", "2125550133", None),
        ];
        for (known, typed, agrees) in cases {
            let phone = Phone::read(known).unwrap();
            assert_eq!(phone.agrees(typed), agrees, "{known} {typed}");
        }
    }

    proptest! {
        #[test]
        fn a_number_is_found_by_itself_however_written(area in "[2-9][0-9]{2}", exchange in "[2-9][0-9]{2}", line in "[0-9]{4}") {
            let phone = Phone::read(&format!("+1 ({area}) {exchange}-{line}")).unwrap();
            let again = typed(&format!("{area}.{exchange}.{line}")).unwrap();
            prop_assert_eq!(phone.agrees(&again), Some(Agrees::Whole));
            let local = format!("{exchange}{line}");
            prop_assert_eq!(phone.agrees(&local), Some(Agrees::LastSeven));
            prop_assert!(phone.agrees(&line).is_some());
        }

        #[test]
        fn no_text_breaks_the_reader(text in any::<String>()) {
            let typed = typed(&text).unwrap_or_default();
            if let Some(phone) = Phone::read(&text) {
                prop_assert!(phone.last_seven().ends_with(phone.last_four()));
                let _ = phone.agrees(&typed);
            }
        }
    }
}
