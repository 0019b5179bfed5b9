//! What a piece of work does to one part.

use trade::catalogue::{Catalogue, CoveredAnew, RemedyKey, RemedySize};
use trade::property::Part;
use trade::work::{Did, Work, WorkOn};

/// The remedy that lays a new covering over the old one: what lies beneath is hidden, not renewed.
pub(crate) const LAID_OVER: &str = "recover";

/// What a work does to a part.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Touch<'a> {
    /// A new part stands there.
    Replaces,
    /// It is covered.
    Covers,
    /// It was taken down.
    TakesDown,
    /// A remedy was done to it.
    Treats(&'a RemedyKey),
    /// Something was done to it; nobody knows what.
    Something,
}

/// A work as it touches one part.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Touched<'a> {
    /// The work.
    pub work: &'a Work,
    /// What it does to the part.
    pub touch: Touch<'a>,
    /// Whether it was done to this very part, and not to its slope or structure.
    pub direct: bool,
}

/// How a work touches a part; `None` where it does not reach it.
pub(crate) fn touched<'a>(
    work: &'a Work,
    part: &Part,
    catalogue: &Catalogue,
) -> Option<Touched<'a>> {
    let direct = reaches(work, part)?;
    let touch = match &work.did {
        Did::TakenDown => Touch::TakesDown,
        Did::Covered => Touch::Covers,
        Did::Something => Touch::Something,
        Did::Replaced => renewal(part, direct, catalogue)?,
        Did::Remedy(remedy) if is_covering(remedy, catalogue) => {
            covered_anew(remedy, part, direct, catalogue)
        }
        Did::Remedy(remedy) => Touch::Treats(remedy),
    };
    Some(Touched {
        work,
        touch,
        direct,
    })
}

/// Whether a work was done to a part itself, or to the slope or structure it is on; `None` where to neither.
fn reaches(work: &Work, part: &Part) -> Option<bool> {
    match work.on {
        WorkOn::Part(id) => (id == part.id).then_some(true),
        WorkOn::Slope(id) => (part.slope == Some(id)).then_some(false),
        WorkOn::Structure(id) => (id == part.structure).then_some(false),
    }
}

/// A re-roof ends the threads of all that it renews; what stays as it is goes on with its own thread.
fn renewal(part: &Part, direct: bool, catalogue: &Catalogue) -> Option<Touch<'static>> {
    let stays = fate(part, catalogue) == CoveredAnew::Stays;
    (direct || !stays).then_some(Touch::Replaces)
}

fn covered_anew<'a>(
    remedy: &'a RemedyKey,
    part: &Part,
    direct: bool,
    catalogue: &Catalogue,
) -> Touch<'a> {
    match fate(part, catalogue) {
        CoveredAnew::LaidOver if remedy.as_str() == LAID_OVER => Touch::Covers,
        CoveredAnew::Stays if !direct => Touch::Treats(remedy),
        CoveredAnew::Renewed | CoveredAnew::LaidOver | CoveredAnew::Stays => Touch::Replaces,
    }
}

fn is_covering(remedy: &RemedyKey, catalogue: &Catalogue) -> bool {
    catalogue
        .remedy(remedy)
        .is_some_and(|known| known.size == RemedySize::Covering)
}

fn fate(part: &Part, catalogue: &Catalogue) -> CoveredAnew {
    catalogue
        .kind(&part.kind)
        .map(|kind| kind.covered_anew)
        .unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_remedy_that_lays_over_is_in_the_catalogue() {
        let catalogue = Catalogue::standard();
        let remedy = RemedyKey::from(LAID_OVER);
        assert!(is_covering(&remedy, catalogue));
    }
}
