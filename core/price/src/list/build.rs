//! The list, put together row by row.

use super::cell::{Row, number};
use super::error::{Column, PriceListError, Problem};
use rust_decimal::Decimal;
use rust_decimal::prelude::ToPrimitive;
use std::collections::BTreeMap;
use trade::catalogue::{Catalogue, RemedyKey};
use trade::price_list::{
    Band, Disposal, Gain, Half, Life, Material, PriceList, Rate, RemedyRow, RemedyUse, RoundTo,
    Rounding, SalesTax, Share, TaskHours, TaxOn, Trailer,
};
use trade::stack::Covering;
use trade::takeoff::{Item, RoofTask, Unit};
use trade::units::{Length, Money};

/// Nanometres in a foot.
const NM_PER_FOOT: i64 = 304_800_000;
/// How far a pack may be off its width times its length, as a share.
const PACK_OFF: Decimal = Decimal::from_parts(1, 0, 0, false, 2);
/// Half of all: no sales tax or interest is greater.
const HALF: Decimal = Decimal::from_parts(5, 0, 0, false, 1);
/// A bound for shares that may be greater than the whole.
const TENFOLD: Decimal = Decimal::from_parts(10, 0, 0, false, 0);

type Done = Result<(), PriceListError>;

/// What was read so far.
#[derive(Default)]
pub(crate) struct Builder {
    seen: BTreeMap<[String; 4], u64>,
    currency: Option<String>,
    valid_days: Option<u16>,
    rounding: Rounding,
    gain: Option<(Gain, u64)>,
    overhead: Option<Share>,
    tax: Option<(SalesTax, u64)>,
    minimum: Option<Money>,
    permit: Option<Money>,
    sheet: Option<Money>,
    interest: Option<Share>,
    bands: Vec<(Band, u64)>,
    rates: Vec<Rate>,
    materials: Vec<Material>,
    tasks: Vec<(TaskHours, u64)>,
    remedies: Vec<(RemedyRow, u64)>,
    uses: Vec<RemedyUse>,
    disposal: Disposal,
    pounds: Option<Decimal>,
    cubic_yards: Option<Decimal>,
    lives: Vec<Life>,
}

impl Builder {
    /// Takes one row in, or says what is wrong with it.
    pub fn take(&mut self, row: Row, errors: &mut Vec<PriceListError>) {
        if let Err(error) = self.try_take(&row) {
            errors.push(error);
        }
    }

    fn try_take(&mut self, row: &Row) -> Done {
        let kind = row.must(Column::Row)?;
        if let Some(line) = self.seen.get(&row.identity()) {
            return Err(row.error(Column::Key, Problem::Twice(*line)));
        }
        self.seen.insert(row.identity(), row.line);
        match kind {
            "set" => self.set(row),
            "band" => self.band(row),
            "rate" => self.rate(row),
            "material" => self.material(row),
            "task" => self.task(row),
            "remedy" => self.remedy(row),
            "use" => self.uses(row),
            "disposal" => self.disposal(row),
            "trailer" => self.trailer(row),
            "life" => self.life(row),
            other => Err(row.error(Column::Row, Problem::NoSuchRow(other.to_owned()))),
        }
    }

    fn set(&mut self, row: &Row) -> Done {
        let key = row.must(Column::Key)?;
        match key {
            "minimum" | "permit" | "sheet" => self.set_money(row, key),
            "margin" | "markup" => self.set_gain(row, key),
            "tax" => self.set_tax(row),
            "overhead" | "interest" => self.set_share(row, key),
            "currency" | "valid-days" | "round-to" | "round-half" => self.set_choice(row, key),
            other => Err(row.error(Column::Key, Problem::NoSuchKey(other.to_owned()))),
        }
    }

    fn set_money(&mut self, row: &Row, key: &str) -> Done {
        row.only(&[Column::Key, Column::Price, Column::Name])?;
        let money = Some(row.must_money(Column::Price)?);
        match key {
            "minimum" => self.minimum = money,
            "permit" => self.permit = money,
            _ => self.sheet = money,
        }
        Ok(())
    }

    fn set_gain(&mut self, row: &Row, key: &str) -> Done {
        row.only(&[Column::Key, Column::Value, Column::Name])?;
        if let Some((_, line)) = self.gain {
            return Err(row.error(Column::Key, Problem::MarginAndMarkup(line)));
        }
        // A margin is a share of the price: the whole of it leaves nothing for the cost.
        let below = if key == "margin" {
            Decimal::ONE
        } else {
            TENFOLD
        };
        let share = must_share(row, below)?;
        let gain = if key == "margin" {
            Gain::Margin(share)
        } else {
            Gain::Markup(share)
        };
        self.gain = Some((gain, row.line));
        Ok(())
    }

