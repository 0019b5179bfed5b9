//! Where the key of a book comes from on a computer: the system's keyring, a key file, or a passphrase.

use crate::command::Failure;
use acts::{Book, Key, Salt};
use clap::Args;
use std::io::{self, BufRead, IsTerminal};
use std::path::{Path, PathBuf};

/// Where the key comes from.
#[derive(Args, Clone, Debug)]
pub struct KeyFrom {
    /// The file that holds the book's key. Keep it apart from the book, and a copy of it somewhere safe
    #[arg(long, global = true, env = "LADDERBOOK_KEY_FILE", value_name = "FILE")]
    key_file: Option<PathBuf>,
    /// Ask for a passphrase; where no one sits at a terminal, it is read as one line
    #[arg(long, global = true, conflicts_with = "key_file")]
    passphrase: bool,
}

const SERVICE: &str = "ladderbook";

impl KeyFrom {
    /// The key of a book that is there.
    pub fn key(&self, book: &Path) -> Result<Key, Failure> {
        if let Some(file) = &self.key_file {
            return Ok(Key::from_file(file)?);
        }
        if self.passphrase {
            let salt = Book::salt(book)?.ok_or_else(|| {
                Failure::new("this book is not opened with a passphrase; give its --key-file")
            })?;
            return Ok(Key::from_passphrase(&ask("Passphrase: ")?, &salt)?);
        }
        from_keyring(book)
    }

    /// A key for a book that is to be made, put where it will be looked for.
    pub fn new_key(&self, book: &Path) -> Result<Key, Failure> {
        if let Some(file) = &self.key_file {
            let key = Key::generate()?;
            key.write_file(file)?;
            return Ok(key);
        }
        if self.passphrase {
            let first = ask("Choose a passphrase: ")?;
            if first.chars().count() < 8 {
                return Err(Failure::new("a passphrase has at least eight characters"));
            }
            if io::stdin().is_terminal() && ask("Once more: ")? != first {
                return Err(Failure::new("the two are not the same; nothing was made"));
            }
            return Ok(Key::from_passphrase(&first, &Salt::generate()?)?);
        }
        let key = Key::generate()?;
        entry(book)?
            .set_password(&key.to_text())
            .map_err(|error| no_keyring(&error))?;
        Ok(key)
    }
}

fn from_keyring(book: &Path) -> Result<Key, Failure> {
    let text = entry(book)?
        .get_password()
        .map_err(|error| no_keyring(&error))?;
    Ok(Key::from_text(&text)?)
}

fn entry(book: &Path) -> Result<keyring::Entry, Failure> {
    let name = std::path::absolute(book)
        .unwrap_or_else(|_| book.to_owned())
        .display()
        .to_string();
    keyring::Entry::new(SERVICE, &name).map_err(|error| no_keyring(&error))
}

fn no_keyring(error: &keyring::Error) -> Failure {
    Failure::new(format!(
        "this computer's keyring could not be reached, or holds no key of this book ({error}). Nothing was touched. Give --key-file FILE or --passphrase"
    ))
}

fn ask(prompt: &str) -> Result<String, Failure> {
    if io::stdin().is_terminal() {
        return rpassword::prompt_password(prompt)
            .map_err(|error| Failure::new(format!("no passphrase could be read: {error}")));
    }
    let mut line = String::new();
    io::stdin()
        .lock()
        .read_line(&mut line)
        .map_err(|error| Failure::new(format!("no passphrase could be read: {error}")))?;
    Ok(line.trim_end_matches(['\r', '\n']).to_owned())
}
