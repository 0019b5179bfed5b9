//! Whatever goes wrong with a book is said in both languages: in whole sentences, with nothing left over from the message files.

use book::{BookError, Difference, Differs, Problem, Subject, system};
use std::io::{self, ErrorKind};
use std::path::PathBuf;
use trade::ids::PropertyId;
use trade::words::{Arg, Language, Said, Words};
use uuid::Uuid;

/// One of each. The match below does not compile when a kind is added and not named here.
fn errors() -> Vec<BookError> {
    let folder = || PathBuf::from("/cards/roofs");
    let all = vec![
        BookError::NotABook(folder()),
        BookError::NotEmpty(folder()),
        BookError::WrongKey,
        BookError::NewerVersion { found: 9, known: 1 },
        BookError::Damaged {
            what: Said::new("damage-page"),
        },
        BookError::Locked,
        BookError::DiskFull,
        BookError::ReadOnly,
        BookError::Io {
            path: folder(),
            source: ErrorKind::IsADirectory.into(),
        },
        BookError::Unknown { what: "part" },
        BookError::Unwritable { what: "mark" },
        BookError::Erased,
        BookError::JoinedWithItself,
        BookError::NotAPicture,
        BookError::TooLarge {
            megabytes: 120,
            most: 64,
        },
        BookError::FileDamaged {
            sha256: "00ff".to_owned(),
        },
        BookError::BadBackup {
            what: Said::new("backup-list-damaged"),
        },
        BookError::NoKey(Said::new("key-text-none")),
        BookError::Refused(rusqlite::Error::InvalidQuery),
    ];
    for error in &all {
        match error {
            BookError::NotABook(_)
            | BookError::NotEmpty(_)
            | BookError::WrongKey
            | BookError::NewerVersion { .. }
            | BookError::Damaged { .. }
            | BookError::Locked
            | BookError::DiskFull
            | BookError::ReadOnly
            | BookError::Io { .. }
            | BookError::Unknown { .. }
            | BookError::Unwritable { .. }
            | BookError::Erased
            | BookError::JoinedWithItself
            | BookError::NotAPicture
            | BookError::TooLarge { .. }
            | BookError::FileDamaged { .. }
            | BookError::BadBackup { .. }
            | BookError::NoKey(_)
            | BookError::Refused(_) => {}
        }
    }
    all
}

fn problems() -> Vec<Problem> {
    let what = || Said::new("damage-visit-day");
    let table = |differs| {
        Problem::Table(Difference {
            table: "visit",
            id: Uuid::nil(),
            differs,
        })
    };
    vec![
        Problem::Page(what()),
        Problem::Ink {
            property: Some(PropertyId(Uuid::nil())),
            what: what(),
        },
        Problem::Ink {
            property: None,
            what: what(),
        },
        table(Differs::Lacked),
        table(Differs::Stray),
        table(Differs::Changed),
        Problem::File {
            sha256: "00ff".to_owned(),
        },
        Problem::NeverKept {
            sha256: "00ff".to_owned(),
        },
        Problem::Stray(PathBuf::from("photos/00/ff")),
    ]
}

#[test]
fn every_error_is_said_in_both_languages() {
    let mut seen = Vec::new();
    for error in errors() {
        let sentences = in_both(&error.says());
        assert!(
            sentences.iter().all(|sentence| sentence.ends_with('.')),
            "{sentences:?}"
        );
        assert_eq!(error.to_string(), sentences[0], "logs say the English");
        seen.push(sentences);
    }
    seen.sort();
    seen.dedup();
    assert_eq!(seen.len(), errors().len(), "each says something of its own");
}

#[test]
fn every_problem_of_a_check_is_said_in_both_languages() {
    for problem in problems() {
        assert_eq!(problem.to_string(), in_both(&problem.says())[0]);
    }
}

#[test]
fn every_kind_of_record_has_its_word() {
    for kind in Subject::KINDS.iter().chain(&["entry"]) {
        for language in Language::ALL {
            let key = format!("record-{kind}");
            assert!(Words::of(language).has(&key), "{key} in {language:?}");
        }
    }
}

#[test]
fn what_the_system_says_is_said_in_both_languages() {
    let known = [
        ErrorKind::NotFound,
        ErrorKind::PermissionDenied,
        ErrorKind::AlreadyExists,
        ErrorKind::NotADirectory,
        ErrorKind::IsADirectory,
        ErrorKind::DirectoryNotEmpty,
        ErrorKind::StorageFull,
        ErrorKind::ReadOnlyFilesystem,
        ErrorKind::InvalidData,
        ErrorKind::AddrInUse,
    ];
    for kind in known {
        let said = system(&kind.into());
        assert_ne!(said.key, "system-other", "{kind:?}");
        in_both(&said);
    }
    let seldom = in_both(&system(&io::Error::other("the card was pulled")));
    assert!(
        seldom
            .iter()
            .all(|said| said.contains("“the card was pulled”"))
    );
}

/// The sentence in English and in Spanish, each with no key or placeholder left in it.
fn in_both(said: &Said) -> [String; 2] {
    let sentences = Language::ALL.map(|language| {
        let words = Words::of(language);
        all_there(words, said);
        let sentence = words.say(said);
        assert!(
            !sentence.contains("{$"),
            "an argument is missing: {sentence}"
        );
        sentence
    });
    assert_ne!(
        sentences[0], sentences[1],
        "one of the two is not translated"
    );
    sentences
}

/// Whether the message and all messages in it are there.
fn all_there(words: &Words, said: &Said) {
    assert!(words.has(&said.key), "{} is not there", said.key);
    for (_, arg) in &said.args {
        if let Arg::Said(inner) = arg {
            all_there(words, inner);
        }
    }
}
