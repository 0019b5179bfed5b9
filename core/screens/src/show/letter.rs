//! Letter: what the owner gets.

use crate::action::Action;
use crate::block::Button;
use crate::place::Place;
use crate::screens::Context;
use acts::{ActError, letter, visit};
use serde::Serialize;
use trade::history::History;
use trade::ids::{LetterId, VisitId};
use trade::mark::NotSeen;
use trade::words::{Language, Said};

/// A letter that was made.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Sent {
    /// Which.
    pub letter: LetterId,
    /// Its day and language.
    pub title: String,
    /// Whether a correction overtook it.
    pub overtaken: Option<String>,
    /// The short text that goes with it.
    pub text: String,
    /// Opening the PDF.
    pub open: String,
}

/// The state of Letter.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Letter {
    /// The address.
    pub under: String,
    /// The heading.
    pub title: String,
    /// What page one would say today: each question, and its answer in lines.
    pub preview: Vec<(String, Vec<String>)>,
    /// The heading over it.
    pub preview_title: String,
    /// What must be done first, where the visit is still open.
    pub first: Option<String>,
    /// Closing, where it is still open; writing it, where it is closed.
    pub acts: Vec<Button>,
    /// Letters made of this visit.
    pub sent: Vec<Sent>,
    /// The heading over them.
    pub sent_title: String,
    /// Back to the doorstep.
    pub back: Button,
    /// What came of it.
    pub main: Button,
}

pub(crate) fn show(context: &Context<'_>, visit: VisitId) -> Result<Letter, ActError> {
    let (history, record) = visit::find(context.book, visit)?;
    let open = record.closed.is_none();
    let (_, content) = letter::compose(
        context.book,
        visit,
        context.going.firm.language,
        context.moment,
    )?;
    Ok(Letter {
        under: history.property.address.line.clone(),
        title: context.text("letter-title"),
        preview_title: context.text("letter-preview"),
        preview: acts::letter::page_one(&content),
        first: open.then(|| context.text("letter-close-first")),
        acts: if open {
            close(context, visit)
        } else {
            write(context, visit)
        },
        sent: sent(context, &history, visit),
        sent_title: context.text("letter-sent"),
        back: Button::new(
            context.text("back-doorstep"),
            Action::Go {
                to: Place::Doorstep {
                    property: history.property.id,
                },
            },
        ),
        main: Button::new(
            context.text("outcome-title"),
            Action::Go {
                to: Place::Outcome {
                    property: history.property.id,
                },
            },
        ),
    })
}

fn close(context: &Context<'_>, visit: VisitId) -> Vec<Button> {
    [
        ("close-outside-scope", NotSeen::OutsideScope),
        ("close-not-reached", NotSeen::NotReached),
    ]
    .into_iter()
    .map(|(label, rest)| Button::new(context.text(label), Action::Close { visit, rest }))
    .collect()
}

fn write(context: &Context<'_>, visit: VisitId) -> Vec<Button> {
    Language::ALL
        .into_iter()
        .map(|language| {
            Button::new(
                context.text(match language {
                    Language::English => "letter-write-english",
                    Language::Spanish => "letter-write-spanish",
                }),
                Action::WriteLetter { visit, language },
            )
        })
        .collect()
}

fn sent(context: &Context<'_>, history: &History, visit: VisitId) -> Vec<Sent> {
    history
        .letters
        .iter()
        .rev()
        .filter(|letter| letter.visit == visit)
        .map(|letter| Sent {
            letter: letter.id,
            title: context.say(&Said::new("letter-of").with("on", letter.on)),
            overtaken: letter
                .out_of_date
                .map(|on| context.say(&Said::new("letter-overtaken").with("on", on))),
            text: letter.text.clone(),
            open: context.text("letter-open"),
        })
        .collect()
}
