//! The fields of an offer's worksheet, one place for all that is known of each: its name, its label, what stands in it, how it is read.

mod ranges;
mod vents;

use crate::form::{Typed, value_of};
use crate::name;
use acts::ActError;
use acts::worksheet::{ToCount, unit_of};
use ranges::{amount, between, typed as range_typed, whole};
use serde::Serialize;
use serde::de::DeserializeOwned;
use trade::catalogue::{Catalogue, Months, RemedyKey};
use trade::history::History;
use trade::ids::{PartId, StructureId};
use trade::laid::{StarterAt, ValleyIs};
use trade::price_list::PriceList;
use trade::property::Part;
use trade::takeoff::{OrderAt, Unit};
use trade::units::{Length, UnitError};
use trade::words::{Said, Words};
use trade::worksheet::{Between, ChimneySize, Worksheet};
pub(crate) use vents::{Vent, vent_fields};

/// Years that a repair may last: money is reckoned over no longer time.
const YEARS: (u16, u16) = (1, 100);
/// Months that a patch may hold.
const MONTHS: (u16, u16) = (1, 1200);
/// Sheets of deck that an allowance may hold.
const SHEETS: (u16, u16) = (0, 999);
/// Tubes and cans.
const STATED: (u16, u16) = (0, 999);
/// Nails in a strip: the code's fewest (IRC R905.2.6), and more than any maker asks for.
const NAILS: (u16, u16) = (4, 12);

/// One field.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Field {
    /// How long a repair lasts.
    RepairLasts,
    /// How long the patch holds.
    PatchHolds,
    /// How much of a remedy a part takes.
    Count(ToCount),
    /// How wide a chimney is.
    ChimneyWidth(PartId),
    /// How deep it is.
    ChimneyDepth(PartId),
    /// The overhang of eaves.
    Overhang,
    /// Counter flashing along walls.
    CounterFlashing,
    /// How valleys are made.
    Valleys,
    /// Where the starter course goes.
    Starter,
    /// Sheets of deck.
    DeckSheets,
    /// How the attic is vented.
    Vent(Vent),
    /// Nails in a strip.
    Nails,
    /// Tubes of sealant.
    Sealant,
    /// Cans of cement.
    Cement,
    /// By which end of the ranges it is ordered.
    OrderAt,
}

