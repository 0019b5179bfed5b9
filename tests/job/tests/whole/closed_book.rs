//! Nothing in the files of a closed book can be read without its key. Common practice, no source: search for the words in every file,
//! in the two encodings in which a program here could have left them.

use fixtures::{Demo, Event, Story};
use job::scene::Scene;
use std::collections::{BTreeMap, BTreeSet};
use std::path::{Path, PathBuf};

/// Shorter words stand in any heap of bytes.
const LETTERS: usize = 5;

#[test]
fn no_word_of_the_demo_stands_in_a_file_of_a_closed_book() {
    let demo = some_of_the_demo();
    let words = words(&demo);
    assert!(
        words.len() > 250,
        "there are words to look for: {}",
        words.len()
    );
    let found = left_behind(&demo, &words);
    if found.is_empty() {
        return;
    }
    // Five letters stand in some megabytes of random bytes once in a while. The same word in a second book, under another key, is no chance.
    let again = left_behind(&demo, &words);
    let both: Vec<_> = found.intersection(&again).collect();
    assert!(both.is_empty(), "{both:?} can be read in a closed book");
}

#[test]
fn the_search_finds_a_word_in_either_encoding() {
    let words = BTreeSet::from(["chandler".to_owned()]);
    let mut wide = vec![7, 7, 7];
    wide.extend("Chandler".encode_utf16().flat_map(u16::to_le_bytes));
    for bytes in [b"..2 CHANDLER Ave".to_vec(), wide] {
        assert_eq!(Patterns::of(&words).find(&bytes), words);
    }
    assert_eq!(Patterns::of(&words).find(b"chandle r"), BTreeSet::new());
}

fn some_of_the_demo() -> Demo {
    let mut demo = fixtures::demo();
    demo.others.truncate(20);
    demo
}

/// Plays the demo, closes the book, and answers the words that are found in its files or in their names.
fn left_behind(demo: &Demo, words: &BTreeSet<String>) -> BTreeSet<String> {
    let scene = Scene::new();
    let (book, _) = scene.all_of(demo);
    drop(book);
    let patterns = Patterns::of(words);
    let files = files_below(&scene.book());
    assert!(files.len() > 20, "a book has many files");
    files
        .iter()
        .flat_map(|path| {
            let name = path
                .strip_prefix(scene.book())
                .expect("it is below")
                .to_string_lossy();
            let mut bytes = name.as_bytes().to_vec();
            bytes.push(0);
            bytes.extend(std::fs::read(path).expect("the file can be read"));
            patterns.find(&bytes)
        })
        .collect()
}

fn files_below(folder: &Path) -> Vec<PathBuf> {
    let entries = std::fs::read_dir(folder).expect("the folder can be read");
    entries
        .map(|entry| entry.expect("the folder can be read").path())
        .flat_map(|path| {
            if path.is_dir() {
                files_below(&path)
            } else {
                vec![path]
            }
        })
        .collect()
}

/// Names, streets, towns, dangers, what callers said, captions, and his own words.
fn words(demo: &Demo) -> BTreeSet<String> {
    let mut texts = vec![
        demo.firm.name.clone(),
        demo.firm.person.clone(),
        demo.firm.licence.clone(),
    ];
    texts.extend(demo.firm.address.clone());
    for file in demo
        .stories
        .iter()
        .chain(&demo.others)
        .flat_map(Story::visits)
    {
        for address in std::iter::once(&file.property.address).chain(&file.property.also) {
            texts.extend([&address.line, &address.town, &address.region].map(Clone::clone));
        }
        texts.extend(
            file.property
                .people
                .iter()
                .map(|person| person.name.clone()),
        );
        texts.extend(file.property.dangers.clone());
        texts.push(file.visit.request.words.clone());
        for part in file
            .structures
            .iter()
            .flat_map(|structure| &structure.parts)
        {
            texts.push(part.words.clone());
            texts.extend(part.photos.iter().map(|photo| photo.caption.clone()));
        }
    }
    for event in demo
        .stories
        .iter()
        .chain(&demo.others)
        .flat_map(|story| &story.events)
    {
        if let Event::Outcome { words, .. } | Event::Reminder { words, .. } = event {
            texts.push(words.clone());
        }
    }
    texts
        .iter()
        .flat_map(|text| text.split(|letter: char| !letter.is_ascii_alphabetic()))
        .filter(|word| word.len() >= LETTERS)
        .map(str::to_ascii_lowercase)
        .collect()
}

/// Words as bytes, small letters only, by their first two bytes.
struct Patterns {
    by_start: BTreeMap<[u8; 2], Vec<(Vec<u8>, String)>>,
    starts: Vec<bool>,
}

impl Patterns {
    fn of(words: &BTreeSet<String>) -> Self {
        let mut by_start: BTreeMap<[u8; 2], Vec<_>> = BTreeMap::new();
        let mut starts = vec![false; 1 << 16];
        for word in words {
            let wide: Vec<u8> = word.encode_utf16().flat_map(u16::to_le_bytes).collect();
            for bytes in [word.as_bytes().to_vec(), wide] {
                let start = [bytes[0], bytes[1]];
                starts[usize::from(u16::from_le_bytes(start))] = true;
                by_start
                    .entry(start)
                    .or_default()
                    .push((bytes, word.clone()));
            }
        }
        Self { by_start, starts }
    }

    fn find(&self, bytes: &[u8]) -> BTreeSet<String> {
        let small = bytes.to_ascii_lowercase();
        let mut found = BTreeSet::new();
        for at in 0..small.len().saturating_sub(1) {
            let start = [small[at], small[at + 1]];
            if self.starts[usize::from(u16::from_le_bytes(start))] {
                let here = &small[at..];
                let words = self.by_start[&start]
                    .iter()
                    .filter(|(word, _)| here.starts_with(word));
                found.extend(words.map(|(_, word)| word.clone()));
            }
        }
        found
    }
}
