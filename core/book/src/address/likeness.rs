//! How near an address is to what was typed.
//!
//! The weights are common practice, no source: a house on the street that was meant always comes before one on a street that is only
//! spelled alike, and a wrong town weighs more than any error of spelling.

use super::direction::Direction;
use super::house::House;
use super::query::{Query, Reading};
use super::street::Street;
use super::suffix::suffixes;
use super::{Normal, name, ordinal};
use crate::spelling;
use std::cell::LazyCell;
use std::collections::HashMap;
use std::sync::LazyLock;

/// How the house number agrees with the one typed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum HouseAgrees {
    /// None was typed.
    NotTyped,
    /// It is that number.
    Same,
    /// One of the two is a range that holds the other.
    Covered,
    /// They differ in a letter or a fraction.
    SameNumber,
    /// It begins like the one typed, and nothing more was typed yet.
    Begins,
    /// It is another house on the street, so many numbers away.
    Other(u64),
}

/// How the street agrees with the one typed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum StreetAgrees {
    /// None was typed.
    NotTyped,
    /// It is that street.
    Same,
    /// It begins like what was typed.
    Begins,
    /// It is spelled so many letters apart.
    Near(usize),
}

/// How near an address is to what was typed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Likeness {
    /// The house number.
    pub house: HouseAgrees,
    /// The street.
    pub street: StreetAgrees,
    /// What speaks against it in all; 0 where nothing does.
    pub away: u32,
}

impl Query {
    /// How near an address is to what was typed; `None` where it is another. Of two addresses the one with less `away` is the likelier.
    pub fn likeness(&self, address: &Normal) -> Option<Likeness> {
        self.readings
            .iter()
            .filter_map(|reading| reading.likeness(address))
            .min_by_key(|likeness| likeness.away)
    }

    /// Whether houses on a street of this name, in kept form, are worth comparing.
    pub fn may_be_on(&self, street: &str) -> bool {
        let words = LazyCell::new(|| spoken(street));
        self.readings.iter().any(|reading| {
            let typed = &reading.address.street.name;
            !typed.is_empty()
                && (name_agrees(typed, street).is_some()
                    || reading.may_begin(street) && reading.typed_begins(&words))
        })
    }
}

impl Reading {
    fn likeness(&self, address: &Normal) -> Option<Likeness> {
        let house = self.house_agrees(address)?;
        let (street, street_away) = self.street_agrees(&address.street)?;
        // A house number alone is no other house's.
        if matches!(house, HouseAgrees::Other(_)) && street == StreetAgrees::NotTyped {
            return None;
        }
        let away =
            house_away(house) + street_away + unit_away(self, address) + place_away(self, address);
        Some(Likeness {
            house,
            street,
            away,
        })
    }

    fn house_agrees(&self, address: &Normal) -> Option<HouseAgrees> {
        let Some(typed) = &self.address.house else {
            return Some(HouseAgrees::NotTyped);
        };
        let known = address.house.as_ref()?;
        Some(if typed == known {
            HouseAgrees::Same
        } else if known.covers(typed) || typed.covers(known) {
            HouseAgrees::Covered
        } else if typed.number().is_some() && typed.number() == known.number() {
            HouseAgrees::SameNumber
        } else if self.typed.is_empty() && known.as_str().starts_with(typed.as_str()) {
            HouseAgrees::Begins
        } else {
            HouseAgrees::Other(numbers_apart(typed, known)?)
        })
    }

    /// How the street agrees, and what speaks against it.
    fn street_agrees(&self, known: &Street) -> Option<(StreetAgrees, u32)> {
        let typed = &self.address.street;
        if typed.is_empty() {
            return Some((StreetAgrees::NotTyped, 0));
        }
        let by_name = name_agrees(&typed.name, &known.name)
            .map(|agrees| (agrees, street_away(agrees) + sides_away(typed, known)));
        if let Some((StreetAgrees::Same, 0)) = by_name {
            return by_name;
        }
        let by_words = self
            .typed_begins(&forms(known))
            .then_some((StreetAgrees::Begins, street_away(StreetAgrees::Begins)));
        by_name
            .into_iter()
            .chain(by_words)
            .min_by_key(|(_, away)| *away)
    }

