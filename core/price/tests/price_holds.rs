//! What must hold of any price, whatever the roof and the list.

#![cfg(test)]

mod support;

use price::Asking;
use proptest::prelude::*;
use rust_decimal::Decimal;
use support::{asking, boot, covering, example_list, made, step, task, verdict};
use trade::offer::{MoneySpread, PricedCourse, Sums};
use trade::price_list::{Gain, RoundTo, Share, TaxOn};
use trade::units::{Money, Pitch};
use trade::verdict::{Course, When};

/// Half a cent.
const HALF_CENT: Decimal = Decimal::from_parts(5, 0, 0, false, 3);
/// Half of a whole amount.
const HALF_WHOLE: Decimal = Decimal::from_parts(5, 0, 0, false, 1);

fn sum_holds(course: &PricedCourse, sums: &Sums) {
    let of = |pick: fn(&MoneySpread) -> Money| {
        let lines: Decimal = course.lines.iter().map(|line| pick(&line.amount).0).sum();
        assert_eq!(lines, pick(&sums.subtotal).0, "lines make the subtotal");
        assert_eq!(
            pick(&sums.cost).0,
            pick(&sums.subtotal).0 + pick(&sums.overhead).0
        );
        let parts = [
            sums.cost,
            sums.gain,
            sums.sheets,
            sums.to_minimum,
            sums.rounded,
        ];
        let before: Decimal = parts.iter().map(|part| pick(part).0).sum();
        assert_eq!(before, pick(&sums.before_tax).0);
        assert_eq!(
            pick(&sums.before_tax).0 + pick(&sums.tax).0,
            pick(&sums.price).0
        );
    };
    of(|amount| amount.least);
    of(|amount| amount.likely);
    of(|amount| amount.most);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    /// Whatever the roof and the list: lines make the subtotal, least ≤ likely ≤ most throughout, a margin is a share of the price and a markup of the
    /// cost to the cent, the minimum holds, the rounding is within its step.
    #[test]
    fn a_price_hangs_together(
        long in 12.0..120.0f64,
        wide in 12.0..60.0f64,
        rise in 2u32..14,
        within in 0.0..0.1f64,
        share in 0i64..80,
        is_margin in any::<bool>(),
        tax in 0i64..20,
        on_all in any::<bool>(),
        whole in any::<bool>(),
        minimum in 0i64..20_000,
    ) {
        let (history, part) = boot();
        let (takeoff, down) = covering(long, wide, Pitch::rise(rise), within);
        let judged = verdict(vec![step(When::ThisSeason, Course::TearOff, vec![task(part, None)])]);
        let mut list = example_list();
        let share = Share(Decimal::new(share, 2));
        list.gain = if is_margin { Gain::Margin(share) } else { Gain::Markup(share) };
        let known = list.tax.as_mut().expect("a tax");
        known.rate = Share(Decimal::new(tax, 2));
        known.on = if on_all { TaxOn::All } else { TaxOn::Materials };
        list.rounding.to = if whole { RoundTo::Whole } else { RoundTo::Cent };
        list.minimum = Some(Money(Decimal::from(minimum)));
        let asked = Asking {
            takeoff: Some(&takeoff),
            tear_off: Some(&down),
            ..asking(&judged, &history, &list)
        };
        let course = made(&asked).courses.remove(0);
        prop_assert!(course.unpriced.is_empty());
        let sums = course.sums.clone().expect("sums");
        sum_holds(&course, &sums);
        for amount in [sums.subtotal, sums.cost, sums.before_tax, sums.price] {
            prop_assert!(amount.least <= amount.likely && amount.likely <= amount.most);
        }
        for (cost, gain) in [(sums.cost.least, sums.gain.least), (sums.cost.most, sums.gain.most)] {
            let of = if is_margin { cost.0 + gain.0 } else { cost.0 };
            prop_assert!((of * share.0 - gain.0).abs() <= HALF_CENT);
        }
        let step = if whole { HALF_WHOLE } else { HALF_CENT };
        prop_assert!(sums.rounded.likely.0.abs() <= step);
        prop_assert!(sums.before_tax.least.0 >= Decimal::from(minimum));
        if let Some(yearly) = course.yearly {
            prop_assert!(yearly.cost.least <= yearly.cost.likely && yearly.cost.likely <= yearly.cost.most);
        }
    }

    /// A longer roof never costs less.
    #[test]
    fn more_roof_never_costs_less(
        long in 12.0..100.0f64,
        more in 0.0..20.0f64,
        wide in 12.0..60.0f64,
        rise in 2u32..14,
    ) {
        let (history, part) = boot();
        let judged = verdict(vec![step(When::ThisSeason, Course::TearOff, vec![task(part, None)])]);
        let list = example_list();
        let price = |long| {
            let (takeoff, down) = covering(long, wide, Pitch::rise(rise), 0.02);
            let asked = Asking {
                takeoff: Some(&takeoff),
                tear_off: Some(&down),
                ..asking(&judged, &history, &list)
            };
            made(&asked).courses.remove(0).price().expect("a price")
        };
        let (short, longer) = (price(long), price(long + more));
        prop_assert!(short.least <= longer.least && short.likely <= longer.likely && short.most <= longer.most);
    }
}
