//! Keeping the book: new, rebuild, check, backup, restore.

use super::answer::answer;
use super::{Common, Failure};
use acts::{Book, keep};
use clap::Args;
use serde_json::json;
use std::path::PathBuf;

/// Backing up.
#[derive(Args, Debug)]
pub(super) struct Backup {
    /// The folder to copy to; it must not exist yet, or be empty
    to: PathBuf,
}

/// Restoring.
#[derive(Args, Debug)]
pub(super) struct Restore {
    /// The folder of the backup
    from: PathBuf,
}

pub(super) fn new(common: &Common) -> Result<(), Failure> {
    if common.book.join("book.db").exists() {
        return Err(Failure::new(format!(
            "{} holds a book already",
            common.book.display()
        )));
    }
    let key = common.key.new_key(&common.book)?;
    let moment = common.clock().now();
    Book::create(&common.book, &key, moment.device(), moment.at)?;
    let folder = common.book.display().to_string();
    answer(common.json, &json!({ "book": folder }), || {
        format!(
            "A new book lies in {folder}. Keep its key apart from it: without the key nobody can read it."
        )
    })
}

pub(super) fn rebuild(common: &Common) -> Result<(), Failure> {
    let mut book = common.open()?;
    let rebuilt = keep::rebuild(&mut book)?;
    let value = json!({
        "lines": rebuilt.lines,
        "same": rebuilt.differences.is_empty(),
        "differences": rebuilt.differences.iter().map(|one| format!("{one:?}")).collect::<Vec<_>>(),
    });
    answer(common.json, &value, || {
        if rebuilt.differences.is_empty() {
            format!(
                "The tables were made anew from {} lines of ink and are the same.",
                rebuilt.lines
            )
        } else {
            format!(
                "The tables were made anew from {} lines of ink; {} differed and now stand as the ink says.",
                rebuilt.lines,
                rebuilt.differences.len()
            )
        }
    })
}

pub(super) fn check(common: &Common) -> Result<(), Failure> {
    let book = common.open()?;
    let checked = keep::check(&book)?;
    let problems: Vec<String> = checked.problems.iter().map(ToString::to_string).collect();
    let value = json!({
        "lines": checked.lines,
        "records": checked.records,
        "files": checked.files,
        "problems": problems,
    });
    answer(common.json, &value, || {
        let read = format!(
            "{} lines of ink, {} records, {} pictures and letters.",
            checked.lines, checked.records, checked.files
        );
        if problems.is_empty() {
            format!("The book is whole: {read}")
        } else {
            format!("Read {read}\n{}", problems.join("\n"))
        }
    })?;
    if problems.is_empty() {
        Ok(())
    } else {
        Err(Failure::new(
            "the book is damaged; restore the last backup beside it",
        ))
    }
}

pub(super) fn backup(common: &Common, backup: &Backup) -> Result<(), Failure> {
    let book = common.open()?;
    let made = keep::backup(&book, &backup.to)?;
    let value = json!({
        "folder": made.folder.display().to_string(), "files": made.files, "bytes": made.bytes,
    });
    answer(common.json, &value, || {
        format!(
            "{} files, {} bytes, copied to {}. The same key opens it.",
            made.files,
            made.bytes,
            made.folder.display()
        )
    })
}

pub(super) fn restore(common: &Common, restore: &Restore) -> Result<(), Failure> {
    let key = common.key.key(&restore.from)?;
    keep::restore(&restore.from, &common.book, &key)?;
    let folder = common.book.display().to_string();
    answer(common.json, &json!({ "book": folder }), || {
        format!("The book was restored to {folder}. The backup was not changed.")
    })
}
