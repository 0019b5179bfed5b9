//! Finding a property again.
#![allow(clippy::unwrap_used, reason = "a test fails where it must")]

mod common;

use book::{Book, Entry, Found, Why};
use common::*;
use trade::property::{Address, Person, Position, Property, Role};

fn place(number: u128, line: &str, owner: &str, phone: &str) -> Property {
    Property {
        address: Address {
            line: line.to_owned(),
            ..property(number).address
        },
        people: vec![Person {
            id: id(0x9000 + number),
            name: owner.to_owned(),
            role: Role::Owner,
            phones: vec![phone.to_owned()],
            email: None,
        }],
        position: Some(Position {
            latitude: 45.0 + 0.001 * f64::from(u32::try_from(number).unwrap()),
            longitude: -93.0,
        }),
        ..property(number)
    }
}

fn town() -> (tempfile::TempDir, Book) {
    let (folder, mut book, _) = shelf();
    let mut corner = place(
        1,
        "12 Larkspur Hollow Road",
        "Winifred Quillfeather",
        "320-555-0101",
    );
    corner.also = vec![Address {
        line: "3 Thimble Ct".to_owned(),
        ..corner.address.clone()
    }];
    let all = [
        corner,
        place(
            2,
            "14 Larkspur Hollow Rd",
            "Ambrose Tunnicliffe",
            "320-555-0102",
        ),
        place(
            3,
            "12 Marrowbone Ave N",
            "Ottoline Fenwick-Rae",
            "320-555-0103",
        ),
        place(4, "120 Marrowbone Ave N", "José Calderón", "952-555-0104"),
        place(
            5,
            "7 Saint Crispin St Apt 2",
            "Bram Ostrander",
            "(320) 555-0105 x2",
        ),
    ];
    book.write(at(1), |tx| {
        for property in all {
            tx.record(property)?;
        }
        Ok::<_, book::BookError>(())
    })
    .unwrap();
    (folder, book)
}

fn numbers(found: &[Found]) -> Vec<u128> {
    found
        .iter()
        .map(|found| found.card.property.0.as_u128())
        .collect()
}

#[test]
fn the_likeliest_comes_first_however_it_is_spelled() {
    let (_folder, book) = town();
    let cases: [(&str, u128); 20] = [
        ("12 Larkspur Hollow Rd", 1),
        ("12 LARKSPUR HOLLOW ROAD, Tamarack Bend MN 55000", 1),
        ("12 larkspur", 1),
        ("12 Larkspr Hollow", 1),
        ("12 larkspr", 1),
        ("14 Lakrspur Hollow", 2),
        ("3 thimble court", 1),
        ("12 marrowbone", 3),
        ("12 N Marrowbone Avenue", 3),
        ("120 marow bone", 4),
        ("7 st crispin", 5),
        ("7 saint crispin street #2", 5),
        ("Quillfeather", 1),
        ("quilfeather", 1),
        ("Ambrose", 2),
        ("calderon", 4),
        ("fenwick rae", 3),
        ("555-0104", 4),
        ("(320) 555-0105", 5),
        ("0102", 2),
    ];
    for (typed, number) in cases {
        let found = book.find(typed).unwrap();
        assert_eq!(
            numbers(&found).first(),
            Some(&number),
            "{typed}: {found:#?}"
        );
    }
}

#[test]
fn it_says_why() {
    let (_folder, book) = town();
    let why = |typed: &str| book.find(typed).unwrap().swap_remove(0).why;
    assert_eq!(why("12 Larkspur Hollow Rd"), Why::Address { nearly: false });
    assert_eq!(why("12 Larkspr Hollow Rd"), Why::Address { nearly: true });
    assert!(matches!(
        why("3 Thimble Ct"),
        Why::OtherAddress { address, nearly: false } if address.line == "3 Thimble Ct"
    ));
    assert_eq!(
        why("Tunnicliff"),
        Why::Person {
            name: "Ambrose Tunnicliffe".to_owned(),
            nearly: false
        }
    );
    assert_eq!(
        why("Tunicliffe"),
        Why::Person {
            name: "Ambrose Tunnicliffe".to_owned(),
            nearly: true
        }
    );
    assert_eq!(
        why("3205550105"),
        Why::Phone {
            number: "(320) 555-0105 x2".to_owned()
        }
    );
}

