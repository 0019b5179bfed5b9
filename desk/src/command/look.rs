//! Looking things up: find, doorstep, second look, verdict.

use super::Common;
use super::answer::answer;
use crate::failure::Failure;
use crate::plain;
use acts::{Book, arrive, judge};
use clap::Args;
use screens::{Place, Screen, Screens};
use serde::Serialize;
use trade::ids::{PropertyId, VisitId};
use trade::words::Said;

/// Finding an address.
#[derive(Args, Debug)]
pub(super) struct Find {
    /// An address in any spelling, part of one, an owner's name, or a telephone number
    #[arg(required = true)]
    text: Vec<String>,
}

/// At which property.
#[derive(Args, Debug)]
pub(super) struct At {
    /// The address, an owner or a telephone number; or the property's identifier
    #[arg(required = true)]
    property: Vec<String>,
}

#[derive(Serialize)]
struct FoundRow {
    property: PropertyId,
    address: trade::property::Address,
    owner: Option<String>,
    last_visit: Option<jiff::civil::Date>,
    away: u32,
}

impl FoundRow {
    /// In one line.
    fn says(&self) -> Said {
        let owner = match &self.owner {
            Some(owner) => Said::verbatim(owner.as_str()),
            None => Said::new("desk-found-no-owner"),
        };
        let visit = match self.last_visit {
            Some(on) => Said::new("desk-found-last-visit").with("on", on),
            None => Said::new("desk-found-no-visit"),
        };
        let place = format!("{}, {}", self.address.line, self.address.town);
        Said::new("desk-found")
            .with("place", place)
            .with("owner", owner)
            .with("visit", visit)
    }
}

pub(super) fn find(common: &Common, find: &Find) -> Result<(), Failure> {
    common.with_book(|book, words| {
        let text = find.text.join(" ");
        let rows: Vec<FoundRow> = arrive::find(&book, &text)?
            .into_iter()
            .map(|found| FoundRow {
                property: found.card.property,
                address: found.card.address,
                owner: found.card.owner,
                last_visit: found.card.last_visit,
                away: found.away,
            })
            .collect();
        answer(common.json, &rows, || {
            if rows.is_empty() {
                return words.say(&nothing_like(&text));
            }
            let lines: Vec<String> = rows.iter().map(|row| words.say(&row.says())).collect();
            lines.join("\n")
        })
    })
}

fn nothing_like(text: &str) -> Said {
    Said::new("desk-find-none").with("text", text)
}

/// The one property that a text means.
pub(super) fn property(book: &Book, words: &[String]) -> Result<PropertyId, Failure> {
    let text = words.join(" ");
    if let Ok(id) = text.parse::<PropertyId>() {
        arrive::history(book, id)?;
        return Ok(id);
    }
    let found = arrive::find(book, &text)?;
    match found.as_slice() {
        [] => Err(Failure::new(nothing_like(&text))),
        [one] => Ok(one.card.property),
        [first, second, ..] if first.away < second.away => Ok(first.card.property),
        several => {
            let list: Vec<String> = several
                .iter()
                .map(|found| format!("  {} {}", found.card.property, found.card.address.line))
                .collect();
            Err(Failure::new(
                Said::new("desk-find-several")
                    .with("text", text)
                    .with("list", list.join("\n")),
            ))
        }
    }
}

/// The last visit to a property.
pub(super) fn last_visit(book: &Book, property: PropertyId) -> Result<VisitId, Failure> {
    arrive::history(book, property)?
        .visits
        .last()
        .map(|visit| visit.id)
        .ok_or_else(|| Failure::of("desk-no-visit"))
}

pub(super) fn doorstep(common: &Common, at: &At) -> Result<(), Failure> {
    common.with_screens(|screens| {
        let property = property(screens.book(), &at.property)?;
        let moment = common.clock().now();
        let screen = screens.show(&Place::Doorstep { property }, moment)?;
        if common.json {
            let (_, tells) = acts::doorstep::look(screens.book(), property, None, moment)?;
            return answer(true, &tells, String::new);
        }
        answer(false, &(), || shown(&screen))
    })
}

pub(super) fn second_look(common: &Common, at: &At) -> Result<(), Failure> {
    common.with_screens(|screens| {
        let property = property(screens.book(), &at.property)?;
        let visit = last_visit(screens.book(), property)?;
        let moment = common.clock().now();
        let judged = judge::judge(screens.book(), visit, moment)?;
        let screen = screens.show(&Place::ThenAndNow { visit }, moment)?;
        answer(common.json, &judged.threads, || shown(&screen))
    })
}

pub(super) fn verdict(common: &Common, at: &At) -> Result<(), Failure> {
    common.with_screens(|screens| {
        let property = property(screens.book(), &at.property)?;
        let visit = last_visit(screens.book(), property)?;
        let judged = judge::judge(screens.book(), visit, common.clock().now())?;
        let text = verdicts(&screens, common, visit)?;
        answer(common.json, &judged.verdicts, || text)
    })
}

/// The verdicts on all structures of a visit, as text.
fn verdicts(screens: &Screens, common: &Common, visit: VisitId) -> Result<String, Failure> {
    let (_, record) = acts::visit::find(screens.book(), visit)?;
    let mut text = Vec::new();
    for structure in record.structures {
        let screen = screens.show(&Place::Verdict { visit, structure }, common.clock().now())?;
        text.push(shown(&screen));
    }
    Ok(text.join("\n"))
}

/// A screen as text; those that are only forms have none.
pub(super) fn shown(screen: &Screen) -> String {
    match screen {
        Screen::Doorstep(state) => plain::doorstep(state),
        Screen::ThenAndNow(state) => plain::then_and_now(state),
        Screen::Verdict(state) => plain::verdict(state),
        Screen::Letter(state) => plain::letter(state),
        Screen::Leak(state) => plain::leak(state),
        Screen::Offer(state) => plain::offer(state),
        _ => String::new(),
    }
}
