//! How one thing that the caller asks for stands to what was advised last.

use super::advice::{Advice, Advised, course_of};
use super::record::{Known, Record};
use crate::thread::finding::Finding;
use jiff::civil::Date;
use trade::catalogue::{CoveredAnew, KindKey, Months, RemedyKey, RemedySize};
use trade::mark::DefectSeen;
use trade::verdict::{Course, LicensedTrade, Narrowed, Refused, Task};
use trade::visit::Ask;

/// How a request stands to what was advised last.
pub(super) enum Stance<'a> {
    /// What was advised has been done since.
    Done,
    /// A rule forbids it, or we refused it.
    Refused(&'a Refused),
    /// It makes what was found worse.
    Worsens(DefectSeen),
    /// It was sent to another trade.
    Referred(LicensedTrade),
    /// It holds off what was found, and cures none of it.
    BuysTime(DefectSeen, Months),
    /// It was the first step only; with the day until which it was to hold.
    FirstStep(Option<Date>),
    /// It is less than what was advised.
    Smaller,
    /// It is more than what was advised.
    Larger,
    /// It is what was advised.
    Agrees,
    /// No remedy was asked for: what was advised for such parts.
    For(Vec<RemedyKey>),
    /// Nothing was to be decided before a closer look.
    LookFirst,
    /// Nothing was said that bears on it.
    Silent,
}

impl Stance<'_> {
    /// Whether the request goes against what was advised.
    pub fn contradicts(&self, today: Date) -> bool {
        match self {
            Self::Refused(_)
            | Self::Worsens(_)
            | Self::Referred(_)
            | Self::BuysTime(..)
            | Self::Smaller => true,
            Self::FirstStep(until) => until.is_some_and(|until| until < today),
            Self::Done
            | Self::Larger
            | Self::Agrees
            | Self::For(_)
            | Self::LookFirst
            | Self::Silent => false,
        }
    }
}

/// How one thing asked for stands to the advice on one structure.
pub(super) fn of<'a>(record: &Record<'a>, ask: &Ask, advice: &Advice<'a>) -> Stance<'a> {
    if advice.done {
        return Stance::Done;
    }
    let Some(remedy) = &ask.remedy else {
        return without_remedy(record, ask, advice);
    };
    let wanted = Wanted {
        record,
        kind: &ask.kind,
        remedy,
        advice,
    };
    wanted
        .advised()
        .or_else(|| wanted.refused())
        .or_else(|| wanted.referred())
        .or_else(|| wanted.treats_only())
        .or_else(|| wanted.compared())
        .unwrap_or(Stance::Silent)
}

fn without_remedy<'a>(record: &Record<'a>, ask: &Ask, advice: &Advice<'a>) -> Stance<'a> {
    let mut remedies: Vec<RemedyKey> = Vec::new();
    for task in tasks_on(record, advice, &ask.kind) {
        let fresh = task.remedy.iter().filter(|key| !remedies.contains(key));
        let fresh: Vec<RemedyKey> = fresh.cloned().collect();
        remedies.extend(fresh);
    }
    if remedies.is_empty() {
        Stance::Silent
    } else {
        Stance::For(remedies)
    }
}

/// A remedy asked for on a kind of part, beside the advice on one structure.
struct Wanted<'r, 'a> {
    record: &'r Record<'a>,
    kind: &'r KindKey,
    remedy: &'r RemedyKey,
    advice: &'r Advice<'a>,
}

