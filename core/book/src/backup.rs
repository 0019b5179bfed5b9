//! Backing up and restoring: a copy that is whole or not there, with a list of what belongs to it.
//!
//! A backup is a book's folder with `backup.toml` beside, which lists every file with its size and SHA-256. Nothing in it can be read
//! without the key.

use crate::book::{self, Book};
use crate::database;
use crate::error::{BookError, Result, system};
use crate::folder::{self, Folder};
use crate::header::Header;
use crate::key::Key;
use crate::records::Records;
use crate::seal;
use rusqlite::backup::{Backup as Copying, StepResult};
use serde::Deserialize;
use sha2::{Digest, Sha256};
use std::fmt::Write as _;
use std::fs::{self, File};
use std::io::{self, Read};
use std::path::{Path, PathBuf};
use std::time::Duration;
use trade::ids::DeviceId;
use trade::words::Said;
use uuid::Builder;

const MANIFEST: &str = "backup.toml";
const FORM: i64 = 1;
const PREFACE: &str = "# A backup of a Ladderbook book: every file that belongs to it. This list holds no personal data.\n";
/// Pages copied at a time.
const PAGES: i32 = 1024;

/// What a backup came to.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Backup {
    /// Where it lies.
    pub folder: PathBuf,
    /// How many files it has, its list not counted.
    pub files: usize,
    /// Their size in bytes.
    pub bytes: u64,
}

#[derive(Debug, Deserialize)]
struct Manifest {
    form: i64,
    #[serde(default)]
    file: Vec<Listed>,
}

/// One file of a backup.
#[derive(Debug, Deserialize)]
struct Listed {
    /// Where it lies below the folder, parted by `/`.
    name: String,
    bytes: u64,
    sha256: String,
}

impl Records {
    fn copy_into(&self, to: &Folder) -> Result<Backup> {
        for (from, to) in [
            (self.folder.header(), to.header()),
            (self.folder.spare_header(), to.spare_header()),
        ] {
            copy(&from, &to)?;
        }
        self.copy_database(&to.database())?;
        folder::make(&to.photos())?;
        for sha256 in self.all_content()? {
            let from = self.content_path(&sha256);
            if !from.exists() {
                return Err(BookError::FileDamaged {
                    sha256: seal::hex(&sha256),
                });
            }
            copy(
                &from,
                &Folder::place(&to.photos(), &self.content_name(&sha256)),
            )?;
        }
        let listed = list(to.path())?;
        write_manifest(to.path(), &listed)?;
        folder::sync_folder(to.path())?;
        Ok(Backup {
            folder: to.path().to_owned(),
            files: listed.len(),
            bytes: listed.iter().map(|file| file.bytes).sum(),
        })
    }

    /// Copies the database page by page while it is open.
    fn copy_database(&self, to: &Path) -> Result<()> {
        let mut copy = database::create_copy(to, &self.secret)?;
        let copying = Copying::new(&self.conn, &mut copy)?;
        loop {
            match copying.step(PAGES)? {
                StepResult::Done => break,
                StepResult::More => {}
                _ => std::thread::sleep(Duration::from_millis(20)),
            }
        }
        drop(copying);
        copy.close().map_err(|(_, error)| BookError::from(error))?;
        File::open(to)
            .and_then(|file| file.sync_all())
            .map_err(|error| BookError::io(to, error))
    }

    /// The SHA-256 of every picture and letter that is kept.
    pub(crate) fn all_content(&self) -> Result<Vec<[u8; 32]>> {
        let mut statement = self.conn.prepare("SELECT sha256 FROM content")?;
        let rows = statement.query_map([], |row| row.get(0))?;
        Ok(rows.collect::<rusqlite::Result<_>>()?)
    }
}

impl Book {
    /// Copies the book to a new folder, whole: it appears there under its name only once all of it is on the disk.
    ///
    /// # Errors
    /// [`BookError::NotEmpty`] where something is there, [`BookError::FileDamaged`] where a picture is gone, or what the disk says; nothing is
    /// left there then.
    pub fn backup(&self, to: &Path) -> Result<Backup> {
        if !folder::is_free(to)? {
            return Err(BookError::NotEmpty(to.to_owned()));
        }
        let part = book::beside(to)?;
        folder::make(&part)?;
        let copied = self
            .copy_into(&Folder::at(&part))
            .and_then(|backup| book::take_place(&part, to).map(|()| backup));
        match copied {
            Ok(backup) => Ok(Backup {
                folder: to.to_owned(),
                ..backup
            }),
            Err(error) => {
                // A half-made copy is of no use; where it cannot be removed it does no harm under its name.
                let _ = fs::remove_dir_all(&part);
                Err(error)
            }
        }
    }

