//! Faults: a killed program, a full disk, a damaged file, a book held elsewhere. Nothing that was acknowledged is ever lost, and nothing is
//! ever deleted or made anew to get over a fault.
#![allow(clippy::unwrap_used, reason = "a test fails where it must")]

mod common;

use book::{Book, BookError, Key, Problem};
use common::*;
use std::fs;
use std::io::{BufRead, BufReader, Write};
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::time::Duration;

const FOLDER: &str = "BOOK_TEST_FOLDER";
const KEY: &str = "BOOK_TEST_KEY";
const FROM: &str = "BOOK_TEST_FROM";

/// Runs one of the ignored tests below in a process of its own.
fn child(name: &str, folder: &Path, key: &Key, from: u128) -> Command {
    let mut command = Command::new(std::env::current_exe().unwrap());
    command
        .args([name, "--exact", "--ignored", "--nocapture"])
        .env(FOLDER, folder)
        .env(KEY, key.to_text().as_str())
        .env(FROM, from.to_string())
        .stdout(Stdio::piped())
        .stderr(Stdio::null());
    command
}

fn told() -> Option<(PathBuf, Key, u128)> {
    let folder = std::env::var_os(FOLDER)?;
    let key = Key::from_text(&std::env::var(KEY).ok()?).unwrap();
    let from = std::env::var(FROM).ok()?.parse().unwrap();
    Some((PathBuf::from(folder), key, from))
}

fn acknowledge(text: &str) {
    let mut out = std::io::stdout().lock();
    writeln!(out, "{text}").unwrap();
    out.flush().unwrap();
}

/// What one acknowledged number stands for: a property with all that hangs on it, a picture, and a draft.
/// Gives the picture's SHA-256.
fn write_one(book: &mut Book, number: u128) -> Result<String, BookError> {
    let property = property(number);
    let house = house(&property);
    let part = part(&house);
    let visit = visit(&property, number + 0x10_0000);
    let mark = mark(
        &visit,
        &part,
        number + 0x20_0000,
        trade::mark::Rung::Failing,
    );
    book.write(at(i64::try_from(number).unwrap()), |tx| {
        let kept = tx.put_photo(&picture(number))?;
        tx.set_draft(&format!("draft {number}"), None, "half ty")?;
        tx.record(property)?;
        tx.record(house)?;
        tx.record(part)?;
        tx.record(visit)?;
        tx.record(mark)?;
        Ok(kept.sha256)
    })
}

fn picture(number: u128) -> Vec<u8> {
    let mut picture = jpeg(u8::try_from(number % 200).unwrap());
    picture.extend(number.to_be_bytes());
    picture
}

fn assert_written(book: &Book, number: u128) {
    let history = book.history(id(number)).unwrap().unwrap();
    assert_eq!(history.property, property(number));
    assert_eq!(
        (
            history.structures.len(),
            history.visits.len(),
            history.marks.len()
        ),
        (1, 1, 1)
    );
    let draft = book.draft(&format!("draft {number}")).unwrap();
    assert_eq!(draft.as_deref(), Some("half ty"));
}

#[test]
#[ignore = "the part that another test kills"]
fn the_writer() {
    let Some((folder, key, from)) = told() else {
        return;
    };
    let mut book = Book::open(&folder, &key).unwrap();
    for number in from.. {
        match write_one(&mut book, number) {
            Ok(sha256) => acknowledge(&format!("wrote {number} {sha256}")),
            Err(error) => return acknowledge(&format!("refused {error:?}")),
        }
    }
}

#[test]
#[ignore = "the part that another test waits for"]
fn the_holder() {
    let Some((folder, key, _)) = told() else {
        return;
    };
    let book = Book::open(&folder, &key).unwrap();
    acknowledge("holding");
    std::thread::sleep(Duration::from_mins(1));
    drop(book);
}

fn lines_of(child: &mut Child) -> impl Iterator<Item = String> + use<> {
    BufReader::new(child.stdout.take().unwrap())
        .lines()
        .map_while(Result::ok)
}

/// The number that a line acknowledges, and its picture's SHA-256.
fn acknowledged_in(line: &str) -> Option<(u128, String)> {
    let (number, sha256) = line.rsplit_once("wrote ")?.1.split_once(' ')?;
    (sha256.len() == 64).then_some((number.parse().ok()?, sha256.to_owned()))
}

