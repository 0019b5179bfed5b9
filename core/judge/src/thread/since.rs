//! What was done to a part since its last look, and what a look can tell of it.

use super::timeline::Look;
use super::touch::{Touch, Touched};
use trade::mark::{Condition, Rung, Seen};
use trade::work::Work;

/// What a look could tell.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Sight {
    /// Nothing: no mark, or "not seen".
    Nothing,
    /// That the part is not there.
    Gone,
    /// A rung, but only told or concluded, or given from afar to what is covered: it may open a finding and never closes one.
    Hearsay(Rung),
    /// A rung that somebody saw.
    Eyes(Rung),
}

impl Sight {
    /// The rung, seen or said.
    pub fn rung(self) -> Option<Rung> {
        match self {
            Self::Nothing | Self::Gone => None,
            Self::Hearsay(rung) | Self::Eyes(rung) => Some(rung),
        }
    }
}

/// What was done to a part since its last look.
#[derive(Clone, Debug, Default)]
pub(crate) struct Since<'a> {
    /// Every work, oldest first. Remedies learned of since, but done before the last look, are among them.
    pub all: Vec<Touched<'a>>,
    /// Remedies and unknown work on what stands there now, oldest first.
    pub works: Vec<Touched<'a>>,
    /// The work that put a new part there.
    pub replaced: Option<&'a Work>,
    /// The work that took it down, where nothing was put there since.
    pub taken_down: Option<&'a Work>,
    /// The cover that lies over it, laid before or after the last look.
    pub cover: Option<&'a Work>,
}

impl<'a> Since<'a> {
    /// Gathers works that are handed in oldest first, over the cover that lay there before them.
    pub fn of(works: Vec<Touched<'a>>, cover: Option<&'a Work>) -> Self {
        let mut since = Self {
            cover,
            ..Self::default()
        };
        for done in works {
            since.take(done);
        }
        since
    }

    fn take(&mut self, done: Touched<'a>) {
        self.all.push(done);
        match done.touch {
            Touch::Covers => self.cover = Some(done.work),
            Touch::Treats(_) | Touch::Something => self.works.push(done),
            Touch::Replaces => self.begin_anew(Some(done.work), None),
            Touch::TakesDown => self.begin_anew(None, Some(done.work)),
        }
    }

    fn begin_anew(&mut self, replaced: Option<&'a Work>, taken_down: Option<&'a Work>) {
        self.replaced = replaced;
        self.taken_down = taken_down;
        self.cover = None;
        self.works.clear();
    }

    /// The cover that still keeps a look from judging the part: a close look on a later visit than the one that told of the cover lifts it.
    pub fn cover_at(&self, look: Option<&Look<'_>>) -> Option<&'a Work> {
        let lifted = |look: &Look<'_>, cover: &Work| {
            cover.visit != Some(look.visit.id)
                && look.mark.condition.seen().is_some_and(Seen::is_close)
        };
        self.cover
            .filter(|cover| !look.is_some_and(|look| lifted(look, cover)))
    }

    /// What a look can tell.
    pub fn sight(&self, look: Option<&Look<'_>>) -> Sight {
        let Some(condition) = look.map(|look| look.mark.condition) else {
            return Sight::Nothing;
        };
        match condition {
            Condition::NotSeen { .. } => Sight::Nothing,
            Condition::Gone => Sight::Gone,
            Condition::Seen { rung, seen } => {
                let told = matches!(seen, Seen::Told | Seen::Inferred);
                if told || self.cover_at(look).is_some() {
                    Sight::Hearsay(rung)
                } else {
                    Sight::Eyes(rung)
                }
            }
        }
    }
}
