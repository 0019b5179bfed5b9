//! Keeping the book: new, rebuild, check, backup, restore.

use super::Common;
use super::answer::answer;
use crate::failure::Failure;
use crate::tongue;
use acts::{Book, keep, settings};
use clap::Args;
use serde_json::json;
use std::path::PathBuf;
use trade::words::{Arg, Said};

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
    let folder = common.book.display().to_string();
    if common.book.join("book.db").exists() {
        return Err(Failure::new(
            Said::new("desk-new-there").with("folder", folder),
        ));
    }
    let key = common.key.new_key(&common.book)?;
    let moment = common.clock().now();
    let mut book = Book::create(&common.book, &key, moment.device(), moment.at)?;
    settings::speak(&mut book, tongue::of_environment(), moment)?;
    answer(common.json, &json!({ "book": folder }), || {
        tongue::words().say(&Said::new("desk-new").with("folder", folder.as_str()))
    })
}

pub(super) fn rebuild(common: &Common) -> Result<(), Failure> {
    common.with_book(|mut book, words| {
        let rebuilt = keep::rebuild(&mut book)?;
        let differences: Vec<String> = rebuilt
            .differences
            .iter()
            .map(|difference| words.say(&difference.says()))
            .collect();
        let value = json!({
            "lines": rebuilt.lines,
            "same": differences.is_empty(),
            "differences": differences,
        });
        answer(common.json, &value, || {
            let key = if differences.is_empty() {
                "desk-rebuilt-same"
            } else {
                "desk-rebuilt-differed"
            };
            words.say(
                &Said::new(key)
                    .with("lines", count(rebuilt.lines))
                    .with("count", count(differences.len() as u64)),
            )
        })
    })
}

pub(super) fn check(common: &Common) -> Result<(), Failure> {
    common.with_book(|book, words| {
        let checked = keep::check(&book)?;
        let problems: Vec<String> = checked
            .problems
            .iter()
            .map(|problem| words.say(&problem.says()))
            .collect();
        let value = json!({
            "lines": checked.lines,
            "records": checked.records,
            "files": checked.files,
            "problems": problems,
        });
        answer(common.json, &value, || {
            let read = Said::new("desk-checked")
                .with("lines", count(checked.lines))
                .with("records", count(checked.records))
                .with("files", count(checked.files));
            words.say(&if problems.is_empty() {
                Said::new("desk-checked-whole").with("read", read)
            } else {
                Said::new("desk-checked-wrong")
                    .with("read", read)
                    .with("problems", problems.join("\n"))
            })
        })?;
        if problems.is_empty() {
            Ok(())
        } else {
            Err(Failure::of("desk-check-damaged"))
        }
    })
}

pub(super) fn backup(common: &Common, backup: &Backup) -> Result<(), Failure> {
    common.with_book(|book, words| {
        let made = keep::backup(&book, &backup.to)?;
        let folder = made.folder.display().to_string();
        let value = json!({ "folder": folder, "files": made.files, "bytes": made.bytes });
        answer(common.json, &value, || {
            words.say(
                &Said::new("desk-backed-up")
                    .with("files", count(made.files as u64))
                    .with("bytes", made.bytes.to_string())
                    .with("folder", folder.as_str()),
            )
        })
    })
}

pub(super) fn restore(common: &Common, restore: &Restore) -> Result<(), Failure> {
    let key = common.key.key(&restore.from)?;
    let book = keep::restore(&restore.from, &common.book, &key)?;
    let words = super::words_of(&book)?;
    let folder = common.book.display().to_string();
    answer(common.json, &json!({ "book": folder }), || {
        words.say(&Said::new("desk-restored").with("folder", folder.as_str()))
    })
}

fn count(of: u64) -> Arg {
    Arg::Count(i64::try_from(of).unwrap_or(i64::MAX))
}
