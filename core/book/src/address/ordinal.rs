//! Numbered streets: `Third`, `3rd` and `3` with a suffix are one street.

const UNITS: [&str; 19] = [
    "FIRST",
    "SECOND",
    "THIRD",
    "FOURTH",
    "FIFTH",
    "SIXTH",
    "SEVENTH",
    "EIGHTH",
    "NINTH",
    "TENTH",
    "ELEVENTH",
    "TWELFTH",
    "THIRTEENTH",
    "FOURTEENTH",
    "FIFTEENTH",
    "SIXTEENTH",
    "SEVENTEENTH",
    "EIGHTEENTH",
    "NINETEENTH",
];

const TENS: [(&str, &str); 8] = [
    ("TWENTY", "TWENTIETH"),
    ("THIRTY", "THIRTIETH"),
    ("FORTY", "FORTIETH"),
    ("FIFTY", "FIFTIETH"),
    ("SIXTY", "SIXTIETH"),
    ("SEVENTY", "SEVENTIETH"),
    ("EIGHTY", "EIGHTIETH"),
    ("NINETY", "NINETIETH"),
];

/// Reads the ordinal number that opens `words`, written out, up to the hundred-and-ninety-ninth: the number and how many words it takes.
pub(crate) fn read(words: &[String]) -> Option<(u32, usize)> {
    match words {
        [one, hundredth, ..] if one == "ONE" && hundredth == "HUNDREDTH" => Some((100, 2)),
        [one, hundred, and, rest @ ..] if one == "ONE" && hundred == "HUNDRED" && and == "AND" => {
            below_hundred(rest).map(|(n, taken)| (100 + n, 3 + taken))
        }
        [one, hundred, rest @ ..] if one == "ONE" && hundred == "HUNDRED" => {
            below_hundred(rest).map(|(n, taken)| (100 + n, 2 + taken))
        }
        _ => below_hundred(words),
    }
}

fn below_hundred(words: &[String]) -> Option<(u32, usize)> {
    let first = words.first()?;
    if let Some(n) = one_word(first) {
        return Some((n, 1));
    }
    let tens = (2_u32..)
        .zip(TENS)
        .find_map(|(n, (ten, _))| (first == ten).then_some(n * 10))?;
    let units = one_word(words.get(1)?).filter(|n| *n < 10)?;
    Some((tens + units, 2))
}

fn one_word(word: &str) -> Option<u32> {
    let unit = (1..).zip(UNITS).find(|(_, unit)| word == *unit);
    let ten = (2..).zip(TENS).find(|(_, (_, tenth))| word == *tenth);
    unit.map(|(n, _)| n).or(ten.map(|(n, _)| n * 10))
}

/// A number with its ending: `3RD`, `11TH`.
pub(crate) fn with_ending(number: &str) -> String {
    let tail: String = number.chars().rev().take(2).collect();
    let ending = match tail.as_bytes() {
        [_, b'1'] => "TH",
        [b'1', ..] => "ST",
        [b'2', ..] => "ND",
        [b'3', ..] => "RD",
        _ => "TH",
    };
    format!("{number}{ending}")
}

/// The number of a word with an ending, right or wrong: `3RD`, `3TH`.
pub(crate) fn number_of(word: &str) -> Option<&str> {
    ["ST", "ND", "RD", "TH"].iter().find_map(|ending| {
        let number = word.strip_suffix(ending)?;
        (!number.is_empty() && number.bytes().all(|b| b.is_ascii_digit())).then_some(number)
    })
}

/// The words of an ordinal number below a hundred: `THIRD`, `TWENTY FIRST`.
pub(crate) fn in_words(number: &str) -> Option<String> {
    let n: usize = number.parse().ok()?;
    let unit = |n: usize| UNITS.get(n.checked_sub(1)?).copied();
    if n < 20 {
        return unit(n).map(str::to_owned);
    }
    let (ten, tenth) = TENS.get((n / 10).checked_sub(2)?)?;
    Some(match unit(n % 10) {
        Some(unit) => format!("{ten} {unit}"),
        None => (*tenth).to_owned(),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn words_and_numbers_agree() {
        for n in 1..100_u32 {
            let words = in_words(&n.to_string()).unwrap();
            let split: Vec<String> = words.split(' ').map(str::to_owned).collect();
            assert_eq!(read(&split), Some((n, split.len())), "{words}");
        }
        let hundreds = [
            "ONE HUNDREDTH",
            "ONE HUNDRED TENTH",
            "ONE HUNDRED AND TENTH",
        ];
        let numbers = hundreds.map(|words| {
            let split: Vec<String> = words.split(' ').map(str::to_owned).collect();
            read(&split).map(|(n, _)| n)
        });
        assert_eq!(numbers, [Some(100), Some(110), Some(110)]);
    }

    #[test]
    fn endings() {
        let cases = [
            ("1", "1ST"),
            ("2", "2ND"),
            ("3", "3RD"),
            ("4", "4TH"),
            ("11", "11TH"),
            ("12", "12TH"),
            ("13", "13TH"),
            ("21", "21ST"),
            ("111", "111TH"),
            ("0", "0TH"),
        ];
        for (number, ordinal) in cases {
            assert_eq!(with_ending(number), ordinal);
            assert_eq!(number_of(ordinal), Some(number));
        }
        assert_eq!(number_of("ST"), None);
        assert_eq!(number_of("MAST"), None);
    }
}
