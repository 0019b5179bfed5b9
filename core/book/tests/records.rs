//! Recording and reading back: what counts, what was taken back, what was joined.
#![allow(clippy::unwrap_used, reason = "a test fails where it must")]

mod common;

use book::{Book, BookError, Entry, Subject};
use common::*;
use trade::ids::*;
use trade::mark::Rung;

#[test]
fn a_record_comes_back_as_it_was_also_after_closing() {
    let (folder, mut book, key) = shelf();
    let (property, visit, mark) = record_one(&mut book, 1);
    let before = book.history(property.id).unwrap().unwrap();
    drop(book);
    let book = Book::open(&folder.path().join("book"), &key).unwrap();
    let after = book.history(property.id).unwrap().unwrap();
    assert_eq!(before, after);
    assert_eq!(after.property, property);
    assert_eq!(after.visits, [visit]);
    assert_eq!(after.marks, [mark]);
    assert_eq!(after.parts.len(), 1);
}

#[test]
fn nothing_is_known_of_a_property_nobody_recorded() {
    let (_folder, book, _) = shelf();
    assert_eq!(book.history(id(7)).unwrap(), None);
    assert_eq!(book.card(id(7)).unwrap(), None);
}

#[test]
fn a_later_line_takes_the_place_of_the_earlier_and_both_stay() {
    let (_folder, mut book, _) = shelf();
    let (property, _, mut mark) = record_one(&mut book, 1);
    mark.words = "collar gone".to_owned();
    book.write(at(90), |tx| tx.record(mark.clone())).unwrap();
    assert_eq!(
        book.history(property.id).unwrap().unwrap().marks,
        *std::slice::from_ref(&mark)
    );
    let lines = book.lines_about(mark.id).unwrap();
    assert_eq!(lines.len(), 2);
    assert_eq!(lines[1].supersedes, [lines[0].id]);
}

#[test]
fn an_act_that_fails_leaves_nothing() {
    let (_folder, mut book, _) = shelf();
    let wrong = book.write(at(5), |tx| {
        tx.record(property(3))?;
        tx.record(visit(&property(4), 9))
    });
    assert!(matches!(
        wrong,
        Err(BookError::Unknown { what: "property" })
    ));
    assert_eq!(book.history(id(3)).unwrap(), None);
    assert!(book.ever_recorded().unwrap().is_empty());
}

#[test]
fn what_belongs_to_nothing_known_is_refused() {
    let (_folder, mut book, _) = shelf();
    let (property, visit, _) = record_one(&mut book, 1);
    let stray = mark(
        &common::visit(&property, 0x777),
        &part(&house(&property)),
        5,
        Rung::Sound,
    );
    let refused = book.write(at(90), |tx| tx.record(stray));
    assert!(matches!(refused, Err(BookError::Unknown { what: "visit" })));
    let refused = book.write(at(90), |tx| tx.withdraw(Subject::Note(id(1))));
    assert!(matches!(refused, Err(BookError::Unknown { what: "note" })));
    book.write(at(90), |tx| tx.record(note(&visit, 6))).unwrap();
}

#[test]
fn what_is_withdrawn_no_longer_counts_with_all_that_hangs_on_it() {
    let (_folder, mut book, _) = shelf();
    let (property, visit, mark) = record_one(&mut book, 1);
    book.write(at(90), |tx| tx.withdraw(visit.id)).unwrap();
    let history = book.history(property.id).unwrap().unwrap();
    assert!(history.visits.is_empty() && history.marks.is_empty());
    assert_eq!(book.lines_about(mark.id).unwrap().len(), 1);
}

#[test]
fn undoing_goes_back_step_by_step() {
    let (_folder, mut book, _) = shelf();
    let (property, visit, mark) = record_one(&mut book, 1);
    let words = |book: &Book| -> Vec<String> {
        let history = book.history(property.id).unwrap().unwrap();
        history.marks.into_iter().map(|mark| mark.words).collect()
    };
    for (seconds, said) in [(90, "second"), (91, "third")] {
        let mut mark = mark.clone();
        mark.words = said.to_owned();
        book.write(at(seconds), |tx| tx.record(mark)).unwrap();
    }
    for left in [Some("second"), Some("crazed rubber collar")] {
        let last = book.last_line(visit.id).unwrap().unwrap();
        book.write(at(100), |tx| tx.undo(last.id)).unwrap();
        assert_eq!(
            words(&book),
            left.map(str::to_owned).into_iter().collect::<Vec<_>>()
        );
    }
    let last = book.last_line(visit.id).unwrap().unwrap();
    assert_eq!(last.subject, Subject::Mark(mark.id));
    let act = book.lines_of_act(last.act).unwrap();
    assert_eq!(act.len(), 5, "property, house, part, visit, mark");
    book.write(at(101), |tx| tx.undo_act(last.act)).unwrap();
    assert_eq!(book.history(property.id).unwrap(), None);
    assert_eq!(book.last_line(visit.id).unwrap(), None);
}

