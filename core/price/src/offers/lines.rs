//! Lines of cost: material in whole packs, hours at a rate, each rounded to the cent.

use super::OfferError;
use rust_decimal::Decimal;
use rust_decimal::prelude::{FromPrimitive, ToPrimitive};
use trade::offer::{CostKind, CostLine, MoneySpread, Unpriced};
use trade::price_list::{PriceList, Rate, Rounding};
use trade::takeoff::{Item, Packs, Spread, sized};
use trade::units::{Length, Money};
use trade::words::Said;

/// Greatest amount of anything that is priced.
const GREATEST: f64 = 1e9;
/// Decimals that a quantity keeps: hours, tons and squares to the hundredth.
pub(super) const QUANTITY_DECIMALS: u32 = 2;

/// The lines of one course.
#[derive(Debug, Default)]
pub(super) struct Lines {
    pub rows: Vec<CostLine>,
    pub hours: Spread,
    /// Sheets of deck at their own price, outside the lines.
    pub sheets: Option<(Packs, Money)>,
    pub unpriced: Vec<Unpriced>,
}

impl Lines {
    /// What lines of one kind come to.
    pub fn sum_of(&self, wanted: impl Fn(CostKind) -> bool) -> MoneySpread {
        let lines = self.rows.iter().filter(|line| wanted(line.kind));
        lines.map(|line| line.amount).sum()
    }

    /// Material in whole packs.
    pub fn material(
        &mut self,
        list: &PriceList,
        item: Item,
        size: Option<Length>,
        amount: Spread,
    ) -> Result<(), OfferError> {
        let Some(row) = list.material(item, size) else {
            super::unpriced(self, Unpriced::NoMaterial { item, size });
            return Ok(());
        };
        let holds = row.pack.to_f64().unwrap_or(0.0);
        let packs = amount.in_packs(holds).spread();
        let name = if row.name.is_empty() {
            sized(item, size)
        } else {
            Said::new("offer-line-named")
                .with("item", sized(item, size))
                .with("name", row.name.as_str())
        };
        self.rows.push(line(
            list.rounding,
            CostKind::Material,
            name,
            packs,
            Said::new(format!("{}.many", item.pack_key())),
            row.price,
        )?);
        Ok(())
    }

    /// Hours of work at a rate.
    pub fn work(
        &mut self,
        rounding: Rounding,
        what: Said,
        hours: Spread,
        rate: &Rate,
    ) -> Result<(), OfferError> {
        let line = line(
            rounding,
            CostKind::Labour,
            what,
            hours,
            Said::new("unit-hour"),
            rate.hour,
        )?;
        self.hours = self.hours + line.quantity;
        self.rows.push(line);
        Ok(())
    }
}

/// One line: the quantity to the hundredth, times what one costs, to the cent.
pub(super) fn line(
    rounding: Rounding,
    kind: CostKind,
    what: Said,
    quantity: Spread,
    unit: Said,
    each: Money,
) -> Result<CostLine, OfferError> {
    let least = hundredths(quantity.least)?;
    let likely = hundredths(quantity.likely)?;
    let most = hundredths(quantity.most)?;
    let amount = |quantity: Decimal| rounding.cents(quantity * each.0);
    let shown = |quantity: Decimal| quantity.to_f64().unwrap_or(0.0);
    Ok(CostLine {
        kind,
        what,
        quantity: Spread {
            least: shown(least),
            likely: shown(likely),
            most: shown(most),
        },
        unit,
        each,
        amount: MoneySpread {
            least: amount(least),
            likely: amount(likely),
            most: amount(most),
        },
    })
}

/// A quantity as a decimal, to the hundredth. Measures are floating; from here on money is not.
pub(super) fn hundredths(quantity: f64) -> Result<Decimal, OfferError> {
    if !(0.0..=GREATEST).contains(&quantity) {
        return Err(OfferError::TooGreat);
    }
    Decimal::from_f64(quantity)
        .map(|quantity| {
            quantity.round_dp_with_strategy(
                QUANTITY_DECIMALS,
                rust_decimal::RoundingStrategy::MidpointAwayFromZero,
            )
        })
        .ok_or(OfferError::TooGreat)
}

/// So many times an amount, as a float again.
pub(super) fn times(amount: Spread, each: Decimal) -> Spread {
    amount.scaled(each.to_f64().unwrap_or(0.0))
}
