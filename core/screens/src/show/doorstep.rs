//! Doorstep: what one address tells before he climbs.

use crate::action::Action;
use crate::block::{Button, Choice, Field, FieldKind, Form, Row};
use crate::filling::half_typed;
use crate::form::{FormOf, value_of};
use crate::name;
use crate::place::Place;
use crate::screens::Context;
use acts::{ActError, doorstep};
use serde::Serialize;
use trade::answer::Answer;
use trade::catalogue::{Catalogue, RemedySize};
use trade::doorstep::{Doorstep as Tells, LookAgain};
use trade::history::History;
use trade::ids::PropertyId;
use trade::property::Role;
use trade::visit::{Request, Scope, WetWhen};
use trade::words::Said;

/// What is asked now.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Asked {
    /// "They ask now".
    pub title: String,
    /// The caller's own words.
    pub words: String,
}

/// What was said then.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Then {
    /// "You said on DATE".
    pub title: String,
    /// The verdict, in a sentence.
    pub said: String,
    /// Why.
    pub why: Vec<String>,
    /// Whether the request goes against it, and how that is said.
    pub contradicts: Option<String>,
}

/// The state of the Doorstep.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Doorstep {
    /// The address.
    pub address: String,
    /// Town, owner, since when.
    pub under: String,
    /// Dangers known from before.
    pub dangers: Vec<String>,
    /// What they ask now.
    pub asked: Option<Asked>,
    /// What was said then.
    pub then: Option<Then>,
    /// The lines, in the order they are told.
    pub lines: Vec<Row>,
    /// The heading over what to look at again.
    pub look_title: String,
    /// What to look at again.
    pub look_again: Vec<Row>,
    /// Over those beyond the first [`LOOK_FIRST`], where there are more.
    pub look_more: Option<String>,
    /// Opening a visit, where none is open.
    pub open: Option<Form>,
    /// The main act, where a visit is open.
    pub main: Option<Button>,
    /// Elsewhere.
    pub doors: Vec<Button>,
}

/// How many parts to look at again are shown at once.
pub const LOOK_FIRST: usize = 6;

pub(crate) fn show(
    context: &Context<'_>,
    property: PropertyId,
    request: Option<&Request>,
) -> Result<Doorstep, ActError> {
    let (history, tells) = doorstep::look(context.book, property, request, context.moment)?;
    let open = history
        .visits
        .iter()
        .rev()
        .find(|visit| visit.closed.is_none());
    let words = request
        .or(open.map(|visit| &visit.request))
        .map(|request| request.words.as_str())
        .filter(|words| !words.is_empty());
    Ok(Doorstep {
        address: history.property.address.line.clone(),
        under: under(context, &history),
        dangers: history.property.dangers.clone(),
        asked: words.map(|words| Asked {
            title: context.text("doorstep-asked"),
            words: context.say(&Said::new("quoted").with("text", words)),
        }),
        then: then(context, &tells),
        lines: tells
            .lines
            .iter()
            .map(|line| Row {
                title: context.text(line.tells.key()),
                says: context.say(&line.says),
                ladder: None,
                action: None,
            })
            .collect(),
        look_title: context.text("doorstep-look-again"),
        look_again: tells
            .look_again
            .iter()
            .map(|look| look_again(context, &history, look))
            .collect(),
        look_more: look_more(context, tells.look_again.len()),
        open: open.is_none().then(|| opening(context, property)),
        main: open.map(|visit| {
            Button::new(
                context.text("doorstep-safety"),
                Action::Go {
                    to: Place::Safety { visit: visit.id },
                },
            )
        }),
        doors: doors(context, &history),
    })
}

fn under(context: &Context<'_>, history: &History) -> String {
    let owner = history
        .property
        .people
        .iter()
        .find(|person| person.role == Role::Owner)
        .map(|person| person.name.clone());
    let said = match owner {
        Some(owner) => Said::new("doorstep-under").with("owner", owner),
        None => Said::new("doorstep-under-no-owner"),
    };
    context.say(
        &said
            .with("town", history.property.address.town.clone())
            .with("year", history.property.since.year().to_string()),
    )
}

fn then(context: &Context<'_>, tells: &Tells) -> Option<Then> {
    tells.then_and_now.as_ref().map(|then| Then {
        title: context.say(&Said::new("doorstep-said-then").with("on", then.on)),
        said: context.say(&then.said),
        why: then.why.iter().map(|why| context.say(why)).collect(),
        contradicts: then
            .contradicts
            .then(|| context.text("doorstep-contradicts")),
    })
}

fn look_more(context: &Context<'_>, all: usize) -> Option<String> {
    let more = i64::try_from(all.checked_sub(LOOK_FIRST)?).ok()?;
    (more > 0).then(|| context.say(&Said::new("doorstep-look-more").with("count", more)))
}

