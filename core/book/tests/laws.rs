//! The law of the projection: the tables depend only on which lines of ink there are, never on the order in which they arrived.
#![allow(clippy::unwrap_used, reason = "a test fails where it must")]

mod common;

use book::{Book, BookError, Entry, Key, Line, Subject};
use common::*;
use proptest::prelude::*;
use tempfile::TempDir;
use trade::ids::*;
use trade::mark::Rung;
use trade::worksheet::Worksheet;

/// One thing that somebody does on one of the devices.
#[derive(Clone, Debug)]
enum Deed {
    Property { number: u128 },
    Visit { number: u128 },
    Mark { number: u128, rung: usize },
    Remind { number: u128 },
    Count { number: u128 },
    Withdraw { number: u128 },
    WithdrawMark { number: u128 },
    Undo { number: u128 },
    Join { kept: u128, other: u128 },
    Part { other: u128 },
    Erase { number: u128 },
    Policy { limit: u8 },
    Hear,
}

fn deed() -> impl Strategy<Value = Deed> {
    let number = 1_u128..4;
    prop_oneof![
        3 => number.clone().prop_map(|number| Deed::Property { number }),
        3 => number.clone().prop_map(|number| Deed::Visit { number }),
        5 => (number.clone(), 0_usize..4).prop_map(|(number, rung)| Deed::Mark { number, rung }),
        1 => number.clone().prop_map(|number| Deed::Remind { number }),
        1 => number.clone().prop_map(|number| Deed::Count { number }),
        1 => number.clone().prop_map(|number| Deed::Withdraw { number }),
        2 => number.clone().prop_map(|number| Deed::WithdrawMark { number }),
        3 => number.clone().prop_map(|number| Deed::Undo { number }),
        1 => (number.clone(), number.clone()).prop_map(|(kept, other)| Deed::Join { kept, other }),
        1 => number.clone().prop_map(|other| Deed::Part { other }),
        1 => number.prop_map(|number| Deed::Erase { number }),
        1 => (0_u8..9).prop_map(|limit| Deed::Policy { limit }),
        3 => Just(Deed::Hear),
    ]
}

struct Device {
    _folder: TempDir,
    book: Book,
}

fn device(number: u128) -> Device {
    let folder = tempfile::tempdir().unwrap();
    let key = Key::generate().unwrap();
    let book = Book::create(&folder.path().join("book"), &key, id(number), at(0)).unwrap();
    Device {
        _folder: folder,
        book,
    }
}

fn every_line(book: &Book) -> Vec<Line> {
    let mut lines = book.lines_of(None).unwrap();
    for property in book.ever_recorded().unwrap() {
        lines.extend(book.lines_of(Some(property)).unwrap());
    }
    lines.sort_by_key(|line| line.id);
    lines
}

fn take_in(book: &mut Book, lines: &[Line]) {
    book.write(at(1_000_000), |tx| {
        for line in lines {
            tx.take_in(line)?;
        }
        Ok::<_, BookError>(())
    })
    .unwrap();
}

