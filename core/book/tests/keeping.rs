//! Keeping the book: rebuild, check, backup, restore, another key.
#![allow(clippy::unwrap_used, reason = "a test fails where it must")]

mod common;

use book::{Book, BookError, Key, Problem, Salt};
use common::*;
use std::fs;
use trade::ids::PropertyId;
use trade::visit::Photo;

/// A book with two properties and a picture; gives the picture's SHA-256.
fn filled(book: &mut Book) -> String {
    record_one(book, 1);
    record_one(book, 2);
    let kept = book.put_photo(&jpeg(7)).unwrap();
    let photo = Photo {
        id: id(0x31),
        property: id(1),
        visit: id(0x10_0001),
        sha256: kept.sha256.clone(),
        taken: at(60),
        position: None,
        direction: None,
        orientation: 1,
        caption: String::new(),
    };
    book.write(at(80), |tx| tx.record(photo)).unwrap();
    kept.sha256
}

#[test]
fn a_rebuild_finds_the_tables_as_they_should_be() {
    let (_folder, mut book, _) = shelf();
    filled(&mut book);
    let before = book.digest().unwrap();
    let rebuilt = book.rebuild().unwrap();
    assert_eq!(rebuilt.differences, []);
    assert_eq!((rebuilt.lines, rebuilt.records), (11, 11));
    assert_eq!(book.digest().unwrap(), before);
    assert_eq!(book.check().unwrap().problems, []);
}

#[test]
fn a_backup_restores_to_the_same_book_under_another_device() {
    let (folder, mut book, key) = shelf();
    let sha256 = filled(&mut book);
    let (to, again) = (folder.path().join("backup"), folder.path().join("again"));
    let backup = book.backup(&to).unwrap();
    assert_eq!(backup.folder, to);
    assert_eq!(backup.files, 4, "two headers, the database, a picture");
    let restored = Book::restore(&to, &again, &key).unwrap();
    assert_eq!(restored.digest().unwrap(), book.digest().unwrap());
    assert_eq!(restored.photo_bytes(&sha256).unwrap(), jpeg(7));
    assert_eq!(restored.check().unwrap().problems, []);
    assert_ne!(restored.device(), book.device());
    assert_eq!(
        restored.lines_of(Some(id(1))).unwrap(),
        book.lines_of(Some(id(1))).unwrap()
    );
}

#[test]
fn a_backup_overwrites_nothing_and_a_restore_neither() {
    let (folder, mut book, key) = shelf();
    filled(&mut book);
    let to = folder.path().join("backup");
    fs::create_dir(&to).unwrap();
    fs::write(to.join("holiday.txt"), "lake").unwrap();
    assert!(matches!(book.backup(&to), Err(BookError::NotEmpty(_))));
    let good = folder.path().join("good");
    book.backup(&good).unwrap();
    assert!(matches!(
        Book::restore(&good, &to, &key),
        Err(BookError::NotEmpty(_))
    ));
    assert!(matches!(
        Book::restore(&good, &folder.path().join("book"), &key),
        Err(BookError::NotEmpty(_))
    ));
    assert_eq!(fs::read(to.join("holiday.txt")).unwrap(), b"lake");
}

#[test]
fn a_backup_that_is_not_whole_restores_nothing() {
    let (folder, mut book, key) = shelf();
    filled(&mut book);
    let good = folder.path().join("good");
    book.backup(&good).unwrap();
    let again = folder.path().join("again");
    let all = files(&good);
    assert_eq!(all.len(), 5);
    for path in &all {
        let whole = fs::read(path).unwrap();
        let mut changed = whole.clone();
        let middle = changed.len() / 2;
        changed[middle] ^= 0x20;
        for broken in [Some(&changed[..]), Some(&whole[..middle]), None] {
            match broken {
                Some(bytes) => fs::write(path, bytes).unwrap(),
                None => fs::remove_file(path).unwrap(),
            }
            let refused = Book::restore(&good, &again, &key);
            assert!(
                matches!(refused, Err(BookError::BadBackup { .. })),
                "{}: {:?}",
                path.display(),
                refused.err()
            );
            assert!(!again.exists());
        }
        fs::write(path, &whole).unwrap();
    }
    let wrong = Key::generate().unwrap();
    assert!(matches!(
        Book::restore(&good, &again, &wrong),
        Err(BookError::WrongKey)
    ));
    assert_eq!(
        files(folder.path())
            .iter()
            .filter(|path| path.to_string_lossy().contains(".part"))
            .count(),
        0
    );
    Book::restore(&good, &again, &key).unwrap();
}

