//! Finding a property again: by any spelling of its address, part of it, or with typing errors; by its people, their telephone numbers, or
//! where it stands.

use crate::address::{self, HouseAgrees, Likeness, Query, StreetAgrees};
use crate::error::Result;
use crate::found::{Found, Why};
use crate::phone::{Agrees, Phone};
use crate::records::Records;
use crate::spelling;
use rusqlite::{CachedStatement, Params, Row, params};
use std::collections::{BTreeMap, BTreeSet};
use trade::ids::PropertyId;
use trade::property::{Address, Position};
use uuid::Uuid;

/// The most that a search gives: more than that nobody reads on a ladder.
const MOST_FOUND: usize = 25;
/// The most that each way of looking brings up for comparison.
const MOST_COMPARED: i64 = 400;
/// The most houses of one street that are compared.
const MOST_ON_STREET: i64 = 200;
/// The most addresses that are compared in all; no further street is brought up then.
const MOST_IN_ALL: usize = 800;
/// Mean radius of the earth in metres (IUGG).
const EARTH: f64 = 6_371_008.8;

/// With less than this against it something fits, and nothing further is looked for: a street two letters off is near enough.
const FITS: u32 = 8;

/// One way of looking.
type Way = fn(&Records, &Query) -> Result<Vec<Candidate>>;

/// Something that may be what was meant.
struct Candidate {
    property: PropertyId,
    why: Why,
    away: u32,
}

impl Records {
    /// The properties that a typed text may mean, likeliest first, at most 25: any spelling or part of an address, a person's name, a telephone
    /// number, each with typing errors. Errors are looked for only where nothing fits as it was typed.
    ///
    /// # Errors
    /// [`crate::BookError::Damaged`] where a record does not read.
    pub fn find(&self, typed: &str) -> Result<Vec<Found>> {
        let query = Query::read(typed);
        let ways: [Way; 4] = [
            Self::as_typed,
            Self::of_that_house,
            Self::spelled_nearly_so,
            Self::on_that_street,
        ];
        let mut candidates = Vec::new();
        for way in ways {
            candidates.extend(way(self, &query)?);
            if candidates.iter().any(|candidate| candidate.away < FITS) {
                break;
            }
        }
        self.found(candidates)
    }

    /// The properties within so many metres of a place, nearest first, at most 25.
    ///
    /// # Errors
    /// [`crate::BookError::Damaged`] where a record does not read.
    pub fn near(&self, here: Position, metres: f64) -> Result<Vec<Found>> {
        let mut statement = self.conn.prepare_cached(include_str!("sql/near.sql"))?;
        let mut seen = BTreeMap::new();
        for (west, east) in spans(here, metres) {
            let height = (metres / EARTH).to_degrees();
            let (south, north) = (here.latitude - height, here.latitude + height);
            let mut rows = statement.query(params![south, north, west, east])?;
            while let Some(row) = rows.next()? {
                let there = Position {
                    latitude: row.get(1)?,
                    longitude: row.get(2)?,
                };
                let away = distance(here, there);
                if away <= metres {
                    seen.insert(property(row)?, away);
                }
            }
        }
        let candidates = seen.into_iter().map(|(property, metres)| Candidate {
            property,
            why: Why::Position { metres },
            away: decimetres(metres),
        });
        self.found(candidates.collect())
    }

    /// The properties that have just this address in any spelling, the kept ones where they were joined; what is missing on one side
    /// does not part them.
    ///
    /// # Errors
    /// What the disk says.
    pub fn at_address(&self, wanted: &Address) -> Result<Vec<PropertyId>> {
        let normal = address::normalise(wanted);
        if normal.house.is_none() && normal.street.is_empty() {
            return Ok(Vec::new());
        }
        let from = format!("{}|", normal.line_key());
        let mut rows = self.addresses(
            include_str!("sql/addresses_in_range.sql"),
            params![from, after(&from), MOST_COMPARED],
        )?;
        rows.retain(|known| agrees(&address::normalise(&known.address), &normal));
        rows.sort_by_key(|known| address::normalise(&known.address).key() != normal.key());
        let mut out = Vec::new();
        for known in rows {
            let kept = self.leads_to(known.property)?;
            if !out.contains(&kept) {
                out.push(kept);
            }
        }
        Ok(out)
    }

