//! Judging a visit: what changed, and what to do with each structure.

use crate::settings::Going;
use crate::{ActError, Moment, visit};
use book::Book;
use trade::history::History;
use trade::ids::{StructureId, VisitId};
use trade::thread::Thread;
use trade::verdict::{Reason, Verdict};
use trade::visit::Visit;
use trade::words::Said;
use trade::work::{Did, Work};

/// A visit as it was judged.
#[derive(Clone, Debug, PartialEq)]
pub struct Judged {
    /// The property's record.
    pub history: History,
    /// The visit.
    pub visit: Visit,
    /// What it was judged by.
    pub going: Going,
    /// What became of each part.
    pub threads: Vec<Thread>,
    /// What to do, one a structure in scope.
    pub verdicts: Vec<Verdict>,
}

impl Judged {
    /// The verdict on one structure.
    pub fn verdict(&self, structure: StructureId) -> Option<&Verdict> {
        self.verdicts
            .iter()
            .find(|verdict| verdict.structure == structure)
    }
}

/// Judges a visit, open or closed.
///
/// # Errors
/// Where the visit is not in the book, or the book cannot be read.
pub fn judge(book: &Book, visit: VisitId, moment: Moment) -> Result<Judged, ActError> {
    let (history, visit) = visit::find(book, visit)?;
    let going = Going::of(book)?;
    let rules = going.rules();
    let threads = judge::threads(&history, visit.id, &rules);
    let verdicts = visit
        .structures
        .iter()
        .map(|&structure| judge::verdict(&history, structure, visit.id, moment.today, &rules))
        .collect();
    Ok(Judged {
        history,
        visit,
        going,
        threads,
        verdicts,
    })
}

/// What became of each part as of a visit, without judging what to do.
pub fn threads(history: &History, visit: VisitId, going: &Going) -> Vec<Thread> {
    judge::threads(history, visit, &going.rules())
}

/// What forbids climbing, by what was answered so far.
pub fn stops(visit: &Visit, going: &Going) -> Vec<Reason> {
    judge::safety::stops(visit, &going.rules())
}

/// Work that was done, in a sentence.
pub fn work_said(work: &Work) -> Said {
    let did = match &work.did {
        Did::Remedy(remedy) => Said::new(remedy.message()),
        Did::Replaced => Said::new("did-replaced"),
        Did::Covered => Said::new("did-covered"),
        Did::TakenDown => Said::new("did-taken-down"),
        Did::Something => Said::new("did-something"),
    };
    Said::new("work-line")
        .with("did", did)
        .with("by", Said::new(work.by.key()))
        .with("when", work.when)
}
