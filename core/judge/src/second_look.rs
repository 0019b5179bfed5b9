//! The second look: what became of a part since its last real mark.
//!
//! The rules stand in the order in which they are asked; the first that fits is the answer. All are common practice, no source.

use crate::thread::finding::{Fate, Finding, cause_of};
use crate::thread::since::{Sight, Since};
use crate::thread::story::{Open, Story};
use crate::thread::timeline::{Look, Timeline};
use trade::ids::PartId;
use trade::mark::{DefectSeen, NotSeen, Rung};
use trade::property::Part;
use trade::thread::{Became, Thread};

/// The threads that a visit must answer: what was found, or patched, and still stands open, worst first.
///
/// A part that was sound and was not seen again asks for nothing but a look.
pub fn second_look(threads: &[Thread]) -> Vec<&Thread> {
    let mut open: Vec<&Thread> = threads
        .iter()
        .filter(|thread| must_answer(thread))
        .collect();
    open.sort_by_key(|thread| std::cmp::Reverse(thread.rung_now.max(thread.rung_then)));
    open
}

/// Whether a thread carries a finding that still stands.
pub fn must_answer(thread: &Thread) -> bool {
    let found = thread.cause.is_some() || thread.rung_then > Some(Rung::Sound);
    match thread.became {
        Became::Worse => true,
        became => became.is_open() && found,
    }
}

/// One part at present: its story, what was done since, and what this visit sees.
pub(crate) struct Present<'c, 'a> {
    /// The story up to the last look before this visit.
    pub story: &'c Story<'a>,
    /// What was done since.
    pub since: &'c Since<'a>,
    /// The mark of this visit.
    pub now: Option<&'c Look<'a>>,
    /// What it can tell.
    pub sight: Sight,
    /// The causes it shows.
    pub shown: &'c [Finding],
    /// The record.
    pub timeline: &'c Timeline<'a>,
}

