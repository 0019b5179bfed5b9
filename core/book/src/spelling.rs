//! How far apart two spellings are, for what is typed with errors.

/// The least number of letters to insert, leave out, change, or swap with their neighbour that turns one text into the other, where it is
/// at most `most`; no letter is touched twice (optimal string alignment distance).
pub fn within(a: &str, b: &str, most: usize) -> Option<usize> {
    if a.is_ascii() && b.is_ascii() && (letters_apart(a, b) > most || letters_apart(b, a) > most) {
        return None;
    }
    let (a, b): (Vec<char>, Vec<char>) = (a.chars().collect(), b.chars().collect());
    if a.len().abs_diff(b.len()) > most {
        return None;
    }
    let last = rows(&a, &b, most)?;
    last.last().copied().filter(|distance| *distance <= most)
}

/// Like [`within`], but `typed` may be only the beginning of `whole`: the distance to the beginning of it that is nearest.
pub fn begins_within(typed: &str, whole: &str, most: usize) -> Option<usize> {
    if typed.is_ascii() && letters_apart(typed, whole) > most {
        return None;
    }
    let typed: Vec<char> = typed.chars().collect();
    let whole: Vec<char> = whole.chars().take(typed.len() + most).collect();
    let last = rows(&typed, &whole, most)?;
    last.into_iter().min().filter(|distance| *distance <= most)
}

/// How many letters of one text the other has none of, as far as 64 marks tell letters apart: a quick look, before the table is made, that
/// never finds more than there are. Each error brings in one such letter at most.
fn letters_apart(a: &str, b: &str) -> usize {
    let marks = |text: &str| {
        text.bytes()
            .fold(0_u64, |marks, byte| marks | 1 << (byte & 63))
    };
    (marks(a) & !marks(b)).count_ones() as usize
}

/// The last row of the table of distances: from all of `a` to each beginning of `b`. `None` as soon as every one is above `most`.
fn rows(a: &[char], b: &[char], most: usize) -> Option<Vec<usize>> {
    let mut before_last: Vec<usize> = Vec::new();
    let mut last: Vec<usize> = (0..=b.len()).collect();
    for (i, from) in a.iter().enumerate() {
        let mut row = Vec::with_capacity(b.len() + 1);
        row.push(i + 1);
        for (j, to) in b.iter().enumerate() {
            let changed = last[j] + usize::from(from != to);
            let mut fewest = changed.min(last[j + 1] + 1).min(row[j] + 1);
            if i > 0 && j > 0 && *from == b[j - 1] && a[i - 1] == *to {
                fewest = fewest.min(before_last[j - 1] + 1);
            }
            row.push(fewest);
        }
        // A swap reaches back two rows, so that one row above the limit does not end it.
        if row.iter().chain(&last).all(|distance| *distance > most) {
            return None;
        }
        before_last = std::mem::replace(&mut last, row);
    }
    Some(last)
}

/// How many errors are let pass in a word of so many letters: none up to two, one up to five, two above. Common practice, no source.
pub fn errors_allowed(typed: &str) -> usize {
    match typed.chars().count() {
        0..=2 => 0,
        3..=5 => 1,
        _ => 2,
    }
}

/// How far a typed street's name is from a known one, both in kept form, where they may be the same: spaces tell nothing apart
/// ("MC DONALD"), numbers and single letters must agree ("3RD" is no "2ND", "AVENUE A" no "AVENUE B").
pub fn street_names_apart(typed: &str, known: &str) -> Option<usize> {
    let (close, whole) = (typed.replace(' ', ""), known.replace(' ', ""));
    if close == whole {
        return Some(0);
    }
    if !fixed_words(typed).eq(fixed_words(known)) {
        return None;
    }
    within(&close, &whole, errors_allowed(&close))
}

/// How far a typed street's name is from the beginning of a known one, where one letter of it is wrong: it was typed no further yet, or
/// what followed was taken for a suffix ("Larkspr Hollow" for Larkspur Hollow Rd). Counted as two letters, so that whole names come first.
pub fn street_name_begun(typed: &str, known: &str) -> Option<usize> {
    let (close, whole) = (typed.replace(' ', ""), known.replace(' ', ""));
    let long_enough = errors_allowed(&close) == 2;
    let numbered = fixed_words(typed).next().is_some();
    (long_enough && !numbered)
        .then(|| begins_within(&close, &whole, 1))?
        .map(|letters| letters + 1)
}

fn fixed_words(name: &str) -> impl Iterator<Item = &str> {
    name.split(' ')
        .filter(|word| word.chars().count() == 1 || word.contains(|c: char| c.is_ascii_digit()))
}

/// How far typed words are from a person's name, both in folded form, where each of the words is the beginning of one of the name's, or
/// near one; each word of the name answers one word.
pub fn person_apart(typed: &[String], name: &[String]) -> Option<usize> {
    if typed.is_empty() {
        return None;
    }
    let mut free: Vec<&String> = name.iter().collect();
    let mut apart = 0;
    for word in typed {
        let (at, distance) = free
            .iter()
            .enumerate()
            .filter_map(|(at, known)| Some((at, word_apart(word, known)?)))
            .min_by_key(|(_, distance)| *distance)?;
        free.swap_remove(at);
        apart += distance;
    }
    Some(apart)
}

