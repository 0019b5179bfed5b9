//! A structure's record as it stands at the end of one visit: which marks still count, and which parts were not seen.

use crate::Rules;
use std::collections::BTreeSet;
use trade::catalogue::{Effect, Kind, RemedySize};
use trade::history::History;
use trade::ids::{SlopeId, StructureId, VisitId};
use trade::mark::{Condition, DefectSeen, Mark, NotSeen, Rung, Seen};
use trade::property::{Part, Slope};
use trade::stack::Stack;
use trade::visit::{Scope, Visit};
use trade::work::{Did, Work, WorkOn};

/// The last real look at a part that no later work has overtaken.
#[derive(Clone, Debug)]
pub struct Standing<'a> {
    /// The part.
    pub part: &'a Part,
    /// What the catalogue says of such parts.
    pub kind: Option<&'a Kind>,
    /// The mark.
    pub mark: &'a Mark,
    /// The rung it gave.
    pub rung: Rung,
    /// How the part was seen.
    pub seen: Seen,
    /// The defects that no work since is known to have cured.
    pub defects: Vec<&'a DefectSeen>,
    /// Whether it is of this visit.
    pub now: bool,
    /// Whether it is recent enough that finding nothing still counts.
    pub fresh: bool,
}

/// A structure's record as of one visit.
#[derive(Clone, Debug)]
pub struct AsOf<'a> {
    /// The property's record.
    pub history: &'a History,
    /// The structure.
    pub structure: StructureId,
    /// The visit.
    pub visit: &'a Visit,
    /// What the judgement goes by.
    pub rules: &'a Rules<'a>,
    /// The looks that count, by part number.
    pub standing: Vec<Standing<'a>>,
    /// The parts that were not seen on this visit, by part number.
    pub unseen: Vec<&'a Part>,
    place: usize,
}

impl<'a> AsOf<'a> {
    /// Reads the record; `None` where the visit is not in it.
    pub fn read(
        history: &'a History,
        structure: StructureId,
        visit: VisitId,
        rules: &'a Rules<'a>,
    ) -> Option<Self> {
        let place = history.place_of(visit)?;
        let mut as_of = Self {
            history,
            structure,
            visit: &history.visits[place],
            rules,
            standing: Vec::new(),
            unseen: Vec::new(),
            place,
        };
        for part in as_of.parts() {
            as_of.read_part(part);
        }
        Some(as_of)
    }

    fn read_part(&mut self, part: &'a Part) {
        let last = self.last_real(part);
        if last.is_some_and(|mark| self.is_gone(part, mark)) {
            return;
        }
        let seen_now = self.mark_now(part).is_some_and(Mark::is_real);
        if !seen_now {
            self.unseen.push(part);
        }
        if let Some(standing) = last.and_then(|mark| self.standing_look(part, mark)) {
            self.standing.push(standing);
        }
    }