impl<'a> Present<'_, 'a> {
    /// What became of the part.
    pub fn became(&self) -> Became {
        if self.is_gone() {
            Became::Gone
        } else if self.is_hidden() {
            Became::Hidden
        } else if self.story.last.is_none() {
            Became::New
        } else if self.is_superseded() {
            Became::Replaced
        } else if self.is_not_seen_again() {
            Became::NotSeenAgain
        } else if self.is_replaced() {
            Became::Replaced
        } else if self.is_cured() {
            Became::Cured
        } else if self.is_patched() {
            Became::Patched
        } else if self.is_worse() {
            Became::Worse
        } else {
            self.compared()
        }
    }

    /// Taken down, itself or with its structure, and nothing is seen in its place.
    fn is_gone(&self) -> bool {
        self.sight == Sight::Gone || (self.is_down() && !self.stands_now() && !self.is_superseded())
    }

    fn is_down(&self) -> bool {
        self.story.is_down(self.timeline, self.since, self.now)
    }

    fn stands_now(&self) -> bool {
        self.sight != Sight::Gone && self.story.counts(self.sight)
    }

    /// A part taken down, in whose place another of its kind was seen since.
    fn is_superseded(&self) -> bool {
        self.is_down() && !self.stands_now() && stands_in_place(self.timeline, self.story)
    }

    /// Covered over, so that it cannot be judged.
    fn is_hidden(&self) -> bool {
        let why = self.now.and_then(|look| look.mark.condition.not_seen());
        why == Some(NotSeen::Hidden) || self.since.cover_at(self.now).is_some()
    }

    /// Not looked at this time; that somebody says it is well is no look.
    fn is_not_seen_again(&self) -> bool {
        !self.story.counts(self.sight)
    }

    /// A new part stands there. Its own condition is a fresh start.
    fn is_replaced(&self) -> bool {
        self.since.replaced.is_some() || self.is_down()
    }

    /// Each cause got what cures it, none shows, and somebody saw the part sound.
    fn is_cured(&self) -> bool {
        self.sight == Sight::Eyes(Rung::Sound)
            && !self.story.open.is_empty()
            && self
                .story
                .open
                .iter()
                .all(|open| self.fate(open) == Fate::Cured && !self.shows(open))
    }

    fn is_patched(&self) -> bool {
        self.story.open.iter().any(|open| self.is_patch(open))
    }

    /// Something was done, the cause remains, however good it looks today. An older patch goes on being one until the cause shows again
    /// or the part gets worse.
    pub fn is_patch(&self, open: &Open<'a>) -> bool {
        let shows = self.shows(open);
        let quiet = !shows && self.sight.rung() <= self.story.rung();
        match self.fate(open) {
            Fate::Patched => true,
            Fate::Cured => shows && self.has_patches(open),
            Fate::LeftAlone if !shows && self.sight.rung() == Some(Rung::Sound) => true,
            Fate::LeftAlone | Fate::Untouched => open.worked && quiet,
        }
    }

    fn has_patches(&self, open: &Open<'a>) -> bool {
        self.story.is_patched(self.timeline, open, self.since)
    }

    /// A lower rung, or the same with a new or larger defect of the same cause.
    fn is_worse(&self) -> bool {
        let (then, now) = (self.story.rung(), self.sight.rung());
        now > then || (now == then && self.has_grown())
    }

    fn has_grown(&self) -> bool {
        let before = self
            .story
            .last
            .map_or(&[][..], |look| look.mark.defects.as_slice());
        self.shown
            .iter()
            .filter(|finding| self.was_known(finding, before))
            .flat_map(|finding| &finding.defects)
            .any(|seen| is_new_or_larger(seen, before))
    }

    fn was_known(&self, finding: &Finding, before: &[DefectSeen]) -> bool {
        let catalogue = self.story.rules.catalogue;
        let open = || self.story.open.iter().map(|open| &open.finding.cause);
        open().any(|cause| cause == &finding.cause)
            || before
                .iter()
                .any(|seen| cause_of(seen, catalogue) == finding.cause)
    }

    /// By the rungs alone: the same, sound then and now, or better with no work known that bears on it.
    fn compared(&self) -> Became {
        let (then, now) = (self.story.rung(), self.sight.rung());
        if now == then {
            return match now {
                Some(Rung::Sound) => Became::Quiet,
                _ => Became::StillOpen,
            };
        }
        let came_back = |open: &Open<'a>| {
            self.shows(open) && !matches!(self.fate(open), Fate::Untouched | Fate::LeftAlone)
        };
        if self.story.open.iter().any(came_back) {
            Became::StillOpen
        } else {
            Became::Better
        }
    }

    /// What the work since did to an open cause.
    pub fn fate(&self, open: &Open<'a>) -> Fate {
        self.story.fate(self.timeline, open, self.since)
    }

    /// Whether an open cause shows now.
    pub fn shows(&self, open: &Open<'a>) -> bool {
        self.shown
            .iter()
            .any(|finding| finding.cause == open.finding.cause)
    }
}

fn is_new_or_larger(seen: &DefectSeen, before: &[DefectSeen]) -> bool {
    before
        .iter()
        .filter(|known| known.defect == seen.defect)
        .map(|known| known.extent)
        .max()
        .is_none_or(|extent| seen.extent > extent)
}

/// Whether another part of the same kind, at the same place by slope and name, was first seen after the last look at this one.
fn stands_in_place(timeline: &Timeline<'_>, story: &Story<'_>) -> bool {
    let part = story.part;
    let same_place = |other: &&Part| {
        other.id != part.id
            && other.structure == part.structure
            && other.slope == part.slope
            && other.kind == part.kind
            && other.which == part.which
    };
    timeline
        .history
        .parts
        .iter()
        .filter(same_place)
        .any(|other| is_born_after(timeline, other.id, story))
}

fn is_born_after(timeline: &Timeline<'_>, other: PartId, story: &Story<'_>) -> bool {
    let looks = timeline.looks(other);
    let Some(first) = looks.first() else {
        return false;
    };
    let stands = looks
        .last()
        .is_some_and(|look| look.mark.condition.rung().is_some());
    stands
        && story
            .last
            .is_some_and(|last| (last.visit.on, last.visit.id) < (first.visit.on, first.visit.id))
}