fn word_apart(typed: &str, known: &str) -> Option<usize> {
    if known.starts_with(typed) {
        return Some(0);
    }
    within(typed, known, errors_allowed(typed))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn words(text: &str) -> Vec<String> {
        text.split_whitespace().map(str::to_owned).collect()
    }

    #[test]
    fn distances() {
        let cases = [
            ("MAIN", "MAIN", 2, Some(0)),
            ("MIAN", "MAIN", 2, Some(1)),
            ("MAN", "MAIN", 2, Some(1)),
            ("MAIIN", "MAIN", 2, Some(1)),
            ("MEIN", "MAIN", 2, Some(1)),
            ("SPIRNGFEILD", "SPRINGFIELD", 2, Some(2)),
            ("SPRUCE", "SPRINGS", 2, None),
            ("", "AB", 2, Some(2)),
            ("", "ABC", 2, None),
            // Optimal string alignment, not Damerau: "CA" to "ABC" is 3.
            ("CA", "ABC", 3, Some(3)),
        ];
        for (a, b, most, distance) in cases {
            assert_eq!(within(a, b, most), distance, "{a} {b}");
            assert_eq!(within(b, a, most), distance, "{b} {a}");
        }
    }

    #[test]
    fn beginnings() {
        assert_eq!(begins_within("SPIRN", "SPRINGFIELD", 1), Some(1));
        assert_eq!(begins_within("SPR", "SPRINGFIELD", 0), Some(0));
        assert_eq!(begins_within("OAK", "SPRINGFIELD", 1), None);
        assert_eq!(begins_within("", "OAK", 0), Some(0));
    }

    #[test]
    fn street_names() {
        let cases = [
            ("WASHINTON", "WASHINGTON", Some(1)),
            ("WASIHNTON", "WASHINGTON", Some(2)),
            ("ONEILL", "O NEILL", Some(0)),
            ("MCDONALD", "MC DONALD", Some(0)),
            ("ELN", "ELM", Some(1)),
            ("EL", "ELM", None),
            ("3RD", "2ND", None),
            ("AVENUE A", "AVENUE B", None),
            ("CONTY ROAD 12", "COUNTY ROAD 12", Some(1)),
            ("COUNTY ROAD 12", "COUNTY ROAD 13", None),
        ];
        for (typed, known, apart) in cases {
            assert_eq!(street_names_apart(typed, known), apart, "{typed} {known}");
        }
    }

    #[test]
    fn people() {
        let cases = [
            ("MILLER", "ANN MILLER", Some(0)),
            ("MILL AN", "ANN MILLER", Some(0)),
            ("MILELR", "ANN MILLER", Some(1)),
            ("ANN ANN", "ANN MILLER", None),
            ("", "ANN MILLER", None),
            ("MOSER", "ANN MILLER", None),
        ];
        for (typed, name, apart) in cases {
            assert_eq!(person_apart(&words(typed), &words(name)), apart, "{typed}");
        }
    }

    proptest! {
        #[test]
        fn a_distance_is_the_same_from_both_sides(a in "[A-D]{0,7}", b in "[A-D]{0,7}") {
            prop_assert_eq!(within(&a, &b, 9), within(&b, &a, 9));
        }

        #[test]
        fn the_limit_only_cuts_off(a in "[A-D]{0,7}", b in "[A-D]{0,7}", most in 0_usize..4) {
            let distance = within(&a, &b, 9).unwrap();
            prop_assert_eq!(within(&a, &b, most), (distance <= most).then_some(distance));
        }

        #[test]
        fn a_distance_is_that_of_the_plain_definition(a in "[A-C]{0,5}", b in "[A-C]{0,5}") {
            let (x, y): (Vec<char>, Vec<char>) = (a.chars().collect(), b.chars().collect());
            prop_assert_eq!(within(&a, &b, 9), Some(plain(&x, &y)));
        }

        #[test]
        fn one_error_is_found(word in "[A-Z]{3,12}", at in 0_usize..12, letter in "[A-Z]") {
            let at = at % word.len();
            let changed = format!("{}{letter}{}", &word[..at], &word[at + 1..]);
            let left_out = format!("{}{}", &word[..at], &word[at + 1..]);
            prop_assert!(within(&changed, &word, 1).is_some());
            prop_assert!(within(&left_out, &word, 1).is_some());
        }

        #[test]
        fn a_beginning_is_no_farther_than_the_whole(a in "[A-D]{0,7}", b in "[A-D]{0,7}") {
            prop_assert!(begins_within(&a, &b, 9) <= within(&a, &b, 9));
        }
    }

    /// The recurrence as it is defined, without a table.
    fn plain(a: &[char], b: &[char]) -> usize {
        let (Some((x, rest_a)), Some((y, rest_b))) = (a.split_last(), b.split_last()) else {
            return a.len().max(b.len());
        };
        let mut least = (plain(rest_a, b) + 1)
            .min(plain(a, rest_b) + 1)
            .min(plain(rest_a, rest_b) + usize::from(x != y));
        if let ([rest_a @ .., a1, a2], [rest_b @ .., b1, b2]) = (a, b)
            && a1 == b2
            && a2 == b1
        {
            least = least.min(plain(rest_a, rest_b) + 1);
        }
        least
    }
}
