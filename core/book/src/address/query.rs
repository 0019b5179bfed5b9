//! What somebody types to find a house: part of an address, with errors; an owner's name; a telephone number.

use super::house::House;
use super::line::Line;
use super::street::Street;
use super::{Normal, fold, name, normalise_text, road, text};
use crate::phone;

/// What was typed, as far as it may mean something.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Query {
    /// The addresses it may be part of, likeliest first. "8 Mile Rd" is a house on Mile Rd, or 8 Mile Rd.
    pub readings: Vec<Reading>,
    /// The digits, where it is nothing but a telephone number or part of one, at least four.
    pub phone: Option<String>,
    /// Its words without those that hold digits, folded: an owner's name, perhaps.
    pub words: Vec<String>,
}

/// One address that a typed text may be part of.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Reading {
    /// What is said of it.
    pub address: Normal,
    /// The words after the house number as they were typed, folded; the last may be half typed.
    pub typed: Vec<String>,
}

impl Query {
    /// Reads what was typed.
    pub fn read(typed: &str) -> Self {
        let folded = fold::words(typed);
        Self {
            readings: readings(typed),
            phone: phone::typed(typed),
            words: folded.into_iter().filter(|word| !has_digit(word)).collect(),
        }
    }

    /// The house number of the likeliest reading.
    pub fn house(&self) -> Option<&House> {
        self.readings.first()?.address.house.as_ref()
    }

    /// Every house number that any reading has.
    pub fn houses(&self) -> impl Iterator<Item = &House> {
        self.readings
            .iter()
            .filter_map(|reading| reading.address.house.as_ref())
    }

    /// The name of the street of the likeliest reading, whole or half typed; empty where none was typed.
    pub fn street(&self) -> &str {
        self.readings
            .first()
            .map_or("", |reading| &reading.address.street.name)
    }

    /// The town of the likeliest reading, whole or half typed; empty where none was typed.
    pub fn town(&self) -> &str {
        self.readings
            .first()
            .map_or("", |reading| &reading.address.town)
    }

    /// Whether nothing was typed that could be looked for.
    pub fn is_empty(&self) -> bool {
        self.readings.is_empty() && self.phone.is_none() && self.words.is_empty()
    }
}

fn has_digit(word: &str) -> bool {
    word.contains(|c: char| c.is_ascii_digit())
}

fn readings(typed: &str) -> Vec<Reading> {
    let (line, _) = text::line_and_extra(fold::parts(typed));
    let whole = Reading {
        address: normalise_text(typed),
        typed: after_house(&line).to_vec(),
    };
    let mut readings = Vec::new();
    let others = [
        one_street(&line, &whole.address),
        number_in_name(&line, &whole.address),
        after_a_name(&line),
    ];
    for reading in std::iter::once(Some(whole)).chain(others).flatten() {
        if !reading.address.is_empty() && !readings.contains(&reading) {
            readings.push(reading);
        }
    }
    readings
}

fn after_house(line: &[String]) -> &[String] {
    let taken = House::read(line).map_or(0, |(_, taken)| taken);
    &line[taken..]
}

/// Where a town was taken off without a comma: all of the line as house and street.
fn one_street(line: &[String], whole: &Normal) -> Option<Reading> {
    let Line {
        house,
        street,
        unit,
    } = Line::read(line);
    (street != whole.street).then(|| Reading {
        address: Normal {
            house,
            street,
            unit,
            ..Normal::default()
        },
        typed: after_house(line).to_vec(),
    })
}

/// Where a number was taken for the house's: as part of the street's name.
fn number_in_name(line: &[String], whole: &Normal) -> Option<Reading> {
    let numbered = whole.house.is_some() && line.len() > 1;
    numbered.then(|| Reading {
        address: Normal {
            street: Street::read(&name::joined(line)),
            ..whole.clone()
        }
        .without_house(),
        typed: line.to_vec(),
    })
}

/// "Miller 12 Oak": an owner's name, then an address.
fn after_a_name(line: &[String]) -> Option<Reading> {
    let at = line.iter().position(|word| has_digit(word))?;
    let address = &line[at..];
    let street = after_house(address);
    let named = at > 0 && road::read(line).is_none();
    (named && street.len() < address.len() && !street.is_empty()).then(|| Reading {
        address: normalise_text(&address.join(" ")),
        typed: street.to_vec(),
    })
}

impl Normal {
    fn without_house(self) -> Self {
        Self {
            house: None,
            ..self
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn what_was_typed_is_told_apart() {
        let cases = [
            ("123 main", "123", "MAIN", ""),
            ("123 n main st spr", "123", "MAIN", "SPR"),
            ("main st", "", "MAIN", ""),
            ("1234", "1234", "", ""),
            ("42 3rd", "42", "3RD", ""),
            ("12 oak st, alm", "12", "OAK", "ALM"),
        ];
        for (typed, house, street, town) in cases {
            let query = Query::read(typed);
            let read = query.house().map_or("", House::as_str);
            assert_eq!(
                (read, query.street(), query.town()),
                (house, street, town),
                "{typed}"
            );
        }
    }

    #[test]
    fn digits_alone_are_a_house_and_a_telephone_number() {
        let query = Query::read("0132");
        assert_eq!(query.phone.as_deref(), Some("0132"));
        assert_eq!(query.house().map(House::as_str), Some("132"));
        assert_eq!(
            Query::read("(212) 555-0132").phone.as_deref(),
            Some("2125550132")
        );
        assert_eq!(Query::read("12 Oak").phone, None);
    }

    #[test]
    fn words_may_be_a_name() {
        assert_eq!(Query::read("Peña, Ann").words, ["PENA", "ANN"]);
        assert_eq!(Query::read("Miller 12 Oak").words, ["MILLER", "OAK"]);
        assert!(Query::read(" , ").is_empty());
    }

    #[test]
    fn a_number_may_belong_to_the_street() {
        let streets = |typed: &str| -> Vec<String> {
            let query = Query::read(typed);
            query.readings.iter().map(|r| r.address.line()).collect()
        };
        assert_eq!(streets("8 mile rd"), ["8 MILE RD", "8 MILE RD"]);
        assert_eq!(Query::read("8 mile rd").houses().count(), 1);
        assert_eq!(streets("42 st"), ["42 STREET", "42ND ST"]);
        assert_eq!(streets("miller 12 oak"), ["MILLER 12 OAK", "12 OAK"]);
    }

    proptest! {
        #[test]
        fn no_text_breaks_the_reader(typed in any::<String>()) {
            let query = Query::read(&typed);
            prop_assert_eq!(query.is_empty(), query.readings.is_empty() && query.words.is_empty() && query.phone.is_none());
        }

        #[test]
        fn a_written_address_is_found_by_itself(house in "[1-9][0-9]{0,3}", street in "(Main|Oak Hill|St James|3rd) (St|Rd|Ave)( N)?", unit in "(| Apt 3)") {
            let line = format!("{house} {street}{unit}");
            let likeness = Query::read(&line).likeness(&normalise_text(&line)).unwrap();
            prop_assert_eq!(likeness.away, 0);
        }
    }
}
