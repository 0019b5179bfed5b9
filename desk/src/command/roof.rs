//! The roof by itself or in the book: its plan, what it takes, what it costs, where it leaks.

use super::answer::{answer, say};
use super::look::{last_visit, property, shown};
use super::{Common, words_of_computer};
use crate::failure::Failure;
use crate::plain;
use acts::measure::{self, Street, Taken};
use acts::{Book, arrive, judge, leak, measured, offer};
use clap::{Args, ValueEnum};
use screens::{Action, FormOf, Place, Screens, Shows};
use serde_json::json;
use std::path::PathBuf;
use trade::history::History;
use trade::ids::{PropertyId, StructureId, VisitId};
use trade::leak::Stain;
use trade::units::{Got, Length, Pitch};
use trade::visit::WetWhen;
use trade::words::Said;

/// Measuring a roof.
#[derive(Args, Debug)]
pub(super) struct Roof {
    /// A footprint in GeoJSON, or an outline file
    file: Option<PathBuf>,
    /// The pitch where the file gives none, as 6/12
    #[arg(long)]
    pitch: Option<Pitch>,
    /// How far the roof stands out beyond the outline, as "16 in", where the file does not say
    #[arg(long, default_value = "0 in")]
    overhang: Length,
    /// On which side of a map's outline the street lies
    #[arg(long, value_enum, default_value = "south")]
    street: StreetAt,
    /// The address whose roof it is; with a file, the measures are kept there
    #[arg(long, value_name = "ADDRESS", num_args = 1..)]
    at: Vec<String>,
    /// Which structure there, as 1 for the first
    #[arg(long, default_value_t = 1)]
    structure: usize,
    /// Write a file of the plan in place of telling it
    #[arg(long, value_enum)]
    export: Option<Export>,
    /// The published shape of an outline file, as a JSON Schema
    #[arg(long)]
    schema: bool,
}

/// A side of the map.
#[derive(Clone, Copy, Debug, ValueEnum)]
enum StreetAt {
    /// South
    South,
    /// East
    East,
    /// North
    North,
    /// West
    West,
}

impl From<StreetAt> for Street {
    fn from(street: StreetAt) -> Self {
        match street {
            StreetAt::South => Self::South,
            StreetAt::East => Self::East,
            StreetAt::North => Self::North,
            StreetAt::West => Self::West,
        }
    }
}

/// A file of a plan.
#[derive(Clone, Copy, Debug, ValueEnum)]
enum Export {
    /// The plan as a picture
    Svg,
    /// The plan for a drawing program
    Dxf,
    /// Slopes and lines for a map
    Geojson,
    /// Slopes as a table
    Slopes,
    /// Lines as a table
    Lines,
}

impl From<Export> for measure::PlanFile {
    fn from(export: Export) -> Self {
        match export {
            Export::Svg => Self::Svg,
            Export::Dxf => Self::Dxf,
            Export::Geojson => Self::Geojson,
            Export::Slopes => Self::PlanesCsv,
            Export::Lines => Self::LinesCsv,
        }
    }
}

pub(super) fn roof(common: &Common, asked: &Roof) -> Result<(), Failure> {
    if asked.schema {
        say(&measure::outline_schema());
        return Ok(());
    }
    match (&asked.file, asked.at.is_empty()) {
        (Some(_), true) => alone(common, asked),
        (Some(_), false) => keep(common, asked),
        (None, false) => known(common, asked),
        (None, true) => Err(Failure::of("desk-roof-what")),
    }
}

/// A roof from a file, without a book.
fn alone(common: &Common, asked: &Roof) -> Result<(), Failure> {
    let taken = taken(asked)?;
    let words = words_of_computer();
    let measured = measured::alone(taken)?;
    if let Some(export) = asked.export {
        say(&measure::file_of(
            &measured.plan,
            export.into(),
            words,
            None,
        ));
        return Ok(());
    }
    answer(common.json, &measured.told(), || {
        plain::measured(&measured, words)
    })
}

/// Keeps a roof from a file in the book.
fn keep(common: &Common, asked: &Roof) -> Result<(), Failure> {
    common.with_book(|mut book, words| {
        let (_, structure) = structure(&book, &asked.at, asked.structure)?;
        let sketch = measure::draw(&mut book, structure, taken(asked)?, common.clock().now())?;
        answer(common.json, &json!({ "sketch": sketch }), || {
            words.text("desk-kept")
        })
    })
}

/// The roof as the book has it.
fn known(common: &Common, asked: &Roof) -> Result<(), Failure> {
    common.with_book(|book, words| {
        let (history, structure) = structure(&book, &asked.at, asked.structure)?;
        if let Some(export) = asked.export {
            say(&measure::file(&book, structure, export.into(), words)?);
            return Ok(());
        }
        let measured = measured::known(&history, structure)?;
        answer(common.json, &measured.told(), || {
            plain::measured(&measured, words)
        })
    })
}