#[test]
fn no_acknowledged_write_is_lost_when_the_program_is_killed() {
    const KILLS: u64 = 40;
    let (folder, book, key) = shelf();
    drop(book);
    let path = folder.path().join("book");
    let mut next = 1_u128;
    let mut acknowledged = Vec::new();
    for kill in 0..KILLS {
        let mut writer = child("the_writer", &path, &key, next).spawn().unwrap();
        let lines = lines_of(&mut writer);
        // Killed after another span each time, from before the first write on.
        let span = Duration::from_micros(20_000 + (kill * 7_919) % 120_000);
        let killer = std::thread::spawn(move || {
            std::thread::sleep(span);
            writer.kill().unwrap();
            writer.wait().unwrap();
        });
        acknowledged.extend(lines.filter_map(|line| acknowledged_in(&line)));
        killer.join().unwrap();

        let book = Book::open(&path, &key).unwrap();
        next = 1;
        while book.history(id(next)).unwrap().is_some() {
            assert_written(&book, next);
            next += 1;
        }
        if let Some((last, _)) = acknowledged.last() {
            assert!(*last < next, "{last} was acknowledged and is gone");
        }
        assert_eq!(book.ever_recorded().unwrap().len() as u128, next - 1);
    }
    assert!(acknowledged.len() > 40, "too few writes to mean anything");
    let book = Book::open(&path, &key).unwrap();
    for (number, sha256) in &acknowledged {
        assert_eq!(book.photo_bytes(sha256).unwrap(), picture(*number));
    }
    // A picture's file may be there whose act was not finished; nothing else may be amiss.
    let problems = book.check().unwrap().problems;
    assert!(
        problems
            .iter()
            .all(|problem| matches!(problem, Problem::Stray(_))),
        "{problems:?}"
    );
}

#[test]
fn a_book_that_is_open_elsewhere_is_left_alone() {
    let (folder, book, key) = shelf();
    let path = folder.path().join("book");
    assert!(matches!(Book::open(&path, &key), Err(BookError::Locked)));
    drop(book);
    let mut holder = child("the_holder", &path, &key, 0).spawn().unwrap();
    let holding = lines_of(&mut holder).any(|line| line.contains("holding"));
    assert!(holding);
    assert!(matches!(Book::open(&path, &key), Err(BookError::Locked)));
    holder.kill().unwrap();
    holder.wait().unwrap();
    Book::open(&path, &key).unwrap();
}

/// Writes until the disk is full; what was acknowledged is there, and once there is room the book goes on.
fn fill_up(path: &Path, key: &Key, make_room: impl FnOnce()) {
    let mut book = Book::open(path, key).unwrap();
    let mut written = 0;
    let refused = loop {
        match write_one(&mut book, written + 1) {
            Ok(_) => written += 1,
            Err(error) => break error,
        }
        assert!(written < 100_000, "the disk never filled up");
    };
    assert!(matches!(refused, BookError::DiskFull), "{refused:?}");
    let there = |book: &Book| {
        for number in 1..=written {
            assert_written(book, number);
        }
        assert_eq!(book.history(id(written + 1)).unwrap(), None);
    };
    there(&book);
    assert!(written > 0);
    drop(book);
    let mut book = Book::open(path, key).unwrap();
    there(&book);
    make_room();
    write_one(&mut book, written + 1).unwrap();
    assert_written(&book, written + 1);
    let problems = book.check().unwrap().problems;
    assert!(
        problems
            .iter()
            .all(|problem| matches!(problem, Problem::Stray(_))),
        "{problems:?}"
    );
}

/// A small disk of its own, where this machine lets us have one.
struct SmallDisk(tempfile::TempDir);

impl SmallDisk {
    fn mount(options: &str) -> Option<Self> {
        let folder = tempfile::tempdir().unwrap();
        let mounted = Command::new("mount")
            .args(["-t", "tmpfs", "-o", options, "tmpfs"])
            .arg(folder.path())
            .stderr(Stdio::null())
            .status()
            .is_ok_and(|status| status.success());
        mounted.then_some(Self(folder))
    }

    fn remount(&self, options: &str) {
        let status = Command::new("mount")
            .args(["-o", &format!("remount,{options}")])
            .arg(self.0.path())
            .status()
            .unwrap();
        assert!(status.success());
    }
}