    /// Makes a book from a backup in a folder that does not exist or is empty, and opens it. Every file is checked before anything is
    /// written. The restored book writes as a new device: the one that was lost may still turn up.
    ///
    /// # Errors
    /// [`BookError::BadBackup`], [`BookError::WrongKey`], [`BookError::NotEmpty`], or what the disk says; nothing is left there then.
    pub fn restore(from: &Path, to: &Path, key: &Key) -> Result<Self> {
        if !folder::is_free(to)? {
            return Err(BookError::NotEmpty(to.to_owned()));
        }
        let listed = read_manifest(from)?;
        verify(from, &listed)?;
        let secret = Header::read(&Folder::at(from))?.unseal(key)?;
        let part = book::beside(to)?;
        folder::make(&part)?;
        let restored = fill(from, &part, &listed)
            .and_then(|()| {
                let conn = database::open(&Folder::at(&part).database(), &secret)?;
                book::set_own_device(&conn, new_device()?)?;
                conn.close().map_err(|(_, error)| BookError::from(error))
            })
            .and_then(|()| book::take_place(&part, to));
        if let Err(error) = restored {
            // The backup is untouched; what was begun here is of no use.
            let _ = fs::remove_dir_all(&part);
            return Err(error);
        }
        Self::open(to, key)
    }
}

fn new_device() -> Result<DeviceId> {
    let mut random = [0; 16];
    seal::fill_random(&mut random)?;
    Ok(DeviceId(Builder::from_random_bytes(random).into_uuid()))
}

fn fill(from: &Path, to: &Path, listed: &[Listed]) -> Result<()> {
    for file in listed {
        copy(&from.join(&file.name), &to.join(&file.name))?;
    }
    folder::make(&Folder::at(to).photos())?;
    verify(to, listed)?;
    folder::sync_folder(to)
}

/// Copies a file and waits until it is on the disk.
fn copy(from: &Path, to: &Path) -> Result<()> {
    if let Some(parent) = to.parent() {
        folder::make(parent)?;
    }
    fs::copy(from, to)
        .and_then(|_| File::open(to)?.sync_all())
        .map_err(|error| BookError::io(to, error))?;
    folder::sync_parent(to)
}

/// Every file below a folder, in the order of names.
fn list(folder: &Path) -> Result<Vec<Listed>> {
    let mut out = Vec::new();
    for path in folder::files_below(folder)? {
        let (bytes, sha256) = hash(&path)?;
        out.push(Listed {
            name: name_below(folder, &path),
            bytes,
            sha256,
        });
    }
    Ok(out)
}

fn name_below(folder: &Path, path: &Path) -> String {
    let below = path.strip_prefix(folder).unwrap_or(path);
    let parts: Vec<_> = below.iter().map(|part| part.to_string_lossy()).collect();
    parts.join("/")
}

fn hash(path: &Path) -> Result<(u64, String)> {
    let failed = |source| BookError::Io {
        path: path.to_owned(),
        source,
    };
    let mut file = File::open(path).map_err(failed)?;
    let mut hash = Sha256::new();
    let mut bytes = 0;
    let mut buffer = vec![0; 1 << 16];
    loop {
        let read = match file.read(&mut buffer) {
            Ok(0) => break,
            Ok(read) => read,
            Err(error) if error.kind() == io::ErrorKind::Interrupted => continue,
            Err(error) => return Err(failed(error)),
        };
        hash.update(&buffer[..read]);
        bytes += read as u64;
    }
    Ok((bytes, seal::hex(&hash.finalize())))
}

fn write_manifest(folder: &Path, listed: &[Listed]) -> Result<()> {
    let mut text = format!("{PREFACE}form = {FORM}\n");
    for file in listed {
        let Listed {
            name,
            bytes,
            sha256,
        } = file;
        // Names are our own and hexadecimal: nothing needs to be escaped. Writing to a String cannot fail.
        let _ = write!(
            text,
            "\n[[file]]\nname = \"{name}\"\nbytes = {bytes}\nsha256 = \"{sha256}\"\n"
        );
    }
    folder::write_new(&folder.join(MANIFEST), text.as_bytes())
}

fn read_manifest(folder: &Path) -> Result<Vec<Listed>> {
    let path = folder.join(MANIFEST);
    let text = fs::read_to_string(&path)
        .map_err(|error| bad(Said::new("backup-list-unread").with("why", system(&error))))?;
    let manifest: Manifest =
        toml::from_str(&text).map_err(|_| bad(Said::new("backup-list-damaged")))?;
    if manifest.form > FORM {
        return Err(BookError::NewerVersion {
            found: manifest.form,
            known: FORM,
        });
    }
    // A list from elsewhere must not lead out of its folder.
    match manifest.file.iter().find(|file| !is_below(&file.name)) {
        Some(file) => Err(bad_at("backup-list-leads-out", &file.name)),
        None => Ok(manifest.file),
    }
}

fn bad(what: Said) -> BookError {
    BookError::BadBackup { what }
}

fn bad_at(what: &str, file: &str) -> BookError {
    bad(Said::new(what).with("file", file))
}

fn is_below(name: &str) -> bool {
    name.split('/').all(|part| {
        !part.is_empty() && part != "." && part != ".." && !part.contains(['\\', ':', '\0'])
    })
}

/// Whether every listed file is there and is what it was.
fn verify(folder: &Path, listed: &[Listed]) -> Result<()> {
    for needed in ["book.toml", "book.db"] {
        if !listed.iter().any(|file| file.name == needed) {
            return Err(bad_at("backup-list-lacks", needed));
        }
    }
    for file in listed {
        let path = folder.join(&file.name);
        let same = path.is_file() && hash(&path)? == (file.bytes, file.sha256.clone());
        if !same {
            return Err(bad_at("backup-file-changed", &file.name));
        }
    }
    Ok(())
}
