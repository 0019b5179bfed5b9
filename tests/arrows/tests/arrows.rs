//! The arrows of this workspace against the table and against `arrows.txt`. Whether the reading itself is right is tried on small texts.

use arrows::{law, print, rooms, source};
use std::path::{Path, PathBuf};

/// Cargo runs a test in the folder of its crate.
fn workspace() -> PathBuf {
    PathBuf::from("../..")
        .canonicalize()
        .expect("this crate lies two folders down")
}

#[test]
fn no_arrow_runs_up_or_across() {
    let found = law::forbidden(&rooms::read(&workspace()));
    assert!(found.is_empty(), "{}", found.join("\n"));
}

#[test]
fn the_pure_rooms_reach_for_nothing_outside() {
    let found = law::impure(&rooms::read(&workspace()));
    assert!(found.is_empty(), "{}", found.join("\n"));
}

#[test]
fn the_arrows_are_as_they_were_accepted() {
    let file = Path::new("arrows.txt");
    let now = print::arrows(&rooms::read(&workspace()));
    if std::env::var_os("ACCEPT_ARROWS").is_some() {
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
        "the arrows changed:\n{}\nLook them over, then accept them with: ./dev arrows --accept",
        changes.join("\n")
    );
}

fn names(text: &str, place: &[&str]) -> Vec<String> {
    let place = place.iter().map(ToString::to_string).collect();
    let module = source::module(text, place).expect("the text is Rust");
    module.names.iter().map(|path| path.join("::")).collect()
}

#[test]
fn paths_are_read_wherever_they_stand() {
    let text = "
        use crate::{mark::Mark, units::{self, Length as L}};
        use trade::words::*;
        fn f(x: super::stack::Stack) -> bool { std::fs::exists(\"x\"); matches!(x, trade::visit::Scope::Whole { at: book::ink::At(_) }) }
        mod inner { use super::super::far::Away; }
    ";
    assert_eq!(
        names(text, &["near"]),
        [
            "book::ink::At",
            "crate::far::Away",
            "crate::mark::Mark",
            "crate::stack::Stack",
            "crate::units::Length",
            "crate::units::self",
            "std::fs::exists",
            "trade::visit::Scope::Whole",
            "trade::words::*",
        ]
    );
}

#[test]
fn what_is_built_for_tests_only_is_left_out() {
    let text = "#[cfg(test)] mod tests { use book::ink; } #[cfg(test)] use book::photos; fn f() { trade::mark::of() }";
    assert_eq!(names(text, &[]), ["trade::mark::of"]);
}

#[test]
fn reaching_outside_is_seen() {
    let reaches =
        |path: &str| law::reaches_outside(&path.split("::").map(str::to_owned).collect::<Vec<_>>());
    for path in [
        "std::fs",
        "std::fs::File",
        "jiff::Timestamp::now",
        "Zoned::now",
        "rand::rng",
        "Uuid::now_v7",
        "std::time::SystemTime",
    ] {
        assert!(reaches(path), "{path}");
    }
    for path in [
        "std::fmt",
        "std::time::Duration",
        "crate::rand::x",
        "jiff::civil::Date",
    ] {
        assert!(!reaches(path), "{path}");
    }
}
