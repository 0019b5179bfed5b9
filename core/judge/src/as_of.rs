//! A structure's record as it stands at the end of one visit: which marks still count, and which parts were not seen.

use crate::Rules;
use crate::course::Sight;
use crate::thread::timeline::{Look, Timeline};
use crate::thread::touch::{Touch, touched};
use std::collections::BTreeSet;
use trade::catalogue::{Effect, Kind, RemedySize};
use trade::history::History;
use trade::ids::{PartId, SlopeId, StructureId, VisitId};
use trade::mark::{Condition, DefectSeen, Mark, NotSeen, Rung, Seen};
use trade::property::{Part, Slope};
use trade::stack::Stack;
use trade::thread::Thread;
use trade::verdict::Question;
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
#[derive(Debug)]
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
    /// What became of each part since it was last seen.
    pub threads: Vec<Thread>,
    timeline: Timeline<'a>,
}

impl<'a> AsOf<'a> {
    /// Reads the record; `None` where the visit is not in it.
    pub fn read(
        history: &'a History,
        structure: StructureId,
        visit: VisitId,
        rules: &'a Rules<'a>,
    ) -> Option<Self> {
        let mut as_of = Self {
            history,
            structure,
            visit: history.visit(visit)?,
            rules,
            standing: Vec::new(),
            unseen: Vec::new(),
            threads: crate::threads(history, visit, rules),
            timeline: Timeline::up_to(history, visit)?,
        };
        for part in as_of.parts() {
            as_of.read_part(part);
        }
        as_of.drop_clean_looks_from_afar();
        Some(as_of)
    }

    fn read_part(&mut self, part: &'a Part) {
        let looks = self.timeline.looks(part.id);
        let last = looks.iter().rev().find(|look| look.mark.is_real());
        if last.is_some_and(|look| self.is_gone(part, look)) {
            return;
        }
        if !self.mark_now(part).is_some_and(Mark::is_real) {
            self.unseen.push(part);
        }
        if let Some(standing) = last.and_then(|look| self.standing_look(part, look)) {
            self.standing.push(standing);
        }
    }

    /// Who saw a structure only from afar this time knows of nothing that is not so, however well it was seen before.
    fn drop_clean_looks_from_afar(&mut self) {
        if self.sight() != Sight::Close {
            self.standing
                .iter_mut()
                .for_each(|standing| standing.fresh = false);
        }
    }

