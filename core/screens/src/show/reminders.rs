//! Reminders: what to come back to, soonest first.

use crate::action::Action;
use crate::block::{Button, Row};
use crate::place::Place;
use crate::screens::Context;
use acts::{ActError, Due, outcome};
use jiff::civil::Date;
use serde::Serialize;
use trade::outcome::Reminder;
use trade::words::Said;

/// The state of Reminders.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Reminders {
    /// The heading.
    pub title: String,
    /// The reminders with the button that ends each.
    pub rows: Vec<(Row, Button)>,
    /// What to say where there is none.
    pub none: Option<String>,
    /// Taking them to a calendar.
    pub calendar: String,
    /// Back to Arrive.
    pub back: Button,
}

pub(crate) fn show(context: &Context<'_>) -> Result<Reminders, ActError> {
    let due = outcome::due(context.book, Date::MAX)?;
    Ok(Reminders {
        title: context.text("reminders-title"),
        none: due.is_empty().then(|| context.text("reminders-none")),
        rows: due
            .into_iter()
            .map(|due| (row(context, &due), done(context, &due.reminder)))
            .collect(),
        calendar: context.text("reminders-calendar"),
        back: Button::new(
            context.text("arrive-title"),
            Action::Go { to: Place::start() },
        ),
    })
}

/// Whom to come back to, and why and when.
pub(super) fn row(context: &Context<'_>, due: &Due) -> Row {
    Row {
        title: due.card.address.line.clone(),
        says: says(context, &due.reminder),
        ladder: None,
        action: Some(Action::Go {
            to: Place::Doorstep {
                property: due.reminder.property,
            },
        }),
    }
}

/// Why and when.
pub(super) fn says(context: &Context<'_>, reminder: &Reminder) -> String {
    context.say(
        &Said::new("reminder-line")
            .with("because", Said::new(reminder.because.key()))
            .with("on", reminder.on),
    )
}

/// The button that ends it.
pub(super) fn done(context: &Context<'_>, reminder: &Reminder) -> Button {
    Button::new(
        context.text("reminder-done"),
        Action::ReminderDone {
            property: reminder.property,
            reminder: reminder.id,
        },
    )
}