    /// What fits as it was typed, as far as it was typed.
    fn as_typed(&self, query: &Query) -> Result<Vec<Candidate>> {
        let mut known = Gathered::default();
        for reading in &query.readings {
            let (name, house) = (&reading.address.street.name, &reading.address.house);
            match (house, name.as_str()) {
                (None, "") => {}
                (None, name) => known.add(self.addresses(
                    include_str!("sql/addresses_by_street.sql"),
                    params![name, after(name), MOST_COMPARED],
                )?),
                (Some(house), "") => known.add(self.addresses(
                    include_str!("sql/addresses_by_house.sql"),
                    params![house.as_str(), after(house.as_str()), MOST_COMPARED],
                )?),
                (Some(_), _) => {
                    let (from, until) = reading.address.range();
                    known.add(self.addresses(
                        include_str!("sql/addresses_in_range.sql"),
                        params![from, until, MOST_COMPARED],
                    )?);
                }
            }
        }
        let mut out = compared(query, known);
        out.extend(self.by_phone(query)?);
        if let Some(word) = query.words.iter().max_by_key(|word| word.len()) {
            out.extend(self.by_person(query, self.words_beginning(word)?)?);
        }
        Ok(out)
    }

    /// Every address with the house number that was typed, the street spelled nearly so.
    fn of_that_house(&self, query: &Query) -> Result<Vec<Candidate>> {
        let mut known = Gathered::default();
        for house in query.houses() {
            known.add(self.addresses(
                include_str!("sql/addresses_by_house.sql"),
                params![house.as_str(), format!("{house}\0"), MOST_COMPARED],
            )?);
        }
        Ok(compared(query, known))
    }

    /// Streets and names spelled nearly so. Of the streets, where a house number was typed, the houses of about that number.
    fn spelled_nearly_so(&self, query: &Query) -> Result<Vec<Candidate>> {
        let mut known = Gathered::default();
        for street in self.streets(query)? {
            for house in query.houses() {
                known.add(self.addresses(
                    include_str!("sql/house_on_street.sql"),
                    params![
                        street,
                        house.as_str(),
                        after(house.as_str()),
                        MOST_ON_STREET
                    ],
                )?);
            }
            if query.house().is_none() {
                known.add(self.houses_on(&street)?);
            }
            if known.is_enough() {
                break;
            }
        }
        let mut out = compared(query, known);
        if let Some(word) = query.words.iter().max_by_key(|word| word.len()) {
            out.extend(self.by_person(query, self.words_nearly(word)?)?);
        }
        Ok(out)
    }

    /// Other houses on the street that was typed: somebody got the number wrong.
    fn on_that_street(&self, query: &Query) -> Result<Vec<Candidate>> {
        let mut known = Gathered::default();
        for street in self.streets(query)? {
            known.add(self.houses_on(&street)?);
            if known.is_enough() {
                break;
            }
        }
        Ok(compared(query, known))
    }

    fn houses_on(&self, street: &str) -> Result<Vec<Known>> {
        self.addresses(
            include_str!("sql/houses_on_street.sql"),
            params![street, MOST_ON_STREET],
        )
    }

    /// The streets that may be meant.
    fn streets(&self, query: &Query) -> Result<Vec<String>> {
        if query.readings.is_empty() {
            return Ok(Vec::new());
        }
        let mut statement = self
            .conn
            .prepare_cached("SELECT street FROM known_street")?;
        let mut rows = statement.query([])?;
        let mut out = Vec::new();
        while let Some(row) = rows.next()? {
            let street = row.get_ref(0)?.as_str().map_err(rusqlite::Error::from)?;
            if query.may_be_on(street) {
                out.push(street.to_owned());
            }
        }
        Ok(out)
    }

    fn addresses(&self, sql: &str, params: impl Params) -> Result<Vec<Known>> {
        let mut statement: CachedStatement<'_> = self.conn.prepare_cached(sql)?;
        let mut rows = statement.query(params)?;
        let mut out = Vec::new();
        while let Some(row) = rows.next()? {
            out.push(Known {
                property: property(row)?,
                place: row.get(1)?,
                address: Address {
                    line: row.get(2)?,
                    town: row.get(3)?,
                    region: row.get(4)?,
                    postcode: row.get(5)?,
                },
            });
        }
        Ok(out)
    }

