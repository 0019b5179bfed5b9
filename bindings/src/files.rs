//! Files for the phone to show or hand on, written into a folder that it named: nothing large crosses as bytes.

use std::fs;
use std::io;
use std::path::{Path, PathBuf};

/// Files in clear, made from what the book keeps sealed. What an earlier run left is removed.
pub(crate) struct Files {
    folder: PathBuf,
}

impl Files {
    pub(crate) fn new(cache: &Path) -> io::Result<Self> {
        let folder = cache.join("shown");
        match fs::remove_dir_all(&folder) {
            Err(error) if error.kind() != io::ErrorKind::NotFound => return Err(error),
            _ => fs::create_dir_all(&folder)?,
        }
        Ok(Self { folder })
    }

    /// The path of a file that never changes, where it is there already.
    pub(crate) fn there(&self, name: &str) -> Option<String> {
        let file = self.folder.join(name);
        file.exists().then(|| file.display().to_string())
    }

    /// Writes a file whole, and gives its path: who reads it meanwhile sees the old one or the new one.
    pub(crate) fn write(&self, name: &str, bytes: &[u8]) -> io::Result<String> {
        let file = self.folder.join(name);
        let part = self.folder.join(format!("{name}.part"));
        fs::write(&part, bytes)?;
        fs::rename(&part, &file)?;
        Ok(file.display().to_string())
    }
}