    fn set_tax(&mut self, row: &Row) -> Done {
        row.only(&[Column::Key, Column::Of, Column::Value, Column::Name])?;
        let of = row.must(Column::Of)?;
        let on = TaxOn::ALL
            .into_iter()
            .find(|on| on.name() == of)
            .ok_or_else(|| not_one_of(row, Column::Of, of, "materials, all"))?;
        if let Some((_, line)) = self.tax {
            return Err(row.error(Column::Key, Problem::Twice(line)));
        }
        let rate = must_share(row, HALF)?;
        self.tax = Some((SalesTax { rate, on }, row.line));
        Ok(())
    }

    fn set_share(&mut self, row: &Row, key: &str) -> Done {
        row.only(&[Column::Key, Column::Value, Column::Name])?;
        if key == "overhead" {
            self.overhead = Some(must_share(row, TENFOLD)?);
        } else {
            self.interest = Some(must_share(row, HALF)?);
        }
        Ok(())
    }

    fn set_choice(&mut self, row: &Row, key: &str) -> Done {
        row.only(&[Column::Key, Column::Value, Column::Name])?;
        let value = row.must(Column::Value)?;
        match (key, value) {
            ("currency", code) => self.currency = Some(currency(row, code)?),
            ("valid-days", days) => self.valid_days = Some(whole_days(row, days)?),
            ("round-to", "cent") => self.rounding.to = RoundTo::Cent,
            ("round-to", "whole") => self.rounding.to = RoundTo::Whole,
            ("round-to", other) => {
                return Err(not_one_of(row, Column::Value, other, "cent, whole"));
            }
            (_, "up") => self.rounding.half = Half::Up,
            (_, "even") => self.rounding.half = Half::Even,
            (_, other) => return Err(not_one_of(row, Column::Value, other, "up, even")),
        }
        Ok(())
    }

    fn band(&mut self, row: &Row) -> Done {
        row.only(&[Column::Key, Column::Value, Column::Name])?;
        let band = Band {
            key: row.must(Column::Key)?.to_owned(),
            to: row.pitch(Column::Value)?,
        };
        self.bands.push((band, row.line));
        Ok(())
    }

    fn rate(&mut self, row: &Row) -> Done {
        row.only(&[Column::Key, Column::Unit, Column::Price, Column::Name])?;
        row.unit(Unit::Hour)?;
        self.rates.push(Rate {
            key: row.must(Column::Key)?.to_owned(),
            hour: row.must_money(Column::Price)?,
        });
        Ok(())
    }

    fn material(&mut self, row: &Row) -> Done {
        use Column::{Amount, Key, Length, Name, Price, Size, Unit, Value, Width};
        row.only(&[Key, Size, Unit, Amount, Width, Length, Price, Value, Name])?;
        let item = item(row, Key)?;
        row.unit(item.unit())?;
        let waste = row.share(Value, Decimal::ONE)?;
        if item.is_laid() && waste.is_some() {
            return Err(row.error(Value, Problem::WasteIsComputed));
        }
        let (width, length) = (row.length(Width)?, row.length(Length)?);
        self.materials.push(Material {
            item,
            size: row.length(Size)?,
            name: row.text(Name).unwrap_or_default().to_owned(),
            pack: pack(row, item, width, length)?,
            width,
            length,
            price: row.must_money(Price)?,
            waste: waste.unwrap_or_default(),
        });
        Ok(())
    }

    fn task(&mut self, row: &Row) -> Done {
        use Column::{Hours, Key, Name, Of, Unit, Value};
        row.only(&[Key, Of, Unit, Hours, Value, Name])?;
        let key = row.must(Key)?;
        let task = RoofTask::named(key)
            .ok_or_else(|| row.error(Key, Problem::NoSuchKey(key.to_owned())))?;
        row.unit(task.unit())?;
        let hours = TaskHours {
            task,
            band: row.text(Of).map(str::to_owned),
            hours: must_number(row, Hours)?,
            rate: row.text(Value).map(str::to_owned),
        };
        self.tasks.push((hours, row.line));
        Ok(())
    }

    fn remedy(&mut self, row: &Row) -> Done {
        use Column::{Hours, Key, Name, Of, Price, Unit as UnitColumn, Value};
        row.only(&[Key, Of, UnitColumn, Hours, Price, Value, Name])?;
        let unit = row.must(UnitColumn)?;
        let unit = [Unit::Place, Unit::Foot, Unit::SquareFoot, Unit::Square]
            .into_iter()
            .find(|known| known.name() == unit)
            .ok_or_else(|| not_one_of(row, UnitColumn, unit, "place, foot, square-foot, square"))?;
        let remedy = RemedyRow {
            remedy: remedy(row)?,
            band: row.text(Of).map(str::to_owned),
            unit,
            hours: must_number(row, Hours)?,
            rate: row.text(Value).map(str::to_owned),
            sundries: row.money(Price)?,
        };
        self.remedies.push((remedy, row.line));
        Ok(())
    }

