//! Doorstep: what one address tells before he climbs.

use crate::action::Action;
use crate::block::{Button, Choice, FieldKind, Form, Row};
use crate::filling::Filling;
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
    /// The lines, in the order they are told, but for the dangers: those stand at the top already.
    pub lines: Vec<Row>,
    /// The heading over what to look at again.
    pub look_title: String,
    /// What to look at again first.
    pub look_again: Vec<Row>,
    /// Over the others, where there are more.
    pub look_more: Option<String>,
    /// The others.
    pub look_rest: Vec<Row>,
    /// Opening a visit, where none is open.
    pub open: Option<Form>,
    /// The main act, where a visit is open.
    pub main: Option<Button>,
    /// Elsewhere.
    pub doors: Vec<Button>,
}

/// How many parts to look at again are shown at once.
const LOOK_FIRST: usize = 6;

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
    let mut look_again: Vec<Row> = tells
        .look_again
        .iter()
        .map(|look| look_row(context, &history, look))
        .collect();
    let look_rest = look_again.split_off(look_again.len().min(LOOK_FIRST));
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
            .filter(|line| !history.property.dangers.contains(&line.says))
            .collect(),
        look_title: context.text("doorstep-look-again"),
        look_again,
        look_more: look_more(context, look_rest.len()),
        look_rest,
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

fn look_more(context: &Context<'_>, more: usize) -> Option<String> {
    let more = i64::try_from(more).ok()?;
    (more > 0).then(|| context.say(&Said::new("doorstep-look-more").with("count", more)))
}

fn look_row(context: &Context<'_>, history: &History, look: &LookAgain) -> Row {
    Row {
        title: name::part(context.words, history, look.part),
        says: context.say(&look.says),
        ladder: Some(look.rung.into()),
        action: None,
    }
}

fn opening(context: &Context<'_>, property: PropertyId) -> Form {
    Filling::new(context, FormOf::OpenVisit { property })
        .blank("words", "request-words", FieldKind::Words)
        .one_of("kind", "request-kind", kinds(context))
        .one_of("remedy", "request-remedy", remedies(context))
        .one_of("leaking", "request-leaking", answers(context))
        .blank("room", "request-room", FieldKind::Line)
        .one_of("wet-when", "request-wet-when", wet_when(context))
        .one_of("must-last", "request-must-last", answers(context))
        .one_of("sale", "request-sale", answers(context))
        .one_of("scope", "request-scope", scopes(context))
        .done(context.text("doorstep-open"), "doorstep-open-button")
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
