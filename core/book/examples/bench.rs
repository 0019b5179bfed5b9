//! How long a search takes in a book of 100,000 generated properties, beside the same question in hand-written SQL over the same addresses
//! in a plain SQLite file without encryption or ranking.
//!
//! `cargo run -p book --example bench [number of properties]`

use book::{Book, BookError, Key};
use jiff::Timestamp;
use jiff::civil::date;
use rusqlite::{Connection, params};
use std::collections::BTreeSet;
use std::error::Error;
use std::time::{Duration, Instant};
use trade::ids::{DeviceId, PersonId, PropertyId};
use trade::property::{Address, Person, Position, Property, Role};
use uuid::Uuid;

const IN_ONE_ACT: usize = 2_000;
const ASKED: usize = 300;

const FIRST: [&str; 40] = [
    "Alder", "Amber", "Ash", "Birch", "Bittern", "Bramble", "Brook", "Cedar", "Clover", "Cobble",
    "Copper", "Curlew", "Elder", "Fern", "Flint", "Gorse", "Hazel", "Heron", "Holly", "Juniper",
    "Kestrel", "Larch", "Linden", "Maple", "Marsh", "Meadow", "Mill", "Oak", "Orchard", "Pine",
    "Plover", "Quarry", "Reed", "Rowan", "Sorrel", "Spruce", "Thistle", "Tern", "Willow", "Wren",
];
const SECOND: [&str; 40] = [
    "bank", "bend", "bluff", "bottom", "brook", "burn", "cliff", "combe", "croft", "dale", "dell",
    "down", "fall", "field", "ford", "gate", "glade", "grove", "hill", "holm", "hurst", "knoll",
    "land", "lea", "ley", "mead", "mere", "moor", "mount", "ridge", "rise", "shaw", "side",
    "spring", "stone", "thorpe", "vale", "view", "wick", "wood",
];
const SUFFIX: [&str; 6] = ["St", "Ave", "Rd", "Ln", "Ct", "Blvd"];
const GIVEN: [&str; 25] = [
    "Ambrose", "Beatrix", "Caspian", "Dorothea", "Edmund", "Fenella", "Gideon", "Hester", "Ivo",
    "Jemima", "Kit", "Lettice", "Merrick", "Nerys", "Osric", "Petra", "Quentin", "Rosalind",
    "Silas", "Tabitha", "Ursula", "Vaughan", "Winifred", "Xanthe", "Yorick",
];

/// Numbers that look random and are the same each time (a linear congruential generator).
struct Numbers(u64);

impl Numbers {
    fn below(&mut self, most: usize) -> usize {
        self.0 = self
            .0
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        usize::try_from((self.0 >> 33) % most as u64).unwrap_or_default()
    }

    fn of<'a>(&mut self, list: &[&'a str]) -> &'a str {
        list[self.below(list.len())]
    }
}

fn property(number: usize, numbers: &mut Numbers) -> Property {
    let street = format!("{}{}", numbers.of(&FIRST), numbers.of(&SECOND));
    let surname = format!("{}{}son", numbers.of(&FIRST), numbers.of(&SECOND));
    let house = numbers.below(1_800) + 1;
    #[allow(clippy::cast_precision_loss)]
    let degrees = |thousandths: usize| thousandths as f64 / 1e5;
    Property {
        id: PropertyId(Uuid::from_u128(number as u128 + 1)),
        address: Address {
            line: format!("{house} {street} {}", numbers.of(&SUFFIX)),
            town: "Tamarack Bend".to_owned(),
            region: "MN".to_owned(),
            postcode: "55000".to_owned(),
        },
        also: Vec::new(),
        position: Some(Position {
            latitude: 45.0 + degrees(numbers.below(20_000)),
            longitude: -93.0 - degrees(numbers.below(30_000)),
        }),
        people: vec![Person {
            id: PersonId(Uuid::from_u128(number as u128 + 1)),
            name: format!("{} {surname}", numbers.of(&GIVEN)),
            role: Role::Owner,
            phones: vec![format!(
                "({}) 555-{:04}",
                200 + numbers.below(700),
                numbers.below(10_000)
            )],
            email: None,
        }],
        built: None,
        dangers: Vec::new(),
        since: date(2023, 11, 14),
    }
}

