//! What crosses the border, read from the built library and held to `exports.txt`: a change there is a change to look over. The checksums that
//! Kotlin and Swift compare at the start do not see the fields of a record; this does.

#![cfg(test)]

mod print;

use std::path::{Path, PathBuf};
use uniffi_bindgen::macro_metadata::extract_from_library;

#[test]
fn the_exports_are_as_they_were_accepted() {
    let found = extract_from_library(library().to_str().unwrap().into())
        .expect("the library tells what it exports");
    let now = print::exports(found);
    let file = Path::new("exports.txt");
    if std::env::var_os("ACCEPT_EXPORTS").is_some() {
        std::fs::write(file, &now).unwrap();
        return;
    }
    let accepted = std::fs::read_to_string(file).unwrap_or_default();
    let gone = accepted
        .lines()
        .filter(|line| !now.lines().any(|other| other == *line));
    let new = now
        .lines()
        .filter(|line| !accepted.lines().any(|other| other == *line));
    let changes: Vec<_> = gone
        .map(|line| format!("- {line}"))
        .chain(new.map(|line| format!("+ {line}")))
        .collect();
    assert!(
        accepted == now,
        "the exports changed:\n{}\nLook them over, then accept them with: ./dev bindings --accept",
        changes.join("\n")
    );
}

/// The library that was built with this test, beside it.
fn library() -> PathBuf {
    let beside = std::env::current_exe().expect("this test has a file");
    let name = format!(
        "{}ladderbook_core{}",
        std::env::consts::DLL_PREFIX,
        std::env::consts::DLL_SUFFIX
    );
    beside.with_file_name(name)
}
