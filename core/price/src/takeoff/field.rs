//! The shingles themselves, their nails, and what is stated by the piece.

use super::Counted;
use super::site::Site;
use crate::choices::LEAST_NAILS;
use crate::code::{Irc, irc};
use trade::laid::Laid;
use trade::roof::LineKind;
use trade::takeoff::{Item, Need, RoofTask, Spread, TaskAmount, plain};
use trade::verdict::Source;
use trade::words::Said;

/// Nails in one cap. Common practice, no source.
const NAILS_A_CAP: f64 = 2.0;
/// Nails of 1 1/4 in that make a pound. Common practice, no source: it only helps him who buys by weight.
const NAILS_A_POUND: f64 = 140.0;

/// Whether starter is bought: because the firm does, or has to.
fn buys_starter(site: &Site<'_>) -> bool {
    site.basis.supplies.buys_starter || !site.laid.pieces.give_starter_and_caps()
}

/// Whether caps are bought, likewise.
fn buys_caps(site: &Site<'_>) -> bool {
    site.basis.supplies.buys_caps || !site.laid.pieces.give_starter_and_caps()
}

/// Shingles, laid piece by piece; starter and caps along with them where they are cut from the same.
pub(super) fn shingles(site: &Site<'_>) -> Counted {
    let laid = site.laid;
    let Some(item) = Item::shingle_of(laid.pieces.covering) else {
        return Counted::default();
    };
    let pieces = f64::from(laid.field) + f64::from(cut_from_the_same(site));
    let bundle = f64::from(laid.pieces.bundle.max(1));
    let amount = Spread::within(pieces, site.plan.area_within());
    let packs = amount.in_packs(bundle);
    Counted {
        needs: vec![Need {
            item,
            size: None,
            amount,
            pack: bundle,
            packs,
            order: site.basis.choices.order_at.of(packs),
            reason: Said::new("need-shingles")
                .with("waste", plain(laid.waste * 100.0, 1))
                .with("field", laid.field)
                .with("cut", cut_from_the_same(site)),
            source: Source::Evidence,
        }],
        tasks: site.over(RoofTask::LayShingles, |plane| site.plane_squares(plane)),
        ..Counted::default()
    }
}

fn cut_from_the_same(site: &Site<'_>) -> u32 {
    let when = |bought: bool, pieces: u32| if bought { 0 } else { pieces };
    when(buys_starter(site), site.laid.starter) + when(buys_caps(site), site.laid.cap)
}

/// Starter strip where it is bought, and the work of laying it.
pub(super) fn starter(site: &Site<'_>) -> Counted {
    let feet = Spread::within(site.laid.starter_length.in_feet(), site.plan.length_within);
    if feet.is_nothing() {
        return Counted::default();
    }
    let bought = buys_starter(site).then(|| {
        site.need(
            Item::Starter,
            feet,
            Said::new("need-starter"),
            Source::Practice,
        )
    });
    Counted {
        needs: bought.into_iter().collect(),
        tasks: shared_out(site, RoofTask::LayStarter, &[LineKind::Eave], feet),
        ..Counted::default()
    }
}

/// Hip and ridge caps where they are bought, and the work of laying them.
pub(super) fn caps(site: &Site<'_>) -> Counted {
    let within = site.plan.length_within + site.plan.pitch_within;
    let feet = Spread::within(site.laid.cap_length.in_feet(), within);
    if feet.is_nothing() {
        return Counted::default();
    }
    let bought = buys_caps(site)
        .then(|| site.need(Item::Cap, feet, Said::new("need-cap"), Source::Practice));
    let lines: &[LineKind] = &[LineKind::Ridge, LineKind::Hip];
    Counted {
        needs: bought.into_iter().collect(),
        tasks: shared_out(site, RoofTask::LayCap, lines, feet),
        ..Counted::default()
    }
}

/// A length shared out over the pitches that its lines are worked from.
fn shared_out(
    site: &Site<'_>,
    task: RoofTask,
    kinds: &'static [LineKind],
    feet: Spread,
) -> Vec<TaskAmount> {
    let along = site.along(task, site.lines(kinds));
    let whole: f64 = along.iter().map(|part| part.amount.likely).sum();
    if whole <= 0.0 {
        let pitch = site.planes.iter().map(|(_, plane)| plane.pitch).max();
        let amount = feet;
        return vec![TaskAmount {
            task,
            pitch,
            amount,
        }];
    }
    along
        .into_iter()
        .map(|part| TaskAmount {
            amount: feet.scaled(part.amount.likely / whole),
            ..part
        })
        .collect()
}

/// Nails: so many a strip in field and starter, never fewer than the code's four, two a cap.
pub(super) fn nails(site: &Site<'_>) -> Counted {
    let a_strip = site.basis.choices.nails_a_strip.max(LEAST_NAILS);
    let likely = nails_in(site.laid, f64::from(a_strip));
    let amount = Spread::within(likely, site.plan.area_within());
    let pounds = Spread::exactly(likely / NAILS_A_POUND);
    let need = site.need(
        Item::Nails,
        amount,
        Said::new("need-nails")
            .with("nails", a_strip)
            .with("pounds", pounds.counted(0, "unit-pound")),
        irc(Irc::NailCount, site.edition()),
    );
    Counted {
        needs: vec![need],
        ..Counted::default()
    }
}

fn nails_in(laid: &Laid, a_strip: f64) -> f64 {
    let strips = f64::from(laid.field) + f64::from(laid.starter);
    strips * a_strip + f64::from(laid.caps) * NAILS_A_CAP
}

/// Sealant and asphalt cement, as he states them.
pub(super) fn sealant(site: &Site<'_>) -> Counted {
    let choices = site.basis.choices;
    let stated = [
        (Item::Sealant, choices.sealant),
        (Item::Cement, choices.cement),
    ];
    let needs = stated
        .into_iter()
        .filter(|(_, count)| *count > 0)
        .map(|(item, count)| {
            site.need(
                item,
                Spread::exactly(f64::from(count)),
                Said::new("need-stated"),
                Source::HousePolicy,
            )
        })
        .collect();
    Counted {
        needs,
        ..Counted::default()
    }
}

/// Setting up and cleaning up, once.
pub(super) fn set_up(_: &Site<'_>) -> Counted {
    Counted {
        tasks: vec![TaskAmount {
            task: RoofTask::SetUp,
            pitch: None,
            amount: Spread::exactly(1.0),
        }],
        ..Counted::default()
    }
}
