//! Taking in a visit file, and publishing its shape.

use super::answer::{answer, say};
use super::{Common, Failure};
use acts::record::{self, NotTaken, PictureFiles, file};
use clap::Args;
use serde_json::json;
use std::path::{Path, PathBuf};
use trade::catalogue::Catalogue;

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
    fn read(&self, name: &str) -> Result<Vec<u8>, String> {
        std::fs::read(self.0.join(name)).map_err(|error| format!("{name}: {error}"))
    }
}

pub(super) fn run(common: &Common, asked: &Record) -> Result<(), Failure> {
    let text =
        std::fs::read_to_string(&asked.file).map_err(|error| Failure::io(&asked.file, &error))?;
    let mut book = common.open()?;
    let folder = asked.file.parent().unwrap_or_else(|| Path::new("."));
    let taken = record::read(&text)
        .and_then(|file| record::take_in(&mut book, &file, &Folder(folder), common.clock().now()));
    match taken {
        Ok(taken) => answer(common.json, &taken, || {
            format!(
                "Recorded: {} marks and {} pictures on {} property.",
                taken.marks,
                taken.photos,
                if taken.new { "a new" } else { "a known" }
            )
        }),
        Err(NotTaken::Problems(problems)) => {
            if common.json {
                answer(true, &json!({ "problems": problems }), String::new)?;
                return Err(Failure::new("nothing was changed"));
            }
            let lines: Vec<String> = problems.iter().map(ToString::to_string).collect();
            Err(Failure::new(format!(
                "{}\nNothing was changed.",
                lines.join("\n")
            )))
        }
        Err(NotTaken::Act(error)) => Err(error.into()),
    }
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
