//! The causes found on a part, and what work did to each.

use super::touch::{Touch, Touched};
use trade::catalogue::{Catalogue, CauseKey, Effect, KindKey, Months, RemedyKey};
use trade::mark::{DefectSeen, Mark, Rung};
use trade::thread::Patch;

/// A cause found on a part, with the defects that show it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct Finding {
    /// The cause.
    pub cause: CauseKey,
    /// Its defects, the one that weighs most first.
    pub defects: Vec<DefectSeen>,
}

/// What work did to a cause.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Fate {
    /// Each of its defects got a remedy that cures it.
    Cured,
    /// Something was done about it that does not cure it.
    Patched,
    /// Work was done on the part, none of it about this cause.
    LeftAlone,
    /// No work is known.
    Untouched,
}

/// The causes that a mark shows, the one that weighs most first. On a sound part none, whatever small things are noted there.
pub(crate) fn findings(mark: &Mark, catalogue: &Catalogue) -> Vec<Finding> {
    if mark.condition.rung() == Some(Rung::Sound) {
        return Vec::new();
    }
    let mut found: Vec<Finding> = Vec::new();
    for seen in &mark.defects {
        let cause = cause_of(seen, catalogue);
        match found.iter_mut().find(|finding| finding.cause == cause) {
            Some(finding) => finding.defects.push(seen.clone()),
            None => found.push(Finding {
                cause,
                defects: vec![seen.clone()],
            }),
        }
    }
    found
}

/// The cause of a defect; one that the catalogue does not know is a cause of its own.
pub(crate) fn cause_of(seen: &DefectSeen, catalogue: &Catalogue) -> CauseKey {
    catalogue.defect(&seen.defect).map_or_else(
        || CauseKey::from(seen.defect.as_str()),
        |defect| defect.cause.clone(),
    )
}

/// Which remedy does what on one kind of part.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Remedies<'a> {
    /// Defects and their remedies.
    pub catalogue: &'a Catalogue,
    /// The kind of part.
    pub kind: &'a KindKey,
}

impl<'a> Remedies<'a> {
    fn effect(self, seen: &DefectSeen, remedy: &RemedyKey) -> Option<&'a Effect> {
        self.catalogue
            .defect(&seen.defect)?
            .effect_on(self.kind, remedy)
    }

    /// Whether a remedy does anything, good or bad, to a cause.
    pub fn treats(self, finding: &Finding, remedy: &RemedyKey) -> bool {
        finding
            .defects
            .iter()
            .any(|seen| self.effect(seen, remedy).is_some())
    }

    /// Whether a remedy makes a cause worse.
    pub fn worsens(self, finding: &Finding, remedy: &RemedyKey) -> bool {
        finding
            .defects
            .iter()
            .any(|seen| self.effect(seen, remedy) == Some(&Effect::Worsens))
    }

    /// Whether a remedy cures a defect.
    pub fn cures(self, seen: &DefectSeen, remedy: &RemedyKey) -> bool {
        self.effect(seen, remedy) == Some(&Effect::Cures)
    }

    /// Whether a remedy cures every defect of a cause.
    pub fn cures_all(self, finding: &Finding, remedy: &RemedyKey) -> bool {
        finding.defects.iter().all(|seen| self.cures(seen, remedy))
    }

    /// How long a remedy usually holds a cause off, where it does no more than that.
    pub fn usual(self, finding: &Finding, remedy: &RemedyKey) -> Option<Months> {
        finding
            .defects
            .iter()
            .find_map(|seen| match self.effect(seen, remedy) {
                Some(Effect::BuysTime { months, .. }) => Some(*months),
                _ => None,
            })
    }

    /// Whether the works together cure every defect of a cause.
    pub fn cured_by(self, finding: &Finding, works: &[Touched<'_>]) -> bool {
        finding.defects.iter().all(|seen| {
            works
                .iter()
                .any(|done| matches!(done.touch, Touch::Treats(remedy) if self.cures(seen, remedy)))
        })
    }

    /// Whether a work was done about one cause: a remedy that the catalogue knows for any of the causes found is about those alone; anything
    /// else that was done to this very part is about all of them. Common practice, no source.
    pub fn is_about(self, done: &Touched<'_>, finding: &Finding, all: &[Finding]) -> bool {
        match done.touch {
            Touch::Something => true,
            Touch::Treats(remedy) => {
                self.treats(finding, remedy)
                    || (done.direct && !all.iter().any(|other| self.treats(other, remedy)))
            }
            Touch::Replaces | Touch::Covers | Touch::TakesDown => false,
        }
    }

    /// The works about one cause that do not cure it, oldest first.
    pub fn patches(self, finding: &Finding, all: &[Finding], works: &[Touched<'_>]) -> Vec<Patch> {
        let cured = self.cured_by(finding, works);
        works
            .iter()
            .filter(|done| self.is_about(done, finding, all))
            .filter(|done| match done.touch {
                Touch::Treats(remedy) if cured => {
                    !finding.defects.iter().any(|seen| self.cures(seen, remedy))
                }
                Touch::Treats(remedy) => !self.cures_all(finding, remedy),
                _ => true,
            })
            .map(|done| self.patch(finding, done))
            .collect()
    }

    fn patch(self, finding: &Finding, done: &Touched<'_>) -> Patch {
        let remedy = match done.touch {
            Touch::Treats(remedy) => Some(remedy),
            _ => None,
        };
        Patch {
            remedy: remedy.cloned(),
            when: done.work.when,
            by: done.work.by,
            usual: remedy.and_then(|remedy| self.usual(finding, remedy)),
        }
    }

    /// What works did to one cause, each with whether it was about that cause.
    pub fn fate(self, finding: &Finding, works: &[(Touched<'_>, bool)]) -> Fate {
        let all: Vec<Touched<'_>> = works.iter().map(|(done, _)| *done).collect();
        if self.cured_by(finding, &all) {
            Fate::Cured
        } else if works.iter().any(|(_, about)| *about) {
            Fate::Patched
        } else if works.is_empty() {
            Fate::Untouched
        } else {
            Fate::LeftAlone
        }
    }
}
