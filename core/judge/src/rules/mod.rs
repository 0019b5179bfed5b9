//! The rules: small functions from the facts of a case to a reason, each with its source.
//!
//! A rule that cannot tell says nothing: what nobody has answered is no reason for or against anything. Each file
//! answers one question: why a repair is not enough ([`against`]), what bars a re-cover ([`recover`]), what shingles,
//! flashings, chimneys, vents and attic air need, what is dangerous ([`safety`]), what is the firm's own policy
//! ([`policy`]), and how far the verdict reaches ([`limits`]). [`sections`] knows where a rule stands in each edition.

pub mod against;
pub mod chimney;
pub mod flashing;
pub mod found;
pub mod limits;
pub mod measure;
pub mod needed;
pub mod policy;
pub mod recover;
pub mod rule;
pub mod safety;
pub mod sections;
pub mod shingles;
pub mod ventilation;
pub mod vents;
pub mod waits;

use crate::as_of::{AsOf, Standing};
use crate::course::Situation;
use crate::facts::{Answers, Facts};
use crate::faults::Fault;
pub use rule::Rule;
use sections::{Irc, irc};
use trade::ids::PartId;
use trade::units::Pitch;
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

impl<'a> Case<'a> {
    /// A reason that stands on one fact, where it is so.
    pub fn because(
        &self,
        question: Question,
        rule: Rule,
        source: Source,
        strength: Strength,
    ) -> Option<Reason> {
        let fact = self.facts.fact(question);
        fact.answer
            .is_yes()
            .then(|| reason(rule, source, strength).on(fact.stands_on()))
    }

    /// What the judgement that a slope is too low stands on: the code where its pitch was measured, what was seen where it was not.
    pub fn too_low_by(&self) -> Source {
        let measured = self
            .facts
            .fact(Question::TooLow)
            .stands_on()
            .iter()
            .any(|on| matches!(on, StandsOn::Stack(_)));
        if measured {
            self.code(Irc::ShingleSlope)
        } else {
            Source::Evidence
        }
    }

    /// The section of a rule in the edition that is adopted.
    pub fn code(&self, rule: Irc) -> Source {
        irc(rule, self.as_of.rules.profile.edition)
    }

    /// This visit, as a record.
    pub fn visit(&self) -> StandsOn {
        StandsOn::Visit(self.as_of.visit.id)
    }

    /// The looks that stand at parts of one of these kinds.
    pub fn looks_at(&self, kinds: &'static [&'static str]) -> impl Iterator<Item = &Standing<'a>> {
        self.as_of
            .standing
            .iter()
            .filter(move |standing| kinds.contains(&standing.part.kind.as_str()))
    }

    /// The measured pitch of the slope that a part is on.
    pub fn pitch_at(&self, standing: &Standing<'_>) -> Option<Pitch> {
        let slope = self.as_of.history.slope(standing.part.slope?)?;
        Some(slope.pitch.as_ref()?.value)
    }
}

/// What a rule found about one part.
#[derive(Clone, Debug, PartialEq)]
pub struct Found {
    /// The part.
    pub part: PartId,
    /// What it says.
    pub reason: Reason,
}

impl Found {
    /// What a rule says of the part that a look was at.
    pub fn at(standing: &Standing<'_>, reason: Reason) -> Self {
        Self {
            part: standing.part.id,
            reason: reason.on(vec![StandsOn::Mark(standing.mark.id)]),
        }
    }
}

/// A reason whose sentence has no arguments and that stands on no record yet.
pub fn reason(rule: Rule, source: Source, strength: Strength) -> Reason {
    Reason {
        rule: rule.name().to_owned(),
        says: Said::new(rule.key()),
        source,
        strength,
        stands_on: Vec::new(),
    }
}

/// Completes a reason.
pub trait Completed {
    /// The same, standing on these records.
    #[must_use]
    fn on(self, stands_on: Vec<StandsOn>) -> Self;

    /// The same with one more argument to its sentence.
    #[must_use]
    fn with(self, name: &str, arg: impl Into<trade::words::Arg>) -> Self;
}

impl Completed for Reason {
    fn on(mut self, mut stands_on: Vec<StandsOn>) -> Self {
        stands_on.sort_unstable();
        stands_on.dedup();
        self.stands_on = stands_on;
        self
    }

    fn with(mut self, name: &str, arg: impl Into<trade::words::Arg>) -> Self {
        self.says = self.says.with(name, arg);
        self
    }
}