    /// A quick look before [`Reading::typed_begins`]: whether one of the street's first two words begins with the typed letter, or one of them
    /// is a number, which is also written in letters.
    fn may_begin(&self, street: &str) -> bool {
        let Some(first) = self.typed.first().and_then(|word| word.chars().next()) else {
            return false;
        };
        first.is_ascii_digit()
            || street
                .split(' ')
                .take(2)
                .any(|word| word.starts_with(|c: char| c == first || c.is_ascii_digit()))
    }

    /// Whether the typed words are the first of a street's, each word whole but the last. A direction before the name may be left out.
    fn typed_begins(&self, forms: &[Vec<String>]) -> bool {
        let Some((half, whole)) = self.typed.split_last() else {
            return false;
        };
        let from = |start: usize| {
            let Some(forms) = forms.get(start..).filter(|forms| forms.len() > whole.len()) else {
                return false;
            };
            whole
                .iter()
                .zip(forms)
                .all(|(word, forms)| forms.contains(word))
                && forms[whole.len()]
                    .iter()
                    .any(|form| form.starts_with(half.as_str()))
        };
        let leading = forms
            .first()
            .is_some_and(|forms| Direction::read(&forms[0]).is_some());
        from(0) || leading && from(1)
    }
}

fn name_agrees(typed: &str, known: &str) -> Option<StreetAgrees> {
    if typed == known {
        return Some(StreetAgrees::Same);
    }
    if known.starts_with(typed) {
        return Some(StreetAgrees::Begins);
    }
    spelling::street_names_apart(typed, known)
        .or_else(|| directions_alike(typed, known))
        .or_else(|| spelling::street_name_begun(typed, known))
        .map(StreetAgrees::Near)
}

/// "N Ave" may be North Ave: one apart.
fn directions_alike(typed: &str, known: &str) -> Option<usize> {
    let (typed, known) = (Direction::read(typed)?, Direction::read(known)?);
    (typed == known).then_some(1)
}

fn numbers_apart(typed: &House, known: &House) -> Option<u64> {
    Some(typed.number()?.abs_diff(known.number()?))
}

fn house_away(house: HouseAgrees) -> u32 {
    match house {
        HouseAgrees::NotTyped | HouseAgrees::Same => 0,
        HouseAgrees::Covered => 1,
        HouseAgrees::SameNumber => 2,
        HouseAgrees::Begins => 3,
        HouseAgrees::Other(apart) => 20 + u32::try_from(apart.min(40)).unwrap_or(40) / 4,
    }
}

fn street_away(street: StreetAgrees) -> u32 {
    match street {
        StreetAgrees::NotTyped | StreetAgrees::Same => 0,
        StreetAgrees::Begins => 1,
        StreetAgrees::Near(letters) => 3 + 2 * u32::try_from(letters).unwrap_or(u32::MAX / 4),
    }
}

/// Suffix and directions: what was not typed speaks against nothing.
fn sides_away(typed: &Street, known: &Street) -> u32 {
    let suffix = match (typed.suffix.as_str(), known.suffix.as_str()) {
        ("", _) => 0,
        (typed, known) if typed == known => 0,
        (_, "") => 1,
        _ => 4,
    };
    let swapped = typed.before == known.after && typed.after == known.before;
    if swapped && typed.before != typed.after {
        return suffix + 2;
    }
    suffix + direction_away(typed.before, known.before) + direction_away(typed.after, known.after)
}

fn direction_away(typed: Option<Direction>, known: Option<Direction>) -> u32 {
    match (typed, known) {
        (None, _) => 0,
        (Some(_), None) => 2,
        (Some(typed), Some(known)) if typed == known => 0,
        _ => 6,
    }
}

/// Units of one number are one, whatever they are called: `APT 4`, `# 4`.
fn unit_away(reading: &Reading, address: &Normal) -> u32 {
    let number = |unit: &str| unit.split(' ').next_back().map(str::to_owned);
    match (reading.address.unit.as_str(), address.unit.as_str()) {
        ("", _) => 0,
        (_, "") => 1,
        (typed, known) if number(typed) == number(known) => 0,
        _ => 3,
    }
}