#[test]
fn undoing_an_undoing_brings_it_back() {
    let (_folder, mut book, _) = shelf();
    let (property, visit, mark) = record_one(&mut book, 1);
    let last = book.last_line(visit.id).unwrap().unwrap();
    let undoing = book.write(at(100), |tx| tx.undo(last.id)).unwrap();
    assert!(book.get(mark.id).unwrap().is_none());
    book.write(at(101), |tx| tx.undo(undoing)).unwrap();
    assert_eq!(
        book.history(property.id).unwrap().unwrap().marks,
        *std::slice::from_ref(&mark)
    );
    assert_eq!(
        book.last_line(visit.id).unwrap().map(|line| line.id),
        Some(last.id)
    );
}

#[test]
fn two_of_one_place_are_joined_and_parted_again() {
    let (_folder, mut book, _) = shelf();
    let (one, _, _) = record_one(&mut book, 1);
    let (two, _, _) = record_one(&mut book, 2);
    let (kept, other) = (one.id, two.id);
    book.write(at(90), |tx| tx.record(Entry::Joined { kept, other }))
        .unwrap();
    assert_eq!(book.leads_to(other).unwrap(), kept);
    let history = book.history(other).unwrap().unwrap();
    assert_eq!(history.property.id, kept);
    assert_eq!(history.property.also, *std::slice::from_ref(&two.address));
    assert_eq!((history.visits.len(), history.marks.len()), (2, 2));
    assert_eq!(book.properties().unwrap(), *std::slice::from_ref(&one));
    assert_eq!(book.recent(9).unwrap().len(), 1);

    book.write(at(91), |tx| tx.record(Entry::Parted { other }))
        .unwrap();
    let history = book.history(other).unwrap().unwrap();
    assert_eq!(history.property, two);
    assert_eq!(history.visits.len(), 1);
    assert_eq!(book.properties().unwrap().len(), 2);
}

#[test]
fn a_ring_of_joins_still_leads_to_one_door() {
    let (_folder, mut book, _) = shelf();
    for number in 1..=3 {
        record_one(&mut book, number);
    }
    for (kept, other) in [(2, 1), (3, 2), (1, 3)] {
        let (kept, other) = (id(kept), id(other));
        book.write(at(90), |tx| tx.record(Entry::Joined { kept, other }))
            .unwrap();
    }
    for number in 1..=3 {
        assert_eq!(book.leads_to(id(number)).unwrap(), id(1));
        let history = book.history(id(number)).unwrap().unwrap();
        assert_eq!(history.visits.len(), 3);
    }
    let itself = book.write(at(91), |tx| {
        tx.record(Entry::Joined {
            kept: id(1),
            other: id(1),
        })
    });
    assert!(matches!(itself, Err(BookError::JoinedWithItself)));
}

#[test]
fn the_firm_its_profile_and_its_policy() {
    let (_folder, mut book, _) = shelf();
    assert_eq!(book.policy().unwrap().patch_limit, 2);
    let mut firm = book.firm().unwrap();
    firm.name = "Plumb & Course".to_owned();
    let mut policy = book.policy().unwrap();
    policy.patch_limit = 1;
    book.write(at(1), |tx| {
        tx.record(Entry::Firm(firm.clone()))?;
        tx.record(Entry::Policy(policy.clone()))
    })
    .unwrap();
    assert_eq!(book.firm().unwrap(), firm);
    assert_eq!(book.policy().unwrap(), policy);
    assert_eq!(book.profile().unwrap(), trade::firm::Profile::default());
}