    fn uses(&mut self, row: &Row) -> Done {
        use Column::{Amount, Key, Name, Of, Unit};
        row.only(&[Key, Of, Unit, Amount, Name])?;
        let item = item(row, Of)?;
        row.unit(item.unit())?;
        self.uses.push(RemedyUse {
            remedy: remedy(row)?,
            item,
            amount: row.positive(Amount)?,
        });
        Ok(())
    }

    fn disposal(&mut self, row: &Row) -> Done {
        row.only(&[Column::Key, Column::Price, Column::Name])?;
        let price = row.must_money(Column::Price)?;
        match row.must(Column::Key)? {
            "ton" => self.disposal.ton = Some(price),
            "load" => self.disposal.load = Some(price),
            other => return Err(not_one_of(row, Column::Key, other, "ton, load")),
        }
        Ok(())
    }

    fn trailer(&mut self, row: &Row) -> Done {
        row.only(&[Column::Key, Column::Amount, Column::Name])?;
        let amount = row.positive(Column::Amount)?;
        match row.must(Column::Key)? {
            "pounds" => self.pounds = Some(amount),
            "cubic-yards" => self.cubic_yards = Some(amount),
            other => return Err(not_one_of(row, Column::Key, other, "pounds, cubic-yards")),
        }
        Ok(())
    }

    fn life(&mut self, row: &Row) -> Done {
        use Column::{Amount, Key, Name, Value};
        row.only(&[Key, Amount, Value, Name])?;
        let key = row.must(Key)?;
        let covering = covering_named(key)
            .ok_or_else(|| row.error(Key, Problem::NoSuchKey(key.to_owned())))?;
        let (least, most) = years(row)?;
        let likely = row
            .positive(Amount)?
            .to_u8()
            .filter(|likely| (least..=most).contains(likely))
            .ok_or_else(|| {
                let text = row.text(Amount).unwrap_or_default();
                row.error(Amount, Problem::OutOfRange(text.to_owned()))
            })?;
        self.lives.push(Life {
            covering,
            least,
            likely,
            most,
            source: row.must(Name)?.to_owned(),
        });
        Ok(())
    }

    /// The whole list, once it hangs together.
    pub fn finish(mut self, errors: &mut Vec<PriceListError>) -> Option<PriceList> {
        self.names_are_known(errors);
        self.bands_rise(errors);
        let mut missing = |row: &'static str| {
            errors.push(PriceListError {
                line: None,
                column: None,
                problem: Problem::RowMissing(row),
            });
        };
        if self.currency.is_none() {
            missing("set, currency");
        }
        if self.gain.is_none() {
            missing("set, margin");
        }
        if self.rates.is_empty() {
            missing("rate");
        }
        if self.valid_days.is_none() {
            missing("set, valid-days");
        }
        self.disposal.trailer = match (self.pounds, self.cubic_yards) {
            (Some(pounds), Some(cubic_yards)) => Some(Trailer {
                pounds,
                cubic_yards,
            }),
            (None, None) => None,
            (Some(_), None) => {
                missing("trailer, cubic-yards");
                None
            }
            (None, Some(_)) => {
                missing("trailer, pounds");
                None
            }
        };
        Some(PriceList {
            currency: self.currency?,
            valid_days: self.valid_days?,
            rounding: self.rounding,
            gain: self.gain?.0,
            overhead: self.overhead.unwrap_or_default(),
            tax: self.tax.map(|(tax, _)| tax),
            minimum: self.minimum,
            permit: self.permit,
            sheet: self.sheet,
            interest: self.interest,
            bands: self.bands.into_iter().map(|(band, _)| band).collect(),
            rates: self.rates,
            materials: self.materials,
            tasks: self.tasks.into_iter().map(|(task, _)| task).collect(),
            remedies: self.remedies.into_iter().map(|(row, _)| row).collect(),
            uses: self.uses,
            disposal: self.disposal,
            lives: self.lives,
        })
    }

    fn names_are_known(&self, errors: &mut Vec<PriceListError>) {
        let tasks = self
            .tasks
            .iter()
            .map(|(row, line)| (&row.band, &row.rate, *line));
        let remedies = self
            .remedies
            .iter()
            .map(|(row, line)| (&row.band, &row.rate, *line));
        for (band, rate, line) in tasks.chain(remedies) {
            if let Some(band) = band
                && !self.bands.iter().any(|(known, _)| known.key == *band)
            {
                let problem = Problem::NoSuchBand(band.clone());
                errors.push(PriceListError::at(line, Some(Column::Of), problem));
            }
            if let Some(rate) = rate
                && !self.rates.iter().any(|known| known.key == *rate)
            {
                let problem = Problem::NoSuchRate(rate.clone());
                errors.push(PriceListError::at(line, Some(Column::Value), problem));
            }
        }
    }

    fn bands_rise(&self, errors: &mut Vec<PriceListError>) {
        let wrong = |line| PriceListError::at(line, Some(Column::Value), Problem::BandsOutOfOrder);
        for pair in self.bands.windows(2) {
            if let [(lower, line), (upper, next)] = pair {
                match (lower.to, upper.to) {
                    (None, _) => errors.push(wrong(*line)),
                    (Some(lower), Some(upper)) if upper <= lower => errors.push(wrong(*next)),
                    _ => {}
                }
            }
        }
        if let Some((last, line)) = self.bands.last()
            && last.to.is_some()
        {
            errors.push(wrong(*line));
        }
    }
}