fn place_away(reading: &Reading, address: &Normal) -> u32 {
    let typed = &reading.address;
    let town = match (typed.town.as_str(), address.town.as_str()) {
        ("", _) => 0,
        (_, "") => 1,
        (typed, known) if known.starts_with(typed) => 0,
        (typed, known) => {
            let most = spelling::errors_allowed(typed);
            match spelling::begins_within(typed, known, most) {
                Some(letters) => 2 * u32::try_from(letters).unwrap_or(u32::MAX / 4),
                None => 15,
            }
        }
    };
    let differ =
        |typed: &str, known: &str| !typed.is_empty() && !known.is_empty() && typed != known;
    let region = if differ(&typed.region, &address.region) {
        10
    } else {
        0
    };
    let postcode = if differ(&typed.postcode, &address.postcode) {
        3
    } else {
        0
    };
    town + region + postcode
}

/// The words of a street, each with every way it is written.
fn forms(street: &Street) -> Vec<Vec<String>> {
    let direction =
        |direction: Direction| vec![direction.short().to_owned(), direction.word().to_owned()];
    let mut forms: Vec<Vec<String>> = street.before.map(direction).into_iter().collect();
    forms.extend(spoken(&street.name));
    if !street.suffix.is_empty() {
        forms.push(spellings_of(&street.suffix));
    }
    forms.extend(street.after.map(direction));
    forms
}

/// The words of a name, each with every way it is written.
fn spoken(name: &str) -> Vec<Vec<String>> {
    name.split(' ').map(ways_to_write).collect()
}

fn ways_to_write(word: &str) -> Vec<String> {
    let mut ways = vec![word.to_owned()];
    ways.extend(name::other_spellings(word).into_iter().map(str::to_owned));
    if let Some(direction) = Direction::read(word) {
        ways.extend([direction.short().to_owned(), direction.word().to_owned()]);
    }
    if let Some(number) = ordinal::number_of(word) {
        ways.push(number.to_owned());
        ways.extend(ordinal::in_words(number));
    }
    ways
}