    /// The structure's parts by number; those born later are not among them.
    fn parts(&self) -> Vec<&'a Part> {
        let mut parts: Vec<&Part> = self
            .history
            .parts
            .iter()
            .filter(|part| part.structure == self.structure)
            .filter(|part| self.marks(part).next().is_some())
            .collect();
        parts.sort_by_key(|part| (part.number, part.id));
        parts
    }

    /// A part's marks up to this visit.
    fn marks(&self, part: &Part) -> impl Iterator<Item = (usize, &'a Mark)> {
        let (id, place, history) = (part.id, self.place, self.history);
        history.marks.iter().filter_map(move |mark| {
            let at = history.place_of(mark.visit)?;
            (mark.part == id && at <= place).then_some((at, mark))
        })
    }

    /// The mark of this visit that counts: the last one.
    pub fn mark_now(&self, part: &Part) -> Option<&'a Mark> {
        self.marks(part)
            .filter(|(place, _)| *place == self.place)
            .map(|(_, mark)| mark)
            .max_by_key(|mark| (mark.at, mark.id))
    }

    /// The last real mark; a visit's later "not seen" closes nothing that an earlier visit found.
    fn last_real(&self, part: &Part) -> Option<&'a Mark> {
        let now = self.mark_now(part).filter(|mark| mark.is_real());
        now.or_else(|| {
            self.marks(part)
                .filter(|(place, mark)| *place < self.place && mark.is_real())
                .max_by_key(|(place, mark)| (*place, mark.at, mark.id))
                .map(|(_, mark)| mark)
        })
    }

    fn standing_look(&self, part: &'a Part, mark: &'a Mark) -> Option<Standing<'a>> {
        let Condition::Seen { rung, seen } = mark.condition else {
            return None;
        };
        let since: Vec<&Work> = self.works_on(part, mark).collect();
        if since.iter().any(|work| self.renews(work)) {
            return None;
        }
        let defects: Vec<&DefectSeen> = mark
            .defects
            .iter()
            .filter(|found| !since.iter().any(|work| self.cures(work, found)))
            .collect();
        if defects.is_empty() && !mark.defects.is_empty() {
            return None;
        }
        let now = mark.visit == self.visit.id;
        Some(Standing {
            part,
            kind: self.rules.catalogue.kind(&part.kind),
            mark,
            rung,
            seen,
            defects,
            now,
            fresh: now || self.is_fresh(mark),
        })
    }

    fn is_fresh(&self, mark: &Mark) -> bool {
        let Some(visit) = self.history.visit(mark.visit) else {
            return false;
        };
        let months = i64::from(self.rules.policy.look_stands_months);
        visit
            .on
            .checked_add(jiff::Span::new().months(months))
            .is_ok_and(|until| until >= self.visit.on)
    }

    fn is_gone(&self, part: &Part, mark: &Mark) -> bool {
        mark.condition == Condition::Gone
            || self
                .works_on(part, mark)
                .any(|work| work.did == Did::TakenDown)
    }

    /// Work on a part, its slope or its structure after a mark and known by this visit.
    fn works_on(&self, part: &'a Part, mark: &Mark) -> impl Iterator<Item = &'a Work> {
        let marked = mark.visit;
        let known: Vec<&'a Work> = self
            .works()
            .filter(|work| touches(work.on, part) && self.comes_after(work, marked))
            .collect();
        known.into_iter()
    }

    /// Work on the structure that is known by this visit.
    pub fn works(&self) -> impl Iterator<Item = &'a Work> {
        let (history, place, on) = (self.history, self.place, self.visit.on);
        history.works.iter().filter(move |work| match work.visit {
            Some(visit) => history.place_of(visit).is_some_and(|at| at <= place),
            None => work.when < on,
        })
    }

    /// Work that was learned of on the visit of a mark was there to be seen, and does not overtake it.
    fn comes_after(&self, work: &Work, marked: VisitId) -> bool {
        let Some(visit) = self.history.visit(marked) else {
            return false;
        };
        let learned_earlier = work
            .visit
            .is_some_and(|learned| self.history.place_of(learned) <= self.history.place_of(marked));
        !learned_earlier && work.when >= visit.on
    }

    /// Whether the old finding says nothing of what stands there now.
    fn renews(&self, work: &Work) -> bool {
        match &work.did {
            Did::Replaced | Did::Covered | Did::TakenDown => true,
            Did::Remedy(remedy) => self
                .rules
                .catalogue
                .remedy(remedy)
                .is_some_and(|remedy| remedy.size == RemedySize::Covering),
            Did::Something => false,
        }
    }

    fn cures(&self, work: &Work, found: &DefectSeen) -> bool {
        let Did::Remedy(remedy) = &work.did else {
            return false;
        };
        self.rules
            .catalogue
            .defect(&found.defect)
            .and_then(|defect| defect.effect(remedy))
            .is_some_and(|effect| *effect == Effect::Cures)
    }

    /// The structure's slopes that the visit set out to look at.
    pub fn slopes(&self) -> Vec<&'a Slope> {
        self.history
            .slopes
            .iter()
            .filter(|slope| slope.structure == self.structure && self.in_scope(slope.id))
            .collect()
    }

    /// On a visit for one request, a slope is in scope where some part of it was looked at or meant to be.
    fn in_scope(&self, slope: SlopeId) -> bool {
        self.visit.scope != Scope::RequestOnly
            || self
                .parts()
                .into_iter()
                .filter(|part| part.slope == Some(slope))
                .filter_map(|part| self.mark_now(part))
                .any(|mark| mark.condition.not_seen() != Some(NotSeen::OutsideScope))
    }

    /// Whether a part was left out on purpose.
    pub fn outside_scope(&self, part: &Part) -> bool {
        self.mark_now(part)
            .map_or(self.visit.scope == Scope::RequestOnly, |mark| {
                mark.condition.not_seen() == Some(NotSeen::OutsideScope)
            })
    }

    /// Parts in scope that may show what a question asks, and where they stand.
    pub fn parts_that_show(
        &self,
        question: trade::verdict::Question,
    ) -> impl Iterator<Item = &'a Part> {
        let seen = self.standing.iter().map(|standing| standing.part);
        let parts: BTreeSet<_> = seen
            .chain(self.unseen.iter().copied())
            .filter(|part| !self.outside_scope(part))
            .filter(|part| {
                self.rules.catalogue.kind(&part.kind).is_some_and(|kind| {
                    kind.asks.contains(&question) || kind.clears.contains(&question)
                })
            })
            .map(|part| (part.number, part.id))
            .collect();
        parts
            .into_iter()
            .filter_map(|(_, id)| self.history.part(id))
    }

    /// The readings of layers that no later covering has overtaken.
    pub fn stacks(&self) -> Vec<&'a Stack> {
        let mut stacks: Vec<&Stack> = self
            .history
            .stacks
            .iter()
            .filter(|stack| stack.structure == self.structure)
            .filter(|stack| {
                self.history
                    .place_of(stack.visit)
                    .is_some_and(|at| at <= self.place)
            })
            .filter(|stack| !self.is_overtaken(stack))
            .collect();
        stacks.sort_by_key(|stack| (self.history.place_of(stack.visit), stack.id));
        stacks
    }

    fn is_overtaken(&self, stack: &Stack) -> bool {
        self.works().any(|work| {
            let here = match work.on {
                WorkOn::Structure(structure) => structure == stack.structure,
                WorkOn::Slope(slope) => stack.slope.is_none_or(|own| own == slope),
                WorkOn::Part(_) => false,
            };
            here && self.renews(work) && self.comes_after(work, stack.visit)
        })
    }

    /// Whether anything of the structure was seen on this visit, and whether any of it closely.
    pub fn sight(&self) -> crate::course::Sight {
        use crate::course::Sight;
        let now = || self.standing.iter().filter(|standing| standing.now);
        if now().any(|standing| standing.seen.is_close()) {
            Sight::Close
        } else if now().next().is_some() {
            Sight::Afar
        } else {
            Sight::Nothing
        }
    }
}

fn touches(on: WorkOn, part: &Part) -> bool {
    match on {
        WorkOn::Part(id) => id == part.id,
        WorkOn::Slope(id) => part.slope == Some(id),
        WorkOn::Structure(id) => part.structure == id,
    }
}
