//! The second look told again in another way, to be compared with: one part's works and looks are laid in one row and walked through line by
//! line, where the judging room gathers all that lies between two looks. It holds for records whose works were learned of in time.

use std::collections::BTreeSet;
use trade::catalogue::{
    Catalogue, CauseKey, CoveredAnew, DefectKey, Effect, RemedyKey, RemedySize,
};
use trade::history::History;
use trade::ids::VisitId;
use trade::mark::{Condition, DefectSeen, Mark, NotSeen, Rung, Seen};
use trade::property::Part;
use trade::thread::Became;
use trade::visit::Visit;
use trade::work::{By, Did, Work, WorkOn};

/// A cause on the books.
#[derive(Clone, Debug)]
#[allow(
    clippy::struct_excessive_bools,
    reason = "each is one thing that happened"
)]
struct Cause {
    key: CauseKey,
    defects: Vec<DefectSeen>,
    /// Defects that got a cure since the last look that counted.
    cured: BTreeSet<DefectKey>,
    /// Something that is about this cause was done since then.
    about: bool,
    /// Work was done on the part since then, about this cause or another.
    worked: bool,
    /// Something was done about it since then that cures none of its defects.
    patched: bool,
    /// Work that left it uncured was done before then, and it was not seen since.
    under_work: bool,
}

/// A cover, and the visit that told of it.
#[derive(Clone, Copy)]
struct Cover(Option<VisitId>);

#[derive(Default)]
struct Walker {
    last: Option<Mark>,
    last_on: Option<jiff::civil::Date>,
    causes: Vec<Cause>,
    replaced: bool,
    taken_down: bool,
    /// The cover that lies there.
    cover: Option<Cover>,
}

/// What became of a part on one visit; `None` where nothing was marked by then.
pub fn became(history: &History, part: &Part, visit: VisitId) -> Option<Became> {
    let catalogue = Catalogue::standard();
    let mut visits: Vec<&Visit> = history.visits.iter().collect();
    visits.sort_by_key(|one| (one.on, one.id));
    let until = visits.iter().position(|one| one.id == visit)?;
    let visits = &visits[..=until];
    let marks: Vec<Option<&Mark>> = visits
        .iter()
        .map(|one| {
            let on_it = history.marks.iter().filter(|mark| mark.part == part.id);
            on_it
                .filter(|mark| mark.visit == one.id)
                .max_by_key(|mark| (mark.at, mark.id))
        })
        .collect();
    if marks.iter().all(Option::is_none) {
        return None;
    }
    let mut works: Vec<(usize, &Work)> = history
        .works
        .iter()
        .filter(|work| is_on(work, part))
        .filter_map(|work| Some((first_to_see(work, visits, &marks)?, work)))
        .collect();
    works.sort_by_key(|(at, work)| (*at, work.when, work.id));

    let mut walker = Walker::default();
    let mut answer = None;
    for (at, on) in visits.iter().enumerate() {
        let shown = marks[at]
            .map(|mark| causes(mark, catalogue))
            .unwrap_or_default();
        // What a part without a mark on this visit has coming, the next mark will see; only the visit asked about looks at nothing.
        let is_asked = at == until;
        if marks[at].is_some() || is_asked {
            let due: Vec<&Work> = works
                .extract_if(.., |(seen_by, _)| *seen_by <= at)
                .map(|(_, work)| work)
                .collect();
            for work in due {
                walker.work(work, part, catalogue);
            }
        }
        if is_asked {
            answer = Some(walker.judge(history, part, on, marks[at], &shown, catalogue));
        }
        if let Some(mark) = marks[at] {
            walker.look(history, part, on, mark, &shown);
        }
    }
    answer
}

fn is_on(work: &Work, part: &Part) -> bool {
    match work.on {
        WorkOn::Part(id) => id == part.id,
        WorkOn::Slope(id) => part.slope == Some(id),
        WorkOn::Structure(id) => part.structure == id,
    }
}

/// The first visit on which a work could be seen.
fn first_to_see(work: &Work, visits: &[&Visit], marks: &[Option<&Mark>]) -> Option<usize> {
    let learned = match work.visit {
        None => None,
        Some(id) => Some(visits.iter().position(|visit| visit.id == id)?),
    };
    (0..visits.len()).find(|&at| {
        let rung = marks[at].and_then(|mark| mark.condition.rung());
        let on_the_spot =
            learned == Some(at) && work.by == By::Us && rung.is_some_and(|rung| rung > Rung::Sound);
        match work.when.cmp(&visits[at].on) {
            std::cmp::Ordering::Less => learned.is_none_or(|learned| learned <= at),
            std::cmp::Ordering::Equal => {
                learned.is_none_or(|learned| learned <= at) && !on_the_spot
            }
            std::cmp::Ordering::Greater => false,
        }
    })
}

