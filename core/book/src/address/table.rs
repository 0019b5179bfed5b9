//! The data files beside this module: phrases, and the form each is brought to.

use std::collections::HashMap;

/// What a phrase of a table is brought to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct Entry {
    /// The form that is kept.
    pub form: &'static str,
    /// The mark before the line, or a space.
    pub mark: char,
}

/// One table, by phrase.
pub(crate) struct Table {
    by_phrase: HashMap<&'static str, Entry>,
    longest: usize,
}

impl Table {
    /// Reads lines `[mark ]form = phrase, phrase, …`. With `own`, a form is read as itself too.
    pub fn of_phrases(text: &'static str, own: bool) -> Self {
        let mut table = Self::empty();
        for (mark, line) in lines(text) {
            let Some((form, phrases)) = line.split_once('=') else {
                continue;
            };
            let entry = Entry {
                form: form.trim(),
                mark,
            };
            if own {
                table.insert(entry.form, entry);
            }
            for phrase in phrases.split(',') {
                table.insert(phrase.trim(), entry);
            }
        }
        table
    }

    /// Reads lines `[mark ]word word …`, of which the one at `kept` is the form and all are read as it.
    pub fn of_words(text: &'static str, kept: usize) -> Self {
        let mut table = Self::empty();
        for (mark, line) in lines(text) {
            let Some(form) = line.split_whitespace().nth(kept) else {
                continue;
            };
            for word in line.split_whitespace() {
                table.insert(word, Entry { form, mark });
            }
        }
        table
    }

    fn empty() -> Self {
        Self {
            by_phrase: HashMap::new(),
            longest: 0,
        }
    }

    fn insert(&mut self, phrase: &'static str, entry: Entry) {
        self.longest = self.longest.max(phrase.split(' ').count());
        self.by_phrase.entry(phrase).or_insert(entry);
    }

    /// How many words the longest phrase has.
    pub fn longest(&self) -> usize {
        self.longest
    }

    /// What one word is brought to.
    pub fn get(&self, word: &str) -> Option<Entry> {
        self.by_phrase.get(word).copied()
    }

    /// The longest phrase that opens `words`: what it is brought to, and how many words it takes.
    pub fn opening(&self, words: &[String]) -> Option<(Entry, usize)> {
        (1..=self.longest.min(words.len()))
            .rev()
            .find_map(|n| Some((self.get(&words[..n].join(" "))?, n)))
    }

    /// The longest phrase that closes `words`.
    pub fn closing(&self, words: &[String]) -> Option<(Entry, usize)> {
        (1..=self.longest.min(words.len()))
            .rev()
            .find_map(|n| Some((self.get(&words[words.len() - n..].join(" "))?, n)))
    }

    /// Every phrase with what it is brought to, in no order.
    pub fn all(&self) -> impl Iterator<Item = (&'static str, Entry)> + '_ {
        self.by_phrase
            .iter()
            .map(|(phrase, entry)| (*phrase, *entry))
    }
}

/// The lines that say something, each with its mark or a space.
fn lines(text: &'static str) -> impl Iterator<Item = (char, &'static str)> {
    text.lines()
        .filter(|line| !line.is_empty() && !line.starts_with("# "))
        .map(|line| match line.split_once(' ') {
            Some((mark @ ("+" | "-" | "*" | "!"), rest)) => {
                (mark.chars().next().unwrap_or(' '), rest)
            }
            _ => (' ', line),
        })
}
