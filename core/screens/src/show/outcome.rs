//! Outcome: what came of the letter, and what to come back to.

use super::reminders;
use crate::action::Action;
use crate::block::{Button, Choice, FieldKind, Form, Onto, Picture, Row, Shutter};
use crate::filling::Filling;
use crate::form::{FormOf, value_of};
use crate::place::Place;
use crate::screens::Context;
use acts::{ActError, arrive};
use serde::Serialize;
use trade::history::History;
use trade::ids::PropertyId;
use trade::outcome::{Because, Came, Outcome as Record};
use trade::words::Said;

/// What came of one letter, with pictures of the finished work.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Told {
    /// What came of it, and what was said.
    pub row: Row,
    /// Pictures of the finished work.
    pub pictures: Vec<Picture>,
    /// Taking one more, where work was done.
    pub shutter: Option<Shutter>,
}

/// The state of Outcome.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Outcome {
    /// The address.
    pub under: String,
    /// The heading.
    pub title: String,
    /// What came so far, newest first.
    pub told: Vec<Told>,
    /// What to record.
    pub record: Form,
    /// The heading over reminders.
    pub reminders_title: String,
    /// What to come back to.
    pub reminders: Vec<(Row, Button)>,
    /// Something more to come back to.
    pub remind: Form,
    /// Back to the doorstep.
    pub back: Button,
}

pub(crate) fn show(context: &Context<'_>, property: PropertyId) -> Result<Outcome, ActError> {
    let history = arrive::history(context.book, property)?;
    Ok(Outcome {
        under: history.property.address.line.clone(),
        title: context.text("outcome-title"),
        told: told(context, &history),
        record: record(context, &history),
        reminders_title: context.text("reminders-title"),
        reminders: reminders(context, &history),
        remind: remind(context, property),
        back: Button::new(
            context.text("back-doorstep"),
            Action::Go {
                to: Place::Doorstep { property },
            },
        ),
    })
}

fn told(context: &Context<'_>, history: &History) -> Vec<Told> {
    history
        .outcomes
        .iter()
        .rev()
        .map(|outcome| Told {
            row: row(context, outcome),
            pictures: pictures(context, outcome),
            shutter: shutter(context, outcome),
        })
        .collect()
}

fn row(context: &Context<'_>, outcome: &Record) -> Row {
    Row {
        title: context.say(
            &Said::new("outcome-line")
                .with("came", Said::new(outcome.came.key()))
                .with("on", outcome.on),
        ),
        says: match outcome.amount {
            Some(amount) => context.say(
                &Said::new("outcome-amount")
                    .with("amount", amount)
                    .with("words", outcome.words.clone()),
            ),
            None => outcome.words.clone(),
        },
        ladder: None,
        action: None,
    }
}

fn pictures(context: &Context<'_>, outcome: &Record) -> Vec<Picture> {
    outcome
        .photos
        .iter()
        .map(|&photo| Picture {
            photo,
            alt: context.text("outcome-photo"),
        })
        .collect()
}

/// Finished work is pictured, ours and what others did.
fn shutter(context: &Context<'_>, outcome: &Record) -> Option<Shutter> {
    matches!(outcome.came, Came::DoneByUs | Came::DoneByOthers).then(|| Shutter {
        label: context.text("outcome-shutter"),
        keep: context.text("shutter-keep"),
        onto: Onto::Outcome {
            property: outcome.property,
            outcome: outcome.id,
        },
    })
}

fn record(context: &Context<'_>, history: &History) -> Form {
    let came = Came::ALL
        .into_iter()
        .map(|came| Choice {
            value: value_of(&came),
            label: context.text(came.key()),
        })
        .collect();
    let letters = history
        .letters
        .iter()
        .rev()
        .map(|letter| Choice {
            value: letter.id.to_string(),
            label: context.say(&Said::new("letter-of").with("on", letter.on)),
        })
        .collect();
    let form = FormOf::Outcome {
        property: history.property.id,
    };
    Filling::new(context, form)
        .one_of("came", "outcome-came", came)
        .one_of("letter", "outcome-letter", letters)
        .blank("on", "outcome-on", FieldKind::Day)
        .blank("amount", "outcome-paid", FieldKind::Line)
        .blank("words", "say-words", FieldKind::Words)
        .done(context.text("outcome-record"), "outcome-keep")
}

fn reminders(context: &Context<'_>, history: &History) -> Vec<(Row, Button)> {
    history
        .reminders
        .iter()
        .filter(|reminder| reminder.done.is_none())
        .map(|reminder| {
            let row = Row {
                title: reminders::says(context, reminder),
                says: reminder.words.clone(),
                ladder: None,
                action: None,
            };
            (row, reminders::done(context, reminder))
        })
        .collect()
}

fn remind(context: &Context<'_>, property: PropertyId) -> Form {
    let because = Because::ALL
        .into_iter()
        .map(|because| Choice {
            value: value_of(&because),
            label: context.text(because.key()),
        })
        .collect();
    Filling::new(context, FormOf::Remind { property })
        .blank("on", "remind-on", FieldKind::Day)
        .one_of("because", "remind-because", because)
        .blank("words", "say-words", FieldKind::Line)
        .done(context.text("remind-title"), "remind-keep")
}
