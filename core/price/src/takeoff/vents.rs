//! Attic vents by net free area (IRC R806.2).

use super::Counted;
use super::site::Site;
use crate::code::{Irc, irc};
use trade::answer::Answer;
use trade::firm::{Edition, Profile};
use trade::takeoff::{Gap, Item, RoofTask, Spread, TaskAmount, plain};
use trade::units::Length;
use trade::verdict::Source;
use trade::words::Said;
use trade::worksheet::Ventilation;

/// Square inches in a square foot.
const SQUARE_INCHES: f64 = 144.0;
/// High and low vents stand at least this far apart in height, or at most this far below the ridge, by edition.
const THREE_FEET: Length = Length::feet(3);

/// Whether 1/300 of the vented space is enough instead of 1/150 (IRC R806.2).
///
/// 2000 to 2009: 50 to 80 % of it high and at least 3 ft above the eave vents, or a vapour retarder. 2012 and later: 40 to 50 % high, at most
/// 3 ft below the ridge; a vapour retarder in climate zones 6 to 8. That 2012 asks for one or more of these and later editions for both is
/// from memory.
pub fn one_in_300(vents: &Ventilation, profile: &Profile) -> Answer {
    let high = |from: f64, to: f64| Answer::from((from..=to).contains(&vents.high_share));
    let measured = |length: Option<Length>, holds: fn(Length) -> bool| {
        length.map_or(Answer::Unknown, |length| holds(length).into())
    };
    if profile.edition <= Edition::E2009 {
        let above = measured(vents.above_eave_vents, |length| length >= THREE_FEET);
        return high(0.5, 0.8).and(above).or(vents.retarder);
    }
    let near_ridge = measured(vents.below_ridge, |length| length <= THREE_FEET);
    let balanced = high(0.4, 0.5).and(near_ridge);
    let cold = profile
        .climate_zone
        .map_or(Answer::Unknown, |zone| (zone >= 6).into());
    if profile.edition == Edition::E2012 {
        balanced.or(cold.and(vents.retarder))
    } else {
        balanced.and(cold.negated().or(vents.retarder))
    }
}

/// The net free area that a vented space takes, in square inches: 1/150 of it, or 1/300 where that is certainly enough.
pub fn net_free_area(vents: &Ventilation, profile: &Profile) -> f64 {
    let share = if one_in_300(vents, profile).is_yes() {
        300.0
    } else {
        150.0
    };
    vents.area.in_square_feet() * SQUARE_INCHES / share
}

/// Vents by net free area; where that is not asked for, those that stand there are renewed one for one.
pub(super) fn vents(site: &Site<'_>) -> Counted {
    match &site.basis.choices.vents {
        Some(vents) => by_area(site, vents),
        None => one_for_one(site),
    }
}

fn one_for_one(site: &Site<'_>) -> Counted {
    let count = site.basis.standing.high_vents;
    if count == 0 {
        return Counted::default();
    }
    row(
        site,
        Item::HighVent,
        f64::from(count),
        Said::new("need-vents-renewed"),
        Source::Practice,
    )
}

fn by_area(site: &Site<'_>, vents: &Ventilation) -> Counted {
    let profile = site.basis.profile;
    let all = net_free_area(vents, profile);
    let share = if one_in_300(vents, profile).is_yes() {
        "1/300"
    } else {
        "1/150"
    };
    let high = all * vents.high_share;
    let mut counted = Counted::default();
    for (item, area, stays, each) in [
        (Item::HighVent, high, vents.high_stays, vents.high_vent),
        (Item::LowVent, all - high, vents.low_stays, vents.low_vent),
    ] {
        let missing = (area - stays).max(0.0);
        if missing <= 0.0 {
            continue;
        }
        if each <= 0.0 {
            counted.gaps.push(Gap {
                item,
                why: Said::new("gap-vent-product"),
            });
            continue;
        }
        let reason = Said::new("need-vents")
            .with("share", share)
            .with("area", plain(missing, 0))
            .with("each", plain(each, 0));
        let source = irc(Irc::VentArea, site.edition());
        let count = (missing / each - 1e-6).ceil();
        counted.add(row(site, item, count, reason, source));
    }
    counted
}

fn row(site: &Site<'_>, item: Item, count: f64, reason: Said, source: Source) -> Counted {
    let amount = Spread::exactly(count);
    // High vents are worked from the steepest slope, intake from the eave's ladder.
    let pitch = (item == Item::HighVent)
        .then(|| site.planes.iter().map(|(_, plane)| plane.pitch).max())
        .flatten();
    Counted {
        needs: vec![site.need(item, amount, reason, source)],
        tasks: vec![TaskAmount {
            task: RoofTask::SetVent,
            pitch,
            amount,
        }],
        ..Counted::default()
    }
}
