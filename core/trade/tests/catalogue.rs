//! The catalogue's data: broad enough, reachable, and sound in the trade's own sense.
//!
//! Where a check has no published source it is common practice in the trade, and says so.

use std::collections::{BTreeMap, BTreeSet};
use trade::catalogue::{
    Catalogue, Defect, DefectKey, Effect, Family, KindKey, RemedyKey, RemedySize,
};
use trade::mark::Rung;
use trade::stack::Covering;
use trade::verdict::{LicensedTrade, Question, When};

fn catalogue() -> &'static Catalogue {
    Catalogue::standard()
}

fn defect(key: &str) -> &'static Defect {
    catalogue()
        .defect(&DefectKey::from(key))
        .unwrap_or_else(|| panic!("no defect {key}"))
}

fn size(remedy: &RemedyKey) -> RemedySize {
    catalogue().remedy(remedy).expect("a known remedy").size
}

#[test]
fn it_is_broad() {
    assert!(catalogue().kinds().len() >= 30);
    assert!(catalogue().defects().len() >= 150);
    let used: BTreeSet<_> = catalogue().kinds().iter().map(|kind| &kind.stop).collect();
    let stops: BTreeSet<_> = catalogue().stops().iter().map(|stop| &stop.key).collect();
    assert_eq!(used, stops, "a stop has nothing to look at");
}

#[test]
fn every_area_of_a_roof_is_there() {
    // The areas a whole look at a roof covers: common practice.
    for kind in [
        "covering",
        "layers",
        "deck",
        "eave-edge",
        "rake-edge",
        "ridge-cap",
        "hip-cap",
        "open-valley",
        "closed-valley",
        "pipe-boot",
        "fuel-vent",
        "masonry-chimney",
        "prefab-chimney",
        "chimney-flashing",
        "sidewall-flashing",
        "headwall-flashing",
        "kickout",
        "skylight",
        "skylight-flashing",
        "ridge-vent",
        "roof-vent",
        "intake-vent",
        "gutter",
        "downspout",
        "roof-drain",
        "soffit",
        "fascia",
        "attachment",
        "solar-mount",
        "snow-guard",
        "low-slope-field",
        "low-slope-join",
        "earlier-repair",
        "attic-deck",
        "attic-frame",
        "attic-air",
    ] {
        let key = KindKey::from(kind);
        assert!(catalogue().kind(&key).is_some(), "{kind}");
    }
}

#[test]
fn every_kind_can_have_something_wrong_with_it() {
    for kind in catalogue().kinds() {
        let count = catalogue().defects_of(&kind.key).count();
        assert!(count >= 2, "{} has {count} defects", kind.key);
    }
}

/// On the Mark screen of a part a person taps a family and then the defect: a list longer than ten does not fit a phone.
#[test]
fn every_defect_is_two_taps_from_its_part() {
    for kind in catalogue().kinds() {
        let mut reached = BTreeSet::new();
        for family in Family::ALL {
            let listed: Vec<_> = catalogue()
                .defects_of(&kind.key)
                .filter(|defect| defect.family == family)
                .map(|defect| &defect.key)
                .collect();
            assert!(
                listed.len() <= 10,
                "{} {family:?} lists {listed:?}",
                kind.key
            );
            reached.extend(listed);
        }
        let all: BTreeSet<_> = catalogue()
            .defects_of(&kind.key)
            .map(|defect| &defect.key)
            .collect();
        assert_eq!(reached, all);
    }
}

#[test]
fn every_defect_has_a_cure_on_every_part_it_is_found_on() {
    for defect in catalogue().defects() {
        assert!(!defect.parts.is_empty(), "{}", defect.key);
        for part in &defect.parts {
            assert!(
                defect.cures_on(part).next().is_some(),
                "{} on {part}",
                defect.key
            );
        }
    }
}

#[test]
fn patches_hold_for_a_range_and_say_where_it_is_from() {
    for defect in catalogue().defects() {
        for treats in &defect.remedies {
            if let Effect::BuysTime { months, source } = &treats.effect {
                let pair = format!("{} on {}", treats.remedy, defect.key);
                assert!(
                    months.least < months.most,
                    "{pair}: a range, not false exactness"
                );
                assert!(!source.trim().is_empty(), "{pair}");
            }
        }
    }
}

/// A cover or a tied-up piece is for weeks: common practice.
#[test]
fn making_safe_is_never_a_cure() {
    for defect in catalogue().defects() {
        for treats in &defect.remedies {
            if size(&treats.remedy) != RemedySize::MakeSafe {
                continue;
            }
            let Effect::BuysTime { months, .. } = &treats.effect else {
                panic!("{} on {}: {:?}", treats.remedy, defect.key, treats.effect);
            };
            assert!(months.most <= 6, "{} on {}", treats.remedy, defect.key);
        }
    }
}

