//! One part's story: its looks and the work between them, told from the first look on.

use super::finding::{Fate, Finding, Remedies, findings};
use super::since::{Sight, Since};
use super::timeline::{Look, Timeline};
use super::touch::{Touch, Touched, touched};
use crate::Rules;
use jiff::civil::Date;
use std::collections::BTreeMap;
use trade::catalogue::CauseKey;
use trade::ids::MarkId;
use trade::mark::{Condition, Rung};
use trade::property::Part;
use trade::thread::Patch;
use trade::work::Work;

/// A cause that was found and is not answered yet.
#[derive(Clone, Debug)]
pub(crate) struct Open<'a> {
    /// The cause and its defects.
    pub finding: Finding,
    /// The last look that showed it.
    pub seen: Look<'a>,
    /// Whether work that does not cure it was done since it was last seen.
    pub worked: bool,
}

/// A day on which a cause was seen.
#[derive(Clone, Debug)]
pub(crate) struct Sighting {
    /// The cause.
    pub cause: CauseKey,
    /// The day.
    pub on: Date,
}

/// One part's story up to its last look.
#[derive(Clone, Debug)]
pub(crate) struct Story<'a> {
    /// The part.
    pub part: &'a Part,
    /// What is judged by.
    pub rules: Rules<'a>,
    /// The last look that told something.
    pub last: Option<Look<'a>>,
    /// The causes not answered yet, as they were found.
    pub open: Vec<Open<'a>>,
    /// Every patch on a cause since its last cure, and since the part was last replaced.
    pub patches: BTreeMap<CauseKey, Vec<Patch>>,
    /// Work that should have cured a cause, oldest first.
    pub cures: Vec<(CauseKey, &'a Work)>,
    /// When each cause was seen, oldest first.
    pub sightings: Vec<Sighting>,
    /// The cure that came back as the same fault at the last look.
    pub callback: Option<&'a Work>,
    cover: Option<&'a Work>,
    touched: Vec<Touched<'a>>,
}

impl<'a> Story<'a> {
    /// The story of a part before its first look.
    pub fn begin(part: &'a Part, timeline: &Timeline<'a>, rules: Rules<'a>) -> Self {
        let touched = timeline
            .works()
            .iter()
            .filter_map(|work| touched(work, part, rules.catalogue))
            .collect();
        Self {
            part,
            rules,
            last: None,
            open: Vec::new(),
            patches: BTreeMap::new(),
            cures: Vec::new(),
            sightings: Vec::new(),
            callback: None,
            cover: None,
            touched,
        }
    }

    /// The story of a part through some looks, oldest first.
    pub fn tell(
        part: &'a Part,
        timeline: &Timeline<'a>,
        rules: Rules<'a>,
        looks: &[Look<'a>],
    ) -> Self {
        let mut story = Self::begin(part, timeline, rules);
        for look in looks {
            story.turn(timeline, look);
        }
        story
    }

    /// The marks that saw the part, oldest first.
    pub fn real_marks(&self, timeline: &Timeline<'_>) -> Vec<MarkId> {
        timeline
            .real_marks(self.part.id)
            .iter()
            .map(|mark| mark.id)
            .collect()
    }

    /// Every work that touches the part, oldest first.
    pub fn works(&self) -> impl Iterator<Item = &Touched<'a>> {
        self.touched.iter()
    }