/// Does it, as far as the book lets it: what it refuses leaves nothing.
fn act(book: &mut Book, seconds: i64, deed: &Deed) {
    let now = at(seconds);
    let told = |number: u128| common::visit(&property(number), number + 0x10_0000);
    let _: Result<(), BookError> = book.write(now, |tx| {
        match deed {
            Deed::Property { number } => {
                let mut property = property(*number);
                property.dangers.push(format!("told at {seconds}"));
                let house = house(&property);
                tx.record(property)?;
                tx.record(house.clone())?;
                tx.record(part(&house))?;
            }
            Deed::Visit { number } => {
                let mut visit = told(*number);
                visit.by = format!("device at {seconds}");
                tx.record(visit)?;
            }
            Deed::Mark { number, rung } => {
                let part = part(&house(&property(*number)));
                let mut mark = mark(&told(*number), &part, number + 0x20_0000, Rung::ALL[*rung]);
                mark.words = format!("seen at {seconds}");
                tx.record(mark)?;
            }
            Deed::Remind { number } => {
                tx.record(reminder(&property(*number), number + 0x30_0000, day()))?;
            }
            Deed::Count { number } => {
                let house = house(&property(*number));
                let sheet = Worksheet::blank(id(number + 0x40_0000), house.id, now);
                tx.record(sheet)?;
            }
            Deed::Withdraw { number } => {
                tx.withdraw(told(*number).id)?;
            }
            Deed::WithdrawMark { number } => {
                tx.withdraw(Subject::Mark(id(number + 0x20_0000)))?;
            }
            Deed::Undo { number } => {
                if let Some(line) = tx.last_line(told(*number).id)? {
                    tx.undo(line.id)?;
                }
            }
            Deed::Join { kept, other } => {
                let (kept, other) = (id(*kept), id(*other));
                tx.record(Entry::Joined { kept, other })?;
            }
            Deed::Part { other } => {
                tx.record(Entry::Parted { other: id(*other) })?;
            }
            Deed::Erase { number } => {
                let property = id(*number);
                tx.record(Entry::Erased { property })?;
            }
            Deed::Policy { limit } => {
                let mut policy = tx.policy()?;
                policy.patch_limit = *limit;
                tx.record(Entry::Policy(policy))?;
            }
            Deed::Hear => {}
        }
        Ok(())
    });
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 48, max_shrink_iters: 200, ..ProptestConfig::default() })]

    #[test]
    fn the_tables_depend_only_on_which_lines_there_are(
        deeds in prop::collection::vec((0_usize..2, 0_i64..400, deed()), 1..28),
        order in any::<prop::sample::Index>(),
        seed in any::<u64>(),
    ) {
        let mut devices = [device(1), device(2)];
        for (which, seconds, deed) in &deeds {
            if matches!(deed, Deed::Hear) {
                let lines = every_line(&devices[1 - which].book);
                take_in(&mut devices[*which].book, &lines);
            } else {
                act(&mut devices[*which].book, *seconds, deed);
            }
        }
        let [one, two] = &devices;
        let mut lines = every_line(&one.book);
        lines.extend(every_line(&two.book));

        let mut straight = device(3);
        take_in(&mut straight.book, &lines);
        let mut shuffled = device(4);
        shuffle(&mut lines, seed);
        let (head, tail) = lines.split_at(order.index(lines.len() + 1));
        take_in(&mut shuffled.book, tail);
        take_in(&mut shuffled.book, head);
        take_in(&mut shuffled.book, tail);

        prop_assert_eq!(straight.book.digest().unwrap(), shuffled.book.digest().unwrap());
        for number in 1..4 {
            let property: PropertyId = id(number);
            prop_assert_eq!(
                straight.book.history(property).unwrap(),
                shuffled.book.history(property).unwrap()
            );
        }
        for device in devices.iter_mut().chain([&mut straight, &mut shuffled]) {
            prop_assert_eq!(device.book.rebuild().unwrap().differences, []);
        }
    }
}

/// A fixed shuffle (Fisher–Yates over a linear congruential generator), so that a failing case stays the same.
fn shuffle(lines: &mut [Line], seed: u64) {
    let mut state = seed;
    for last in (1..lines.len()).rev() {
        state = state
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        let other = usize::try_from(state >> 33).unwrap() % (last + 1);
        lines.swap(last, other);
    }
}

#[test]
fn of_two_assessments_made_apart_the_worse_stands_until_a_person_settles_it() {
    let (mut here, mut there) = (device(1), device(2));
    let (property, visit, first) = record_one(&mut here.book, 1);
    take_in(&mut there.book, &every_line(&here.book));
    let part = part(&house(&property));
    let said = |rung, words: &str| {
        let mut said = mark(&visit, &part, first.id.0.as_u128(), rung);
        said.words = words.to_owned();
        said
    };
    let (worse, better) = (said(Rung::Failed, "gone"), said(Rung::Ageing, "will do"));
    here.book
        .write(at(200), |tx| tx.record(worse.clone()))
        .unwrap();
    there
        .book
        .write(at(300), |tx| tx.record(better.clone()))
        .unwrap();
    take_in(&mut here.book, &every_line(&there.book));
    take_in(&mut there.book, &every_line(&here.book));
    for device in [&mut here, &mut there] {
        assert_eq!(
            device.book.history(property.id).unwrap().unwrap().marks,
            *std::slice::from_ref(&worse)
        );
        assert_eq!(
            device.book.lines_about(first.id).unwrap().len(),
            3,
            "both are kept"
        );
    }
    let settled = said(Rung::Failing, "looked again together");
    here.book
        .write(at(400), |tx| tx.record(settled.clone()))
        .unwrap();
    take_in(&mut there.book, &every_line(&here.book));
    let history = there.book.history(property.id).unwrap().unwrap();
    assert_eq!(history.marks, [settled]);
}
