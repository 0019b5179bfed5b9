//! What is wrong, part by part, and what would put it right.

use crate::as_of::{AsOf, Standing};
use crate::course::PAST_REPAIR;
use trade::catalogue::{Catalogue, CoveredAnew, Defect, Effect, Kind, RemedyKey, RemedySize};
use trade::mark::{Extent, Mark, Rung, Seen};
use trade::property::Part;
use trade::verdict::{LicensedTrade, Question, When};

/// The remedy that traces a leak.
const FIND_THE_LEAK: &str = "find-the-leak";

/// One thing wrong with one part.
#[derive(Clone, Debug)]
pub struct Fault<'a> {
    /// The part.
    pub part: &'a Part,
    /// Its kind.
    pub kind: Option<&'a Kind>,
    /// The mark that found it.
    pub mark: &'a Mark,
    /// How it was seen.
    pub seen: Seen,
    /// The rung of the part.
    pub rung: Rung,
    /// Which defect; `None` where the rung alone says that something is wrong.
    pub defect: Option<&'a Defect>,
    /// How far it reaches.
    pub extent: Extent,
    /// What puts it right: the remedy advised on the mark, else the catalogue's best cure.
    pub remedy: Option<RemedyKey>,
    /// How much work that is.
    pub size: RemedySize,
    /// The trade that must do it, where it is not a roofer's.
    pub trade: Option<LicensedTrade>,
}

impl Fault<'_> {
    /// Whether it is repaired among the shingles, so that they must be lifted and must bend.
    pub fn is_repair_of_covering(&self) -> bool {
        self.size == RemedySize::Repair && self.lifts_shingles()
    }

    /// Whether its repair lifts the shingles around it: so it does at all that a new covering renews, low slopes apart.
    pub fn lifts_shingles(&self) -> bool {
        self.kind.is_some_and(|kind| {
            kind.covered_anew != CoveredAnew::Stays && kind.stop.as_str() != "low-slope"
        })
    }

    /// Whether its repair needs new shingles that match the old.
    pub fn needs_a_match(&self) -> bool {
        const OF_SHINGLES: [&str; 7] = [
            "covering",
            "starter",
            "earlier-repair",
            "open-valley",
            "closed-valley",
            "ridge-cap",
            "hip-cap",
        ];
        OF_SHINGLES.contains(&self.part.kind.as_str())
    }

    /// Whether it is failing and a new covering alone cures it, though that is no ground of its own.
    pub fn only_a_covering_cures(&self) -> bool {
        self.size == RemedySize::Covering
            && self.rung >= Rung::Failing
            && self.defect.is_some_and(|defect| {
                defect.rung >= Rung::Failing
                    && !defect
                        .signs
                        .iter()
                        .any(|question| PAST_REPAIR.contains(question))
            })
    }

    /// Whether it only shows water whose way in is still to be traced.
    pub fn is_trace(&self) -> bool {
        self.remedy
            .as_ref()
            .is_some_and(|remedy| remedy.as_str() == FIND_THE_LEAK)
    }

    /// Whether it is this firm's to repair.
    pub fn is_ours_to_repair(&self) -> bool {
        self.size == RemedySize::Repair && self.trade.is_none() && !self.is_trace()
    }

    /// Whether it is upkeep that this firm does: small work, and following up an old trace of water.
    pub fn is_upkeep(&self) -> bool {
        let small = matches!(self.size, RemedySize::Upkeep | RemedySize::MakeSafe);
        let old_trace = self.is_trace() && !self.is_fresh_trace();
        self.trade.is_none() && (small || old_trace)
    }

    /// Whether it shows water that came in lately.
    pub fn is_fresh_trace(&self) -> bool {
        self.is_trace() && self.rung >= Rung::Failing
    }

    /// Whether water can come in through it: a wet deck or a drip in the attic only shows that it did.
    pub fn lets_water_in(&self) -> bool {
        let shows_only = matches!(self.part.kind.as_str(), "deck")
            || self
                .kind
                .is_some_and(|kind| matches!(kind.stop.as_str(), "attic" | "ground"));
        !shows_only && !self.is_trace() && (self.rung >= Rung::Failing || self.opens())
    }

    /// Whether another trade must do the work.
    pub fn is_referred(&self) -> bool {
        self.size == RemedySize::Referred || self.trade.is_some()
    }

    /// Separate places it makes: one for a spot, two for several.
    pub fn places(&self) -> usize {
        match self.extent {
            Extent::Spot => 1,
            Extent::Several => 2,
            Extent::Broad => 4,
        }
    }

    /// Whether it was built in.
    pub fn is_workmanship(&self) -> bool {
        self.defect.is_some_and(|defect| defect.workmanship)
    }

    /// Whether water may come in or something may fall before the right work is done.
    pub fn is_urgent(&self) -> bool {
        self.when() == When::Now || self.opens() || self.signs(Question::MayFall)
    }

    /// Whether rain gets in there.
    pub fn opens(&self) -> bool {
        self.signs(Question::OpenToRain) || self.signs(Question::WaterComesIn)
    }

    /// Whether the defect answers a question with "yes".
    pub fn signs(&self, question: Question) -> bool {
        self.defect
            .is_some_and(|defect| defect.signs.contains(&question))
    }

    /// How soon it must be answered.
    pub fn when(&self) -> When {
        self.defect.map_or(
            if self.rung == Rung::Failed {
                When::Now
            } else {
                When::ThisSeason
            },
            |defect| defect.urgency,
        )
    }

    /// What holds it for weeks, as the catalogue has it: a cover before a seal.
    pub fn stopgap(&self, catalogue: &Catalogue) -> Option<RemedyKey> {
        let holds: Vec<&RemedyKey> = self
            .defect?
            .remedies
            .iter()
            .filter(|treats| treats.fits(&self.part.kind))
            .filter(|treats| matches!(treats.effect, Effect::BuysTime { .. }))
            .map(|treats| &treats.remedy)
            .collect();
        let of_size = |size: RemedySize| {
            holds
                .iter()
                .find(|remedy| size_of(catalogue, Some(remedy)) == size)
                .map(|remedy| (*remedy).clone())
        };
        of_size(RemedySize::MakeSafe).or_else(|| of_size(RemedySize::Upkeep))
    }
}

