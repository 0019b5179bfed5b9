//! Three answers: yes, no, unknown. Unknown stays unknown until somebody looks.

use schemars::JsonSchema;
use serde::{Deserialize, Serialize};

/// The answer to a question of fact (Kleene's strong three-valued logic).
#[derive(
    JsonSchema,
    Clone,
    Copy,
    Debug,
    Default,
    PartialEq,
    Eq,
    PartialOrd,
    Ord,
    Hash,
    Serialize,
    Deserialize,
)]
#[serde(rename_all = "kebab-case")]
pub enum Answer {
    /// It is so.
    Yes,
    /// It is not so.
    No,
    /// Nobody has looked, or nobody could tell.
    #[default]
    Unknown,
}

impl Answer {
    /// All three.
    pub const ALL: [Self; 3] = [Self::Yes, Self::No, Self::Unknown];

    /// Its key in the message files.
    pub fn key(self) -> &'static str {
        match self {
            Self::Yes => "answer-yes",
            Self::No => "answer-no",
            Self::Unknown => "answer-unknown",
        }
    }

    /// Yes if both are, no if either is not.
    #[must_use]
    pub fn and(self, other: Self) -> Self {
        match (self, other) {
            (Self::No, _) | (_, Self::No) => Self::No,
            (Self::Yes, Self::Yes) => Self::Yes,
            _ => Self::Unknown,
        }
    }

    /// Yes if either is, no if neither is.
    #[must_use]
    pub fn or(self, other: Self) -> Self {
        self.negated().and(other.negated()).negated()
    }

    /// The opposite; unknown stays unknown.
    #[must_use]
    pub fn negated(self) -> Self {
        match self {
            Self::Yes => Self::No,
            Self::No => Self::Yes,
            Self::Unknown => Self::Unknown,
        }
    }

    /// Whether it is certainly so.
    pub fn is_yes(self) -> bool {
        self == Self::Yes
    }

    /// Whether it is certainly not so.
    pub fn is_no(self) -> bool {
        self == Self::No
    }

    /// Whether nobody knows.
    pub fn is_unknown(self) -> bool {
        self == Self::Unknown
    }
}

impl From<bool> for Answer {
    fn from(yes: bool) -> Self {
        if yes { Self::Yes } else { Self::No }
    }
}

#[cfg(test)]
mod tests {
    use super::Answer::{self, No, Unknown, Yes};

    #[test]
    fn tables_of_three_values() {
        // Kleene's strong tables (Introduction to Metamathematics, 1952, s. 64), from memory.
        let and: [(Answer, Answer, Answer); 6] = [
            (Yes, Yes, Yes),
            (Yes, No, No),
            (No, No, No),
            (Yes, Unknown, Unknown),
            (No, Unknown, No),
            (Unknown, Unknown, Unknown),
        ];
        for (a, b, both) in and {
            assert_eq!(a.and(b), both);
            assert_eq!(b.and(a), both);
            assert_eq!(a.negated().or(b.negated()), both.negated());
        }
    }
}