/// Sealant is upkeep on a small lap whose metal is sound; over anything else it is an emergency measure. Common practice.
#[test]
fn sealant_cures_only_its_own_old_line() {
    let sealant = RemedyKey::from("sealant");
    let cured: Vec<_> = catalogue()
        .defects()
        .iter()
        .filter(|defect| defect.effect(&sealant) == Some(&Effect::Cures))
        .map(|defect| defect.key.as_str())
        .collect();
    assert_eq!(cured, ["flashing-sealant-cracked"]);
    for defect in catalogue().defects() {
        if let Some(Effect::BuysTime { months, .. }) = defect.effect(&sealant) {
            assert!(months.most <= 36, "{}", defect.key);
        }
    }
    for missing in [
        "step-flashing-missing",
        "head-flashing-missing",
        "skylight-head-open",
        "sealant-for-flashing",
    ] {
        assert!(
            matches!(
                defect(missing).effect(&sealant),
                Some(Effect::BuysTime { .. })
            ),
            "{missing}"
        );
    }
}

/// Smearing, pressure washing, coating old shingles and salting ice do harm wherever they do not merely hide: common practice.
#[test]
fn bad_practice_cures_nothing() {
    for bad in ["tar-over", "pressure-wash", "coat-over", "salt-or-chop-ice"] {
        let remedy = RemedyKey::from(bad);
        for defect in catalogue().defects() {
            assert_ne!(
                defect.effect(&remedy),
                Some(&Effect::Cures),
                "{bad} on {}",
                defect.key
            );
        }
    }
}

/// IRC R908.3.1.1 (2015 and later): no re-cover over a water-soaked base, nor over two or more coverings, nor over slate, tile or asbestos-cement.
#[test]
fn a_new_covering_over_the_old_cures_nothing_that_bars_it() {
    let recover = RemedyKey::from("recover");
    let bars = [
        Question::DeckWet,
        Question::DeckWetBroad,
        Question::TwoLayers,
        Question::ThreeLayers,
        Question::BarredBase,
        Question::NotFlat,
        Question::RebuiltStep,
        Question::TooLow,
        Question::FrameWeak,
    ];
    for defect in catalogue().defects() {
        if defect.signs.iter().any(|sign| bars.contains(sign)) {
            assert_ne!(
                defect.effect(&recover),
                Some(&Effect::Cures),
                "{}",
                defect.key
            );
        }
    }
}

/// A wet deck is cut back to sound wood or stripped, never merely covered: common practice.
#[test]
fn wet_wood_is_replaced() {
    for defect in catalogue().defects() {
        if defect.cause.as_str() == "deck-wet" {
            assert!(
                defect.cures().any(|cure| cure.as_str() == "cut-out-deck"),
                "{}",
                defect.key
            );
        }
    }
}

/// Two defects of one cause on one part are cured by the same work: that is what a cause means.
#[test]
fn one_cause_has_one_cure() {
    let mut torn = Vec::new();
    for kind in catalogue().kinds() {
        let mut shared: BTreeMap<_, BTreeSet<_>> = BTreeMap::new();
        for defect in catalogue().defects_of(&kind.key) {
            let cures: BTreeSet<_> = defect.cures_on(&kind.key).collect();
            let common = shared.entry(&defect.cause).or_insert_with(|| cures.clone());
            *common = common.intersection(&cures).copied().collect();
            if common.is_empty() {
                torn.push(format!("{} on {}: {}", defect.cause, kind.key, defect.key));
            }
        }
    }
    assert!(torn.is_empty(), "no cure for all of {torn:?}");
}

#[test]
fn what_must_be_answered_now_has_a_reason_to() {
    let pressing = [
        Question::WaterComesIn,
        Question::OpenToRain,
        Question::MayFall,
    ];
    let hazards = [LicensedTrade::FuelVent, LicensedTrade::Electrician];
    for defect in catalogue().defects() {
        let presses = defect.signs.iter().any(|sign| pressing.contains(sign));
        let hazard = defect.refer.is_some_and(|trade| hazards.contains(&trade));
        match defect.urgency {
            When::Now => {
                assert!(
                    presses || hazard,
                    "{} has no reason to be urgent",
                    defect.key
                );
                assert!(
                    defect.rung >= Rung::Failing,
                    "{} is urgent, yet {:?}",
                    defect.key,
                    defect.rung
                );
            }
            When::ThisSeason => assert!(!presses, "{} cannot wait", defect.key),
            When::Later => {
                assert!(!presses, "{} cannot wait", defect.key);
                assert!(
                    defect.rung <= Rung::Ageing,
                    "{} can wait, yet {:?}",
                    defect.key,
                    defect.rung
                );
            }
        }
        assert_ne!(defect.rung, Rung::Sound, "{} is no defect", defect.key);
        if defect.rung == Rung::Failed {
            assert_ne!(defect.urgency, When::Later, "{}", defect.key);
        }
    }
}