fn taken(asked: &Roof) -> Result<Taken, Failure> {
    let path = asked
        .file
        .as_ref()
        .ok_or_else(|| Failure::of("desk-roof-what"))?;
    let text = std::fs::read_to_string(path).map_err(|error| Failure::io(path, &error))?;
    let drawn = measure::read(&text, asked.pitch, asked.overhang)?;
    Ok(Taken {
        drawn: measure::turned(drawn, asked.street.into()),
        got: measure::got_in(&text)?.unwrap_or(Got::Footprint),
        pitch_got: Got::Told,
    })
}

/// The structure meant: the n-th that stands at an address.
fn structure(book: &Book, at: &[String], number: usize) -> Result<(History, StructureId), Failure> {
    let property = property(book, at)?;
    let history = arrive::history(book, property)?;
    let standing: Vec<StructureId> = history
        .structures
        .iter()
        .filter(|one| one.gone.is_none())
        .map(|one| one.id)
        .collect();
    let chosen = number
        .checked_sub(1)
        .and_then(|at| standing.get(at).copied())
        .ok_or_else(|| {
            let count = i64::try_from(standing.len()).unwrap_or(i64::MAX);
            Failure::new(Said::new("desk-structure-none").with("count", count))
        })?;
    Ok((history, chosen))
}

/// At which property, and which of its structures.
#[derive(Args, Debug)]
pub(super) struct AtStructure {
    /// The address, an owner or a telephone number; or the property's identifier
    #[arg(required = true)]
    property: Vec<String>,
    /// Which structure there, as 1 for the first; all that were measured where it is not given
    #[arg(long)]
    structure: Option<usize>,
}

impl AtStructure {
    fn structures(&self, book: &Book) -> Result<(PropertyId, History, Vec<StructureId>), Failure> {
        let property = property(book, &self.property)?;
        if let Some(number) = self.structure {
            let (history, structure) = structure(book, &self.property, number)?;
            return Ok((property, history, vec![structure]));
        }
        let history = arrive::history(book, property)?;
        let measured: Vec<StructureId> = history
            .structures
            .iter()
            .filter(|one| one.gone.is_none() && history.sketch_of(one.id).is_some())
            .map(|one| one.id)
            .collect();
        if measured.is_empty() {
            return Err(Failure::of("desk-roof-not-measured"));
        }
        Ok((property, history, measured))
    }
}

pub(super) fn takeoff(common: &Common, at: &AtStructure) -> Result<(), Failure> {
    common.with_screens(|screens| {
        let book = screens.book();
        let (property, history, structures) = at.structures(book)?;
        let going = acts::settings::Going::of(book)?;
        let list = book.price_list()?;
        let visit = last_visit(book, property)?;
        let judged = judge::judge(book, visit, common.clock().now())?;
        let mut told = Vec::new();
        let mut text = Vec::new();
        for structure in structures {
            let slopes = offer::covered_slopes(&judged, structure);
            let reckoned = offer::reckon(&history, structure, slopes, &going, list.as_ref())?;
            told.push(json!({
                "structure": structure,
                "laid": reckoned.laid,
                "takeoff": reckoned.takeoff,
                "tear-off": reckoned.tear_off.as_ref().ok(),
                "load": reckoned.load.as_ref().ok(),
            }));
            text.push(offered(common, &screens, visit, structure, plain::takeoff)?);
        }
        answer(common.json, &told, || text.join("\n"))
    })
}

/// Pricing.
#[derive(Args, Debug)]
pub(super) struct Offer {
    #[command(flatten)]
    at: AtStructure,
    /// Put it to the owner: it is kept, and stands in the next letter
    #[arg(long)]
    put: bool,
}

pub(super) fn offer(common: &Common, asked: &Offer) -> Result<(), Failure> {
    common.with_book(|mut book, _| {
        let property = property(&book, &asked.at.property)?;
        let visit = last_visit(&book, property)?;
        let structures = match asked.at.structure {
            Some(_) => asked.at.structures(&book)?.2,
            None => acts::visit::find(&book, visit)?.1.structures,
        };
        let moment = common.clock().now();
        let list = offer::listed(&book)?;
        let mut offers = Vec::new();
        for structure in &structures {
            if asked.put {
                offer::put(&mut book, visit, *structure, None, moment)?;
            }
            let judged = judge::judge(&book, visit, moment)?;
            let going = &judged.going;
            let slopes = offer::covered_slopes(&judged, *structure);
            let reckoned =
                offer::reckon(&judged.history, *structure, slopes, going, Some(&list)).ok();
            let reckoned = reckoned.as_ref();
            offers.push(offer::offer(
                &judged, *structure, &list, reckoned, None, moment,
            )?);
        }
        let screens = Screens::of(book);
        let text = structures
            .into_iter()
            .map(|structure| offered(common, &screens, visit, structure, plain::offer))
            .collect::<Result<Vec<_>, _>>()?;
        answer(common.json, &offers, || text.join("\n"))
    })
}

fn offered(
    common: &Common,
    screens: &Screens,
    visit: VisitId,
    structure: StructureId,
    told: fn(&screens::Offer) -> String,
) -> Result<String, Failure> {
    let place = Place::Offer { visit, structure };
    match screens.show(&place, common.clock().now())? {
        screens::Screen::Offer(state) => Ok(told(&state)),
        other => Ok(shown(&other)),
    }
}