fn look_again(context: &Context<'_>, history: &History, look: &LookAgain) -> Row {
    Row {
        title: name::part(context.words, history, look.part),
        says: context.say(&look.says),
        ladder: Some(look.rung.into()),
        action: None,
    }
}

fn opening(context: &Context<'_>, property: PropertyId) -> Form {
    let form = FormOf::OpenVisit { property };
    let field = |name: &str, label: &str, kind| Field {
        name: name.to_owned(),
        label: context.text(label),
        value: half_typed(context, &form, name).unwrap_or_default(),
        kind,
    };
    Form {
        title: context.text("doorstep-open"),
        fields: vec![
            field("words", "request-words", FieldKind::Words),
            field(
                "kind",
                "request-kind",
                FieldKind::OneOf {
                    choices: kinds(context),
                },
            ),
            field(
                "remedy",
                "request-remedy",
                FieldKind::OneOf {
                    choices: remedies(context),
                },
            ),
            field(
                "leaking",
                "request-leaking",
                FieldKind::OneOf {
                    choices: answers(context),
                },
            ),
            field("room", "request-room", FieldKind::Line),
            field(
                "wet-when",
                "request-wet-when",
                FieldKind::OneOf {
                    choices: wet_when(context),
                },
            ),
            field(
                "must-last",
                "request-must-last",
                FieldKind::OneOf {
                    choices: answers(context),
                },
            ),
            field(
                "sale",
                "request-sale",
                FieldKind::OneOf {
                    choices: answers(context),
                },
            ),
            field(
                "scope",
                "request-scope",
                FieldKind::OneOf {
                    choices: scopes(context),
                },
            ),
        ],
        submit: context.text("doorstep-open-button"),
        form,
    }
}

fn nothing(context: &Context<'_>) -> Choice {
    Choice {
        value: String::new(),
        label: context.text("choice-none"),
    }
}

fn kinds(context: &Context<'_>) -> Vec<Choice> {
    let kinds = Catalogue::standard().kinds().iter().map(|kind| Choice {
        value: kind.key.to_string(),
        label: context.text(&kind.key.message()),
    });
    [nothing(context)].into_iter().chain(kinds).collect()
}

fn remedies(context: &Context<'_>) -> Vec<Choice> {
    let remedies = Catalogue::standard()
        .remedies()
        .iter()
        .filter(|remedy| remedy.size != RemedySize::Referred)
        .map(|remedy| Choice {
            value: remedy.key.to_string(),
            label: context.text(&remedy.key.message()),
        });
    [nothing(context)].into_iter().chain(remedies).collect()
}

fn answers(context: &Context<'_>) -> Vec<Choice> {
    [Answer::Unknown, Answer::Yes, Answer::No]
        .into_iter()
        .map(|answer| Choice {
            value: value_of(&answer),
            label: context.text(match answer {
                Answer::Yes => "answer-yes",
                Answer::No => "answer-no",
                Answer::Unknown => "answer-unknown",
            }),
        })
        .collect()
}

fn wet_when(context: &Context<'_>) -> Vec<Choice> {
    let all = WetWhen::ALL.into_iter().map(|when| Choice {
        value: value_of(&when),
        label: context.text(when.key()),
    });
    [nothing(context)].into_iter().chain(all).collect()
}

fn scopes(context: &Context<'_>) -> Vec<Choice> {
    [Scope::QuickLook, Scope::WholeRoof, Scope::RequestOnly]
        .into_iter()
        .map(|scope| Choice {
            value: value_of(&scope),
            label: context.text(scope.key()),
        })
        .collect()
}

fn doors(context: &Context<'_>, history: &History) -> Vec<Button> {
    let mut doors = Vec::new();
    if let Some(visit) = history
        .visits
        .iter()
        .rev()
        .find(|visit| visit.closed.is_some())
    {
        doors.push(Button::new(
            context.text("doorstep-past"),
            Action::Go {
                to: Place::Letter { visit: visit.id },
            },
        ));
    }
    doors.push(Button::new(
        context.text("outcome-title"),
        Action::Go {
            to: Place::Outcome {
                property: history.property.id,
            },
        },
    ));
    if let Some(structure) = history.structures.iter().find(|one| one.gone.is_none()) {
        doors.push(Button::new(
            context.text("roof-title"),
            Action::Go {
                to: Place::Roof {
                    structure: structure.id,
                },
            },
        ));
    }
    doors.push(Button::new(
        context.text("property-title"),
        Action::Go {
            to: Place::Property {
                property: history.property.id,
                like: String::new(),
            },
        },
    ));
    doors.push(Button::new(
        context.text("arrive-title"),
        Action::Go { to: Place::start() },
    ));
    doors
}
