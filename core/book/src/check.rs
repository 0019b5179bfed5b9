//! Checking a book from end to end: every page, every line, every table, every file. It changes nothing.

use crate::book::Book;
use crate::error::{BookError, Result};
use crate::folder;
use crate::ink;
use crate::rebuild::{self, Difference};
use crate::records::Records;
use crate::seal;
use rusqlite::{Connection, Transaction, TransactionBehavior};
use std::collections::BTreeSet;
use std::fmt;
use std::path::PathBuf;
use trade::ids::PropertyId;
use trade::words::Said;

/// What a check found.
#[derive(Clone, Debug, PartialEq)]
pub struct Checked {
    /// Lines of ink.
    pub lines: u64,
    /// Records that count now.
    pub records: u64,
    /// Pictures and letters.
    pub files: u64,
    /// What is wrong. Empty for a healthy book.
    pub problems: Vec<Problem>,
}

/// One thing that is wrong with a book.
#[derive(Clone, Debug, PartialEq)]
pub enum Problem {
    /// A page of the database is not what was written there: what was found.
    Page(Said),
    /// Lines of one property, or of the firm, do not read.
    Ink {
        /// The property; `None` for the firm's own lines.
        property: Option<PropertyId>,
        /// What does not read.
        what: Said,
    },
    /// A table does not say what the ink says. Rebuilding puts it right.
    Table(Difference),
    /// A picture or letter is gone or was changed.
    File {
        /// SHA-256 of what it was.
        sha256: String,
    },
    /// A record names a picture or letter that was never kept.
    NeverKept {
        /// SHA-256 of what it names.
        sha256: String,
    },
    /// A file that nothing in the book knows of and nobody can read: what an erasure or a crash left. It may be removed.
    Stray(PathBuf),
}

impl Problem {
    /// What to tell the person.
    pub fn says(&self) -> Said {
        match self {
            Self::Page(what) => Said::new("problem-page").with("what", what.clone()),
            Self::Ink {
                property: Some(property),
                what,
            } => Said::new("problem-property")
                .with("property", property.to_string())
                .with("what", what.clone()),
            Self::Ink {
                property: None,
                what,
            } => Said::new("problem-firm").with("what", what.clone()),
            Self::Table(difference) => {
                Said::new("problem-table").with("difference", difference.says())
            }
            Self::File { sha256 } => Said::new("problem-file").with("sha256", sha256.as_str()),
            Self::NeverKept { sha256 } => {
                Said::new("problem-never-kept").with("sha256", sha256.as_str())
            }
            Self::Stray(path) => {
                Said::new("problem-stray").with("file", path.display().to_string())
            }
        }
    }
}

impl fmt::Display for Problem {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.says().in_english())
    }
}

impl Book {
    /// Checks the book from end to end: pages, ink, tables, pictures and letters. It changes nothing, and goes on after what it finds.
    ///
    /// # Errors
    /// Only where the book cannot be read at all.
    pub fn check(&self) -> Result<Checked> {
        let mut found = Found {
            problems: pages(&self.conn)?,
        };
        let reads = found.add(unread_ink(&self.conn))?;
        if reads {
            found.add(tables(&self.conn))?;
        }
        let content = self.all_content();
        if let Ok(content) = &content {
            found.add(self.damaged_files(content))?;
            found.add(self.stray_files(content))?;
        }
        found.add(self.never_kept())?;
        Ok(Checked {
            lines: rebuild::count(&self.conn, "ink").unwrap_or_default(),
            records: rebuild::count(&self.conn, "record").unwrap_or_default(),
            files: content.map_or(0, |content| content.len() as u64),
            problems: found.problems,
        })
    }
}

impl Records {
    fn damaged_files(&self, content: &[[u8; 32]]) -> Result<Vec<Problem>> {
        let mut out = Vec::new();
        for sha256 in content {
            match self.content(&seal::hex(sha256)) {
                Ok(_) => {}
                Err(BookError::FileDamaged { sha256 }) => out.push(Problem::File { sha256 }),
                Err(error) => return Err(error),
            }
        }
        Ok(out)
    }

    fn never_kept(&self) -> Result<Vec<Problem>> {
        let mut statement = self.conn.prepare(
            "SELECT DISTINCT sha256 FROM content_use WHERE sha256 NOT IN (SELECT sha256 FROM content)",
        )?;
        let rows = statement.query_map([], |row| row.get::<_, [u8; 32]>(0))?;
        Ok(rows
            .map(|row| {
                row.map(|sha256| Problem::NeverKept {
                    sha256: seal::hex(&sha256),
                })
            })
            .collect::<rusqlite::Result<_>>()?)
    }

    fn stray_files(&self, content: &[[u8; 32]]) -> Result<Vec<Problem>> {
        let mut out = Vec::new();
        let known: BTreeSet<PathBuf> = content
            .iter()
            .flat_map(|sha256| [self.content_path(sha256), self.thumbnail_path(sha256)])
            .collect();
        for shelf in [self.folder.photos(), self.folder.thumbnails()] {
            for path in folder::files_below(&shelf)? {
                if !known.contains(&path) {
                    out.push(Problem::Stray(path));
                }
            }
        }
        Ok(out)
    }
}

/// What was found so far.
struct Found {
    problems: Vec<Problem>,
}

impl Found {
    /// Adds what one look found; whether that was nothing. In a book with damaged pages a look may fail: that is found, too.
    fn add(&mut self, look: Result<Vec<Problem>>) -> Result<bool> {
        let paged = !self.problems.is_empty();
        let found = match look {
            Err(error) if paged => vec![Problem::Page(said(error))],
            look => look?,
        };
        let nothing = found.is_empty();
        self.problems.extend(found);
        Ok(nothing)
    }
}

fn said(error: BookError) -> Said {
    match error {
        BookError::Damaged { what } => what,
        other => other.says(),
    }
}

/// What the database itself says of its pages, as it came.
fn found_by_database(detail: String) -> Problem {
    Problem::Page(Said::new("damage-database").with("detail", detail))
}

/// Every page against its own code (SQLCipher) and every tree against its order (SQLite).
fn pages(conn: &Connection) -> Result<Vec<Problem>> {
    let mut out = Vec::new();
    for pragma in ["PRAGMA cipher_integrity_check", "PRAGMA integrity_check"] {
        let mut statement = conn.prepare(pragma)?;
        let mut rows = statement.query([])?;
        loop {
            match rows.next() {
                Ok(None) => break,
                Ok(Some(row)) => {
                    let said: String = row.get(0)?;
                    if said != "ok" {
                        out.push(found_by_database(said));
                    }
                }
                Err(error) => {
                    out.push(found_by_database(error.to_string()));
                    break;
                }
            }
        }
    }
    Ok(out)
}

fn unread_ink(conn: &Connection) -> Result<Vec<Problem>> {
    let mut out = Vec::new();
    let properties = ink::properties(conn)?.into_iter().map(Some);
    for property in properties.chain([None]) {
        if let Err(error) = ink::of_property(conn, property) {
            let what = said(error);
            out.push(Problem::Ink { property, what });
        }
    }
    Ok(out)
}

/// Makes the tables anew, compares, and takes it all back.
fn tables(conn: &Connection) -> Result<Vec<Problem>> {
    let transaction = Transaction::new_unchecked(conn, TransactionBehavior::Immediate)?;
    let rebuilt = rebuild::rebuild(&transaction)?;
    transaction.rollback().map_err(BookError::from)?;
    Ok(rebuilt
        .differences
        .into_iter()
        .map(Problem::Table)
        .collect())
}