fn causes(mark: &Mark, catalogue: &Catalogue) -> Vec<Cause> {
    let mut causes: Vec<Cause> = Vec::new();
    if mark.condition.rung() == Some(Rung::Sound) {
        return causes;
    }
    for seen in &mark.defects {
        let key = catalogue.defect(&seen.defect).unwrap().cause.clone();
        match causes.iter_mut().find(|cause| cause.key == key) {
            Some(cause) => cause.defects.push(seen.clone()),
            None => causes.push(Cause {
                key,
                defects: vec![seen.clone()],
                cured: BTreeSet::new(),
                about: false,
                worked: false,
                patched: false,
                under_work: false,
            }),
        }
    }
    causes
}

fn effect<'a>(
    catalogue: &'a Catalogue,
    part: &Part,
    defect: &DefectKey,
    remedy: &RemedyKey,
) -> Option<&'a Effect> {
    let defect = catalogue.defect(defect).unwrap();
    let treats = defect.remedies.iter().find(|treats| {
        &treats.remedy == remedy && (treats.on.is_empty() || treats.on.contains(&part.kind))
    })?;
    Some(&treats.effect)
}

impl Walker {
    fn work(&mut self, work: &Work, part: &Part, catalogue: &Catalogue) {
        let direct = matches!(work.on, WorkOn::Part(_));
        let anew = catalogue.kind(&part.kind).unwrap().covered_anew;
        match &work.did {
            Did::TakenDown => self.new_start(false, true),
            Did::Covered => self.cover = Some(Cover(work.visit)),
            Did::Replaced if direct || anew != CoveredAnew::Stays => self.new_start(true, false),
            Did::Replaced => {}
            Did::Something => {
                for cause in &mut self.causes {
                    cause.worked = true;
                    cause.about = true;
                    cause.patched = true;
                }
            }
            Did::Remedy(remedy) => {
                let covering = catalogue.remedy(remedy).unwrap().size == RemedySize::Covering;
                if covering && anew == CoveredAnew::LaidOver && remedy.as_str() == "recover" {
                    self.cover = Some(Cover(work.visit));
                } else if covering && (direct || anew != CoveredAnew::Stays) {
                    self.new_start(true, false);
                } else {
                    self.remedy(remedy, part, catalogue, direct);
                }
            }
        }
    }

    fn new_start(&mut self, replaced: bool, taken_down: bool) {
        self.replaced = replaced;
        self.taken_down = taken_down;
        self.cover = None;
        self.causes.clear();
    }

    fn remedy(&mut self, remedy: &RemedyKey, part: &Part, catalogue: &Catalogue, direct: bool) {
        let knows = |cause: &Cause| {
            cause
                .defects
                .iter()
                .any(|seen| effect(catalogue, part, &seen.defect, remedy).is_some())
        };
        let known_to_any = self.causes.iter().any(knows);
        if !direct && !known_to_any {
            return;
        }
        for cause in &mut self.causes {
            cause.worked = true;
            let cures: Vec<DefectKey> = cause
                .defects
                .iter()
                .map(|seen| seen.defect.clone())
                .filter(|defect| effect(catalogue, part, defect, remedy) == Some(&Effect::Cures))
                .collect();
            let about = knows(cause) || (direct && !known_to_any);
            cause.about |= about;
            cause.patched |= about && cures.is_empty();
            cause.cured.extend(cures);
        }
    }

    fn covered_at(&self, mark: Option<&Mark>) -> bool {
        match (self.cover, mark) {
            (None, _) => false,
            (Some(_), None) => true,
            (Some(Cover(learned)), Some(mark)) => {
                let close = matches!(
                    mark.condition,
                    Condition::Seen {
                        seen: Seen::Touched | Seen::Near | Seen::Zoomed,
                        ..
                    }
                );
                !close || learned == Some(mark.visit)
            }
        }
    }

    /// A rung that somebody saw, and not through a cover.
    fn saw(&self, mark: Option<&Mark>) -> Option<Rung> {
        match mark?.condition {
            Condition::Seen { rung, seen }
                if !matches!(seen, Seen::Told | Seen::Inferred) && !self.covered_at(mark) =>
            {
                Some(rung)
            }
            _ => None,
        }
    }

    /// A rung to go by: seen; or said, where it is the first thing known or is no better than the last look.
    fn rung(&self, mark: Option<&Mark>) -> Option<Rung> {
        let rung = mark?.condition.rung()?;
        let bad_news = match self.last.as_ref().map(|last| last.condition.rung()) {
            None => true,
            Some(last) => rung > Rung::Sound && last.is_none_or(|last| rung >= last),
        };
        (self.saw(mark).is_some() || bad_news).then_some(rung)
    }