#[test]
fn what_nobody_recorded_is_not_found() {
    let (_folder, book) = town();
    for typed in [
        "",
        "  ",
        "zzyzx",
        "99999 Nowhere Blvd",
        "612-555-9999",
        "'; DROP TABLE record; --",
    ] {
        assert_eq!(numbers(&book.find(typed).unwrap()), [0_u128; 0], "{typed}");
    }
}

#[test]
fn all_of_a_street_by_its_name() {
    let (_folder, book) = town();
    let mut found = numbers(&book.find("larkspur hollow").unwrap());
    found.sort_unstable();
    assert_eq!(found, [1, 2]);
}

#[test]
fn near_is_by_distance() {
    let (_folder, book) = town();
    let here = Position {
        latitude: 45.0021,
        longitude: -93.0,
    };
    let found = book.near(here, 110.0).unwrap();
    assert_eq!(numbers(&found), [2, 3]);
    // A thousandth of a degree of latitude is 111.2 m on this sphere.
    assert!(matches!(found[0].why, Why::Position { metres } if (metres - 11.1).abs() < 0.2));
    assert!(matches!(found[1].why, Why::Position { metres } if (metres - 100.1).abs() < 0.2));
    assert!(book.near(here, 5.0).unwrap().is_empty());
}

#[test]
fn near_reaches_over_the_line_at_180_degrees() {
    let (_folder, mut book, _) = shelf();
    let mut east = place(1, "1 Dateline Rd", "A", "");
    east.position = Some(Position {
        latitude: -16.8,
        longitude: 179.9999,
    });
    book.write(at(1), |tx| tx.record(east)).unwrap();
    let here = Position {
        latitude: -16.8,
        longitude: -179.9999,
    };
    assert_eq!(numbers(&book.near(here, 50.0).unwrap()), [1]);
}

#[test]
fn a_joined_property_is_found_by_both_its_doors_once() {
    let (_folder, mut book) = town();
    let (kept, other) = (id(1), id(2));
    book.write(at(5), |tx| tx.record(Entry::Joined { kept, other }))
        .unwrap();
    let found = book.find("14 Larkspur Hollow").unwrap();
    assert_eq!(numbers(&found)[0], 1);
    assert!(
        matches!(&found[0].why, Why::OtherAddress { address, .. } if address.line.starts_with("14"))
    );
    assert_eq!(numbers(&book.find("larkspur hollow").unwrap()), [1]);
}

#[test]
fn a_corrected_or_withdrawn_address_is_found_no_more() {
    let (_folder, mut book) = town();
    let mut moved = place(
        2,
        "16 Larkspur Hollow Rd",
        "Ambrose Tunnicliffe",
        "320-555-0102",
    );
    moved.people.clear();
    book.write(at(5), |tx| {
        tx.record(moved)?;
        tx.withdraw(trade::ids::PropertyId(uuid::Uuid::from_u128(4)))
    })
    .unwrap();
    assert_eq!(
        book.at_address(&place(2, "14 Larkspur Hollow Rd", "", "").address)
            .unwrap(),
        []
    );
    assert!(book.find("Tunnicliffe").unwrap().is_empty());
    assert!(book.find("calderon").unwrap().is_empty());
    assert_eq!(numbers(&book.find("16 Larkspur Hollow").unwrap())[0], 2);
}

#[test]
fn at_an_address_means_that_address_alone() {
    let (_folder, book) = town();
    let with = |line: &str| place(0, line, "", "").address;
    assert_eq!(
        book.at_address(&with("12 larkspur hollow rd.")).unwrap(),
        [id(1)]
    );
    assert_eq!(book.at_address(&with("3 Thimble Court")).unwrap(), [id(1)]);
    assert!(
        book.at_address(&with("12 Larkspr Hollow Rd"))
            .unwrap()
            .is_empty()
    );
    assert!(
        book.at_address(&with("7 Saint Crispin St Apt 3"))
            .unwrap()
            .is_empty()
    );
    assert!(book.at_address(&Address::default()).unwrap().is_empty());
    let no_town = Address {
        line: "12 Larkspur Hollow Rd".to_owned(),
        ..Address::default()
    };
    assert_eq!(book.at_address(&no_town).unwrap(), [id(1)]);
    let elsewhere = Address {
        town: "Quince Falls".to_owned(),
        ..with("12 Larkspur Hollow Rd")
    };
    assert!(book.at_address(&elsewhere).unwrap().is_empty());
}
