//! Taking in a visit file, and publishing its shape.

use super::Common;
use super::answer::{answer, say};
use crate::failure::Failure;
use acts::record::{self, NotTaken, PictureFiles, Problem, Taken, file};
use clap::Args;
use serde_json::json;
use std::path::{Path, PathBuf};
use trade::catalogue::Catalogue;
use trade::words::{Said, Words};

/// Taking in a visit file.
#[derive(Args, Debug)]
pub(super) struct Record {
    /// The visit file; its pictures are named relative to it
    file: PathBuf,
}

/// The shape of a visit file.
#[derive(Args, Debug)]
pub(super) struct Schema {
    /// List the kinds of part, defects and remedies that a file may name
    #[arg(long)]
    keys: bool,
}

struct Folder<'a>(&'a Path);

impl PictureFiles for Folder<'_> {
    fn read(&self, name: &str) -> Result<Vec<u8>, Said> {
        std::fs::read(self.0.join(name)).map_err(|error| acts::system(&error))
    }
}

pub(super) fn run(common: &Common, asked: &Record) -> Result<(), Failure> {
    let text =
        std::fs::read_to_string(&asked.file).map_err(|error| Failure::io(&asked.file, &error))?;
    common.with_book(|mut book, words| {
        let folder = asked.file.parent().unwrap_or_else(|| Path::new("."));
        let moment = common.clock().now();
        let taken = record::read(&text)
            .and_then(|file| record::take_in(&mut book, &file, &Folder(folder), moment));
        match taken {
            Ok(taken) => answer(common.json, &taken, || words.say(&told(taken))),
            Err(NotTaken::Problems(problems)) => refused(common, &problems, words),
            Err(NotTaken::Act(error)) => Err(error.into()),
        }
    })
}

fn told(taken: Taken) -> Said {
    let count = |of: usize| i64::try_from(of).unwrap_or(i64::MAX);
    Said::new("desk-recorded")
        .with("marks", count(taken.marks))
        .with("photos", count(taken.photos))
        .with("new", if taken.new { "yes" } else { "no" })
}

/// Says what is wrong with the file: to another program as an answer, to a person as the failure itself.
fn refused(common: &Common, problems: &[Problem], words: &Words) -> Result<(), Failure> {
    if common.json {
        let told: Vec<_> = problems.iter().map(|problem| problem.told(words)).collect();
        answer(true, &json!({ "problems": told }), String::new)?;
        return Err(Failure::of("desk-record-refused"));
    }
    let lines: Vec<String> = problems
        .iter()
        .map(|problem| words.say(&problem.says()))
        .collect();
    Err(Failure::new(
        Said::new("desk-record-wrong").with("problems", lines.join("\n")),
    ))
}

pub(super) fn schema(asked: &Schema) -> Result<(), Failure> {
    if !asked.keys {
        say(&serde_json::to_string_pretty(&file::schema())?);
        return Ok(());
    }
    let catalogue = Catalogue::standard();
    let kinds: Vec<_> = catalogue
        .kinds()
        .iter()
        .map(|kind| {
            json!({
                "kind": kind.key,
                "on-slope": kind.on_slope,
                "answers": kind.asks,
                "defects": catalogue.defects_of(&kind.key).map(|defect| &defect.key).collect::<Vec<_>>(),
            })
        })
        .collect();
    let remedies: Vec<_> = catalogue
        .remedies()
        .iter()
        .map(|remedy| &remedy.key)
        .collect();
    say(&serde_json::to_string_pretty(
        &json!({ "kinds": kinds, "remedies": remedies }),
    )?);
    Ok(())
}
