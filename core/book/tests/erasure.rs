//! The right to be erased: words and pictures of one property go for good, a stub stays, all else is untouched.
#![allow(clippy::unwrap_used, reason = "a test fails where it must")]

mod common;

use book::{Book, BookError, Entry, Subject};
use common::*;
use trade::visit::Photo;

fn photo(book: &mut Book, number: u128, of: u128, bytes: &[u8]) -> Photo {
    let kept = book.put_photo(bytes).unwrap();
    let photo = Photo {
        id: id(number),
        property: id(of),
        visit: id(of + 0x10_0000),
        sha256: kept.sha256,
        taken: at(60),
        position: None,
        direction: None,
        orientation: 1,
        caption: "the crazed collar".to_owned(),
    };
    book.write(at(80), |tx| tx.record(photo.clone())).unwrap();
    photo
}

#[test]
fn an_erased_property_leaves_a_stub_and_nothing_else() {
    let (folder, mut book, key) = shelf();
    let (one, visit, mark) = record_one(&mut book, 1);
    let (two, _, _) = record_one(&mut book, 2);
    let alone = photo(&mut book, 0x31, 1, &jpeg(31));
    let shared = photo(&mut book, 0x32, 1, &jpeg(32));
    photo(&mut book, 0x33, 2, &jpeg(32));
    book.thumbnail(&alone.sha256).unwrap().unwrap();
    book.set_draft("words", Some(one.id), "the collar is")
        .unwrap();
    book.set_draft("other", Some(two.id), "the gable is")
        .unwrap();
    let before = book.history(two.id).unwrap();

    let property = one.id;
    book.write(at(100), |tx| tx.record(Entry::Erased { property }))
        .unwrap();

    for reopened in [false, true] {
        if reopened {
            drop(book);
            book = Book::open(&folder.path().join("book"), &key).unwrap();
        }
        assert_eq!(book.history(one.id).unwrap(), None);
        assert_eq!(book.erased(one.id).unwrap(), Some(at(100)));
        assert_eq!(book.draft("words").unwrap(), None);
        assert!(book.draft("other").unwrap().is_some());
        assert!(matches!(
            book.photo_bytes(&alone.sha256),
            Err(BookError::FileDamaged { .. })
        ));
        assert_eq!(book.photo_bytes(&shared.sha256).unwrap(), jpeg(32));
        assert_eq!(book.history(two.id).unwrap(), before);
        assert!(
            book.find("101 Larkspur Hollow Rd")
                .unwrap()
                .iter()
                .all(|found| found.card.property == two.id)
        );

        let lines = book.lines_about(mark.id).unwrap();
        assert_eq!(lines.len(), 1, "the line stays");
        assert_eq!(lines[0].entry, None, "its words are gone");
        assert_eq!(lines[0].visit, Some(visit.id));

        let checked = book.check().unwrap();
        assert_eq!(checked.problems, [], "a healthy book");
        assert!(book.rebuild().unwrap().differences.is_empty());
    }
    let files = files(&folder.path().join("book/photos"));
    assert_eq!(files.len(), 1, "only the shared picture's file is left");
}

#[test]
fn nothing_more_is_recorded_of_what_was_erased_and_it_is_for_good() {
    let (_folder, mut book, _) = shelf();
    let (one, visit, _) = record_one(&mut book, 1);
    let property = one.id;
    let erasing = book
        .write(at(100), |tx| tx.record(Entry::Erased { property }))
        .unwrap();
    for entry in [
        Entry::Property(one.clone()),
        Entry::Structure(house(&one)),
        Entry::Visit(visit.clone()),
    ] {
        let refused = book.write(at(101), |tx| tx.record(entry));
        assert!(matches!(refused, Err(BookError::Erased)));
    }
    let refused = book.write(at(101), |tx| tx.record(note(&visit, 9)));
    assert!(matches!(refused, Err(BookError::Unknown { what: "visit" })));
    let refused = book.write(at(102), |tx| tx.undo(erasing));
    assert!(matches!(refused, Err(BookError::Unknown { .. })));
    let refused = book.write(at(102), |tx| tx.withdraw(Subject::Erasure(property)));
    assert!(matches!(refused, Err(BookError::Erased)));
    assert!(book.erased(property).unwrap().is_some());
}

#[test]
fn a_line_that_comes_late_from_another_device_stays_without_words() {
    let (_folder, mut here, _) = shelf();
    let (_elsewhere, mut there, _) = shelf_of(0xd2);
    let (one, _, _) = record_one(&mut there, 1);
    let lines = there.lines_of(Some(one.id)).unwrap();
    here.write(at(1), |tx| {
        tx.take_in(&lines[0])?;
        Ok::<_, BookError>(())
    })
    .unwrap();
    let property = one.id;
    here.write(at(2), |tx| tx.record(Entry::Erased { property }))
        .unwrap();
    here.write(at(3), |tx| {
        for line in &lines {
            tx.take_in(line)?;
        }
        Ok::<_, BookError>(())
    })
    .unwrap();
    let kept = here.lines_of(Some(one.id)).unwrap();
    assert_eq!(kept.len(), lines.len());
    assert!(kept.iter().all(|line| line.entry.is_none()));
    assert_eq!(here.history(one.id).unwrap(), None);
    assert!(here.rebuild().unwrap().differences.is_empty());
}

#[test]
fn an_erasure_made_elsewhere_erases_here_too() {
    let (_folder, mut here, _) = shelf();
    let (_elsewhere, mut there, _) = shelf_of(0xd2);
    let (one, _, _) = record_one(&mut there, 1);
    let property = one.id;
    let lines = there.lines_of(Some(one.id)).unwrap();
    there
        .write(at(100), |tx| tx.record(Entry::Erased { property }))
        .unwrap();
    let erasing = there.lines_about(Subject::Erasure(property)).unwrap();
    here.write(at(101), |tx| {
        for line in lines.iter().chain(&erasing) {
            tx.take_in(line)?;
        }
        Ok::<_, BookError>(())
    })
    .unwrap();
    assert_eq!(here.history(one.id).unwrap(), None);
    assert_eq!(here.erased(one.id).unwrap(), Some(at(100)));
    assert!(here.rebuild().unwrap().differences.is_empty());
}
