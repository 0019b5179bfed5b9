//! From cost to price: running costs, margin or markup, the minimum, rounding, tax. Each step is rounded to the cent and shown.

use super::OfferError;
use super::lines::Lines;
use rust_decimal::Decimal;
use trade::offer::{CostKind, MoneySpread, Sums};
use trade::price_list::{Gain, PriceList, TaxOn};
use trade::units::Money;

/// The sums under the lines.
pub(super) fn sums(list: &PriceList, lines: &Lines) -> Result<Sums, OfferError> {
    let subtotal = lines.sum_of(|_| true);
    let share = |amount: MoneySpread, share: Decimal| {
        amount.map(|money| list.rounding.cents(money.0 * share))
    };
    let overhead = share(subtotal, list.overhead.0);
    let cost = subtotal + overhead;
    let gain = match list.gain {
        Gain::Markup(markup) => share(cost, markup.0),
        Gain::Margin(margin) => by_margin(list, cost, margin.0)?,
    };
    let sheets = sheets(list, lines);
    let net = cost + gain + sheets;
    let minimum = list.minimum.unwrap_or(Money(Decimal::ZERO));
    let to_minimum = net.map(|net| Money((minimum.0 - net.0).max(Decimal::ZERO)));
    let exact = net + to_minimum;
    let before_tax = exact.map(|exact| rounded(list, exact, minimum));
    let rounded = before_tax.with(exact, |rounded, exact| Money(rounded.0 - exact.0));
    let tax = list.tax.map_or(MoneySpread::ZERO, |tax| match tax.on {
        TaxOn::All => share(before_tax, tax.rate.0),
        TaxOn::Materials => share(lines.sum_of(|kind| kind == CostKind::Material), tax.rate.0),
    });
    Ok(Sums {
        subtotal,
        overhead,
        cost,
        gain,
        sheets,
        to_minimum,
        rounded,
        before_tax,
        tax,
        taxed: list.tax.map(|tax| (tax.rate, tax.on)),
        price: before_tax + tax,
    })
}

/// A margin is a share of the price: price = cost / (1 − margin).
fn by_margin(
    list: &PriceList,
    cost: MoneySpread,
    margin: Decimal,
) -> Result<MoneySpread, OfferError> {
    let rest = Decimal::ONE - margin;
    if rest <= Decimal::ZERO {
        return Err(OfferError::TooGreat);
    }
    Ok(cost.map(|cost| {
        let price = list.rounding.cents(cost.0 / rest);
        Money(price.0 - cost.0)
    }))
}

fn sheets(list: &PriceList, lines: &Lines) -> MoneySpread {
    lines.sheets.map_or(MoneySpread::ZERO, |(packs, each)| {
        let of = |packs: u32| list.rounding.cents(each.0 * Decimal::from(packs));
        MoneySpread {
            least: of(packs.least),
            likely: of(packs.likely),
            most: of(packs.most),
        }
    })
}

/// The price before tax as the list rounds it; never rounded to below the minimum.
fn rounded(list: &PriceList, exact: Money, minimum: Money) -> Money {
    let rounded = list.rounding.price(exact.0);
    if rounded < minimum {
        Money(minimum.0.ceil())
    } else {
        rounded
    }
}
