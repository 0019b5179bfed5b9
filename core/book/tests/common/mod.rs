//! A small book to try things on. Everybody and every place in it is invented.
#![allow(dead_code, reason = "each test program uses its own share of this")]

use book::{Book, BookError, Key};
use jiff::Timestamp;
use jiff::civil::{Date, date};
use std::path::{Path, PathBuf};
use tempfile::TempDir;
use trade::mark::{Condition, DefectSeen, Extent, Mark, Rung, Seen};
use trade::outcome::{Because, Reminder};
use trade::property::*;
use trade::visit::{Note, Request, Scope, Visit, Weather};
use uuid::Uuid;

pub fn id<T: From<Uuid>>(number: u128) -> T {
    Uuid::from_u128(number).into()
}

pub fn at(seconds: i64) -> Timestamp {
    Timestamp::from_second(1_700_000_000 + seconds).unwrap()
}

pub fn day() -> Date {
    date(2023, 11, 14)
}

/// A folder that goes when the test ends, and a new book in it.
pub fn shelf() -> (TempDir, Book, Key) {
    shelf_of(0xd1)
}

/// The same for another device.
pub fn shelf_of(device: u128) -> (TempDir, Book, Key) {
    let folder = tempfile::tempdir().unwrap();
    let key = Key::generate().unwrap();
    let book = Book::create(&folder.path().join("book"), &key, id(device), at(0)).unwrap();
    (folder, book, key)
}

pub fn property(number: u128) -> Property {
    Property {
        id: id(number),
        address: Address {
            line: format!("{} Larkspur Hollow Rd", 100 + number),
            town: "Tamarack Bend".to_owned(),
            region: "MN".to_owned(),
            postcode: "55000".to_owned(),
        },
        also: Vec::new(),
        position: Some(Position {
            latitude: 45.0,
            longitude: -93.0,
        }),
        people: vec![Person {
            id: id(0x9_0000 + number),
            name: "Winifred Quillfeather".to_owned(),
            role: Role::Owner,
            phones: vec!["(320) 555-0142".to_owned()],
            email: Some("quillfeather@example.com".to_owned()),
        }],
        built: Some(1964),
        dangers: vec!["brindled dog".to_owned()],
        since: day(),
    }
}

pub fn house(of: &Property) -> Structure {
    Structure {
        id: id(of.id.0.as_u128() + 0x1000),
        property: of.id,
        kind: StructureKind::House,
        name: None,
        gone: None,
    }
}

pub fn part(on: &Structure) -> Part {
    Part {
        id: id(on.id.0.as_u128() + 0x1000),
        structure: on.id,
        slope: None,
        kind: "pipe-boot".into(),
        which: Some("nearest the birdbath".to_owned()),
        number: 1,
        at: None,
    }
}

pub fn visit(to: &Property, number: u128) -> Visit {
    Visit {
        id: id(number),
        property: to.id,
        on: day(),
        by: "Osric".to_owned(),
        request: Request {
            words: "drip over the harmonium".to_owned(),
            ..Request::default()
        },
        scope: Scope::WholeRoof,
        structures: vec![house(to).id],
        weather: Weather::default(),
        safety: Vec::new(),
        reached: Vec::new(),
        ladder: None,
        closed: None,
    }
}

pub fn mark(on: &Visit, of: &Part, number: u128, rung: Rung) -> Mark {
    Mark {
        id: id(number),
        visit: on.id,
        part: of.id,
        at: at(60),
        condition: Condition::Seen {
            rung,
            seen: Seen::Near,
        },
        defects: vec![DefectSeen {
            defect: "boot-split".into(),
            extent: Extent::Spot,
        }],
        advised: Vec::new(),
        answers: Vec::new(),
        measures: Vec::new(),
        photos: Vec::new(),
        words: "crazed rubber collar".to_owned(),
        corrected: None,
    }
}

pub fn note(on: &Visit, number: u128) -> Note {
    Note {
        id: id(number),
        visit: on.id,
        at: at(70),
        words: "ask about the pergola".to_owned(),
    }
}

pub fn reminder(to: &Property, number: u128, on: Date) -> Reminder {
    Reminder {
        id: id(number),
        property: to.id,
        visit: None,
        on,
        because: Because::AskForAnswer,
        words: "ring before supper".to_owned(),
        done: None,
    }
}

/// One property with a house, a part, a visit and a mark.
pub fn record_one(book: &mut Book, number: u128) -> (Property, Visit, Mark) {
    let property = property(number);
    let house = house(&property);
    let part = part(&house);
    let visit = visit(&property, number + 0x10_0000);
    let mark = mark(&visit, &part, number + 0x20_0000, Rung::Failing);
    book.write(at(60), |tx| {
        tx.record(property.clone())?;
        tx.record(house)?;
        tx.record(part)?;
        tx.record(visit.clone())?;
        tx.record(mark.clone())?;
        Ok::<_, BookError>(())
    })
    .unwrap();
    (property, visit, mark)
}

/// A small picture, another for each seed.
pub fn jpeg(seed: u8) -> Vec<u8> {
    let picture = image::RgbImage::from_fn(400, 300, |x, y| {
        image::Rgb([
            seed,
            u8::try_from(x % 256).unwrap(),
            u8::try_from(y % 256).unwrap(),
        ])
    });
    let mut out = std::io::Cursor::new(Vec::new());
    picture
        .write_to(&mut out, image::ImageFormat::Jpeg)
        .unwrap();
    out.into_inner()
}

/// Every file below a folder.
pub fn files(folder: &Path) -> Vec<PathBuf> {
    let mut out = Vec::new();
    let Ok(entries) = std::fs::read_dir(folder) else {
        return out;
    };
    for entry in entries {
        let path = entry.unwrap().path();
        if path.is_dir() {
            out.extend(files(&path));
        } else {
            out.push(path);
        }
    }
    out.sort();
    out
}