/// The faults of a structure, by part number, the weightiest of a part first.
pub fn faults<'a>(as_of: &AsOf<'a>) -> Vec<Fault<'a>> {
    as_of
        .standing
        .iter()
        .flat_map(|standing| of_part(standing, as_of.rules.catalogue))
        .collect()
}

fn of_part<'a>(standing: &Standing<'a>, catalogue: &'a Catalogue) -> Vec<Fault<'a>> {
    if standing.defects.is_empty() {
        let bad = standing.rung >= Rung::Failing;
        return bad
            .then(|| unnamed(standing, catalogue))
            .into_iter()
            .collect();
    }
    standing
        .defects
        .iter()
        .filter_map(|found| {
            let defect = catalogue.defect(&found.defect)?;
            let remedy = remedy_for(standing, defect, catalogue);
            let size = size_of(catalogue, remedy.as_ref());
            Some(Fault {
                part: standing.part,
                kind: standing.kind,
                mark: standing.mark,
                seen: standing.seen,
                rung: standing.rung,
                defect: Some(defect),
                extent: found.extent,
                trade: trade_for(standing.kind, Some(defect)),
                remedy,
                size,
            })
        })
        .collect()
}

fn unnamed<'a>(standing: &Standing<'a>, catalogue: &Catalogue) -> Fault<'a> {
    let remedy = standing.mark.advised.first().cloned();
    let size = size_of(catalogue, remedy.as_ref());
    Fault {
        part: standing.part,
        kind: standing.kind,
        mark: standing.mark,
        seen: standing.seen,
        rung: standing.rung,
        defect: None,
        extent: Extent::Spot,
        trade: trade_for(standing.kind, None),
        remedy,
        size,
    }
}

/// The cure advised on the mark, else the catalogue's best on such a part. A stopgap advised is no cure; and what is failing
/// and can be repaired is repaired, though a new covering would be best.
fn remedy_for(
    standing: &Standing<'_>,
    defect: &Defect,
    catalogue: &Catalogue,
) -> Option<RemedyKey> {
    let kind = &standing.part.kind;
    let is_cure = |remedy: &&RemedyKey| defect.effect_on(kind, remedy) == Some(&Effect::Cures);
    if let Some(advised) = standing.mark.advised.iter().find(is_cure) {
        return Some(advised.clone());
    }
    let is_repair = |remedy: &&RemedyKey| size_of(catalogue, Some(remedy)) != RemedySize::Covering;
    let best = defect.cures_on(kind).next();
    let repair = defect
        .cures_on(kind)
        .find(is_repair)
        .filter(|_| defect.rung >= Rung::Failing);
    repair.or(best).cloned()
}

fn size_of(catalogue: &Catalogue, remedy: Option<&RemedyKey>) -> RemedySize {
    remedy
        .and_then(|key| catalogue.remedy(key))
        .map_or(RemedySize::Repair, |remedy| remedy.size)
}

fn trade_for(kind: Option<&Kind>, defect: Option<&Defect>) -> Option<LicensedTrade> {
    defect
        .and_then(|defect| defect.refer)
        .or_else(|| kind.and_then(|kind| kind.refer))
}
