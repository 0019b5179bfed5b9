//! The likely six: the defects that stand nearest the thumb on one part. Their order stays put during a visit.

use crate::walk::Spot;
use crate::{ActError, visit};
use book::Book;
use std::cmp::Reverse;
use std::collections::BTreeMap;
use trade::catalogue::{Catalogue, DefectKey, KindKey};
use trade::history::History;
use trade::ids::{PartId, StructureId, VisitId};
use trade::stack::{Covering, LayerIs};

/// How many stand nearest the thumb.
pub const HOW_MANY: usize = 6;

/// The likeliest defects at a spot: first what this thread had before, newest first; then what is met under the covering that an earlier
/// visit read; among these by the firm's own counts on that kind of part, then by how often the catalogue says they are met.
///
/// # Errors
/// Where the visit is not in the book, or the book cannot be read.
pub fn six(book: &Book, visit: VisitId, spot: &Spot) -> Result<Vec<DefectKey>, ActError> {
    let (history, _) = visit::find(book, visit)?;
    let (kind, part, structure) = match spot {
        Spot::Known { part } => {
            let part = history
                .part(*part)
                .ok_or_else(|| ActError::not_there("there-part"))?;
            (part.kind.clone(), Some(part.id), part.structure)
        }
        Spot::Unborn {
            kind, structure, ..
        } => (kind.clone(), None, *structure),
    };
    let counts = counts_before(book, &history, &kind, visit)?;
    Ok(rank(
        Catalogue::standard(),
        &kind,
        covering(&history, structure, visit),
        &earlier(&history, part, visit),
        &counts,
    ))
}

/// The firm's own counts without this visit's marks, so that the order stays put while it goes on.
fn counts_before(
    book: &Book,
    history: &History,
    kind: &KindKey,
    visit: VisitId,
) -> Result<BTreeMap<DefectKey, u32>, ActError> {
    let mut counts: BTreeMap<DefectKey, u32> =
        book.defect_counts(kind, None)?.into_iter().collect();
    let of_this_visit = history
        .marks
        .iter()
        .filter(|mark| mark.visit == visit)
        .filter(|mark| {
            history
                .part(mark.part)
                .is_some_and(|part| &part.kind == kind)
        })
        .flat_map(|mark| &mark.defects);
    for seen in of_this_visit {
        if let Some(count) = counts.get_mut(&seen.defect) {
            *count = count.saturating_sub(1);
        }
    }
    Ok(counts)
}

/// What an earlier visit read on top; this visit's own reading would move the six while he stands before them.
fn covering(history: &History, structure: StructureId, visit: VisitId) -> Covering {
    history
        .stacks
        .iter()
        .rev()
        .filter(|stack| stack.structure == structure && stack.visit != visit)
        .find_map(|stack| match stack.layers.first()?.is {
            LayerIs::Covering(covering) => Some(covering),
            _ => None,
        })
        .unwrap_or(Covering::Unclear)
}

/// The defects that a part had on earlier visits, newest first.
fn earlier(history: &History, part: Option<PartId>, visit: VisitId) -> Vec<DefectKey> {
    history
        .marks
        .iter()
        .rev()
        .filter(|mark| Some(mark.part) == part && mark.visit != visit)
        .flat_map(|mark| mark.defects.iter().map(|seen| seen.defect.clone()))
        .collect()
}

/// Ranks the defects of one kind of part. What is not met under a covering comes last; where the covering is unclear, anything is.
pub fn rank(
    catalogue: &Catalogue,
    kind: &KindKey,
    covering: Covering,
    earlier: &[DefectKey],
    counts: &BTreeMap<DefectKey, u32>,
) -> Vec<DefectKey> {
    let mut known: Vec<_> = catalogue.defects_of(kind).collect();
    known.sort_by_key(|defect| {
        (
            earlier
                .iter()
                .position(|had| had == &defect.key)
                .unwrap_or(usize::MAX),
            !defect.suits(covering),
            Reverse(counts.get(&defect.key).copied().unwrap_or(0)),
            Reverse(defect.common),
            defect.key.clone(),
        )
    });
    known
        .into_iter()
        .take(HOW_MANY)
        .map(|defect| defect.key.clone())
        .collect()
}