    fn is_down(&self, history: &History, part: &Part, on: &Visit, mark: Option<&Mark>) -> bool {
        let was_gone = self
            .last
            .as_ref()
            .is_some_and(|last| last.condition == Condition::Gone);
        let structure = history.structure(part.structure).unwrap();
        let with_structure = structure.gone.is_some_and(|gone| {
            let seen_that_day = mark.is_some_and(|mark| mark.condition.rung().is_some());
            let by_now = if seen_that_day {
                gone < on.on
            } else {
                gone <= on.on
            };
            by_now && self.last_on.is_none_or(|last| last <= gone)
        });
        self.taken_down || with_structure || (was_gone && !self.replaced)
    }

    fn judge(
        &self,
        history: &History,
        part: &Part,
        on: &Visit,
        mark: Option<&Mark>,
        shown: &[Cause],
        catalogue: &Catalogue,
    ) -> Became {
        let down = self.is_down(history, part, on, mark);
        let rung = self.rung(mark);
        if mark.is_some_and(|mark| mark.condition == Condition::Gone) || (down && rung.is_none()) {
            return Became::Gone;
        }
        let hidden = Some(NotSeen::Hidden);
        if mark.and_then(|mark| mark.condition.not_seen()) == hidden || self.covered_at(mark) {
            return Became::Hidden;
        }
        let Some(last) = &self.last else {
            return Became::New;
        };
        let Some(now) = rung else {
            return Became::NotSeenAgain;
        };
        if self.replaced || down {
            return Became::Replaced;
        }
        let then = last.condition.rung().unwrap();
        let stands = |cause: &Cause| shown.iter().any(|one| one.key == cause.key);
        let cured = |cause: &Cause| cause.cured.len() == cause.defects.len();
        let all_cured = self
            .causes
            .iter()
            .all(|cause| cured(cause) && !stands(cause));
        if !self.causes.is_empty() && all_cured && self.saw(mark) == Some(Rung::Sound) {
            return Became::Cured;
        }
        for cause in &self.causes {
            let remains = match (stands(cause), cured(cause)) {
                (false, true) => false,
                (true, true) => cause.patched,
                (true, false) => cause.about,
                (false, false) => {
                    cause.about
                        || (cause.worked && now == Rung::Sound)
                        || (cause.under_work && now <= then)
                }
            };
            if remains {
                return Became::Patched;
            }
        }
        let grown = shown.iter().any(|one| {
            let known = self.causes.iter().any(|cause| cause.key == one.key)
                || now > Rung::Sound
                    && last
                        .defects
                        .iter()
                        .any(|seen| catalogue.defect(&seen.defect).unwrap().cause == one.key);
            known
                && one.defects.iter().any(|seen| {
                    let before = last.defects.iter().find(|old| old.defect == seen.defect);
                    before.is_none_or(|old| seen.extent > old.extent)
                })
        });
        if now > then || (now == then && grown) {
            Became::Worse
        } else if now == then && now == Rung::Sound {
            Became::Quiet
        } else if now == then
            || self
                .causes
                .iter()
                .any(|cause| stands(cause) && cured(cause))
        {
            Became::StillOpen
        } else {
            Became::Better
        }
    }

    fn look(&mut self, history: &History, part: &Part, on: &Visit, mark: &Mark, shown: &[Cause]) {
        let gone = mark.condition == Condition::Gone;
        let saw = self.saw(Some(mark));
        if !gone && self.rung(Some(mark)).is_none() {
            // Hearsay that closes nothing may still open something.
            if mark.condition.rung().is_some() {
                self.open_what_is_new(shown);
            }
            return;
        }
        if gone || self.replaced || self.is_down(history, part, on, Some(mark)) {
            self.causes.clear();
        }
        self.causes.retain_mut(|cause| {
            let stands = shown.iter().any(|one| one.key == cause.key);
            let cured = cause.cured.len() == cause.defects.len();
            let stays = match saw {
                None => true,
                Some(_) if stands => true,
                Some(_) if cured => false,
                Some(_) if cause.about => true,
                Some(Rung::Sound) => cause.worked || cause.under_work,
                Some(_) => cause.under_work || shown.is_empty(),
            };
            cause.under_work |= !cured && cause.worked;
            cause.worked = false;
            cause.about = false;
            cause.patched = false;
            cause.cured.clear();
            stays
        });
        if !gone {
            for one in shown {
                self.causes.retain(|cause| cause.key != one.key);
            }
            self.open_what_is_new(shown);
        }
        if !self.covered_at(Some(mark)) {
            self.cover = None;
        }
        self.last = Some(mark.clone());
        self.last_on = Some(on.on);
        self.replaced = false;
        self.taken_down = false;
    }

    fn open_what_is_new(&mut self, shown: &[Cause]) {
        for one in shown {
            if !self.causes.iter().any(|cause| cause.key == one.key) {
                self.causes.push(one.clone());
            }
        }
    }
}
