//! The list as a file again.

use super::build::covering_name;
use super::error::Column;
use rust_decimal::Decimal;
use std::collections::BTreeMap;
use trade::price_list::{Gain, Half, Material, PriceList, RemedyRow, RoundTo, Share, TaskHours};
use trade::units::{Length, Money};

/// Nanometres in a sixteenth of an inch.
const NM_PER_SIXTEENTH: i64 = 1_587_500;

type Cells = BTreeMap<Column, String>;

/// Writes a price list so that [`super::read_list`] reads the same list again.
pub fn write_list(list: &PriceList) -> String {
    let header = Column::ALL.map(|column| column.name().to_owned());
    let rows = rows(list);
    let mut text = line(&header);
    for row in rows {
        let cells = Column::ALL.map(|column| row.get(&column).cloned().unwrap_or_default());
        text.push_str(&line(&cells));
    }
    text
}

fn line(cells: &[String; 12]) -> String {
    let cells: Vec<String> = cells.iter().map(|cell| quoted(cell)).collect();
    format!("{}\n", cells.join(","))
}

/// A cell in quotation marks where it needs them (RFC 4180).
fn quoted(cell: &str) -> String {
    let cell = cell.replace(['\n', '\r'], " ");
    if cell.contains([',', '"']) || cell.starts_with('#') {
        format!("\"{}\"", cell.replace('"', "\"\""))
    } else {
        cell
    }
}

fn row<const N: usize>(kind: &str, key: &str, cells: [(Column, String); N]) -> Cells {
    let mut row: Cells = cells
        .into_iter()
        .filter(|(_, cell)| !cell.is_empty())
        .collect();
    row.insert(Column::Row, kind.to_owned());
    row.insert(Column::Key, key.to_owned());
    row
}

fn rows(list: &PriceList) -> Vec<Cells> {
    let mut rows = settings(list);
    rows.extend(list.bands.iter().map(|band| {
        let to = band.to.map(|pitch| pitch.to_string()).unwrap_or_default();
        row("band", &band.key, [(Column::Value, to)])
    }));
    rows.extend(
        list.rates
            .iter()
            .map(|rate| row("rate", &rate.key, [(Column::Price, money(rate.hour))])),
    );
    rows.extend(list.materials.iter().map(material));
    rows.extend(list.tasks.iter().map(task));
    rows.extend(list.remedies.iter().map(remedy));
    rows.extend(list.uses.iter().map(|used| {
        row(
            "use",
            used.remedy.as_str(),
            [
                (Column::Of, used.item.name().to_owned()),
                (Column::Unit, used.item.unit().name().to_owned()),
                (Column::Amount, number(used.amount)),
            ],
        )
    }));
    rows.extend(disposal(list));
    rows.extend(list.lives.iter().map(|life| {
        row(
            "life",
            covering_name(life.covering),
            [
                (Column::Amount, life.likely.to_string()),
                (Column::Value, format!("{}-{}", life.least, life.most)),
                (Column::Name, life.source.clone()),
            ],
        )
    }));
    rows
}

fn settings(list: &PriceList) -> Vec<Cells> {
    let set = |key: &str, column, cell: String| row("set", key, [(column, cell)]);
    let share = |share: Share| share.to_string();
    let mut rows = vec![
        set("currency", Column::Value, list.currency.clone()),
        set("valid-days", Column::Value, list.valid_days.to_string()),
        set(
            "round-to",
            Column::Value,
            match list.rounding.to {
                RoundTo::Cent => "cent",
                RoundTo::Whole => "whole",
            }
            .to_owned(),
        ),
        set(
            "round-half",
            Column::Value,
            match list.rounding.half {
                Half::Up => "up",
                Half::Even => "even",
            }
            .to_owned(),
        ),
        match list.gain {
            Gain::Margin(margin) => set("margin", Column::Value, share(margin)),
            Gain::Markup(markup) => set("markup", Column::Value, share(markup)),
        },
        set("overhead", Column::Value, share(list.overhead)),
    ];
    if let Some(tax) = list.tax {
        rows.push(row(
            "set",
            "tax",
            [
                (Column::Of, tax.on.name().to_owned()),
                (Column::Value, share(tax.rate)),
            ],
        ));
    }
    if let Some(interest) = list.interest {
        rows.push(set("interest", Column::Value, share(interest)));
    }
    let sums = [
        ("minimum", list.minimum),
        ("permit", list.permit),
        ("sheet", list.sheet),
    ];
    rows.extend(
        sums.into_iter()
            .filter_map(|(key, sum)| Some(set(key, Column::Price, money(sum?)))),
    );
    rows
}

fn material(material: &Material) -> Cells {
    let size = |size: Option<Length>| size.map(length).unwrap_or_default();
    let waste = if material.waste.0.is_zero() {
        String::new()
    } else {
        material.waste.to_string()
    };
    row(
        "material",
        material.item.name(),
        [
            (Column::Size, size(material.size)),
            (Column::Unit, material.item.unit().name().to_owned()),
            (Column::Amount, number(material.pack)),
            (Column::Width, size(material.width)),
            (Column::Length, size(material.length)),
            (Column::Price, money(material.price)),
            (Column::Value, waste),
            (Column::Name, material.name.clone()),
        ],
    )
}

fn task(task: &TaskHours) -> Cells {
    row(
        "task",
        task.task.name(),
        [
            (Column::Of, task.band.clone().unwrap_or_default()),
            (Column::Unit, task.task.unit().name().to_owned()),
            (Column::Hours, number(task.hours)),
            (Column::Value, task.rate.clone().unwrap_or_default()),
        ],
    )
}

fn remedy(remedy: &RemedyRow) -> Cells {
    row(
        "remedy",
        remedy.remedy.as_str(),
        [
            (Column::Of, remedy.band.clone().unwrap_or_default()),
            (Column::Unit, remedy.unit.name().to_owned()),
            (Column::Hours, number(remedy.hours)),
            (
                Column::Price,
                remedy.sundries.map(money).unwrap_or_default(),
            ),
            (Column::Value, remedy.rate.clone().unwrap_or_default()),
        ],
    )
}

fn disposal(list: &PriceList) -> Vec<Cells> {
    let disposal = list.disposal;
    let priced = [("ton", disposal.ton), ("load", disposal.load)];
    let mut rows: Vec<Cells> = priced
        .into_iter()
        .filter_map(|(key, sum)| Some(row("disposal", key, [(Column::Price, money(sum?))])))
        .collect();
    if let Some(trailer) = disposal.trailer {
        let limit = |key, amount| row("trailer", key, [(Column::Amount, number(amount))]);
        rows.push(limit("pounds", trailer.pounds));
        rows.push(limit("cubic-yards", trailer.cubic_yards));
    }
    rows
}

fn number(number: Decimal) -> String {
    number.normalize().to_string()
}

fn money(money: Money) -> String {
    money.to_string()
}

/// In feet or inches where that is exact to the sixteenth, else in millimetres.
fn length(length: Length) -> String {
    let nanometres = length.nanometres();
    if nanometres % (NM_PER_SIXTEENTH * 192) == 0 && nanometres >= NM_PER_SIXTEENTH * 192 * 4 {
        return format!("{} ft", nanometres / (NM_PER_SIXTEENTH * 192));
    }
    if nanometres % NM_PER_SIXTEENTH == 0 {
        let inches = Decimal::from(nanometres) / Decimal::from(NM_PER_SIXTEENTH * 16);
        return format!("{} in", inches.normalize());
    }
    format!("{} mm", Decimal::new(nanometres, 6).normalize())
}
