//! Lines of cost: material in whole packs, hours at a rate, each rounded to the cent.

use super::OfferError;
use rust_decimal::prelude::{FromPrimitive, ToPrimitive};
use rust_decimal::{Decimal, RoundingStrategy};
use trade::offer::{CostKind, CostLine, MoneySpread, Unpriced};
use trade::price_list::{PriceList, Rate, Rounding};
use trade::takeoff::{Item, Packs, Spread, sized};
use trade::units::{Length, Money};
use trade::words::Said;

/// Greatest amount of anything that is priced.
const GREATEST: f64 = 1e9;
/// Decimals that a quantity keeps: hours, tons and squares to the hundredth.
const QUANTITY_DECIMALS: u32 = 2;
/// Decimals that a measure keeps on its way into decimals: a millionth of a foot is no foot.
const MEASURE_DECIMALS: u32 = 6;

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
        let packs = Exact::of(amount.in_packs(holds).spread())?;
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
        ));
        Ok(())
    }

    /// Hours of work at a rate.
    pub fn work(&mut self, rounding: Rounding, what: Said, hours: Exact, rate: &Rate) {
        let unit = Said::new("unit-hour");
        let line = line(rounding, CostKind::Labour, what, hours, unit, rate.hour);
        self.hours = self.hours + line.quantity;
        self.rows.push(line);
    }
}

/// A quantity as decimals. Measures are floating; from here on nothing that money hangs on is.
#[derive(Clone, Copy, Debug)]
pub(super) struct Exact {
    least: Decimal,
    likely: Decimal,
    most: Decimal,
}

impl Exact {
    /// A measure to the millionth.
    pub fn of(measure: Spread) -> Result<Self, OfferError> {
        Ok(Self {
            least: millionths(measure.least)?,
            likely: millionths(measure.likely)?,
            most: millionths(measure.most)?,
        })
    }

    fn map(self, through: impl Fn(Decimal) -> Decimal) -> Self {
        Self {
            least: through(self.least),
            likely: through(self.likely),
            most: through(self.most),
        }
    }

    /// So many times as much.
    pub fn times(self, factor: Decimal) -> Self {
        self.map(|quantity| quantity * factor)
    }

    /// To the hundredth, as a line shows it.
    fn to_hundredths(self) -> Self {
        self.map(|quantity| rounded(quantity, QUANTITY_DECIMALS))
    }

    fn shown(self) -> Spread {
        let shown = |quantity: Decimal| quantity.to_f64().unwrap_or(0.0);
        Spread {
            least: shown(self.least),
            likely: shown(self.likely),
            most: shown(self.most),
        }
    }
}

fn millionths(measure: f64) -> Result<Decimal, OfferError> {
    if !(0.0..=GREATEST).contains(&measure) {
        return Err(OfferError::TooGreat);
    }
    Decimal::from_f64(measure)
        .map(|measure| rounded(measure, MEASURE_DECIMALS))
        .ok_or(OfferError::TooGreat)
}

fn rounded(quantity: Decimal, decimals: u32) -> Decimal {
    quantity.round_dp_with_strategy(decimals, RoundingStrategy::MidpointAwayFromZero)
}

/// One line: the quantity to the hundredth, times what one costs, to the cent.
pub(super) fn line(
    rounding: Rounding,
    kind: CostKind,
    what: Said,
    quantity: Exact,
    unit: Said,
    each: Money,
) -> CostLine {
    let quantity = quantity.to_hundredths();
    let amount = |quantity: Decimal| rounding.cents(quantity * each.0);
    CostLine {
        kind,
        what,
        quantity: quantity.shown(),
        unit,
        each,
        amount: MoneySpread {
            least: amount(quantity.least),
            likely: amount(quantity.likely),
            most: amount(quantity.most),
        },
    }
}