/// The text with two neighbouring letters of its longest word swapped.
fn misspelled(text: &str, numbers: &mut Numbers) -> String {
    let word = text
        .split(' ')
        .max_by_key(|word| word.len())
        .unwrap_or(text);
    let mut letters: Vec<char> = word.chars().collect();
    let at = 1 + numbers.below(letters.len().saturating_sub(3).max(1));
    letters.swap(at, at + 1);
    text.replace(word, &letters.into_iter().collect::<String>())
}

fn main() -> Result<(), Box<dyn Error>> {
    let count = match std::env::args().nth(1) {
        Some(text) => text.parse()?,
        None => 100_000,
    };
    let folder = tempfile::tempdir()?;
    let mut numbers = Numbers(1);
    let all: Vec<Property> = (0..count)
        .map(|number| property(number, &mut numbers))
        .collect();
    let begun = Instant::now();
    let book = fill_book(&folder.path().join("book"), &all)?;
    println!(
        "{count} properties recorded in {:.1} s, on {} streets",
        begun.elapsed().as_secs_f64(),
        all.iter().map(street).collect::<BTreeSet<_>>().len()
    );
    let plain = fill_plain(&folder.path().join("plain.db"), &all)?;
    ask(&book, &plain, &all, &mut numbers)
}

fn street(property: &Property) -> String {
    let line = &property.address.line;
    line.split_once(' ')
        .map_or("", |(_, street)| street)
        .to_uppercase()
}

fn fill_book(folder: &std::path::Path, all: &[Property]) -> Result<Book, Box<dyn Error>> {
    let device = DeviceId(Uuid::from_u128(1));
    let mut book = Book::create(folder, &Key::generate()?, device, Timestamp::UNIX_EPOCH)?;
    for act in all.chunks(IN_ONE_ACT) {
        book.write(Timestamp::UNIX_EPOCH, |tx| {
            for property in act {
                tx.record(property.clone())?;
            }
            Ok::<_, BookError>(())
        })?;
    }
    Ok(book)
}

fn fill_plain(path: &std::path::Path, all: &[Property]) -> Result<Connection, Box<dyn Error>> {
    let mut plain = Connection::open(path)?;
    plain.execute_batch(
        "CREATE TABLE property (id INTEGER PRIMARY KEY, line TEXT, street TEXT, house INTEGER, name TEXT, phone TEXT, latitude REAL, longitude REAL);
         CREATE INDEX by_line ON property (line);
         CREATE INDEX by_street ON property (street, house);
         CREATE INDEX by_name ON property (name);
         CREATE INDEX by_phone ON property (phone);
         CREATE INDEX by_latitude ON property (latitude, longitude);",
    )?;
    let transaction = plain.transaction()?;
    for property in all {
        let (house, _) = property.address.line.split_once(' ').unwrap_or_default();
        let person = &property.people[0];
        let position = property
            .position
            .ok_or("a generated property stands somewhere")?;
        transaction
            .prepare_cached("INSERT INTO property VALUES (NULL, ?1, ?2, ?3, ?4, ?5, ?6, ?7)")?
            .execute(params![
                property.address.line.to_uppercase(),
                street(property),
                house.parse::<i64>()?,
                person.name.to_uppercase(),
                person.phones[0],
                position.latitude,
                position.longitude,
            ])?;
    }
    transaction.commit()?;
    Ok(plain)
}

/// One kind of question: how it is typed, and the hand-written SQL beside it.
struct Question {
    name: &'static str,
    typed: fn(&Property, &mut Numbers) -> String,
    sql: &'static str,
    bound: fn(&Property) -> Vec<String>,
}