fn not_one_of(row: &Row, column: Column, cell: &str, may: &'static str) -> PriceListError {
    row.error(column, Problem::NotOneOf(cell.to_owned(), may))
}

fn must_share(row: &Row, below: Decimal) -> Result<Share, PriceListError> {
    row.must(Column::Value)?;
    row.share(Column::Value, below)?
        .ok_or_else(|| row.error(Column::Value, Problem::Empty))
}

fn must_number(row: &Row, column: Column) -> Result<Decimal, PriceListError> {
    row.must(column)?;
    row.number(column)?
        .ok_or_else(|| row.error(column, Problem::Empty))
}

fn item(row: &Row, column: Column) -> Result<Item, PriceListError> {
    let key = row.must(column)?;
    Item::named(key).ok_or_else(|| row.error(column, Problem::NoSuchKey(key.to_owned())))
}

fn remedy(row: &Row) -> Result<RemedyKey, PriceListError> {
    let key = row.must(Column::Key)?;
    let remedy = RemedyKey::from(key);
    match Catalogue::standard().remedy(&remedy) {
        Some(_) => Ok(remedy),
        None => Err(row.error(Column::Key, Problem::NoSuchKey(key.to_owned()))),
    }
}

fn currency(row: &Row, code: &str) -> Result<String, PriceListError> {
    let three_letters = code.len() == 3 && code.bytes().all(|byte| byte.is_ascii_uppercase());
    if three_letters {
        Ok(code.to_owned())
    } else {
        Err(row.error(Column::Value, Problem::NotACurrency(code.to_owned())))
    }
}

fn whole_days(row: &Row, days: &str) -> Result<u16, PriceListError> {
    let wrong = || row.error(Column::Value, Problem::OutOfRange(days.to_owned()));
    let days: u16 = days.parse().map_err(|_| wrong())?;
    if (1..=3650).contains(&days) {
        Ok(days)
    } else {
        Err(wrong())
    }
}

/// What a pack holds: as the row says, or as its width and length make it where it does not.
fn pack(
    row: &Row,
    item: Item,
    width: Option<Length>,
    length: Option<Length>,
) -> Result<Decimal, PriceListError> {
    let feet = |length: Length| Decimal::from(length.nanometres()) / Decimal::from(NM_PER_FOOT);
    let made = match (item.unit(), width, length) {
        (Unit::SquareFoot, Some(width), Some(length)) => Some(feet(width) * feet(length)),
        (Unit::Foot, _, Some(length)) => Some(feet(length)),
        _ => None,
    };
    let made = made.map(|made| made.round_dp(6).normalize());
    match (row.text(Column::Amount), made) {
        (None, Some(made)) => Ok(made),
        (_, None) => row.positive(Column::Amount),
        (Some(_), Some(made)) => {
            let said = row.positive(Column::Amount)?;
            if (said - made).abs() > made * PACK_OFF {
                return Err(row.error(Column::Amount, Problem::PackDisagrees(made.to_string())));
            }
            Ok(said)
        }
    }
}

fn years(row: &Row) -> Result<(u8, u8), PriceListError> {
    let text = row.must(Column::Value)?;
    let wrong = || row.error(Column::Value, Problem::NotYears(text.to_owned()));
    let (least, most) = text.split_once('-').ok_or_else(wrong)?;
    let year = |text: &str| {
        number(text.trim())
            .ok()
            .and_then(|years| years.to_u8())
            .filter(|years| (1..=100).contains(years))
            .ok_or_else(wrong)
    };
    let (least, most) = (year(least)?, year(most)?);
    if least <= most {
        Ok((least, most))
    } else {
        Err(wrong())
    }
}

/// A covering's name in a price list: its key without the word before it.
pub(crate) fn covering_name(covering: Covering) -> &'static str {
    covering.key().trim_start_matches("covering-")
}

fn covering_named(name: &str) -> Option<Covering> {
    Covering::ALL
        .into_iter()
        .find(|covering| covering_name(*covering) == name)
}