    fn by_phone(&self, query: &Query) -> Result<Vec<Candidate>> {
        let Some(typed) = &query.phone else {
            return Ok(Vec::new());
        };
        let backwards: String = typed.chars().rev().collect();
        let last_seven = &typed[typed.len().saturating_sub(7)..];
        let mut statement = self.conn.prepare_cached(include_str!("sql/phones.sql"))?;
        let mut rows = statement.query(params![
            typed,
            after(typed),
            last_seven,
            backwards,
            after(&backwards),
            MOST_COMPARED
        ])?;
        let mut out = Vec::new();
        while let Some(row) = rows.next()? {
            let number: String = row.get(1)?;
            let Some(agrees) = Phone::read(&number).and_then(|known| known.agrees(typed)) else {
                continue;
            };
            out.push(Candidate {
                property: property(row)?,
                why: Why::Phone { number },
                away: phone_away(agrees),
            });
        }
        Ok(out)
    }

    /// The people one of whose names has one of these words, and the rest of whose name agrees with what was typed.
    fn by_person(&self, query: &Query, words: Vec<String>) -> Result<Vec<Candidate>> {
        let mut statement = self.conn.prepare_cached(include_str!("sql/people.sql"))?;
        let mut out = Vec::new();
        for word in words {
            let mut rows = statement.query(params![word, MOST_COMPARED])?;
            while let Some(row) = rows.next()? {
                let name: String = row.get(1)?;
                let folded = address::folded_words(&name);
                if let Some(apart) = spelling::person_apart(&query.words, &folded) {
                    out.push(Candidate {
                        property: property(row)?,
                        why: Why::Person {
                            name,
                            nearly: apart > 0,
                        },
                        away: person_away(apart, query.house().is_some()),
                    });
                }
            }
        }
        Ok(out)
    }

    /// The words of names that begin like a typed word.
    fn words_beginning(&self, typed: &str) -> Result<Vec<String>> {
        let words = self
            .conn
            .prepare_cached("SELECT word FROM known_word WHERE word >= ?1 AND word < ?2 LIMIT ?3")?
            .query_map(params![typed, after(typed), MOST_COMPARED], |row| {
                row.get(0)
            })?
            .collect::<rusqlite::Result<_>>()?;
        Ok(words)
    }

    /// The words of names that are spelled nearly like a typed word.
    fn words_nearly(&self, typed: &str) -> Result<Vec<String>> {
        let most = spelling::errors_allowed(typed);
        let mut statement = self.conn.prepare_cached("SELECT word FROM known_word")?;
        let mut rows = statement.query([])?;
        let mut out = Vec::new();
        while let Some(row) = rows.next()? {
            let word = row.get_ref(0)?.as_str().map_err(rusqlite::Error::from)?;
            if most > 0 && spelling::within(typed, word, most).is_some() {
                out.push(word.to_owned());
            }
        }
        Ok(out)
    }

    /// The likeliest candidates, each property once, under the kept one where it was joined.
    fn found(&self, mut candidates: Vec<Candidate>) -> Result<Vec<Found>> {
        candidates.sort_by_key(|candidate| candidate.away);
        let mut seen = BTreeSet::new();
        let mut out = Vec::new();
        for candidate in candidates {
            if out.len() == MOST_FOUND {
                break;
            }
            if !seen.insert(candidate.property) {
                continue;
            }
            let kept = self.leads_to(candidate.property)?;
            if kept != candidate.property && !seen.insert(kept) {
                continue;
            }
            let why = self.why_under(kept, candidate.property, candidate.why)?;
            out.extend(self.card(kept)?.map(|card| Found {
                card,
                why,
                away: candidate.away,
            }));
        }
        out.sort_by_key(|found| (found.away, std::cmp::Reverse(found.card.last_visit)));
        Ok(out)
    }

    /// Where a joined property was found by its own address, that is another address of the kept one.
    fn why_under(&self, kept: PropertyId, found: PropertyId, why: Why) -> Result<Why> {
        let Why::Address { nearly } = why else {
            return Ok(why);
        };
        if kept == found {
            return Ok(why);
        }
        Ok(match self.get(found)? {
            Some(crate::Entry::Property(property)) => Why::OtherAddress {
                address: property.address,
                nearly,
            },
            _ => why,
        })
    }
}

