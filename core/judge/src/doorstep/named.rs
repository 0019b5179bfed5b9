//! Names as the doorstep says them: short, to be read at arm's length.

use super::record::Record;
use trade::catalogue::{DefectKey, RemedyKey};
use trade::ids::StructureId;
use trade::property::{Part, Structure};
use trade::verdict::Course;
use trade::words::Said;
use trade::work::{Did, Work, WorkOn};

/// A part by its kind, its letter and number on the plan, and what tells it from others: "Pipe boot A3".
pub(super) fn part(record: &Record<'_>, part: &Part) -> Said {
    let letter = part
        .slope
        .and_then(|slope| record.history.slope(slope))
        .map(|slope| slope.letter.to_string())
        .unwrap_or_default();
    let short = Said::new("doorstep-part")
        .with("kind", Said::new(part.kind.message()))
        .with("address", format!("{letter}{}", part.number));
    let short = match &part.which {
        Some(which) => Said::new("doorstep-part-which")
            .with("part", short)
            .with("which", which.as_str()),
        None => short,
    };
    if record.has_several_structures() {
        Said::new("doorstep-part-in")
            .with("part", short)
            .with("structure", structure_by_id(record, part.structure))
    } else {
        short
    }
}

/// A structure by its own name, or by what it is.
pub(super) fn structure(structure: &Structure) -> Said {
    match &structure.name {
        Some(name) => Said::verbatim(name.as_str()),
        None => Said::new(structure.kind.key()),
    }
}

pub(super) fn structure_by_id(record: &Record<'_>, id: StructureId) -> Said {
    record
        .history
        .structure(id)
        .map_or_else(Said::default, structure)
}

/// A remedy.
pub(super) fn remedy(remedy: &RemedyKey) -> Said {
    Said::new(remedy.message())
}

/// A defect.
pub(super) fn defect(defect: &DefectKey) -> Said {
    Said::new(defect.message())
}

/// A course.
pub(super) fn course(course: Course) -> Said {
    Said::new(course.key())
}

/// What a work was.
pub(super) fn did(did: &Did) -> Said {
    match did {
        Did::Remedy(key) => remedy(key),
        Did::Replaced => Said::new("did-replaced"),
        Did::Covered => Said::new("did-covered"),
        Did::TakenDown => Said::new("did-taken-down"),
        Did::Something => Said::new("did-something"),
    }
}

/// What a work was, whose, and when.
pub(super) fn work(work: &Work) -> Said {
    let key = if work.exact {
        "doorstep-work-on"
    } else {
        "doorstep-work-by"
    };
    Said::new(key)
        .with("what", did(&work.did))
        .with("by", Said::new(work.by.key()))
        .with("when", work.when)
}

/// Where a work was done; `None` where that is not in the record.
pub(super) fn place(record: &Record<'_>, on: WorkOn) -> Option<Said> {
    match on {
        WorkOn::Part(id) => record.history.part(id).map(|found| part(record, found)),
        WorkOn::Slope(id) => {
            let slope = record.history.slope(id)?;
            let letter = Said::new("doorstep-slope").with("letter", slope.letter.to_string());
            Some(if record.has_several_structures() {
                Said::new("doorstep-part-in")
                    .with("part", letter)
                    .with("structure", structure_by_id(record, slope.structure))
            } else {
                letter
            })
        }
        WorkOn::Structure(id) => record.history.structure(id).map(structure),
    }
}

/// One sentence after another; `None` where there is none.
pub(super) fn sentences(all: impl IntoIterator<Item = Said>) -> Option<Said> {
    all.into_iter().reduce(|first, next| {
        Said::new("doorstep-sentences")
            .with("first", first)
            .with("next", next)
    })
}