    /// Which remedy does what on this part.
    pub fn remedies(&self) -> Remedies<'a> {
        Remedies {
            catalogue: self.rules.catalogue,
            kind: &self.part.kind,
        }
    }

    /// The rung of the last look.
    pub fn rung(&self) -> Option<Rung> {
        self.last.and_then(|look| look.mark.condition.rung())
    }

    /// The causes not answered yet.
    pub fn open_findings(&self) -> Vec<Finding> {
        self.open.iter().map(|open| open.finding.clone()).collect()
    }

    /// What was done since the last look, or learned of since, and could be seen by this one; without a look, all that is known.
    pub fn since(&self, timeline: &Timeline<'a>, look: Option<&Look<'a>>) -> Since<'a> {
        let mut known = self.open_findings();
        known.extend(look.map(|look| self.shown(look)).unwrap_or_default());
        let works = self
            .touched
            .iter()
            .filter(|done| look.is_none_or(|look| is_there_for(timeline, done.work, look)))
            .filter(|done| self.is_news(timeline, done))
            .filter(|done| self.reaches(done, &known))
            .copied()
            .collect();
        Since::of(works, self.cover)
    }

    /// Whether the last look could not tell of a work. It saw what stood there, so that a replacement of which is learned later changes
    /// nothing; of a remedy it may not have known.
    fn is_news(&self, timeline: &Timeline<'a>, done: &Touched<'a>) -> bool {
        let Some(last) = &self.last else {
            return true;
        };
        let learned_later = !timeline.known_by(done.work, last);
        timeline.follows(done.work, last)
            || (learned_later && matches!(done.touch, Touch::Treats(_) | Touch::Something))
    }

    /// What the works since did to an open cause: those done after it was last seen.
    pub fn fate(&self, timeline: &Timeline<'a>, open: &Open<'a>, since: &Since<'a>) -> Fate {
        let remedies = self.remedies();
        let works: Vec<(Touched<'_>, bool)> = works_after(timeline, open, since)
            .map(|done| (done, self.known_before(timeline, done.work)))
            .filter(|(done, known)| self.reaches(done, known))
            .map(|(done, known)| (done, remedies.is_about(&done, &open.finding, &known)))
            .collect();
        remedies.fate(&open.finding, &works)
    }

    /// Whether something was done about an open cause, after it was last seen, that does not cure it.
    pub fn is_patched(&self, timeline: &Timeline<'a>, open: &Open<'a>, since: &Since<'a>) -> bool {
        let works: Vec<Touched<'_>> = works_after(timeline, open, since).collect();
        let patches = self
            .remedies()
            .patches(&open.finding, &self.open_findings(), &works);
        !patches.is_empty()
    }

    /// The open causes that were known when a work was done.
    fn known_before(&self, timeline: &Timeline<'a>, work: &Work) -> Vec<Finding> {
        self.open
            .iter()
            .filter(|open| timeline.follows(work, &open.seen))
            .map(|open| open.finding.clone())
            .collect()
    }

    /// Work on a whole slope is work on a part only where it does something to what was found there.
    fn reaches(&self, done: &Touched<'_>, known: &[Finding]) -> bool {
        match done.touch {
            Touch::Treats(remedy) if !done.direct => known
                .iter()
                .any(|finding| self.remedies().treats(finding, remedy)),
            _ => true,
        }
    }

    /// The causes that a look shows.
    pub fn shown(&self, look: &Look<'_>) -> Vec<Finding> {
        findings(look.mark, self.rules.catalogue)
    }

    /// Whether a sight tells how the part is: what nobody saw must be as bad as the last look, or worse.
    pub fn counts(&self, sight: Sight) -> bool {
        match sight {
            Sight::Nothing => false,
            Sight::Gone | Sight::Eyes(_) => true,
            Sight::Hearsay(rung) => {
                self.last.is_none() || (rung > Rung::Sound && Some(rung) >= self.rung())
            }
        }
    }

    /// Whether the part was taken down, itself or with its structure, and no look has found anything there since.
    pub fn is_down(
        &self,
        timeline: &Timeline<'a>,
        since: &Since<'a>,
        look: Option<&Look<'_>>,
    ) -> bool {
        let found_gone = self
            .last
            .is_some_and(|last| last.mark.condition == Condition::Gone);
        since.taken_down.is_some()
            || (found_gone && since.replaced.is_none())
            || self.is_down_with_structure(timeline, look)
    }

    fn is_down_with_structure(&self, timeline: &Timeline<'a>, look: Option<&Look<'_>>) -> bool {
        let structure = timeline.history.structure(self.part.structure);
        let Some(gone) = structure.and_then(|structure| structure.gone) else {
            return false;
        };
        // What is seen on the day of the demolition was seen before it.
        let by_now = match look {
            Some(look) if look.mark.condition.rung().is_some() => gone < look.visit.on,
            Some(look) => gone <= look.visit.on,
            None => gone <= timeline.today,
        };
        by_now && self.last.is_none_or(|last| last.visit.on <= gone)
    }

    /// Takes in one more look.
    pub fn turn(&mut self, timeline: &Timeline<'a>, look: &Look<'a>) {
        let since = self.since(timeline, Some(look));
        let sight = since.sight(Some(look));
        let shown = self.shown(look);
        if sight.rung().is_some() {
            self.sightings.extend(shown.iter().map(|finding| Sighting {
                cause: finding.cause.clone(),
                on: look.visit.on,
            }));
        }
        let counts = self.counts(sight);
        if counts {
            self.cures.extend(self.cures_in(&since));
            self.callback = self.callback_at(&self.cures, &shown, look.visit.on);
            if self.is_down(timeline, &since, Some(look)) || since.replaced.is_some() {
                self.forget();
            }
            self.answer(timeline, &since, sight, &shown);
            self.cover = since.cover_at(Some(look));
            self.last = Some(*look);
        }
        if sight.rung().is_some() {
            self.find(look, shown, counts);
        }
    }

    /// Settles the open causes by what was done and by what is seen now.
    fn answer(
        &mut self,
        timeline: &Timeline<'a>,
        since: &Since<'a>,
        sight: Sight,
        shown: &[Finding],
    ) {
        if sight == Sight::Gone {
            self.forget();
        }
        self.count_patches(since, shown);
        let fates: Vec<Fate> = self
            .open
            .iter()
            .map(|open| self.fate(timeline, open, since))
            .collect();
        for (mut one, fate) in std::mem::take(&mut self.open).into_iter().zip(fates) {
            let is_shown = shown
                .iter()
                .any(|finding| finding.cause == one.finding.cause);
            let closed = !is_shown && closes(sight, &one, fate, shown.is_empty());
            if closed && fate == Fate::Cured {
                self.patches.remove(&one.finding.cause);
            }
            if !closed {
                one.worked |= matches!(fate, Fate::Patched | Fate::LeftAlone);
                self.open.push(one);
            }
        }
    }

    /// What stands there now is another part, or none.
    fn forget(&mut self) {
        self.open.clear();
        self.patches.clear();
    }

    fn count_patches(&mut self, since: &Since<'a>, shown: &[Finding]) {
        let mut all = self.open_findings();
        for finding in shown {
            if !all.iter().any(|known| known.cause == finding.cause) {
                all.push(finding.clone());
            }
        }
        for finding in &all {
            let patches = self.remedies().patches(finding, &all, &since.works);
            if !patches.is_empty() {
                let all = self.patches.entry(finding.cause.clone()).or_default();
                all.extend(patches);
                all.sort_by_key(|patch| patch.when);
            }
        }
    }

    /// Adds what a look shows to the open causes. What it shows of an open one takes the place of what was known, if it tells how the part is.
    fn find(&mut self, look: &Look<'a>, shown: Vec<Finding>, counts: bool) {
        for finding in shown {
            let known = self
                .open
                .iter_mut()
                .find(|open| open.finding.cause == finding.cause);
            let fresh = Open {
                finding,
                seen: *look,
                worked: false,
            };
            match known {
                Some(open) if counts => *open = fresh,
                Some(_) => {}
                None => self.open.push(fresh),
            }
        }
    }

    /// Works since the last look that should have cured a cause that was open.
    pub fn cures_in(&self, since: &Since<'a>) -> Vec<(CauseKey, &'a Work)> {
        let remedies = self.remedies();
        let mut cures = Vec::new();
        for open in &self.open {
            let cause = &open.finding.cause;
            cures.extend(since.replaced.map(|work| (cause.clone(), work)));
            for done in &since.works {
                if let Touch::Treats(remedy) = done.touch
                    && remedies.cures_all(&open.finding, remedy)
                {
                    cures.push((cause.clone(), done.work));
                }
            }
        }
        cures
    }

    /// The latest cure of a cause that shows again within the years that house policy gives it.
    pub fn callback_at(
        &self,
        cures: &[(CauseKey, &'a Work)],
        shown: &[Finding],
        on: Date,
    ) -> Option<&'a Work> {
        cures
            .iter()
            .filter(|(cause, _)| shown.iter().any(|finding| &finding.cause == cause))
            .map(|(_, work)| *work)
            .filter(|work| within_callback(work.when, on, self.rules))
            .max_by_key(|work| (work.when, work.id))
    }

    /// The patches on one cause, those included that no look has seen yet.
    pub fn patches_on(&self, cause: &CauseKey, since: &Since<'a>) -> Vec<Patch> {
        let mut patches = match since.replaced {
            None => self.patches.get(cause).cloned().unwrap_or_default(),
            Some(_) => Vec::new(),
        };
        let all = self.open_findings();
        if let Some(finding) = all.iter().find(|finding| &finding.cause == cause) {
            patches.extend(self.remedies().patches(finding, &all, &since.works));
        }
        patches.sort_by_key(|patch| patch.when);
        patches
    }
}

/// The works since that were done after a cause was last seen.
fn works_after<'a>(
    timeline: &Timeline<'a>,
    open: &Open<'a>,
    since: &Since<'a>,
) -> impl Iterator<Item = Touched<'a>> {
    since
        .works
        .iter()
        .filter(|done| timeline.follows(done.work, &open.seen))
        .copied()
}

/// Whether a work could be known and seen by a look.
fn is_there_for(timeline: &Timeline<'_>, work: &Work, look: &Look<'_>) -> bool {
    timeline.known_by(work, look) && !timeline.follows(work, look)
}

/// Whether a look that does not show a cause closes it. Nothing that nobody saw closes anything.
fn closes(sight: Sight, open: &Open<'_>, fate: Fate, shows_nothing: bool) -> bool {
    let Sight::Eyes(rung) = sight else {
        return false;
    };
    match fate {
        Fate::Cured => true,
        Fate::Patched => false,
        Fate::LeftAlone if rung == Rung::Sound => false,
        Fate::LeftAlone | Fate::Untouched if open.worked => false,
        // Bad, and nothing said of why: the old cause may well be it.
        Fate::LeftAlone | Fate::Untouched => rung == Rung::Sound || !shows_nothing,
    }
}

/// Whether a day lies within the years that a cure is answered for.
pub(crate) fn within_callback(when: Date, on: Date, rules: Rules<'_>) -> bool {
    let years = jiff::Span::new().years(i64::from(rules.policy.callback_years));
    when <= on && on <= when.saturating_add(years)
}
