//! The book's folder: which file lies where, and how a file is put there so that a crash leaves the old one or the new one.

use crate::error::{BookError, Result};
use std::fs::{self, DirBuilder, File, OpenOptions, TryLockError};
use std::io::Write;
use std::path::{Path, PathBuf};
use std::time::{Duration, Instant};

/// How long a book that is held is waited for: a program that is just ending lets it go within moments.
const PATIENCE: Duration = Duration::from_millis(500);

/// The folder of one book.
#[derive(Clone, Debug)]
pub(crate) struct Folder(PathBuf);

impl Folder {
    /// A folder that may hold a book.
    pub(crate) fn at(path: &Path) -> Self {
        Self(path.to_owned())
    }

    /// Where it is.
    pub(crate) fn path(&self) -> &Path {
        &self.0
    }

    /// What is needed to open the book with its key; no personal data.
    pub(crate) fn header(&self) -> PathBuf {
        self.0.join("book.toml")
    }

    /// The header once more: a lost small file must not cost the book.
    pub(crate) fn spare_header(&self) -> PathBuf {
        self.0.join("book.spare.toml")
    }

    /// The encrypted database.
    pub(crate) fn database(&self) -> PathBuf {
        self.0.join("book.db")
    }

    /// Sealed pictures and letters, as they came.
    pub(crate) fn photos(&self) -> PathBuf {
        self.0.join("photos")
    }

    /// Sealed thumbnails; they can be made again.
    pub(crate) fn thumbnails(&self) -> PathBuf {
        self.0.join("thumbnails")
    }

    /// Where a sealed file of one name lies below a folder.
    pub(crate) fn place(under: &Path, name: &str) -> PathBuf {
        let (shelf, rest) = name.split_at(2.min(name.len()));
        under.join(shelf).join(rest)
    }

    /// Holds the book for this process until the file is let go.
    pub(crate) fn lock(&self) -> Result<File> {
        let path = self.0.join("book.lock");
        let file = options()
            .create(true)
            .truncate(false)
            .open(&path)
            .map_err(|error| BookError::io(&path, error))?;
        let given_up = Instant::now() + PATIENCE;
        loop {
            match file.try_lock() {
                Ok(()) => return Ok(file),
                Err(TryLockError::WouldBlock) if Instant::now() < given_up => {
                    std::thread::sleep(PATIENCE / 20);
                }
                Err(TryLockError::WouldBlock) => return Err(BookError::Locked),
                Err(TryLockError::Error(error)) => return Err(BookError::io(&path, error)),
            }
        }
    }
}

/// How a file is opened for writing: on a system that knows owners, for its owner alone.
fn options() -> OpenOptions {
    let mut options = OpenOptions::new();
    options.write(true);
    #[cfg(unix)]
    {
        use std::os::unix::fs::OpenOptionsExt;
        options.mode(0o600);
    }
    options
}

/// Makes a folder and those above it, for their owner alone where the system knows owners, and waits until their names are on the disk.
pub(crate) fn make(path: &Path) -> Result<()> {
    if path.as_os_str().is_empty() || path.is_dir() {
        return Ok(());
    }
    make(parent(path))?;
    match builder().create(path) {
        Err(error) if error.kind() != std::io::ErrorKind::AlreadyExists => {
            Err(BookError::io(path, error))
        }
        _ => sync_parent(path),
    }
}

fn builder() -> DirBuilder {
    #[cfg_attr(not(unix), allow(unused_mut))]
    let mut builder = DirBuilder::new();
    #[cfg(unix)]
    {
        use std::os::unix::fs::DirBuilderExt;
        builder.mode(0o700);
    }
    builder
}

/// Writes a file that must not be there yet, and waits until it is on the disk.
pub(crate) fn write_new(path: &Path, bytes: &[u8]) -> Result<()> {
    let result = options()
        .create_new(true)
        .open(path)
        .and_then(|file| write_and_sync(file, bytes));
    result.map_err(|error| BookError::io(path, error))?;
    sync_parent(path)
}

/// Puts a file in its place: under another name first, then renamed, so that a crash leaves the old one or the new one.
pub(crate) fn put(path: &Path, bytes: &[u8]) -> Result<()> {
    let parent = parent(path);
    make(parent)?;
    let mut name = path.file_name().unwrap_or_default().to_owned();
    name.push(".part");
    let part = parent.join(name);
    let written = options()
        .create(true)
        .truncate(true)
        .open(&part)
        .and_then(|file| write_and_sync(file, bytes))
        .and_then(|()| fs::rename(&part, path));
    if let Err(error) = written {
        // The half-written file is of no use; where it cannot be removed either, the next try writes over it.
        let _ = fs::remove_file(&part);
        return Err(BookError::io(path, error));
    }
    sync_parent(path)
}

fn write_and_sync(mut file: File, bytes: &[u8]) -> std::io::Result<()> {
    file.write_all(bytes)?;
    file.sync_all()
}

fn parent(path: &Path) -> &Path {
    match path.parent() {
        Some(parent) if !parent.as_os_str().is_empty() => parent,
        _ => Path::new("."),
    }
}

/// Waits until the names in a file's folder are on the disk.
pub(crate) fn sync_parent(path: &Path) -> Result<()> {
    sync_folder(parent(path))
}

/// Waits until the names in a folder are on the disk.
pub(crate) fn sync_folder(path: &Path) -> Result<()> {
    // Windows keeps names by itself and cannot open a folder as a file.
    if cfg!(windows) {
        return Ok(());
    }
    File::open(path)
        .and_then(|folder| folder.sync_all())
        .map_err(|error| BookError::io(path, error))
}

/// Removes a file; one that is not there is removed already.
pub(crate) fn remove(path: &Path) -> Result<()> {
    match fs::remove_file(path) {
        Err(error) if error.kind() != std::io::ErrorKind::NotFound => {
            Err(BookError::io(path, error))
        }
        _ => Ok(()),
    }
}

/// Whether there is nothing at a path, or an empty folder.
pub(crate) fn is_free(path: &Path) -> Result<bool> {
    match fs::read_dir(path) {
        Ok(mut entries) => Ok(entries.next().is_none()),
        Err(error) if error.kind() == std::io::ErrorKind::NotFound => Ok(true),
        Err(error) if error.kind() == std::io::ErrorKind::NotADirectory => Ok(false),
        Err(error) => Err(BookError::io(path, error)),
    }
}

/// Every file below a folder, in the order of names; none where it is not there.
pub(crate) fn files_below(path: &Path) -> Result<Vec<PathBuf>> {
    let mut out = Vec::new();
    let mut folders = vec![path.to_owned()];
    while let Some(folder) = folders.pop() {
        let failed = |source| BookError::Io {
            path: folder.clone(),
            source,
        };
        let entries = match fs::read_dir(&folder) {
            Ok(entries) => entries,
            Err(error) if error.kind() == std::io::ErrorKind::NotFound => continue,
            Err(error) => return Err(failed(error)),
        };
        for entry in entries {
            let entry = entry.map_err(failed)?;
            if entry.file_type().map_err(failed)?.is_dir() {
                folders.push(entry.path());
            } else {
                out.push(entry.path());
            }
        }
    }
    out.sort();
    Ok(out)
}
