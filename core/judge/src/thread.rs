//! Threads: one part's marks through all visits, and what became of it.

pub(crate) mod finding;
pub(crate) mod since;
pub(crate) mod story;
pub(crate) mod timeline;
pub(crate) mod touch;

use crate::Rules;
use crate::second_look::Present;
use finding::{Fate, Finding};
use since::{Sight, Since};
use story::{Open, Story};
use timeline::{Look, Timeline};
use trade::catalogue::CauseKey;
use trade::history::History;
use trade::ids::{PartId, VisitId};
use trade::mark::{Mark, NotSeen, Rung};
use trade::property::Part;
use trade::thread::{Became, Patch, Thread};
use trade::work::By;

/// Every part's thread as of one visit: what that visit found, beside the last real mark before it.
///
/// Marks, works and parts of later visits are left out, and so is what was done later. A part without any mark by then has no thread, nor has
/// one that was gone by the visit before and that this one found nothing of; a part that this visit has not marked is one that it has not
/// seen. Empty where the visit is not in the record.
pub fn threads(history: &History, visit: VisitId, rules: &Rules<'_>) -> Vec<Thread> {
    let Some(timeline) = Timeline::up_to(history, visit) else {
        return Vec::new();
    };
    let before = timeline
        .visit_before()
        .and_then(|before| Some((Timeline::up_to(history, before)?, before)));
    history
        .parts
        .iter()
        .filter_map(|part| thread_at(&timeline, part, visit, *rules))
        .filter(|thread| {
            !before
                .as_ref()
                .is_some_and(|(timeline, before)| had_ended(timeline, *before, thread, *rules))
        })
        .collect()
}

/// Whether a part was gone by the visit before, and no mark says anything of it now.
fn had_ended(before: &Timeline<'_>, visit: VisitId, thread: &Thread, rules: Rules<'_>) -> bool {
    let is_told_now = thread
        .now
        .and_then(|mark| before.history.mark(mark))
        .is_some_and(Mark::is_real);
    thread.became == Became::Gone
        && !is_told_now
        && before
            .history
            .part(thread.part)
            .and_then(|part| thread_at(before, part, visit, rules))
            .is_some_and(|then| then.became == Became::Gone)
}

/// Every part's thread as it stands on a day, between visits: `now` is never set, and what became of it says how the last finding stands,
/// work since included.
///
/// Gone, hidden, replaced and patched are what is known to be so; not seen again is what the last visit to mark it did not see; still open is
/// what was found bad, cured or not, until somebody has seen it sound; quiet was sound at the last look; new was never seen.
pub fn standing(history: &History, today: jiff::civil::Date, rules: &Rules<'_>) -> Vec<Thread> {
    let timeline = Timeline::on(history, today);
    history
        .parts
        .iter()
        .filter_map(|part| Standing::of(&timeline, part, *rules))
        .map(|standing| standing.thread(&timeline))
        .collect()
}

/// Every patch on one cause of one part, oldest first, over all that is recorded; a cure that was seen sound, or a new part, ends the count.
pub fn patches_on(
    history: &History,
    part: PartId,
    cause: &CauseKey,
    rules: &Rules<'_>,
) -> Vec<Patch> {
    let timeline = Timeline::whole(history);
    history
        .part(part)
        .and_then(|part| Standing::of(&timeline, part, *rules))
        .map(|standing| standing.story.patches_on(cause, &standing.since))
        .unwrap_or_default()
}

fn thread_at<'a>(
    timeline: &Timeline<'a>,
    part: &'a Part,
    visit: VisitId,
    rules: Rules<'a>,
) -> Option<Thread> {
    let looks = timeline.looks(part.id);
    let (now, before) = match looks.split_last()? {
        (last, rest) if last.visit.id == visit => (Some(last), rest),
        _ => (None, looks.as_slice()),
    };
    let story = Story::tell(part, timeline, rules, before);
    let since = story.since(timeline, now);
    let sight = since.sight(now);
    let shown = now.map(|look| story.shown(look)).unwrap_or_default();
    let present = Present {
        story: &story,
        since: &since,
        now,
        sight,
        shown: &shown,
        timeline,
    };
    Some(told(&present))
}

/// The thread of one part on one visit.
fn told(present: &Present<'_, '_>) -> Thread {
    let became = present.became();
    let cause = cause_in_question(present, became);
    let patches = cause
        .as_ref()
        .map(|cause| patches_by_now(present, cause))
        .unwrap_or_default();
    Thread {
        part: present.story.part.id,
        marks: present.story.real_marks(present.timeline),
        became,
        earlier: present.story.last.map(|look| look.mark.id),
        now: present.now.map(|look| look.mark.id),
        rung_then: present.story.rung(),
        rung_now: present.now.and_then(|look| look.mark.condition.rung()),
        by: whose(present.since, became, &patches),
        callback: callback(present),
        cause,
        patches,
    }
}