impl Drop for SmallDisk {
    fn drop(&mut self) {
        let _ = Command::new("umount").arg(self.0.path()).status();
    }
}

#[test]
fn a_full_disk_costs_nothing_that_was_acknowledged() {
    let Some(disk) = SmallDisk::mount("size=3m") else {
        eprintln!(
            "this machine lets us mount no small disk; the limit on file size is tried instead"
        );
        return;
    };
    let path = disk.0.path().join("book");
    let key = Key::generate().unwrap();
    drop(Book::create(&path, &key, id(1), at(0)).unwrap());
    let ballast = disk.0.path().join("ballast");
    fs::write(&ballast, vec![1; 600_000]).unwrap();
    fill_up(&path, &key, || fs::remove_file(&ballast).unwrap());
}

#[test]
fn no_book_is_half_made_on_a_full_disk() {
    let Some(disk) = SmallDisk::mount("size=64k") else {
        return;
    };
    let path = disk.0.path().join("book");
    let key = Key::generate().unwrap();
    let refused = Book::create(&path, &key, id(1), at(0));
    assert!(
        matches!(refused, Err(BookError::DiskFull)),
        "{:?}",
        refused.err()
    );
    assert_eq!(files(disk.0.path()), [] as [PathBuf; 0]);
}

#[cfg(unix)]
#[test]
fn a_limit_on_file_size_costs_nothing_that_was_acknowledged() {
    let (folder, book, key) = shelf();
    drop(book);
    let path = folder.path().join("book");
    let mut limited = Command::new("sh");
    let program = child("the_writer", &path, &key, 1);
    // Blocks of 512 bytes; the signal is ignored, so that the write fails instead.
    limited
        .args(["-c", "trap '' XFSZ; ulimit -f 1600; exec \"$@\"", "sh"])
        .arg(program.get_program())
        .args(program.get_args())
        .envs(
            program
                .get_envs()
                .filter_map(|(name, value)| Some((name, value?))),
        )
        .stdout(Stdio::piped())
        .stderr(Stdio::null());
    let mut writer = limited.spawn().unwrap();
    let lines: Vec<String> = lines_of(&mut writer).collect();
    writer.wait().unwrap();
    let (last, _) = lines
        .iter()
        .rev()
        .find_map(|line| acknowledged_in(line))
        .unwrap();
    assert!(
        lines.iter().any(|line| line.contains("refused ")),
        "{lines:?}"
    );
    let mut book = Book::open(&path, &key).unwrap();
    for number in 1..=last {
        assert_written(&book, number);
    }
    assert_eq!(book.history(id(last + 1)).unwrap(), None);
    write_one(&mut book, last + 1).unwrap();
}

#[test]
fn a_write_protected_disk_is_told() {
    let Some(disk) = SmallDisk::mount("size=4m") else {
        return;
    };
    let path = disk.0.path().join("book");
    let key = Key::generate().unwrap();
    drop(Book::create(&path, &key, id(1), at(0)).unwrap());
    disk.remount("ro");
    let refused = Book::open(&path, &key);
    assert!(
        matches!(refused, Err(BookError::ReadOnly)),
        "{:?}",
        refused.err()
    );
    disk.remount("rw");
    Book::open(&path, &key).unwrap();
}

/// A closed book with something in it.
fn closed_book() -> (tempfile::TempDir, PathBuf, Key) {
    let (folder, mut book, key) = shelf();
    for number in 1..20 {
        write_one(&mut book, number).unwrap();
    }
    drop(book);
    let path = folder.path().join("book");
    (folder, path, key)
}

#[test]
fn another_key_opens_nothing_and_touches_nothing() {
    let (_folder, path, _) = closed_book();
    let before = contents(&path);
    let wrong = Key::generate().unwrap();
    assert!(matches!(
        Book::open(&path, &wrong),
        Err(BookError::WrongKey)
    ));
    assert_eq!(contents(&path), before);
}

fn contents(path: &Path) -> Vec<(PathBuf, Vec<u8>)> {
    files(path)
        .into_iter()
        .map(|path| (path.clone(), fs::read(path).unwrap()))
        .collect()
}