#[test]
fn lists_for_the_morning() {
    let (_folder, mut book, _) = shelf();
    let (one, visit, _) = record_one(&mut book, 1);
    record_one(&mut book, 2);
    let mut soon = reminder(&one, 0x51, day());
    let late = reminder(&one, 0x52, day().tomorrow().unwrap());
    book.write(at(90), |tx| {
        tx.record(soon.clone())?;
        tx.record(late)
    })
    .unwrap();
    let due = book.due(day()).unwrap();
    assert_eq!(due.len(), 1);
    assert_eq!(due[0].reminder, soon);
    assert_eq!(due[0].card.owner.as_deref(), Some("Winifred Quillfeather"));
    assert_eq!(due[0].card.last_visit, Some(day()));
    assert_eq!(book.recent(1).unwrap()[0].property, one.id);
    assert_eq!(book.open_visits().unwrap().len(), 2);

    soon.done = Some(day());
    let mut closed = visit;
    closed.closed = Some(at(95));
    book.write(at(99), |tx| {
        tx.record(soon)?;
        tx.record(closed)
    })
    .unwrap();
    assert!(book.due(day()).unwrap().is_empty());
    assert_eq!(book.open_visits().unwrap().len(), 1);
}

#[test]
fn the_firms_own_counts_of_defects() {
    let (_folder, mut book, _) = shelf();
    let kind = "pipe-boot".into();
    let (_, _, mark) = record_one(&mut book, 1);
    record_one(&mut book, 2);
    let counts = book.defect_counts(&kind, None).unwrap();
    assert_eq!(counts, [("boot-split".into(), 2)]);
    let shingled = Some(trade::stack::Covering::AsphaltStrip);
    assert!(book.defect_counts(&kind, shingled).unwrap().is_empty());
    book.write(at(99), |tx| tx.withdraw(mark.id)).unwrap();
    let counts = book.defect_counts(&kind, None).unwrap();
    assert_eq!(counts, [("boot-split".into(), 1)]);
}

#[test]
fn half_typed_words_outlive_the_program() {
    let (folder, mut book, key) = shelf();
    book.set_draft("mark 4", None, "granules in the gu")
        .unwrap();
    drop(book);
    let mut book = Book::open(&folder.path().join("book"), &key).unwrap();
    assert_eq!(
        book.draft("mark 4").unwrap().as_deref(),
        Some("granules in the gu")
    );
    let failed = book.write(at(1), |tx| {
        tx.clear_draft("mark 4")?;
        Err::<(), _>(BookError::Erased)
    });
    assert!(failed.is_err());
    assert!(book.draft("mark 4").unwrap().is_some());
    book.clear_draft("mark 4").unwrap();
    assert_eq!(book.draft("mark 4").unwrap(), None);
}

#[test]
fn two_marks_of_one_moment_keep_their_order_when_the_clock_goes_back() {
    let (_folder, mut book, _) = shelf();
    let (property, visit, _) = record_one(&mut book, 1);
    let part = part(&house(&property));
    let later = mark(&visit, &part, 0x99, Rung::Failed);
    // The clock stands an hour before the first mark.
    book.write(at(-3600), |tx| tx.record(later.clone()))
        .unwrap();
    let history = book.history(property.id).unwrap().unwrap();
    assert_eq!(history.mark_on(part.id, visit.id), Some(&later));
    let line = &book.lines_about(later.id).unwrap()[0];
    assert_eq!(line.odd, Some(book::ClockOdd::Behind));
    assert_eq!(line.clock, at(-3600));
}

#[test]
fn an_empty_list_of_lines_for_a_visit_nobody_knows() {
    let (_folder, book, _) = shelf();
    assert_eq!(book.last_line(VisitId(uuid::Uuid::nil())).unwrap(), None);
}

#[test]
fn what_could_not_be_read_again_is_refused() {
    let (_folder, mut book, _) = shelf();
    let mut nowhere = property(1);
    nowhere.position = Some(trade::property::Position {
        latitude: f64::NAN,
        longitude: -93.0,
    });
    let refused = book.write(at(1), |tx| tx.record(nowhere));
    assert!(matches!(
        refused,
        Err(BookError::Unwritable { what: "property" })
    ));
    assert_eq!(book.history(id(1)).unwrap(), None);
}

proptest::proptest! {
    #![proptest_config(proptest::prelude::ProptestConfig::with_cases(24))]

    #[test]
    fn no_place_on_earth_makes_the_tables_differ_from_the_ink(
        places in proptest::collection::vec((-90.0_f64..90.0, -180.0_f64..180.0), 1..40)
    ) {
        let (_folder, mut book, _) = shelf();
        book.write(at(1), |tx| {
            for (number, (latitude, longitude)) in (1..).zip(&places) {
                let mut property = property(number);
                property.position = Some(trade::property::Position {
                    latitude: *latitude,
                    longitude: *longitude,
                });
                tx.record(property)?;
            }
            Ok::<_, BookError>(())
        })
        .unwrap();
        proptest::prop_assert_eq!(book.rebuild().unwrap().differences, []);
        proptest::prop_assert_eq!(book.check().unwrap().problems, []);
    }
}
