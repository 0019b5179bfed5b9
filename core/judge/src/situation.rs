//! What the main course depends on besides the answers, read from the record.

use crate::as_of::AsOf;
use crate::course::{Allowed, Needs, Situation, Water};
use crate::facts::Facts;
use crate::faults::Fault;
use crate::installer::{self, Recent};
use crate::profile;
use trade::catalogue::RemedySize;
use trade::mark::Rung;
use trade::work::By;

/// Reads the situation.
pub fn read(as_of: &AsOf<'_>, faults: &[Fault<'_>], facts: &Facts) -> Situation {
    let repairs = || faults.iter().filter(|fault| fault.is_ours_to_repair());
    Situation {
        sight: as_of.sight(),
        needs: Needs {
            upkeep: faults.iter().any(Fault::is_upkeep),
            repair: repairs().next().is_some(),
            lifts: repairs().any(Fault::lifts_shingles),
            matches: repairs().any(Fault::needs_a_match),
            covering: faults.iter().any(Fault::only_a_covering_cures),
        },
        water: water(faults),
        field_worn: field_worn(as_of, faults),
        must_last: as_of.visit.request.must_last,
        installer_answers: installer_answers(as_of, faults),
        layers_counted: facts.layers.most,
        allowed: Allowed {
            sells_recover: as_of.rules.policy.sells_recover,
            layers: profile::layers_allowed(as_of.rules.profile),
            hail_bars: profile::hail_bars(as_of.rules.profile),
            no_repair_layers: as_of.rules.policy.no_repair_layers,
        },
    }
}

fn water(faults: &[Fault<'_>]) -> Water {
    if faults.iter().any(Fault::lets_water_in) {
        Water::WayInFound
    } else if faults.iter().any(Fault::is_fresh_trace) {
        Water::Traced
    } else {
        Water::NothingFound
    }
}

/// Wear that a new covering alone cures, or a field in a bad way for no named fault.
fn field_worn(as_of: &AsOf<'_>, faults: &[Fault<'_>]) -> bool {
    let unnamed = as_of.standing.iter().any(|standing| {
        standing.rung >= Rung::Failing
            && standing.defects.is_empty()
            && as_of.is_field(standing.part)
    });
    unnamed
        || faults
            .iter()
            .any(|fault| as_of.is_field(fault.part) && fault.size == RemedySize::Covering)
}

/// Another's recent roof, and nobody asked for a repair of it by name.
fn installer_answers(as_of: &AsOf<'_>, faults: &[Fault<'_>]) -> bool {
    let asked =
        as_of.visit.request.asks.iter().any(|ask| {
            ask.remedy.is_some() && faults.iter().any(|fault| fault.part.kind == ask.kind)
        });
    !asked && installer::recent(as_of, faults).is_some_and(|Recent { by, .. }| by != By::Us)
}