/// The questions a defect answers with "yes" decide courses, so the whole list is held here: a new sign is a decision.
#[test]
fn the_signs_are_strict() {
    let signs = |question: Question| -> Vec<&str> {
        let mut keys: Vec<_> = catalogue()
            .defects()
            .iter()
            .filter(|defect| defect.signs.contains(&question))
            .map(|defect| defect.key.as_str())
            .collect();
        keys.sort_unstable();
        keys
    };
    assert_eq!(
        signs(Question::CoveringDone),
        ["covering-worn-out", "low-slope-worn-out"]
    );
    assert_eq!(signs(Question::Brittle), ["covering-brittle"]);
    assert_eq!(signs(Question::WaterComesIn), ["water-dripping"]);
    assert_eq!(signs(Question::DeckWetBroad), ["deck-soft-broad"]);
    assert_eq!(signs(Question::RebuiltStep), ["section-rebuilt-higher"]);
    assert_eq!(signs(Question::ThreeLayers), ["third-layer"]);
    assert_eq!(
        signs(Question::TooLow),
        ["low-slope-shingled", "slope-too-low"]
    );
    assert_eq!(signs(Question::FlashingStays), ["wall-covers-flashing"]);
    assert_eq!(
        signs(Question::BarredBase),
        ["laid-over-barred-base", "suspect-asbestos-covering"]
    );
    assert_eq!(
        signs(Question::Asbestos),
        ["suspect-asbestos-covering", "suspect-asbestos-flue"]
    );
    assert_eq!(signs(Question::Vermiculite), ["suspect-vermiculite"]);
    for elsewhere in [
        Question::ManyPlaces,
        Question::PatchedOften,
        Question::Unmatchable,
        Question::MakerRefuses,
    ] {
        assert_eq!(
            signs(elsewhere),
            [""; 0],
            "{elsewhere:?} is no matter of one defect"
        );
    }
    for broad in signs(Question::DeckWetBroad) {
        assert!(defect(broad).signs.contains(&Question::DeckWet), "{broad}");
    }
    for three in signs(Question::ThreeLayers) {
        assert!(
            defect(three).signs.contains(&Question::TwoLayers),
            "{three}"
        );
    }
}

#[test]
fn every_question_can_be_settled_at_some_stop_unless_it_is_asked_elsewhere() {
    // How often a cause was patched stands in the record; whether a new covering is accepted is asked of its maker.
    let elsewhere = [Question::PatchedOften, Question::MakerRefuses];
    for question in Question::ALL {
        assert_eq!(
            catalogue().stop_for(question).is_none(),
            elsewhere.contains(&question),
            "{question:?}"
        );
    }
}

#[test]
fn another_trades_work_is_marked_as_such() {
    for defect in catalogue().defects() {
        for part in &defect.parts {
            let trade = defect.refer.or_else(|| catalogue().kind(part)?.refer);
            let first = defect.cures_on(part).next().expect("a cure");
            if size(first) == RemedySize::Referred {
                assert!(
                    trade.is_some(),
                    "{} on {part}: whose work is it?",
                    defect.key
                );
            }
        }
        if defect.refer.is_some() {
            assert!(
                defect
                    .cures()
                    .any(|cure| size(cure) == RemedySize::Referred
                        || cure.as_str() == "find-the-leak"),
                "{} is referred, yet no cure is another trade's",
                defect.key
            );
        }
    }
}

/// Fuel vents go to licensed trades; asbestos and vermiculite are not to be disturbed (40 CFR 61 subpart M; EPA/ATSDR on vermiculite).
#[test]
fn hazards_go_to_licensed_trades() {
    let vent = catalogue()
        .kind(&KindKey::from("fuel-vent"))
        .expect("fuel vents");
    assert_eq!(vent.refer, Some(LicensedTrade::FuelVent));
    for defect in catalogue().defects() {
        let suspect = defect
            .signs
            .iter()
            .any(|sign| matches!(sign, Question::Asbestos | Question::Vermiculite));
        if suspect {
            assert_eq!(
                defect.refer,
                Some(LicensedTrade::Asbestos),
                "{}",
                defect.key
            );
            assert!(
                defect
                    .cures()
                    .all(|cure| size(cure) == RemedySize::Referred),
                "{}",
                defect.key
            );
        }
    }
    for key in [
        "vent-rusted",
        "vent-leaning",
        "vent-blocked",
        "vent-wrong-kind",
        "vent-too-close-to-wood",
        "flue-liner-cracked",
        "chimney-too-low",
    ] {
        assert_eq!(defect(key).refer, Some(LicensedTrade::FuelVent), "{key}");
    }
}

