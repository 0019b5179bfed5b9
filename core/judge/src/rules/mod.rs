//! The rules: small functions from the facts of a case to a reason, each with its source.
//!
//! A rule that cannot tell says nothing: what nobody has answered is no reason for or against anything.

pub mod against;
pub mod recover;
pub mod sections;
pub mod shingles;
pub mod waits;

use crate::as_of::AsOf;
use crate::course::Situation;
use crate::facts::{Answers, Facts};
use crate::faults::Fault;
use trade::verdict::{Question, Reason, Source, StandsOn, Strength};
use trade::words::Said;

/// A structure's case, as the rules look at it.
#[derive(Clone, Debug)]
pub struct Case<'a> {
    /// The record as of the visit.
    pub as_of: &'a AsOf<'a>,
    /// What is wrong.
    pub faults: &'a [Fault<'a>],
    /// The facts.
    pub facts: &'a Facts,
    /// The answers alone.
    pub answers: Answers,
    /// What the main course depends on besides the answers.
    pub situation: Situation,
}

impl Case<'_> {
    /// A reason that stands on one fact that is so.
    pub fn because(
        &self,
        question: Question,
        rule: &str,
        source: Source,
        strength: Strength,
    ) -> Option<Reason> {
        let fact = self.facts.fact(question);
        fact.answer
            .is_yes()
            .then(|| reason(rule, source, strength, fact.stands_on()))
    }
}

/// A reason whose sentence has no arguments.
pub fn reason(rule: &str, source: Source, strength: Strength, stands_on: Vec<StandsOn>) -> Reason {
    saying(rule, Said::new(key(rule)), source, strength, stands_on)
}

/// A reason.
pub fn saying(
    rule: &str,
    says: Said,
    source: Source,
    strength: Strength,
    stands_on: Vec<StandsOn>,
) -> Reason {
    Reason {
        rule: rule.to_owned(),
        says,
        source,
        strength,
        stands_on,
    }
}

/// The key of a rule's sentence in the message files.
pub fn key(rule: &str) -> String {
    format!("reason-{rule}")
}
