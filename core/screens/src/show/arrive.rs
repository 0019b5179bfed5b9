//! Arrive: find the address, or who to see today.

use super::reminders;
use crate::action::Action;
use crate::block::{Button, FieldKind, Form, Row};
use crate::filling::Filling;
use crate::form::FormOf;
use crate::place::Place;
use crate::screens::Context;
use acts::{ActError, Why, arrive, outcome};
use serde::Serialize;
use trade::words::Said;

/// The state of Arrive.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Arrive {
    /// The firm's name.
    pub firm: String,
    /// The heading.
    pub title: String,
    /// Where the address is typed.
    pub search: Form,
    /// What was found, likeliest first.
    pub found: Vec<Row>,
    /// What to say where nothing was found.
    pub none: Option<String>,
    /// Adding what is not in the book.
    pub add: Option<Form>,
    /// Visits that are still open.
    pub open: Vec<Row>,
    /// The heading over them.
    pub open_title: String,
    /// Who to see today.
    pub today: Vec<Row>,
    /// The heading over them.
    pub today_title: String,
    /// Elsewhere.
    pub doors: Vec<Button>,
}

pub(crate) fn show(context: &Context<'_>, find: &str) -> Result<Arrive, ActError> {
    let found = found(context, find)?;
    let searched = !find.trim().is_empty();
    Ok(Arrive {
        firm: context.going.firm.name.clone(),
        title: context.text("arrive-title"),
        search: search(context, find),
        none: (searched && found.is_empty())
            .then(|| context.say(&Said::new("arrive-none").with("find", find))),
        add: searched.then(|| add(context, find)),
        open: if searched { Vec::new() } else { open(context)? },
        open_title: context.text("arrive-open"),
        today: if searched {
            Vec::new()
        } else {
            today(context)?
        },
        today_title: context.text("arrive-today"),
        doors: vec![
            Button::new(
                context.text("reminders-title"),
                Action::Go {
                    to: Place::Reminders,
                },
            ),
            Button::new(
                context.text("settings-title"),
                Action::Go {
                    to: Place::Settings,
                },
            ),
        ],
        found,
    })
}

fn search(context: &Context<'_>, find: &str) -> Form {
    Filling::new(context, FormOf::Find)
        .field("find", "arrive-find", find, here(context))
        .done(String::new(), "arrive-find-button")
}

/// A line that the phone can fill with where it stands.
pub(crate) fn here(context: &Context<'_>) -> FieldKind {
    FieldKind::Position {
        here: context.text("position-here"),
        failed: context.text("position-failed"),
    }
}

fn found(context: &Context<'_>, find: &str) -> Result<Vec<Row>, ActError> {
    if find.trim().is_empty() {
        return Ok(Vec::new());
    }
    Ok(arrive::find(context.book, find)?
        .into_iter()
        .map(|found| Row {
            title: found.card.address.line.clone(),
            says: context.say(&why(&found.why).with("town", found.card.address.town.clone())),
            ladder: None,
            action: Some(Action::Go {
                to: Place::Doorstep {
                    property: found.card.property,
                },
            }),
        })
        .collect())
}

/// Why a property was found, in a few words.
fn why(why: &Why) -> Said {
    match why {
        Why::Address { nearly: false } => Said::new("found-address"),
        Why::Address { nearly: true } => Said::new("found-like"),
        Why::OtherAddress { address, .. } => {
            Said::new("found-other-address").with("with", address.line.clone())
        }
        Why::Person { name, .. } => Said::new("found-person").with("with", name.clone()),
        Why::Phone { number } => Said::new("found-phone").with("with", number.clone()),
        Why::Position { metres } => Said::new("found-near").with("with", format!("{metres:.0} m")),
    }
}

fn add(context: &Context<'_>, find: &str) -> Form {
    Filling::new(context, FormOf::AddProperty)
        .field("line", "address-line", find, FieldKind::Line)
        .blank("town", "address-town", FieldKind::Line)
        .blank("region", "address-region", FieldKind::Line)
        .blank("postcode", "address-postcode", FieldKind::Line)
        .blank("owner", "owner-name", FieldKind::Line)
        .blank("phone", "owner-phone", FieldKind::Phone)
        .done(context.text("arrive-add"), "arrive-add-button")
}

fn open(context: &Context<'_>) -> Result<Vec<Row>, ActError> {
    let mut rows = Vec::new();
    for (visit, card) in context.book.open_visits()? {
        let (_, visit) = acts::visit::find(context.book, visit)?;
        rows.push(Row {
            title: card.address.line,
            says: context.say(&Said::new("arrive-open-since").with("on", visit.on)),
            ladder: None,
            action: Some(Action::Go {
                to: Place::Doorstep {
                    property: card.property,
                },
            }),
        });
    }
    Ok(rows)
}

fn today(context: &Context<'_>) -> Result<Vec<Row>, ActError> {
    Ok(outcome::due(context.book, context.moment.today)?
        .into_iter()
        .take(12)
        .map(|due| reminders::row(context, &due))
        .collect())
}
