//! What a course costs a year over its usual life, and what patching again would come to over the same years.

use super::lines::Lines;
use super::{Asking, OfferError, remedies, sums};
use crate::offers::Patch;
use crate::worth;
use rust_decimal::Decimal;
use rust_decimal::prelude::ToPrimitive;
use trade::catalogue::{Effect, Months};
use trade::offer::{Lasts, MoneySpread, Patching, PatchingAgain, Yearly};
use trade::price_list::{Life, Share};
use trade::stack::Covering;
use trade::takeoff::Spread;
use trade::units::Money;
use trade::verdict::{Course, Task};

/// Asphalt shingles last about 20 years (NAHB, Study of Life Expectancy of Home Components, 2007); five either way is common practice.
fn usual_life(asking: &Asking<'_>, covering: Covering) -> Option<Life> {
    let listed = asking
        .list
        .lives
        .iter()
        .find(|life| life.covering == covering);
    let about_twenty = || Life {
        covering,
        least: 15,
        likely: 20,
        most: 25,
        source: "NAHB 2007".to_owned(),
    };
    listed
        .cloned()
        .or_else(|| covering.is_asphalt_shingle().then(about_twenty))
}

fn lasts(asking: &Asking<'_>, course: Course) -> Option<Lasts> {
    match course {
        Course::TearOff | Course::Recover => {
            let life = usual_life(asking, asking.takeoff?.covering)?;
            Some(Lasts {
                years: Spread {
                    least: f64::from(life.least),
                    likely: f64::from(life.likely),
                    most: f64::from(life.most),
                },
                source: life.source,
            })
        }
        Course::Repair => asking.repair_lasts.cloned(),
        _ => None,
    }
}

/// The price as so much a year; `None` where the list has no rate, or nobody knows how long the course lasts.
pub(super) fn yearly(
    asking: &Asking<'_>,
    course: Course,
    price: MoneySpread,
) -> Result<Option<Yearly>, OfferError> {
    let (Some(rate), Some(lasts)) = (asking.list.interest, lasts(asking, course)) else {
        return Ok(None);
    };
    let a_year = |price: Money, years: f64| -> Result<Money, OfferError> {
        let years = years.round().to_u32().unwrap_or(0);
        Ok(asking
            .list
            .rounding
            .cents(worth::a_year(price, rate, years)?))
    };
    let years = lasts.years;
    Ok(Some(Yearly {
        cost: MoneySpread {
            least: a_year(price.least, years.most)?,
            likely: a_year(price.likely, years.likely)?,
            most: a_year(price.most, years.least)?,
        },
        lasts,
        rate,
    }))
}

/// Patching again over the likely life of the new covering; `None` where there is no patch to compare with, or nobody knows how long it holds.
pub(super) fn patching(asking: &Asking<'_>) -> Result<Option<Patching>, OfferError> {
    let (Some(patch), Some(rate), Some(takeoff)) =
        (asking.patch, asking.list.interest, asking.takeoff)
    else {
        return Ok(None);
    };
    let (Some(life), Some(holds)) = (usual_life(asking, takeoff.covering), holds(asking, patch))
    else {
        return Ok(None);
    };
    let mut lines = Lines::default();
    let task = Task {
        part: patch.part,
        remedy: Some(patch.remedy.clone()),
        trade: None,
    };
    remedies::price(asking, &[&task], &[], false, &mut lines)?;
    if !lines.unpriced.is_empty() {
        return Ok(Some(Patching::NotPriced {
            unpriced: lines.unpriced,
        }));
    }
    let once = sums::sums(asking.list, &lines)?.price;
    again(asking, patch, once, holds, life.likely, rate).map(|again| Some(Patching::Again(again)))
}

fn again(
    asking: &Asking<'_>,
    patch: &Patch,
    once: MoneySpread,
    holds: Months,
    years: u8,
    rate: Share,
) -> Result<PatchingAgain, OfferError> {
    let over = |once: Money, months: u16| worth::patching(once, months, u32::from(years), rate);
    let (sum_least, now_least) = over(once.least, holds.most)?;
    let (sum_likely, now_likely) = over(once.likely, holds.least.midpoint(holds.most))?;
    let (sum_most, now_most) = over(once.most, holds.least)?;
    let spread = |least: Decimal, likely: Decimal, most: Decimal| {
        let cents = |amount| asking.list.rounding.cents(amount);
        MoneySpread {
            least: cents(least),
            likely: cents(likely),
            most: cents(most),
        }
    };
    let times = |months| worth::times_patched(months, u32::from(years));
    Ok(PatchingAgain {
        remedy: patch.remedy.clone(),
        part: patch.part,
        once,
        holds,
        years,
        times: (times(holds.most)?, times(holds.least)?),
        sum: spread(sum_least, sum_likely, sum_most),
        worth_now: spread(now_least, now_likely, now_most),
        rate,
    })
}

/// How long a patch holds: as he says, else the shortest that the catalogue gives for what is wrong with the part.
fn holds(asking: &Asking<'_>, patch: &Patch) -> Option<Months> {
    if patch.holds.is_some() {
        return patch.holds;
    }
    let kind = &asking.history.part(patch.part)?.kind;
    remedies::last_real(asking, patch.part)?
        .defects
        .iter()
        .filter_map(|seen| asking.catalogue.defect(&seen.defect))
        .filter_map(|defect| match defect.effect_on(kind, &patch.remedy) {
            Some(Effect::BuysTime { months, .. }) => Some(*months),
            _ => None,
        })
        .min()
}