const QUESTIONS: [Question; 7] = [
    Question {
        name: "whole address",
        typed: |property, _| format!("{}, Tamarack Bend MN 55000", property.address.line),
        sql: "SELECT id FROM property WHERE line = ?1",
        bound: |property| vec![property.address.line.to_uppercase()],
    },
    Question {
        name: "part of an address",
        typed: |property, _| {
            let line = &property.address.line;
            line[..line.len() - 6].to_lowercase()
        },
        sql: "SELECT id FROM property WHERE line >= ?1 AND line < ?1 || 'ZZZZ' ORDER BY line LIMIT 25",
        bound: |property| {
            let line = property.address.line.to_uppercase();
            vec![line[..line.len() - 6].to_owned()]
        },
    },
    Question {
        name: "address, misspelled",
        typed: |property, numbers| misspelled(&property.address.line, numbers),
        sql: "SELECT id FROM property WHERE line LIKE ?1 || '%' LIMIT 25",
        bound: |property| vec![property.address.line.to_uppercase()[..6].to_owned()],
    },
    Question {
        name: "street alone",
        typed: |property, _| street(property).to_lowercase(),
        sql: "SELECT id FROM property WHERE street = ?1 ORDER BY house LIMIT 25",
        bound: |property| vec![street(property)],
    },
    Question {
        name: "owner",
        typed: |property, _| property.people[0].name.clone(),
        sql: "SELECT id FROM property WHERE name = ?1",
        bound: |property| vec![property.people[0].name.to_uppercase()],
    },
    Question {
        name: "owner, misspelled",
        typed: |property, numbers| misspelled(&property.people[0].name, numbers),
        sql: "SELECT id FROM property WHERE name LIKE '%' || ?1 || '%' LIMIT 25",
        bound: |property| vec![property.people[0].name.to_uppercase()[..6].to_owned()],
    },
    Question {
        name: "telephone",
        typed: |property, _| property.people[0].phones[0].clone(),
        sql: "SELECT id FROM property WHERE phone = ?1",
        bound: |property| vec![property.people[0].phones[0].clone()],
    },
];

fn ask(
    book: &Book,
    plain: &Connection,
    all: &[Property],
    numbers: &mut Numbers,
) -> Result<(), Box<dyn Error>> {
    println!("milliseconds            find p50    p99   found | SQL p50    p99");
    for question in QUESTIONS {
        let (mut find, mut sql, mut found) = (Vec::new(), Vec::new(), 0);
        for _ in 0..ASKED {
            let meant = &all[numbers.below(all.len())];
            let typed = (question.typed)(meant, numbers);
            let begun = Instant::now();
            let answer = book.find(&typed)?;
            find.push(begun.elapsed());
            found += usize::from(answer.iter().any(|found| found.card.property == meant.id));
            let begun = Instant::now();
            let mut statement = plain.prepare_cached(question.sql)?;
            let bound = (question.bound)(meant);
            let mut rows = statement.query(rusqlite::params_from_iter(bound))?;
            while rows.next()?.is_some() {}
            sql.push(begun.elapsed());
        }
        print_row(question.name, find, found, sql);
    }
    ask_near(book, plain, all, numbers)
}

fn ask_near(
    book: &Book,
    plain: &Connection,
    all: &[Property],
    numbers: &mut Numbers,
) -> Result<(), Box<dyn Error>> {
    let (mut find, mut sql, mut found) = (Vec::new(), Vec::new(), 0);
    for _ in 0..ASKED {
        let meant = &all[numbers.below(all.len())];
        let here = meant
            .position
            .ok_or("a generated property stands somewhere")?;
        let begun = Instant::now();
        let answer = book.near(here, 100.0)?;
        find.push(begun.elapsed());
        found += usize::from(answer.iter().any(|found| found.card.property == meant.id));
        let begun = Instant::now();
        let mut statement = plain.prepare_cached(
            "SELECT id FROM property WHERE latitude BETWEEN ?1 - 0.0009 AND ?1 + 0.0009 AND longitude BETWEEN ?2 - 0.0013 AND ?2 + 0.0013",
        )?;
        let mut rows = statement.query(params![here.latitude, here.longitude])?;
        while rows.next()?.is_some() {}
        sql.push(begun.elapsed());
    }
    print_row("within 100 m", find, found, sql);
    Ok(())
}

fn print_row(name: &str, mut find: Vec<Duration>, found: usize, mut sql: Vec<Duration>) {
    let spans = |spans: &mut Vec<Duration>| {
        spans.sort();
        let at = |share: usize| spans[(spans.len() - 1) * share / 100].as_secs_f64() * 1e3;
        (at(50), at(99))
    };
    let ((find50, find99), (sql50, sql99)) = (spans(&mut find), spans(&mut sql));
    println!(
        "{name:<22} {find50:>8.2} {find99:>7.2} {found:>4}/{ASKED} |{sql50:>8.2} {sql99:>6.2}"
    );
}
