//! A property's record as far as it was known on one visit or day: what came later is left out.

use jiff::civil::Date;
use trade::history::History;
use trade::ids::{PartId, VisitId};
use trade::mark::{Mark, Rung};
use trade::visit::Visit;
use trade::work::{By, Work};

/// One look at a part: the mark that counts on one visit.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Look<'a> {
    /// The mark.
    pub mark: &'a Mark,
    /// Its visit.
    pub visit: &'a Visit,
    /// Where the visit stands in the order of visits.
    place: usize,
}

/// The record up to one visit or day.
#[derive(Debug)]
pub(crate) struct Timeline<'a> {
    /// The whole record, later lines included.
    pub history: &'a History,
    /// The last day that counts.
    pub today: Date,
    visits: Vec<&'a Visit>,
    marks: Vec<&'a Mark>,
    works: Vec<&'a Work>,
}

impl<'a> Timeline<'a> {
    /// Up to a visit, itself included; `None` where it is not in the record.
    pub fn up_to(history: &'a History, visit: VisitId) -> Option<Self> {
        let last = history.visit(visit)?;
        let visits = history
            .visits
            .iter()
            .filter(|known| (known.on, known.id) <= (last.on, last.id))
            .collect();
        Some(Self::of(history, visits, last.on))
    }

    /// As it stands on a day. A visit of that day that is still open is under way and tells nothing yet.
    pub fn on(history: &'a History, today: Date) -> Self {
        let visits = history
            .visits
            .iter()
            .filter(|visit| visit.on < today || (visit.on == today && visit.closed.is_some()))
            .collect();
        Self::of(history, visits, today)
    }

    /// Everything that is recorded.
    pub fn whole(history: &'a History) -> Self {
        Self::of(history, history.visits.iter().collect(), Date::MAX)
    }

    fn of(history: &'a History, mut visits: Vec<&'a Visit>, today: Date) -> Self {
        visits.sort_by_key(|visit| (visit.on, visit.id));
        let known = |id: VisitId| visits.iter().any(|visit| visit.id == id);
        let mut marks: Vec<&Mark> = history
            .marks
            .iter()
            .filter(|mark| known(mark.visit))
            .collect();
        marks.sort_by_key(|mark| (mark.at, mark.id));
        let mut works: Vec<&Work> = history
            .works
            .iter()
            .filter(|work| work.when <= today)
            .filter(|work| {
                work.visit
                    .is_none_or(|id| known(id) || history.visit(id).is_none())
            })
            .collect();
        works.sort_by_key(|work| (work.when, work.id));
        Self {
            history,
            today,
            visits,
            marks,
            works,
        }
    }

    /// The visits, oldest first.
    pub fn visits(&self) -> &[&'a Visit] {
        &self.visits
    }

    /// The visit before the last one.
    pub fn visit_before(&self) -> Option<VisitId> {
        let at = self.visits.len().checked_sub(2)?;
        self.visits.get(at).map(|visit| visit.id)
    }

    /// The works, oldest first.
    pub fn works(&self) -> &[&'a Work] {
        &self.works
    }

    /// The looks at a part, oldest first, one for each visit that marked it: of two marks of one visit the later counts.
    pub fn looks(&self, part: PartId) -> Vec<Look<'a>> {
        let marks: Vec<&Mark> = self.marks_of(part).collect();
        self.visits
            .iter()
            .enumerate()
            .filter_map(|(place, visit)| {
                let mark = marks.iter().rev().find(|mark| mark.visit == visit.id)?;
                Some(Look { mark, visit, place })
            })
            .collect()
    }

    /// The marks of a part that saw it, oldest first; of two of one visit both.
    pub fn real_marks(&self, part: PartId) -> Vec<&'a Mark> {
        let mut real: Vec<&Mark> = self.marks_of(part).filter(|mark| mark.is_real()).collect();
        real.sort_by_key(|mark| (self.place(mark.visit), mark.at, mark.id));
        real
    }

    fn marks_of(&self, part: PartId) -> impl Iterator<Item = &'a Mark> {
        self.marks
            .iter()
            .copied()
            .filter(move |mark| mark.part == part)
    }

    fn place(&self, id: VisitId) -> Option<usize> {
        self.visits.iter().position(|visit| visit.id == id)
    }

    /// Whether a work had been learned of by the visit of a look; what was learned on no visit was known at once.
    pub fn known_by(&self, work: &Work, look: &Look<'_>) -> bool {
        work.visit
            .is_none_or(|id| self.place(id) <= Some(look.place))
    }

    /// Whether a work came after a look, and so could not be seen by it.
    ///
    /// On the day of the look itself: what was learned on a later visit came after it; so did what we did on that very visit, where the
    /// look did not find the part sound. All else was there to be seen. Common practice, no source.
    pub fn follows(&self, work: &Work, look: &Look<'_>) -> bool {
        if work.when != look.visit.on {
            return work.when > look.visit.on;
        }
        match work.visit {
            None => false,
            Some(id) if id == look.visit.id => {
                let rung = look.mark.condition.rung();
                work.by == By::Us && rung.is_some_and(|rung| rung != Rung::Sound)
            }
            Some(id) => self.place(id) > Some(look.place),
        }
    }
}