fn patches_by_now(present: &Present<'_, '_>, cause: &CauseKey) -> Vec<Patch> {
    let Some(look) = present.now.filter(|_| present.story.counts(present.sight)) else {
        return present.story.patches_on(cause, present.since);
    };
    let mut story = present.story.clone();
    story.turn(present.timeline, look);
    story.patches.remove(cause).unwrap_or_default()
}

/// The cause that the earlier finding had and that is still in question; where a sound part got worse, the one that shows now.
fn cause_in_question(present: &Present<'_, '_>, became: Became) -> Option<CauseKey> {
    let open = || present.story.open.iter();
    let first = |fits: &dyn Fn(&&Open<'_>) -> bool| open().find(fits).map(|open| &open.finding);
    let shows = |open: &&Open<'_>| present.shows(open);
    let unanswered = |open: &&Open<'_>| present.fate(open) != Fate::Cured;
    let finding: Option<&Finding> = match became {
        Became::Gone | Became::Replaced | Became::Cured | Became::Quiet | Became::New => None,
        Became::Hidden | Became::NotSeenAgain => first(&|_| true),
        Became::Patched => first(&|open| present.is_patch(open)),
        Became::Worse => first(&shows).or(present.shown.first()),
        Became::StillOpen | Became::Better => first(&shows).or(first(&unanswered)),
    };
    finding.map(|finding| finding.cause.clone())
}

/// Whose the latest work since the last look was; under an older patch, whose that was.
fn whose(since: &Since<'_>, became: Became, patches: &[Patch]) -> Option<By> {
    let since = since.all.last().map(|done| done.work.by);
    let older = patches
        .last()
        .filter(|_| became == Became::Patched)
        .map(|patch| patch.by);
    since.or(older)
}

fn callback(present: &Present<'_, '_>) -> Option<By> {
    let look = present
        .now
        .filter(|_| present.story.counts(present.sight))?;
    let mut cures = present.story.cures.clone();
    cures.extend(present.story.cures_in(present.since));
    present
        .story
        .callback_at(&cures, present.shown, look.visit.on)
        .map(|work| work.by)
}

/// One part as it stands between visits.
pub(crate) struct Standing<'a> {
    /// Its story up to its last look.
    pub story: Story<'a>,
    /// What is known to have been done since.
    pub since: Since<'a>,
    /// The last mark, a "not seen" included.
    pub last_mark: Look<'a>,
}

impl<'a> Standing<'a> {
    /// Reads a part's record; `None` where nothing was ever marked.
    pub fn of(timeline: &Timeline<'a>, part: &'a Part, rules: Rules<'a>) -> Option<Self> {
        let looks = timeline.looks(part.id);
        let last_mark = *looks.last()?;
        let story = Story::tell(part, timeline, rules, &looks);
        let since = story.since(timeline, None);
        Some(Self {
            story,
            since,
            last_mark,
        })
    }

    /// How the last finding stands.
    pub fn became(&self, timeline: &Timeline<'a>) -> Became {
        let present = Present {
            story: &self.story,
            since: &self.since,
            now: None,
            sight: Sight::Nothing,
            shown: &[],
            timeline,
        };
        match present.became() {
            Became::NotSeenAgain if !self.is_unseen() => self.known(&present),
            Became::NotSeenAgain | Became::New if self.is_covered() => Became::Hidden,
            other => other,
        }
    }

    /// Whether the last visit to mark it did not see it.
    fn is_unseen(&self) -> bool {
        self.story
            .last
            .is_none_or(|look| look.visit.id != self.last_mark.visit.id)
    }

    fn is_covered(&self) -> bool {
        self.last_mark.mark.condition.not_seen() == Some(NotSeen::Hidden)
    }

    fn known(&self, present: &Present<'_, '_>) -> Became {
        let patched = |open: &Open<'_>| open.worked || present.fate(open) == Fate::Patched;
        if self.since.replaced.is_some() {
            Became::Replaced
        } else if self.story.open.iter().any(patched) {
            Became::Patched
        } else if self.story.rung() == Some(Rung::Sound) {
            Became::Quiet
        } else {
            Became::StillOpen
        }
    }

    /// The same as a thread.
    pub fn thread(&self, timeline: &Timeline<'a>) -> Thread {
        let became = self.became(timeline);
        let cause = self
            .story
            .open
            .first()
            .filter(|_| became.is_open())
            .map(|open| open.finding.cause.clone());
        let patches = cause
            .as_ref()
            .map(|cause| self.story.patches_on(cause, &self.since))
            .unwrap_or_default();
        Thread {
            part: self.story.part.id,
            marks: self.story.real_marks(timeline),
            became,
            earlier: self.story.last.map(|look| look.mark.id),
            now: None,
            rung_then: self.story.rung(),
            rung_now: None,
            by: whose(&self.since, became, &patches),
            callback: self.story.callback.map(|work| work.by),
            cause,
            patches,
        }
    }
}