/// Counting and choosing.
#[derive(Args, Debug)]
pub(super) struct Worksheet {
    #[command(flatten)]
    at: AtStructure,
    /// Write a field, as repair-lasts=5-8; NAME= empties it. Without this the fields are told, each by its name
    #[arg(long = "set", value_name = "NAME=VALUE", value_parser = name_and_value)]
    set: Vec<(String, String)>,
}

fn name_and_value(text: &str) -> Result<(String, String), String> {
    text.split_once('=')
        .map(|(name, value)| (name.trim().to_owned(), value.trim().to_owned()))
        .ok_or_else(|| words_of_computer().text("desk-worksheet-set"))
}

pub(super) fn worksheet(common: &Common, asked: &Worksheet) -> Result<(), Failure> {
    common.with_screens(|mut screens| {
        let property = property(screens.book(), &asked.at.property)?;
        let visit = last_visit(screens.book(), property)?;
        let structure = match asked.at.structure {
            Some(number) => structure(screens.book(), &asked.at.property, number)?.1,
            None => first_of(screens.book(), visit)?,
        };
        if !asked.set.is_empty() {
            let form = FormOf::Worksheet { visit, structure };
            let values = asked.set.clone();
            screens.act(&Action::Submit { form, values }, common.clock().now())?;
        }
        let text = offered(common, &screens, visit, structure, plain::worksheet)?;
        let history = arrive::history(screens.book(), property)?;
        answer(common.json, &history.worksheet_of(structure), || text)
    })
}

/// The first structure that a visit looked at.
fn first_of(book: &Book, visit: VisitId) -> Result<StructureId, Failure> {
    let (_, visit) = acts::visit::find(book, visit)?;
    let first = visit.structures.first().copied();
    first.ok_or_else(|| Failure::of("desk-worksheet-none"))
}

/// Tracing a leak.
#[derive(Args, Debug)]
pub(super) struct Leak {
    #[command(flatten)]
    at: AtStructure,
    /// Where it shows, to the right of the plan's left front corner, as "12 ft"
    #[arg(long)]
    x: Length,
    /// Where it shows, away from the street, from the same corner
    #[arg(long)]
    y: Length,
    /// Give or take
    #[arg(long, default_value = "2 ft")]
    within: Length,
    /// The weather that it comes with
    #[arg(long, value_enum)]
    when: Option<Weather>,
    /// Where the wind comes from then, in degrees from the plan's way up to the right: 180 is the street's side
    #[arg(long, value_name = "DEGREES")]
    wind: Option<u16>,
}

/// The weather that water comes with.
#[derive(Clone, Copy, Debug, ValueEnum)]
enum Weather {
    /// In any rain
    AnyRain,
    /// In rain driven by wind
    DrivenRain,
    /// In long rain
    LongRain,
    /// When snow or ice melts
    Thaw,
    /// In dry cold
    DryCold,
}

impl From<Weather> for WetWhen {
    fn from(weather: Weather) -> Self {
        match weather {
            Weather::AnyRain => Self::AnyRain,
            Weather::DrivenRain => Self::DrivenRain,
            Weather::LongRain => Self::LongRain,
            Weather::Thaw => Self::Thaw,
            Weather::DryCold => Self::DryCold,
        }
    }
}

pub(super) fn leak(common: &Common, asked: &Leak) -> Result<(), Failure> {
    common.with_screens(|screens| {
        let (_, history, structures) = asked.at.structures(screens.book())?;
        let structure = structures[0];
        let stain = Stain {
            at: (asked.x.in_metres(), asked.y.in_metres()),
            within: asked.within,
            when: asked.when.map(Into::into),
            wind_from: asked.wind.map(f64::from),
        };
        let suspects = leak::suspects(&history, structure, &stain)?;
        let place = Place::Leak {
            structure,
            stain: Some(Shows {
                x: asked.x,
                y: asked.y,
                within: asked.within,
                when: asked.when.map(Into::into),
                wind_from: asked.wind,
            }),
        };
        let screen = screens.show(&place, common.clock().now())?;
        answer(common.json, &suspects, || shown(&screen))
    })
}

/// The firm's price list.
#[derive(Args, Debug)]
pub(super) struct Prices {
    /// The list to take in, as comma-separated text; without it the one in the book is written
    file: Option<PathBuf>,
}

pub(super) fn prices(common: &Common, asked: &Prices) -> Result<(), Failure> {
    common.with_book(|mut book, words| {
        if let Some(path) = &asked.file {
            let bytes = std::fs::read(path).map_err(|error| Failure::io(path, &error))?;
            offer::set_price_list(&mut book, &bytes, common.clock().now())?;
            return answer(common.json, &json!({ "kept": true }), || {
                words.text("desk-kept")
            });
        }
        match offer::price_list(&book)? {
            Some(list) => {
                say(list.trim_end());
                Ok(())
            }
            None => Err(Failure::of("desk-prices-none")),
        }
    })
}