/// A recorded address.
struct Known {
    property: PropertyId,
    place: i64,
    address: Address,
}

/// Recorded addresses, each once.
#[derive(Default)]
struct Gathered {
    seen: BTreeSet<(PropertyId, i64)>,
    known: Vec<Known>,
}

impl Gathered {
    fn add(&mut self, known: Vec<Known>) {
        for one in known {
            if self.seen.insert((one.property, one.place)) {
                self.known.push(one);
            }
        }
    }

    fn is_enough(&self) -> bool {
        self.known.len() > MOST_IN_ALL
    }
}

/// Those of the gathered addresses that may be what was typed.
fn compared(query: &Query, gathered: Gathered) -> Vec<Candidate> {
    let known = gathered.known.into_iter();
    known
        .filter_map(|known| {
            let likeness = query.likeness(&address::normalise(&known.address))?;
            let nearly = is_nearly(&likeness);
            Some(Candidate {
                property: known.property,
                away: likeness.away,
                why: match known.place {
                    0 => Why::Address { nearly },
                    _ => Why::OtherAddress {
                        address: known.address,
                        nearly,
                    },
                },
            })
        })
        .collect()
}

/// The end of the range of all texts that begin like this one.
fn after(text: &str) -> String {
    format!("{text}{}", char::MAX)
}

fn property(row: &Row) -> rusqlite::Result<PropertyId> {
    Ok(PropertyId(Uuid::from_bytes(row.get(0)?)))
}

fn is_nearly(likeness: &Likeness) -> bool {
    matches!(likeness.street, StreetAgrees::Near(letters) if letters > 0)
        || matches!(likeness.house, HouseAgrees::Other(_))
}

/// Whether two normal addresses of one house and street agree in the rest, as far as both say it.
fn agrees(one: &address::Normal, other: &address::Normal) -> bool {
    let agree = |a: &str, b: &str| a.is_empty() || b.is_empty() || a == b;
    one.unit == other.unit
        && agree(&one.town, &other.town)
        && agree(&one.region, &other.region)
        && agree(&one.postcode, &other.postcode)
}

/// Weights beside those of an address, where a house on the street that was meant weighs 0 and one letter of its spelling 5. Common practice, no source.
fn phone_away(agrees: Agrees) -> u32 {
    match agrees {
        Agrees::Whole => 0,
        Agrees::LastSeven => 1,
        Agrees::Begins => 2,
        Agrees::Ends => 3,
        Agrees::OtherArea => 8,
    }
}

fn person_away(letters: usize, with_number: bool) -> u32 {
    let letters = u32::try_from(letters).unwrap_or(u32::MAX / 8);
    let wrong = if letters == 0 { 0 } else { 2 + 2 * letters };
    1 + wrong + if with_number { 5 } else { 0 }
}

fn decimetres(metres: f64) -> u32 {
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
    let whole = (metres * 10.0).clamp(0.0, f64::from(u32::MAX)) as u32;
    whole
}

/// The spans of longitude around a place, two where it lies by the line at 180 degrees.
fn spans(here: Position, metres: f64) -> Vec<(f64, f64)> {
    let round = EARTH * here.latitude.to_radians().cos();
    let width = (metres / round.max(1.0)).to_degrees().min(180.0);
    let (west, east) = (here.longitude - width, here.longitude + width);
    let mut out = vec![(west, east)];
    if west < -180.0 {
        out.push((west + 360.0, 180.0));
    }
    if east > 180.0 {
        out.push((-180.0, east - 360.0));
    }
    out
}

/// Metres along the earth between two places, by the haversine formula on a sphere.
fn distance(one: Position, other: Position) -> f64 {
    let (a, b) = (one.latitude.to_radians(), other.latitude.to_radians());
    let up = ((b - a) / 2.0).sin().powi(2);
    let across = ((other.longitude - one.longitude).to_radians() / 2.0)
        .sin()
        .powi(2);
    2.0 * EARTH * (up + a.cos() * b.cos() * across).sqrt().min(1.0).asin()
}