/// The faults that an installer answers for: common practice.
#[test]
fn faults_of_workmanship_are_marked() {
    for key in [
        "nails-too-few",
        "nails-high",
        "nails-in-joint",
        "nails-overdriven",
        "nails-underdriven",
        "nails-exposed",
        "seal-never-bonded",
        "underlayment-bare",
        "underlayment-unfastened",
        "deck-edge-exposed",
        "no-drip-edge",
        "section-rebuilt-higher",
        "sealant-for-flashing",
        "soffit-gap-open",
        "nails-left-lying",
        "scraps-left",
        "flashing-abandoned",
        "step-flashing-missing",
        "kickout-missing",
        "valley-nails-in-middle",
    ] {
        assert!(defect(key).workmanship, "{key}");
    }
    for key in [
        "granules-lost",
        "boot-split",
        "shingle-missing",
        "hail-bruised",
        "mortar-washed-out",
    ] {
        assert!(!defect(key).workmanship, "{key} is wear or weather");
    }
}

/// Cures that the trade agrees on: common practice.
#[test]
fn the_cure_fits_the_cause() {
    for (key, part, cure) in [
        ("boot-split", "pipe-boot", "new-boot"),
        ("tabs-unsealed", "covering", "hand-seal-tabs"),
        ("nails-high", "fastening", "renail"),
        (
            "step-flashing-missing",
            "sidewall-flashing",
            "new-step-flashing",
        ),
        (
            "step-flashing-missing",
            "chimney-flashing",
            "new-chimney-flashing",
        ),
        (
            "sealant-for-flashing",
            "headwall-flashing",
            "new-head-flashing",
        ),
        (
            "sealant-for-flashing",
            "skylight-flashing",
            "new-skylight-flashing",
        ),
        ("valley-cut-wrong", "closed-valley", "new-valley"),
        ("deck-soft-spot", "deck", "cut-out-deck"),
        ("mortar-washed-out", "masonry-chimney", "repoint"),
        ("vent-too-low", "fuel-vent", "raise-vent"),
        ("gutter-clogged", "gutter", "clean-gutter"),
        ("section-rebuilt-higher", "covering", "tear-off"),
        ("nails-exposed", "ridge-cap", "new-ridge-caps"),
    ] {
        let kind = KindKey::from(part);
        assert_eq!(
            defect(key).cures_on(&kind).next().map(RemedyKey::as_str),
            Some(cure),
            "{key} on {part}"
        );
    }
}

/// Glue strips are of asphalt shingles, seams of metal, and so on: common practice.
#[test]
fn a_covering_has_its_own_faults() {
    for (key, on, not_on) in [
        ("tabs-unsealed", Covering::AsphaltLaminated, Covering::Slate),
        (
            "tile-or-slate-slipped",
            Covering::ClayTile,
            Covering::AsphaltStrip,
        ),
        ("wood-split", Covering::WoodShake, Covering::MetalSeam),
        (
            "metal-screws-backed-out",
            Covering::MetalLapped,
            Covering::MetalSeam,
        ),
        ("seam-open", Covering::SinglePly, Covering::WoodShingle),
    ] {
        assert!(defect(key).suits(on), "{key} on {on:?}");
        assert!(!defect(key).suits(not_on), "{key} on {not_on:?}");
        assert!(defect(key).suits(Covering::Unclear), "{key}");
    }
    let kind = KindKey::from("covering");
    for covering in Covering::ALL {
        let found = catalogue()
            .defects_of(&kind)
            .filter(|defect| defect.suits(covering));
        assert!(found.count() >= 6, "{covering:?}");
    }
}

#[test]
fn every_remedy_is_used() {
    let used: BTreeSet<_> = catalogue()
        .defects()
        .iter()
        .flat_map(|defect| defect.remedies.iter().map(|treats| &treats.remedy))
        .collect();
    for remedy in catalogue().remedies() {
        assert!(used.contains(&remedy.key), "{} treats nothing", remedy.key);
    }
}
