//! Nothing under a book's folder is readable without the key.
#![allow(clippy::unwrap_used, reason = "a test fails where it must")]

mod common;

use book::{Book, Entry};
use common::*;
use std::fs;
use std::path::Path;
use trade::letter::Letter;
use trade::visit::Photo;
use trade::words::Language;

const WORDS: [&str; 16] = [
    "Quillfeather",
    "Larkspur",
    "Tamarack",
    "brindled",
    "harmonium",
    "crazed rubber",
    "birdbath",
    "pergola",
    "320) 555",
    "quillfeather@example",
    "Osric",
    "boot-split",
    "wainscot",
    "Dear Mrs",
    "Plumb & Course",
    "property",
];

/// Every place where a word stands in a file or in its name, in UTF-8 or UTF-16 of either order, large or small letters.
fn readable(folder: &Path) -> Vec<String> {
    let mut out = Vec::new();
    for path in files(folder) {
        let name = path
            .strip_prefix(folder)
            .unwrap()
            .to_string_lossy()
            .to_lowercase();
        let bytes = fs::read(&path).unwrap().to_ascii_lowercase();
        for word in WORDS {
            let word = word.to_lowercase();
            let little: Vec<u8> = word.encode_utf16().flat_map(u16::to_le_bytes).collect();
            let big: Vec<u8> = word.encode_utf16().flat_map(u16::to_be_bytes).collect();
            let forms = [word.as_bytes(), &little, &big];
            let inside = forms
                .iter()
                .any(|form| bytes.windows(form.len()).any(|window| window == *form));
            if inside || name.contains(&word) {
                out.push(format!("{word} in {name}"));
            }
        }
    }
    out
}

#[test]
fn no_word_of_a_book_is_readable_open_closed_or_backed_up() {
    let (folder, mut book, key) = shelf();
    let path = folder.path().join("book");
    let (property, visit, _) = record_one(&mut book, 1);
    let mut picture = jpeg(3);
    picture.extend(b"comment: Mrs Quillfeather's wainscot");
    let kept = book.put_photo(&picture).unwrap();
    let pdf = book.put_letter(b"%PDF-1.7 Dear Mrs Quillfeather").unwrap();
    let mut firm = book.firm().unwrap();
    firm.name = "Plumb & Course".to_owned();
    book.write(at(90), |tx| {
        tx.record(note(&visit, 0x41))?;
        tx.record(reminder(&property, 0x42, day()))?;
        tx.record(Entry::Firm(firm))?;
        tx.record(Photo {
            id: id(0x43),
            property: property.id,
            visit: visit.id,
            sha256: kept.sha256.clone(),
            taken: at(60),
            position: None,
            direction: None,
            orientation: 1,
            caption: "the wainscot".to_owned(),
        })?;
        tx.record(Letter {
            id: id(0x44),
            property: property.id,
            visit: visit.id,
            made: at(90),
            on: day(),
            language: Language::English,
            verdicts: Vec::new(),
            sha256: pdf,
            text: "Dear Mrs Quillfeather".to_owned(),
            out_of_date: None,
        })
    })
    .unwrap();
    book.thumbnail(&kept.sha256).unwrap().unwrap();
    book.set_draft("words", Some(property.id), "the pergola is")
        .unwrap();
    book.backup(&folder.path().join("backup")).unwrap();
    assert!(
        files(&path).len() >= 7,
        "database, log, lock, two headers, picture, letter, thumbnail"
    );

    assert_eq!(
        readable(folder.path()),
        [] as [String; 0],
        "while it is open"
    );
    drop(book);
    assert_eq!(
        readable(folder.path()),
        [] as [String; 0],
        "once it is closed"
    );

    // The search itself sees what is readable.
    fs::write(folder.path().join("plain"), "MRS QUILLFEATHER").unwrap();
    let wide: Vec<u8> = "Tamarack"
        .encode_utf16()
        .flat_map(u16::to_le_bytes)
        .collect();
    fs::write(folder.path().join("wide"), wide).unwrap();
    fs::write(folder.path().join("Osric.txt"), "").unwrap();
    assert_eq!(readable(folder.path()).len(), 3);
    assert!(Book::open(&path, &key).is_ok());
}

#[test]
fn no_temporary_file_is_left_anywhere() {
    let (folder, mut book, _) = shelf();
    record_one(&mut book, 1);
    book.put_photo(&jpeg(1)).unwrap();
    book.rebuild().unwrap();
    drop(book);
    let left: Vec<_> = files(folder.path())
        .into_iter()
        .map(|path| path.file_name().unwrap().to_string_lossy().into_owned())
        .filter(|name| name.contains("part") || name.contains("-wal") || name.contains("-shm"))
        .collect();
    assert_eq!(left, [] as [String; 0]);
}
