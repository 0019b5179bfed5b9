//! How often a part was patched without curing what is wrong with it.

use crate::as_of::AsOf;
use trade::catalogue::Effect;
use trade::ids::{PartId, WorkId};
use trade::work::{Did, WorkOn};

/// The works known on a part that only bought time, or made it worse, for one of the defects it has now.
pub fn on(as_of: &AsOf<'_>, part: PartId) -> Vec<WorkId> {
    let Some(standing) = as_of.standing.iter().find(|one| one.part.id == part) else {
        return Vec::new();
    };
    as_of
        .works()
        .filter(|work| work.on == WorkOn::Part(part))
        .filter(|work| {
            let Did::Remedy(remedy) = &work.did else {
                return false;
            };
            standing.defects.iter().any(|found| {
                as_of
                    .rules
                    .catalogue
                    .defect(&found.defect)
                    .and_then(|defect| defect.effect(remedy))
                    .is_some_and(|effect| *effect != Effect::Cures)
            })
        })
        .map(|work| work.id)
        .collect()
}
