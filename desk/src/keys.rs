//! Where the key of a book comes from on a computer: the system's keyring, a key file, or a passphrase.

use crate::failure::Failure;
use crate::tongue;
use acts::{Book, Key, Salt};
use clap::Args;
use std::io::{self, BufRead, IsTerminal};
use std::path::{Path, PathBuf};
use trade::words::Said;

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
            let salt = Book::salt(book)?.ok_or_else(|| Failure::of("desk-passphrase-none"))?;
            let passphrase = ask("desk-passphrase-ask")?;
            return Ok(Key::from_passphrase(&passphrase, &salt)?);
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
            let first = ask("desk-passphrase-choose")?;
            if first.chars().count() < 8 {
                return Err(Failure::of("desk-passphrase-short"));
            }
            if io::stdin().is_terminal() && ask("desk-passphrase-again")? != first {
                return Err(Failure::of("desk-passphrase-differs"));
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
    match error {
        keyring::Error::NoEntry => Failure::of("desk-keyring-none"),
        other => Failure::new(Said::new("desk-no-keyring").with("detail", other.to_string())),
    }
}

/// Asks for a passphrase with the message of a key: at a terminal, where it is not shown, otherwise as one line.
fn ask(key: &str) -> Result<String, Failure> {
    let unread = |error: io::Error| {
        Failure::new(Said::new("desk-passphrase-unread").with("why", acts::system(&error)))
    };
    if io::stdin().is_terminal() {
        let prompt = format!("{} ", tongue::words().text(key));
        return rpassword::prompt_password(prompt).map_err(unread);
    }
    let mut line = String::new();
    io::stdin().lock().read_line(&mut line).map_err(unread)?;
    Ok(line.trim_end_matches(['\r', '\n']).to_owned())
}
