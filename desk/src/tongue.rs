//! The language of this computer, for what is said before a book is open: from then on it is the firm's.

use std::env;
use trade::words::{Language, Words};

/// What says the language of messages, the strongest first (POSIX.1-2024, 8.2).
const SAY: [&str; 3] = ["LC_ALL", "LC_MESSAGES", "LANG"];

/// The language of this computer: Spanish where it says so, otherwise English.
pub fn of_environment() -> Language {
    language(SAY.map(|name| env::var(name).ok()))
}

/// The words of this computer's language.
pub fn words() -> &'static Words {
    Words::of(of_environment())
}

/// The first that is there and says anything decides.
fn language(said: [Option<String>; 3]) -> Language {
    let locale = said.into_iter().flatten().find(|locale| !locale.is_empty());
    let tongue = locale
        .as_deref()
        .and_then(|locale| locale.split(['_', '-', '.', '@']).next());
    match tongue {
        Some("es") => Language::Spanish,
        _ => Language::English,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_first_that_says_anything_decides() {
        let of = |said: [&str; 3]| {
            language(said.map(|locale| (locale != "-").then(|| locale.to_owned())))
        };
        assert_eq!(of(["-", "-", "-"]), Language::English);
        assert_eq!(of(["-", "-", "es_MX.UTF-8"]), Language::Spanish);
        assert_eq!(of(["-", "-", "es"]), Language::Spanish);
        assert_eq!(of(["", "es-419", "en_US.UTF-8"]), Language::Spanish);
        assert_eq!(of(["C", "es_US", "es_US"]), Language::English);
        assert_eq!(of(["-", "-", "est_EE"]), Language::English);
    }
}
