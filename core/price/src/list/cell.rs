//! One row of the file, and its cells as numbers, money, shares, lengths and pitches.

use super::error::{Column, PriceListError, Problem};
use rust_decimal::Decimal;
use std::collections::BTreeMap;
use trade::price_list::Share;
use trade::takeoff::Unit;
use trade::units::{Length, Money, Pitch};

/// Greatest number that a list may hold: no pack, price or hour is greater.
const GREATEST: Decimal = Decimal::from_parts(1_000_000_000, 0, 0, false, 0);
/// Greatest share: ten times the whole.
const GREATEST_SHARE: Decimal = Decimal::from_parts(10, 0, 0, false, 0);

/// One row: its cells by column, without the empty ones.
#[derive(Debug)]
pub(crate) struct Row {
    pub line: u64,
    cells: BTreeMap<Column, String>,
}

type Cell<T> = Result<T, PriceListError>;

impl Row {
    /// The row of a record; `None` where all its cells are empty.
    pub fn read(record: &csv::StringRecord, columns: &[Column], line: u64) -> Cell<Option<Self>> {
        if record.iter().any(|cell| cell.contains('\n')) {
            return Err(PriceListError::at(line, None, Problem::OpenQuote));
        }
        let over = record.iter().skip(columns.len());
        if over.into_iter().any(|cell| !cell.trim().is_empty()) {
            return Err(PriceListError::at(line, None, Problem::TooManyCells));
        }
        let cells: BTreeMap<Column, String> = columns
            .iter()
            .copied()
            .zip(record.iter().map(|cell| cell.trim().to_owned()))
            .filter(|(_, cell)| !cell.is_empty())
            .collect();
        Ok((!cells.is_empty()).then_some(Self { line, cells }))
    }

    pub fn error(&self, column: Column, problem: Problem) -> PriceListError {
        PriceListError::at(self.line, Some(column), problem)
    }

    pub fn text(&self, column: Column) -> Option<&str> {
        self.cells.get(&column).map(String::as_str)
    }

    pub fn must(&self, column: Column) -> Cell<&str> {
        self.text(column)
            .ok_or_else(|| self.error(column, Problem::Empty))
    }

    /// Nothing may stand in other columns than these: what has no meaning is a mistake, not a remark.
    pub fn only(&self, columns: &[Column]) -> Cell<()> {
        let stray = self
            .cells
            .iter()
            .find(|(column, _)| **column != Column::Row && !columns.contains(column));
        match stray {
            Some((column, cell)) => Err(self.error(*column, Problem::NoMeaning(cell.clone()))),
            None => Ok(()),
        }
    }

    fn map<T>(&self, column: Column, read: impl Fn(&str) -> Result<T, Problem>) -> Cell<Option<T>> {
        self.text(column)
            .map(read)
            .transpose()
            .map_err(|problem| self.error(column, problem))
    }

    /// A number of nothing or more.
    pub fn number(&self, column: Column) -> Cell<Option<Decimal>> {
        self.map(column, number)
    }

    /// A number of more than nothing.
    pub fn positive(&self, column: Column) -> Cell<Decimal> {
        let text = self.must(column)?;
        let value = number(text).map_err(|problem| self.error(column, problem))?;
        if value.is_zero() {
            return Err(self.error(column, Problem::OutOfRange(text.to_owned())));
        }
        Ok(value)
    }

    /// Money, to the cent.
    pub fn money(&self, column: Column) -> Cell<Option<Money>> {
        self.map(column, |text| {
            let value = number(text)?;
            if value.normalize().scale() > 2 {
                return Err(Problem::TooManyDecimals(text.to_owned()));
            }
            Ok(Money(value.normalize()))
        })
    }

    /// Money that must be there.
    pub fn must_money(&self, column: Column) -> Cell<Money> {
        self.must(column)?;
        self.money(column)?
            .ok_or_else(|| self.error(column, Problem::Empty))
    }

    /// A share in per cent that is below a bound.
    pub fn share(&self, column: Column, below: Decimal) -> Cell<Option<Share>> {
        self.map(column, |text| {
            let per_cent = text
                .strip_suffix('%')
                .ok_or_else(|| Problem::NotAShare(text.to_owned()))?;
            let per_cent =
                number(per_cent.trim()).map_err(|_| Problem::NotAShare(text.to_owned()))?;
            let share = (per_cent / Decimal::ONE_HUNDRED).normalize();
            if share >= below.min(GREATEST_SHARE) {
                return Err(Problem::ShareOutOfRange(text.to_owned()));
            }
            Ok(Share(share))
        })
    }

    /// A length of more than nothing.
    pub fn length(&self, column: Column) -> Cell<Option<Length>> {
        self.map(column, |text| {
            let length: Length = text
                .parse()
                .map_err(|_| Problem::NotALength(text.to_owned()))?;
            if length <= Length::ZERO {
                return Err(Problem::OutOfRange(text.to_owned()));
            }
            Ok(length)
        })
    }

    /// A pitch.
    pub fn pitch(&self, column: Column) -> Cell<Option<Pitch>> {
        self.map(column, |text| {
            text.parse()
                .map_err(|_| Problem::NotAPitch(text.to_owned()))
        })
    }

    /// The unit, which must be this one; it may be left out.
    pub fn unit(&self, wanted: Unit) -> Cell<()> {
        match self.text(Column::Unit) {
            Some(unit) if unit != wanted.name() => {
                Err(self.error(Column::Unit, Problem::WrongUnit(unit.to_owned(), wanted)))
            }
            _ => Ok(()),
        }
    }

    /// What tells this row from all others.
    pub fn identity(&self) -> [String; 4] {
        [Column::Row, Column::Key, Column::Of, Column::Size]
            .map(|column| self.text(column).unwrap_or_default().to_owned())
    }
}

/// A number as the list writes it: digits with a point, no sign, no thousands marks.
pub(crate) fn number(text: &str) -> Result<Decimal, Problem> {
    let plain = text
        .bytes()
        .all(|byte| byte.is_ascii_digit() || byte == b'.');
    if !plain {
        return Err(Problem::NotANumber(text.to_owned()));
    }
    let value: Decimal = text
        .parse()
        .map_err(|_| Problem::NotANumber(text.to_owned()))?;
    if value > GREATEST {
        return Err(Problem::OutOfRange(text.to_owned()));
    }
    Ok(value.normalize())
}
