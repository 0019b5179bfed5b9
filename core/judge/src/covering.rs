//! Over which slopes a new covering goes, and what it takes along.

use crate::course::{Decision, Ground};
use crate::faults::Fault;
use crate::rules::Case;
use std::collections::BTreeSet;
use trade::catalogue::{CoveredAnew, Effect, RemedyKey, RemedySize};
use trade::ids::SlopeId;
use trade::property::{Part, Slope};
use trade::verdict::{Course, Question};

/// A new covering as a verdict means it.
#[derive(Clone, Debug)]
pub struct NewCovering<'a> {
    /// Tear-off or re-cover.
    pub course: Course,
    /// The slopes, by letter. One slope may be done alone where it can be tied in.
    pub slopes: Vec<&'a Slope>,
    /// Whether some slopes are left out.
    pub some_only: bool,
}

impl<'a> NewCovering<'a> {
    /// What is covered anew; `None` where the verdict means no new covering.
    pub fn of(case: &Case<'a>, decision: &Decision) -> Option<Self> {
        if !matches!(decision.course, Course::Recover | Course::TearOff) {
            return None;
        }
        let all: Vec<&Slope> = case
            .as_of
            .history
            .slopes
            .iter()
            .filter(|slope| slope.structure == case.as_of.structure)
            .collect();
        let meant = meant(case, decision);
        let slopes: Vec<&Slope> = all
            .iter()
            .copied()
            .filter(|slope| meant.is_empty() || meant.contains(&slope.id))
            .collect();
        Some(Self {
            course: decision.course,
            some_only: slopes.len() < all.len(),
            slopes,
        })
    }

    /// The slopes, where some are left out; empty where it goes over all.
    pub fn named(&self) -> Vec<SlopeId> {
        if self.some_only {
            self.slopes.iter().map(|slope| slope.id).collect()
        } else {
            Vec::new()
        }
    }

    /// Whether a part lies on what is covered anew; what belongs to no one slope does.
    pub fn reaches(&self, part: &Part) -> bool {
        part.slope
            .is_none_or(|own| self.slopes.iter().any(|slope| slope.id == own))
    }

    /// Whether a fault is put right along with it.
    pub fn takes_along(&self, fault: &Fault<'_>) -> bool {
        self.reaches(fault.part)
            && !fault.is_referred()
            && (self.renews(fault) || self.cures(fault))
    }

    /// A tear-off renews what a re-cover lies over.
    fn renews(&self, fault: &Fault<'_>) -> bool {
        fault.kind.is_some_and(|kind| match kind.covered_anew {
            CoveredAnew::Renewed => true,
            CoveredAnew::LaidOver => self.course == Course::TearOff,
            CoveredAnew::Stays => false,
        })
    }

    fn cures(&self, fault: &Fault<'_>) -> bool {
        let remedy = RemedyKey::from(match self.course {
            Course::Recover => "recover",
            _ => "tear-off",
        });
        fault.size == RemedySize::Covering
            || fault.defect.is_some_and(|defect| {
                defect.effect_on(&fault.part.kind, &remedy) == Some(&Effect::Cures)
            })
    }
}

/// The slopes that the grounds name; empty where they mean all.
fn meant(case: &Case<'_>, decision: &Decision) -> BTreeSet<SlopeId> {
    let mut meant = BTreeSet::new();
    for ground in &decision.grounds {
        let slopes = match ground {
            Ground::Is(question) => case.facts.fact(*question).slopes(),
            Ground::OnlyACovering => case
                .faults
                .iter()
                .filter(|fault| fault.only_a_covering_cures())
                .filter_map(|fault| fault.part.slope)
                .collect(),
            Ground::Layers => case.facts.fact(Question::TwoLayers).slopes(),
            Ground::MustLast => BTreeSet::new(),
        };
        if slopes.is_empty() {
            return BTreeSet::new();
        }
        meant.extend(slopes);
    }
    meant
}