#[test]
fn a_folder_without_a_book_is_told_from_a_damaged_one() {
    let folder = tempfile::tempdir().unwrap();
    let key = Key::generate().unwrap();
    for nowhere in [folder.path().to_owned(), folder.path().join("nowhere")] {
        let refused = Book::open(&nowhere, &key);
        assert!(
            matches!(refused, Err(BookError::NotABook(_))),
            "{:?}",
            refused.err()
        );
    }
    assert_eq!(files(folder.path()), [] as [PathBuf; 0]);
    let (_folder, path, key) = closed_book();
    fs::remove_file(path.join("book.db")).unwrap();
    let refused = Book::open(&path, &key);
    assert!(
        matches!(refused, Err(BookError::Damaged { .. })),
        "{:?}",
        refused.err()
    );
    assert!(!path.join("book.db").exists(), "nothing is made anew");
}

#[test]
fn every_flipped_byte_of_the_database_is_found() {
    let (_folder, path, key) = closed_book();
    let database = path.join("book.db");
    let whole = fs::read(&database).unwrap();
    // One bit in each of these places: the salt, the first page, and places all over the file.
    let all_over = (0..whole.len()).step_by(whole.len() / 60 + 1);
    for place in [0, 15, 16, 17, 100, 4000, 4090].into_iter().chain(all_over) {
        let mut flipped = whole.clone();
        flipped[place] ^= 0x10;
        fs::write(&database, &flipped).unwrap();
        match Book::open(&path, &key) {
            Err(BookError::Damaged { .. }) => {}
            Err(other) => panic!("byte {place}: {other:?}"),
            Ok(book) => {
                let problems = book.check().map(|checked| checked.problems);
                let found = match &problems {
                    Ok(problems) => problems
                        .iter()
                        .any(|problem| matches!(problem, Problem::Page(_))),
                    Err(BookError::Damaged { .. }) => true,
                    Err(_) => false,
                };
                assert!(found, "byte {place}: {problems:?}");
            }
        }
        let kept = fs::read(&database).unwrap();
        assert_eq!(kept.len(), flipped.len(), "nothing was thrown away");
    }
    fs::write(&database, &whole).unwrap();
    let book = Book::open(&path, &key).unwrap();
    assert_eq!(book.check().unwrap().problems, []);
}

#[test]
fn a_cut_database_is_told_and_left_as_it_is() {
    let (_folder, path, key) = closed_book();
    let database = path.join("book.db");
    let whole = fs::read(&database).unwrap();
    for length in [0, 1, 100, 4096, 5000, whole.len() / 2, whole.len() - 1] {
        fs::write(&database, &whole[..length]).unwrap();
        let told = match Book::open(&path, &key) {
            Err(error) => matches!(error, BookError::Damaged { .. }),
            Ok(book) => !matches!(book.check(), Ok(checked) if checked.problems.is_empty()),
        };
        assert!(told, "cut to {length} bytes");
        assert_eq!(
            fs::read(&database).unwrap().len(),
            length,
            "cut to {length} bytes"
        );
    }
}

#[test]
fn one_damaged_header_is_made_good_by_the_other() {
    let (_folder, path, key) = closed_book();
    let (first, second) = (path.join("book.toml"), path.join("book.spare.toml"));
    let whole = fs::read(&first).unwrap();
    assert_eq!(whole, fs::read(&second).unwrap());
    for place in 0..whole.len() {
        let mut flipped = whole.clone();
        flipped[place] ^= 0x01;
        fs::write(&first, &flipped).unwrap();
        Book::open(&path, &key).unwrap_or_else(|error| panic!("byte {place}: {error}"));
    }
    fs::remove_file(&first).unwrap();
    Book::open(&path, &key).unwrap();
    fs::write(&second, "form = 1").unwrap();
    let refused = Book::open(&path, &key);
    assert!(
        matches!(refused, Err(BookError::Damaged { .. })),
        "{:?}",
        refused.err()
    );
    fs::remove_file(&second).unwrap();
    let refused = Book::open(&path, &key);
    assert!(
        matches!(refused, Err(BookError::Damaged { .. })),
        "{:?}",
        refused.err()
    );
    fs::write(&first, "form = 2\nanother = \"shape\"").unwrap();
    let refused = Book::open(&path, &key);
    assert!(
        matches!(refused, Err(BookError::NewerVersion { found: 2, known: 1 })),
        "{:?}",
        refused.err()
    );
}