impl<'a> Wanted<'_, 'a> {
    /// A step named this very remedy on such a part, or was this course as a whole.
    fn advised(&self) -> Option<Stance<'a>> {
        let course = course_of(self.record, self.remedy);
        let step = self.advice.steps.iter().find(|step| {
            let whole =
                Some(step.course) == course && step.tasks.iter().all(|task| task.remedy.is_none());
            whole || self.names(step)
        })?;
        let first_only = step.course == Course::MakeSafe
            && self.advice.main.is_some_and(|main| main > Course::MakeSafe);
        Some(if first_only {
            Stance::FirstStep(step.until)
        } else {
            Stance::Agrees
        })
    }

    fn names(&self, step: &Advised<'_>) -> bool {
        step.tasks.iter().any(|task| {
            task.remedy.as_ref() == Some(self.remedy) && is_on(self.record, task, self.kind)
        })
    }

    fn refused(&self) -> Option<Stance<'a>> {
        if !self.is_renewed_with_covering() {
            return None;
        }
        self.advice
            .refused
            .iter()
            .find(|refused| self.falls_under(refused))
            .map(Stance::Refused)
    }

    fn falls_under(&self, refused: &Refused) -> bool {
        let course = course_of(self.record, self.remedy);
        match refused.narrowed {
            Narrowed::Whole => course == Some(refused.course),
            Narrowed::BeyondMakingSafe => {
                matches!(course, Some(Course::Maintain | Course::Repair))
            }
            Narrowed::SealantAlone => {
                self.record.size(self.remedy) == Some(RemedySize::Upkeep) && !self.cures_any()
            }
            // Nobody says on the telephone which flashings are meant to stay.
            Narrowed::OldFlashings => false,
        }
    }

    fn referred(&self) -> Option<Stance<'a>> {
        if self.record.size(self.remedy) == Some(RemedySize::Referred) {
            return None;
        }
        tasks_on(self.record, self.advice, self.kind)
            .find_map(|task| task.trade)
            .map(Stance::Referred)
    }

    /// What the remedy does to what stands open on such parts, where it cures none of it.
    fn treats_only(&self) -> Option<Stance<'a>> {
        if self.cures_any() {
            return None;
        }
        self.open().find_map(|(known, finding)| {
            let remedies = known.standing.story.remedies();
            let seen = finding.defects.first()?.clone();
            if remedies.worsens(finding, self.remedy) {
                return Some(Stance::Worsens(seen));
            }
            let months = remedies.usual(finding, self.remedy)?;
            Some(Stance::BuysTime(seen, months))
        })
    }

    fn compared(&self) -> Option<Stance<'a>> {
        let course = course_of(self.record, self.remedy)?;
        let main = self.advice.main?;
        if main == Course::LookFirst {
            return Some(Stance::LookFirst);
        }
        if course == Course::Refer || main == Course::Refer || !self.bears_on(main) {
            return None;
        }
        match course.cmp(&main) {
            std::cmp::Ordering::Less => Some(Stance::Smaller),
            std::cmp::Ordering::Greater => Some(Stance::Larger),
            std::cmp::Ordering::Equal => None,
        }
    }

    /// Whether the main course has to do with such parts at all: a new covering with all that it renews, anything less with what it names.
    fn bears_on(&self, main: Course) -> bool {
        match main {
            Course::Recover | Course::TearOff => self.is_renewed_with_covering(),
            Course::Leave => true,
            _ => self
                .advice
                .steps
                .iter()
                .filter(|step| step.course == main)
                .flat_map(|step| &step.tasks)
                .any(|task| is_on(self.record, task, self.kind)),
        }
    }

    fn is_renewed_with_covering(&self) -> bool {
        self.record
            .rules
            .catalogue
            .kind(self.kind)
            .is_none_or(|kind| kind.covered_anew != CoveredAnew::Stays)
    }

    /// Whether the remedy cures anything that stands open on such parts.
    fn cures_any(&self) -> bool {
        self.open().any(|(known, finding)| {
            let remedies = known.standing.story.remedies();
            finding
                .defects
                .iter()
                .any(|seen| remedies.cures(seen, self.remedy))
        })
    }

    /// The causes that stand open on such parts of the structure.
    fn open(&self) -> impl Iterator<Item = (&Known<'a>, &Finding)> {
        self.record
            .parts
            .iter()
            .filter(|known| {
                let part = known.standing.story.part;
                part.structure == self.advice.structure && &part.kind == self.kind
            })
            .filter(|known| known.became.is_open())
            .flat_map(|known| {
                let open = known.standing.story.open.iter();
                open.map(move |open| (known, &open.finding))
            })
    }
}

fn tasks_on<'r>(
    record: &'r Record<'_>,
    advice: &'r Advice<'_>,
    kind: &'r KindKey,
) -> impl Iterator<Item = &'r Task> {
    advice
        .steps
        .iter()
        .flat_map(|step| &step.tasks)
        .filter(move |task| is_on(record, task, kind))
}

fn is_on(record: &Record<'_>, task: &Task, kind: &KindKey) -> bool {
    record
        .history
        .part(task.part)
        .is_some_and(|part| &part.kind == kind)
}