fn spellings_of(suffix: &str) -> Vec<String> {
    static SPELLINGS: LazyLock<HashMap<&str, Vec<String>>> = LazyLock::new(|| {
        let mut by_suffix: HashMap<&str, Vec<String>> = HashMap::new();
        for (spelling, suffix) in suffixes() {
            by_suffix
                .entry(suffix)
                .or_default()
                .push(spelling.to_owned());
        }
        by_suffix
    });
    SPELLINGS.get(suffix).cloned().unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::super::normalise_text;
    use super::*;

    const KNOWN: [&str; 16] = [
        "123 Main St, Alma, MI",
        "123 N Main St, Alma, MI",
        "123 Maine Ave, Alma, MI",
        "123 Main St, Ithaca, MI",
        "125 Main St, Alma, MI",
        "123A Main St, Alma, MI",
        "120-124 Main Ave, Alma, MI",
        "1230 Main St, Alma, MI",
        "42 3rd St, Alma, MI",
        "42 8 Mile Rd, Alma, MI",
        "7 St James Ct, Alma, MI",
        "7 Mount Vernon Ave Apt 4, Alma, MI",
        "9 Washington Blvd, St Paul, MN",
        "9 County Road 12, Alma, MI",
        "5 O'Neill Way, Alma, MI",
        "5 North Ave, Alma, MI",
    ];

    /// The known addresses that a typed text may mean, nearest first.
    fn found(typed: &str) -> Vec<&'static str> {
        let query = Query::read(typed);
        let mut found: Vec<(u32, &str)> = KNOWN
            .into_iter()
            .filter_map(|known| Some((query.likeness(&normalise_text(known))?.away, known)))
            .collect();
        found.sort_by_key(|(away, _)| *away);
        found.into_iter().map(|(_, known)| known).collect()
    }

    #[test]
    fn the_house_that_was_meant_comes_first() {
        let cases = [
            ("123 main st alma", "123 Main St, Alma, MI"),
            ("123 Main St, Ithaca", "123 Main St, Ithaca, MI"),
            ("123 mian st", "123 Main St, Alma, MI"),
            ("123 n main", "123 N Main St, Alma, MI"),
            ("123 north m", "123 N Main St, Alma, MI"),
            ("123 maine", "123 Maine Ave, Alma, MI"),
            ("123a main", "123A Main St, Alma, MI"),
            ("122 main ave", "120-124 Main Ave, Alma, MI"),
            ("42 third", "42 3rd St, Alma, MI"),
            ("42 thir", "42 3rd St, Alma, MI"),
            ("42 3", "42 3rd St, Alma, MI"),
            ("8 mile", "42 8 Mile Rd, Alma, MI"),
            ("8 mile rd", "42 8 Mile Rd, Alma, MI"),
            ("42 8 mile", "42 8 Mile Rd, Alma, MI"),
            ("st ja", "7 St James Ct, Alma, MI"),
            ("7 saint jmaes", "7 St James Ct, Alma, MI"),
            ("7 mt ver", "7 Mount Vernon Ave Apt 4, Alma, MI"),
            ("7 mt vernon #4", "7 Mount Vernon Ave Apt 4, Alma, MI"),
            ("washinton", "9 Washington Blvd, St Paul, MN"),
            (
                "9 wahsington blvd saint pual",
                "9 Washington Blvd, St Paul, MN",
            ),
            ("cr 12", "9 County Road 12, Alma, MI"),
            ("5 o neill", "5 O'Neill Way, Alma, MI"),
            ("5 n ave", "5 North Ave, Alma, MI"),
            ("miller 7 st james", "7 St James Ct, Alma, MI"),
            ("1230", "1230 Main St, Alma, MI"),
        ];
        for (typed, known) in cases {
            assert_eq!(
                found(typed).first(),
                Some(&known),
                "{typed}: {:?}",
                found(typed)
            );
        }
    }

    #[test]
    fn another_street_or_house_is_not_found() {
        for typed in [
            "456",
            "elm st",
            "9 county road 13",
            "42 2nd st",
            "miller",
            "",
            "   ",
            "#",
        ] {
            assert_eq!(found(typed), Vec::<&str>::new(), "{typed}");
        }
    }

    #[test]
    fn a_half_typed_line_keeps_the_house_in_sight() {
        for house in [
            "123 N Main St, Alma, MI",
            "7 Mount Vernon Ave Apt 4, Alma, MI",
            "42 3rd St, Alma, MI",
        ] {
            let line = house.split(',').next().unwrap_or_default();
            for end in 1..=line.len() {
                assert!(found(&line[..end]).contains(&house), "{}", &line[..end]);
            }
        }
    }

    #[test]
    fn streets_worth_comparing_hold_every_likely_house() {
        for typed in [
            "123 mian st",
            "42 thir",
            "8 mile",
            "st ja",
            "7 mt ver",
            "cr 12",
            "5 n ave",
            "5 o neill",
        ] {
            let query = Query::read(typed);
            for known in found(typed) {
                let street = normalise_text(known).street.name;
                assert!(query.may_be_on(&street), "{typed} {street}");
            }
        }
    }

    #[test]
    fn what_speaks_for_a_house_is_said() {
        let likeness =
            |typed: &str, known: &str| Query::read(typed).likeness(&normalise_text(known));
        let same = likeness("12 oak st", "12 Oak Street, Alma").unwrap();
        assert_eq!(
            same,
            Likeness {
                house: HouseAgrees::Same,
                street: StreetAgrees::Same,
                away: 0
            }
        );
        let near = likeness("14 oka st", "12 Oak Street, Alma").unwrap();
        assert_eq!(
            (near.house, near.street),
            (HouseAgrees::Other(2), StreetAgrees::Near(1))
        );
        let begun = likeness("1", "12 Oak Street, Alma").unwrap();
        assert_eq!(
            (begun.house, begun.street),
            (HouseAgrees::Begins, StreetAgrees::NotTyped)
        );
    }
}