    /// The structure's parts by number; those born later are not among them.
    pub fn parts(&self) -> Vec<&'a Part> {
        let mut parts: Vec<&Part> = self
            .history
            .parts
            .iter()
            .filter(|part| part.structure == self.structure)
            .filter(|part| !self.timeline.looks(part.id).is_empty())
            .collect();
        parts.sort_by_key(|part| (part.number, part.id));
        parts
    }

    /// The mark of this visit that counts: the last one.
    pub fn mark_now(&self, part: &Part) -> Option<&'a Mark> {
        self.timeline
            .looks(part.id)
            .last()
            .filter(|look| look.visit.id == self.visit.id)
            .map(|look| look.mark)
    }

    fn standing_look(&self, part: &'a Part, look: &Look<'a>) -> Option<Standing<'a>> {
        let Condition::Seen { rung, seen } = look.mark.condition else {
            return None;
        };
        let since: Vec<Touch<'_>> = self.touches_since(part, look).collect();
        let overtaken = |touch: &Touch<'_>| matches!(touch, Touch::Replaces | Touch::Covers);
        if since.iter().any(overtaken) {
            return None;
        }
        let defects: Vec<&DefectSeen> = look
            .mark
            .defects
            .iter()
            .filter(|found| !since.iter().any(|touch| self.cures(part, touch, found)))
            .collect();
        if defects.is_empty() && !look.mark.defects.is_empty() {
            return None;
        }
        let now = look.visit.id == self.visit.id;
        Some(Standing {
            part,
            kind: self.rules.catalogue.kind(&part.kind),
            mark: look.mark,
            rung,
            seen,
            defects,
            now,
            fresh: now || self.is_fresh(look.visit),
        })
    }

    fn is_fresh(&self, visit: &Visit) -> bool {
        let months = i64::from(self.rules.policy.look_stands_months);
        visit
            .on
            .checked_add(jiff::Span::new().months(months))
            .is_ok_and(|until| until >= self.visit.on)
    }

    fn is_gone(&self, part: &Part, look: &Look<'_>) -> bool {
        look.mark.condition == Condition::Gone
            || self
                .touches_since(part, look)
                .any(|touch| touch == Touch::TakesDown)
    }

    /// What work after a look, and known by this visit, did to a part.
    fn touches_since(
        &self,
        part: &Part,
        look: &Look<'_>,
    ) -> impl Iterator<Item = Touch<'a>> + use<'a> {
        let touches: Vec<Touch<'a>> = self
            .timeline
            .works()
            .iter()
            .filter(|work| self.timeline.follows(work, look))
            .filter_map(|work| touched(work, part, self.rules.catalogue))
            .map(|touched| touched.touch)
            .collect();
        touches.into_iter()
    }

    fn cures(&self, part: &Part, touch: &Touch<'_>, found: &DefectSeen) -> bool {
        let Touch::Treats(remedy) = touch else {
            return false;
        };
        self.rules
            .catalogue
            .defect(&found.defect)
            .and_then(|defect| defect.effect_on(&part.kind, remedy))
            .is_some_and(|effect| *effect == Effect::Cures)
    }

    /// Work on the property that is known by this visit, oldest first.
    pub fn works(&self) -> &[&'a Work] {
        self.timeline.works()
    }

    /// What became of a part.
    pub fn thread(&self, part: &Part) -> Option<&Thread> {
        self.threads.iter().find(|thread| thread.part == part.id)
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

    /// Parts in scope that may show what a question asks.
    pub fn parts_that_show(&self, question: Question) -> Vec<&'a Part> {
        let seen = self.standing.iter().map(|standing| standing.part);
        let mut taken = BTreeSet::new();
        seen.chain(self.unseen.iter().copied())
            .filter(|part| !self.outside_scope(part))
            .filter(|part| {
                self.rules.catalogue.kind(&part.kind).is_some_and(|kind| {
                    kind.asks.contains(&question) || kind.clears.contains(&question)
                })
            })
            .filter(|part| taken.insert(part.id))
            .collect()
    }

    /// The readings of layers that no later covering has overtaken, oldest first.
    pub fn stacks(&self) -> Vec<&'a Stack> {
        let read_on = |stack: &Stack| {
            self.timeline
                .visits()
                .iter()
                .find(|visit| visit.id == stack.visit)
                .map(|visit| visit.on)
        };
        let mut stacks: Vec<&Stack> = self
            .history
            .stacks
            .iter()
            .filter(|stack| stack.structure == self.structure)
            .filter(|stack| read_on(stack).is_some_and(|on| !self.is_overtaken(stack, on)))
            .collect();
        stacks.sort_by_key(|stack| (read_on(stack), stack.id));
        stacks
    }

    /// Work known on the visit that read the stack was there to be counted.
    fn is_overtaken(&self, stack: &Stack, read_on: jiff::civil::Date) -> bool {
        self.works().iter().any(|work| {
            let here = match work.on {
                WorkOn::Structure(structure) => structure == stack.structure,
                WorkOn::Slope(slope) => stack.slope.is_none_or(|own| own == slope),
                WorkOn::Part(part) => self.is_field_at(part, stack.slope),
            };
            here && work.when >= read_on && work.visit != Some(stack.visit) && self.covers(work)
        })
    }

    /// Whether a part is the covering itself of a slope, or of any where that is not said.
    fn is_field_at(&self, part: PartId, slope: Option<SlopeId>) -> bool {
        self.history.part(part).is_some_and(|part| {
            self.is_field(part) && (slope.is_none() || part.slope.is_none() || part.slope == slope)
        })
    }

    /// Whether a part is a field of covering.
    pub fn is_field(&self, part: &Part) -> bool {
        self.rules
            .catalogue
            .kind(&part.kind)
            .is_some_and(|kind| kind.clears.contains(&Question::CoveringDone))
    }

    /// Whether a work lays a covering or takes one off.
    pub fn covers(&self, work: &Work) -> bool {
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

    /// Whether anything of the structure was seen on this visit, and whether any of it closely.
    pub fn sight(&self) -> Sight {
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
