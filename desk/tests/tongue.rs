//! In which language the program speaks: this computer's before a book is open, the firm's from then on.

use std::fs;
use std::io::{BufRead, BufReader, Read, Write};
use std::net::TcpStream;
use std::path::PathBuf;
use std::process::{Command, Output, Stdio};
use tempfile::TempDir;

const SPANISH: &str = "es_MX.UTF-8";
const ENGLISH: &str = "C.UTF-8";

/// A folder with a book in it, made on a computer of one language.
struct Desk {
    folder: TempDir,
}

impl Desk {
    fn new(language: &str) -> Self {
        let desk = Self {
            folder: TempDir::new().expect("a folder"),
        };
        assert!(desk.run(language, "book.key", &["new"]).status.success());
        desk
    }

    fn path(&self, name: &str) -> PathBuf {
        self.folder.path().join(name)
    }

    fn write(&self, name: &str, text: &str) -> String {
        fs::write(self.path(name), text).expect("a file is written");
        self.path(name).display().to_string()
    }

    /// A key that is not the book's.
    fn other_key(&self) -> &'static str {
        self.write("other.key", &"0f".repeat(32));
        "other.key"
    }

    fn command(&self, language: &str, key: &str, words: &[&str]) -> Command {
        let mut command = Command::new(env!("CARGO_BIN_EXE_ladderbook"));
        command
            .env_remove("LC_ALL")
            .env_remove("LC_MESSAGES")
            .env("LANG", language)
            .arg("--book")
            .arg(self.path("book"))
            .arg("--key-file")
            .arg(self.path(key))
            .args(words);
        command
    }

    fn run(&self, language: &str, key: &str, words: &[&str]) -> Output {
        let output = self.command(language, key, words).output();
        output.expect("the program runs")
    }

    /// What is said of a command that must fail.
    fn refused(&self, language: &str, key: &str, words: &[&str]) -> String {
        let output = self.run(language, key, words);
        assert!(!output.status.success());
        String::from_utf8(output.stderr).expect("it is text")
    }
}

#[test]
fn before_a_book_is_open_the_computers_language_is_spoken() {
    let desk = Desk::new(ENGLISH);
    let other = desk.other_key();
    let english = desk.refused(ENGLISH, other, &["check"]);
    assert!(english.starts_with("This key does not open this book."));
    let spanish = desk.refused(SPANISH, other, &["check"]);
    assert!(spanish.starts_with("Esta llave no abre este libro."));
    let missing = desk.refused(SPANISH, "no.key", &["check"]);
    assert!(missing.starts_with("No hay llave para abrir el libro:"));
    let again = desk.refused(SPANISH, "third.key", &["new"]);
    assert!(again.contains("ya contiene un libro"));
}

#[test]
fn the_strongest_variable_decides() {
    let desk = Desk::new(ENGLISH);
    let other = desk.other_key();
    let output = desk
        .command(ENGLISH, other, &["check"])
        .env("LC_ALL", SPANISH)
        .output()
        .expect("the program runs");
    let says = String::from_utf8(output.stderr).expect("it is text");
    assert!(says.starts_with("Esta llave"), "{says}");
}

#[test]
fn once_a_book_is_open_the_firms_language_is_spoken() {
    let english = Desk::new(ENGLISH);
    let says = english.run(SPANISH, "book.key", &["check"]).stdout;
    assert!(says.starts_with(b"The book is whole"));
    let spanish = Desk::new(SPANISH);
    let says = spanish.run(ENGLISH, "book.key", &["check"]).stdout;
    assert!(says.starts_with("El libro está entero".as_bytes()));
    let nowhere = spanish.refused(ENGLISH, "book.key", &["doorstep", "1 Nowhere Lane"]);
    assert!(nowhere.starts_with("No hay nada en el libro que se parezca"));
}

/// A visit file that is wrong in three ways; the last needs the day to be written out.
const WRONG: &str = r#"{
    "ladderbook-visit": 1,
    "property": { "address": { "line": "9 Tiller Way", "town": "Merrow Bight", "region": "Hathe", "postcode": "00017" } },
    "visit": { "on": "2031-01-02", "by": "", "scope": "quick-look" },
    "structures": []
}"#;

#[test]
fn a_wrong_visit_file_is_refused_in_the_firms_language() {
    let desk = Desk::new(SPANISH);
    let file = desk.write("visit.json", WRONG);
    let asked = ["--today", "2026-05-06", "record", &file];
    let says = desk.refused(ENGLISH, "book.key", &asked);
    assert_eq!(
        says.lines().collect::<Vec<_>>(),
        [
            "/visit/by: diga quién fue",
            "/visit/on: el día es posterior a hoy, 6 de mayo de 2026",
            "/structures: nombre al menos una construcción",
            "No se cambió nada.",
        ]
    );
    let broken = desk.write("broken.json", "{ \"ladderbook-visit\": 1,");
    let says = desk.refused(ENGLISH, "book.key", &["record", &broken]);
    assert_eq!(
        says.lines().next(),
        Some("línea 1, columna 24: el archivo se acaba a la mitad")
    );
}

#[test]
fn another_program_is_told_by_names_that_no_language_changes() {
    let desk = Desk::new(SPANISH);
    let file = desk.write("visit.json", WRONG);
    let asked = ["--json", "--today", "2026-05-06", "record", &file];
    let output = desk.run(ENGLISH, "book.key", &asked);
    assert!(!output.status.success());
    let told: serde_json::Value = serde_json::from_slice(&output.stdout).expect("it is JSON");
    assert_eq!(
        told["problems"][0],
        serde_json::json!({ "at": "/visit/by", "wrong": "no-visitor", "reason": "diga quién fue" })
    );
}

#[test]
fn a_stranger_at_the_page_is_told_in_the_computers_language() {
    let desk = Desk::new(ENGLISH);
    let mut program = desk
        .command(SPANISH, "book.key", &["serve", "--port", "0"])
        .stdout(Stdio::piped())
        .spawn()
        .expect("the program runs");
    let mut line = String::new();
    let says = program.stdout.take().expect("it is piped");
    let read = BufReader::new(says).read_line(&mut line);
    let answer = read.ok().and_then(|_| answer_of(host_in(&line)?));
    program.kill().expect("it ends");
    program.wait().expect("it ended");
    assert!(
        line.starts_with("Open http://"),
        "the firm's language: {line}"
    );
    let answer = answer.expect("the page answers");
    assert!(answer.starts_with("HTTP/1.1 403"), "{answer}");
    assert!(
        answer.ends_with("Abra la dirección que Ladderbook mostró al empezar."),
        "{answer}"
    );
}

/// The host and port in the line that tells the address.
fn host_in(line: &str) -> Option<&str> {
    line.split_once("http://")?.1.split('/').next()
}

/// What is answered to somebody without the token.
fn answer_of(host: &str) -> Option<String> {
    let mut page = TcpStream::connect(host).ok()?;
    write!(
        page,
        "GET / HTTP/1.1\r\nHost: {host}\r\nConnection: close\r\n\r\n"
    )
    .ok()?;
    let mut answer = String::new();
    page.read_to_string(&mut answer).ok()?;
    Some(answer)
}