#[test]
fn a_list_that_leads_out_of_the_backup_is_refused() {
    let (folder, book, key) = shelf();
    let good = folder.path().join("good");
    book.backup(&good).unwrap();
    let list = good.join("backup.toml");
    let text = fs::read_to_string(&list).unwrap();
    for name in [
        "../book/book.db",
        "/etc/hostname",
        "a//b",
        "c:evil",
        "./book.db",
    ] {
        fs::write(
            &list,
            text.replace("name = \"book.db\"", &format!("name = \"{name}\"")),
        )
        .unwrap();
        let refused = Book::restore(&good, &folder.path().join("again"), &key);
        assert!(
            matches!(refused, Err(BookError::BadBackup { .. })),
            "{name}"
        );
    }
}

#[test]
fn a_missing_picture_is_told_and_no_backup_pretends_to_hold_it() {
    let (folder, mut book, _) = shelf();
    let sha256 = filled(&mut book);
    fs::remove_file(&files(&folder.path().join("book/photos"))[0]).unwrap();
    assert_eq!(
        book.check().unwrap().problems,
        [Problem::File {
            sha256: sha256.clone()
        }]
    );
    assert!(matches!(
        book.backup(&folder.path().join("backup")),
        Err(BookError::FileDamaged { .. })
    ));
    assert!(!folder.path().join("backup").exists());
    assert!(book.history(id(1)).unwrap().is_some(), "the rest is safe");
    // Taking the same picture in again heals it.
    book.put_photo(&jpeg(7)).unwrap();
    assert_eq!(book.check().unwrap().problems, []);
    assert_eq!(book.photo_bytes(&sha256).unwrap(), jpeg(7));
}

#[test]
fn a_record_of_a_picture_never_kept_and_a_stray_file_are_told() {
    let (folder, mut book, _) = shelf();
    filled(&mut book);
    let sha256 = "ab".repeat(32);
    let photo = Photo {
        sha256: sha256.clone(),
        id: id(0x99),
        ..book.history(id(1)).unwrap().unwrap().photos[0].clone()
    };
    book.write(at(90), |tx| tx.record(photo)).unwrap();
    let stray = folder.path().join("book/photos/00/stray");
    fs::create_dir_all(stray.parent().unwrap()).unwrap();
    fs::write(&stray, "half a picture").unwrap();
    let problems = book.check().unwrap().problems;
    assert_eq!(
        problems,
        [Problem::Stray(stray), Problem::NeverKept { sha256 }]
    );
}

#[test]
fn the_key_can_be_changed_to_a_passphrase_and_back() {
    let (folder, mut book, old) = shelf();
    let path = folder.path().join("book");
    let (one, _, _) = record_one(&mut book, 1);
    assert_eq!(Book::salt(&path).unwrap(), None);
    let salt = Salt::generate().unwrap();
    book.change_key(&Key::from_passphrase("plumb the rake", &salt).unwrap())
        .unwrap();
    drop(book);
    assert!(matches!(Book::open(&path, &old), Err(BookError::WrongKey)));
    let salt = Book::salt(&path).unwrap().unwrap();
    let wrong = Key::from_passphrase("plumb the rakes", &salt).unwrap();
    assert!(matches!(
        Book::open(&path, &wrong),
        Err(BookError::WrongKey)
    ));
    let right = Key::from_passphrase("plumb the rake", &salt).unwrap();
    let book = Book::open(&path, &right).unwrap();
    assert!(book.history(PropertyId(one.id.0)).unwrap().is_some());
}

#[test]
fn a_book_is_made_only_where_nothing_is() {
    let (folder, book, key) = shelf();
    drop(book);
    let device = id(1);
    for taken in [
        folder.path().join("book"),
        folder.path().join("book/book.toml"),
    ] {
        let refused = Book::create(&taken, &key, device, at(0));
        assert!(
            matches!(refused, Err(BookError::NotEmpty(_))),
            "{}",
            taken.display()
        );
    }
    let empty = folder.path().join("empty");
    fs::create_dir(&empty).unwrap();
    Book::create(&empty, &key, device, at(0)).unwrap();
    Book::create(&folder.path().join("deep/deeper"), &key, device, at(0)).unwrap();
}