/// What a field takes.
pub(crate) enum Takes {
    /// One line.
    Line,
    /// One of several, each with the key of its label.
    OneOf(Vec<(String, &'static str)>),
}

fn one_of<T: Serialize + Copy>(all: &[T], key: fn(T) -> &'static str) -> Takes {
    Takes::OneOf(all.iter().map(|one| (value_of(one), key(*one))).collect())
}

impl Field {
    /// Its name in the form. Parts are named by their numbers, so that a person can type it.
    pub(crate) fn name(&self, history: &History) -> String {
        match self {
            Self::Count(count) => format!("count-{}-{}", tag(history, count.part), count.remedy.0),
            Self::ChimneyWidth(part) => format!("chimney-{}-width", tag(history, *part)),
            Self::ChimneyDepth(part) => format!("chimney-{}-depth", tag(history, *part)),
            Self::Vent(vent) => vent.name().to_owned(),
            Self::RepairLasts => "repair-lasts".to_owned(),
            Self::PatchHolds => "patch-holds".to_owned(),
            Self::Overhang => "overhang".to_owned(),
            Self::CounterFlashing => "counter-flashing".to_owned(),
            Self::Valleys => "valleys".to_owned(),
            Self::Starter => "starter".to_owned(),
            Self::DeckSheets => "deck-sheets".to_owned(),
            Self::Nails => "nails".to_owned(),
            Self::Sealant => "sealant".to_owned(),
            Self::Cement => "cement".to_owned(),
            Self::OrderAt => "order-at".to_owned(),
        }
    }

    /// What it asks.
    pub(crate) fn label(&self, history: &History, words: &Words) -> Said {
        let part = |id: PartId| Said::verbatim(name::part(words, history, id));
        match self {
            Self::Count(count) => count_label(count, part(count.part)),
            Self::ChimneyWidth(id) => Said::new("worksheet-chimney-width").with("part", part(*id)),
            Self::ChimneyDepth(id) => Said::new("worksheet-chimney-depth").with("part", part(*id)),
            Self::Vent(vent) => Said::new(vent.label()),
            other => Said::new(format!("worksheet-{}", other.name(history))),
        }
    }

    /// What it takes.
    pub(crate) fn takes(&self) -> Takes {
        match self {
            Self::Valleys => one_of(&ValleyIs::ALL, ValleyIs::key),
            Self::Starter => one_of(&StarterAt::ALL, StarterAt::key),
            Self::OrderAt => one_of(&OrderAt::ALL, OrderAt::key),
            Self::Vent(vent) => vent.takes(),
            _ => Takes::Line,
        }
    }

    /// What stands in it.
    pub(crate) fn text(&self, sheet: &Worksheet) -> String {
        let length = |length: Option<Length>| length.map(Length::imperial).unwrap_or_default();
        let range = |range: Option<Between>| {
            range.map_or_else(String::new, |range| range_typed(range.spread()))
        };
        let stated = |count: u16| {
            Some(count)
                .filter(|count| *count > 0)
                .map(|count| count.to_string())
        };
        match self {
            Self::RepairLasts => range(sheet.repair_lasts),
            Self::PatchHolds => range(sheet.patch_holds.map(|months| Between {
                least: months.least,
                most: months.most,
            })),
            Self::Count(count) => sheet
                .count(count.part, &count.remedy)
                .map_or_else(String::new, range_typed),
            Self::ChimneyWidth(part) => length(sheet.chimney(*part).width),
            Self::ChimneyDepth(part) => length(sheet.chimney(*part).depth),
            Self::Overhang => length(sheet.overhang),
            Self::CounterFlashing => length(sheet.counter_flashing),
            Self::Valleys => value_of(&sheet.valleys),
            Self::Starter => value_of(&sheet.starter),
            Self::DeckSheets => range(sheet.deck_sheets),
            Self::Vent(vent) => vent.text(sheet.vents.as_ref()),
            Self::Nails => sheet
                .nails_a_strip
                .map_or_else(String::new, |nails| nails.to_string()),
            Self::Sealant => stated(sheet.sealant).unwrap_or_default(),
            Self::Cement => stated(sheet.cement).unwrap_or_default(),
            Self::OrderAt => value_of(&sheet.order_at),
        }
    }

    /// Puts what was typed into it on the worksheet; `Err` is what is wrong with it. How the attic is vented is read as a whole.
    fn read(&self, text: &str, sheet: &mut Worksheet) -> Result<(), Said> {
        match self {
            Self::RepairLasts => sheet.repair_lasts = between(text, YEARS, "wrong-years")?,
            Self::PatchHolds => {
                let months = between(text, MONTHS, "wrong-months")?;
                sheet.patch_holds = months.map(|Between { least, most }| Months { least, most });
            }
            Self::Count(count) => {
                let counted = amount(text, count.unit == Some(Unit::Foot))?;
                sheet.set_count(count.part, count.remedy.clone(), counted);
            }
            Self::ChimneyWidth(part) => {
                let width = length(text)?;
                sheet.set_chimney(ChimneySize {
                    width,
                    ..sheet.chimney(*part)
                });
            }
            Self::ChimneyDepth(part) => {
                let depth = length(text)?;
                sheet.set_chimney(ChimneySize {
                    depth,
                    ..sheet.chimney(*part)
                });
            }
            Self::Overhang => sheet.overhang = length(text)?,
            Self::CounterFlashing => sheet.counter_flashing = length(text)?,
            Self::Valleys => sheet.valleys = chosen(text)?,
            Self::Starter => sheet.starter = chosen(text)?,
            Self::DeckSheets => sheet.deck_sheets = between(text, SHEETS, "wrong-sheets")?,
            Self::Nails => {
                let nails = whole(text, NAILS, "wrong-nails")?;
                sheet.nails_a_strip = nails.and_then(|nails| u8::try_from(nails).ok());
            }
            Self::Sealant => sheet.sealant = whole(text, STATED, "wrong-stated")?.unwrap_or(0),
            Self::Cement => sheet.cement = whole(text, STATED, "wrong-stated")?.unwrap_or(0),
            Self::OrderAt => sheet.order_at = chosen(text)?,
            Self::Vent(_) => {}
        }
        Ok(())
    }
}

fn count_label(count: &ToCount, part: Said) -> Said {
    let remedy = Said::new(count.remedy.message());
    let Some(unit) = count.unit else {
        return Said::new("worksheet-count")
            .with("part", part)
            .with("remedy", remedy);
    };
    let key = match count.on_plan {
        Some(_) => "worksheet-count-on-plan",
        None => "worksheet-count-in",
    };
    let said = Said::new(key)
        .with("part", part)
        .with("remedy", remedy)
        .with("unit", Said::new(unit.key()));
    match count.on_plan {
        Some(on_plan) => said.with("plan", trade::takeoff::amount_said(on_plan, unit)),
        None => said,
    }
}

/// How a part is told apart in a name: by its number; by its identifier where two devices gave one number to two parts.
fn tag(history: &History, id: PartId) -> String {
    let Some(part) = history.part(id) else {
        return id.to_string();
    };
    let alike = history
        .parts_of(part.structure)
        .filter(|other| other.number == part.number);
    match alike.count() {
        1 => part.number.to_string(),
        _ => id.to_string(),
    }
}

/// What the reading of a worksheet goes by.
pub(crate) struct Reading<'a> {
    /// The record of the property.
    pub(crate) history: &'a History,
    /// The firm's prices, which say in what things are counted.
    pub(crate) list: Option<&'a PriceList>,
    /// The words to answer in.
    pub(crate) words: &'a Words,
}

/// The field of a name.
fn named(reading: &Reading<'_>, structure: StructureId, name: &str) -> Option<Field> {
    let history = reading.history;
    [
        Field::RepairLasts,
        Field::PatchHolds,
        Field::Overhang,
        Field::CounterFlashing,
        Field::Valleys,
        Field::Starter,
        Field::DeckSheets,
        Field::Nails,
        Field::Sealant,
        Field::Cement,
        Field::OrderAt,
    ]
    .into_iter()
    .chain(Vent::ALL.map(Field::Vent))
    .chain(
        history
            .parts_of(structure)
            .flat_map(|part| of_part(reading, part, name)),
    )
    .find(|field| field.name(history) == name)
}

/// The fields that a part may have by a name.
fn of_part(reading: &Reading<'_>, part: &Part, name: &str) -> Vec<Field> {
    let history = reading.history;
    let counted = name
        .strip_prefix(&format!("count-{}-", tag(history, part.id)))
        .map(RemedyKey::from)
        .filter(|remedy| Catalogue::standard().remedy(remedy).is_some())
        .map(|remedy| {
            Field::Count(ToCount {
                part: part.id,
                unit: reading
                    .list
                    .and_then(|list| unit_of(history, list, part.id, &remedy)),
                remedy,
                on_plan: None,
            })
        });
    let chimney = [Field::ChimneyWidth(part.id), Field::ChimneyDepth(part.id)];
    counted.into_iter().chain(chimney).collect()
}

/// Reads what was typed into the fields of a form. What was not touched stays as it is on the worksheet, and so does what has no field.
///
/// # Errors
/// Where one cannot be read, or names no field: which one, and what to write there.
pub(crate) fn read(
    typed: &Typed<'_>,
    sheet: &mut Worksheet,
    reading: &Reading<'_>,
) -> Result<(), ActError> {
    for (name, text) in typed.0 {
        let field = named(reading, sheet.structure, name).ok_or_else(|| no_field(name))?;
        let text = text.trim();
        if text != field.text(sheet) {
            field
                .read(text, sheet)
                .map_err(|problem| in_field(&field, reading, problem))?;
        }
    }
    vents::read(typed, sheet)
        .map_err(|(vent, problem)| in_field(&Field::Vent(vent), reading, problem))
}

fn no_field(name: &str) -> ActError {
    let problem = Said::new("wrong-no-such-field").with("name", name);
    ActError::wrong(name.to_owned(), problem)
}

fn in_field(field: &Field, reading: &Reading<'_>, problem: Said) -> ActError {
    let says = Said::new("wrong-in-field")
        .with("field", field.label(reading.history, reading.words))
        .with("problem", problem);
    ActError::wrong(field.name(reading.history), says)
}

/// A length; `None` where nothing was typed.
fn length(text: &str) -> Result<Option<Length>, Said> {
    if text.is_empty() {
        return Ok(None);
    }
    let length: Length = text.parse().map_err(|error: UnitError| error.says())?;
    if length < Length::ZERO {
        return Err(Said::new("wrong-below-nothing"));
    }
    Ok(Some(length))
}

/// A choice. One that a form never offers is refused.
fn chosen<T: DeserializeOwned>(text: &str) -> Result<T, Said> {
    serde_json::from_value(serde_json::Value::String(text.to_owned()))
        .map_err(|_| Said::new("wrong-choice"))
}
