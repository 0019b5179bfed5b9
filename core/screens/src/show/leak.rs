//! Leak: where water that is seen inside comes in, the likeliest first.

use crate::action::Action;
use crate::block::{Button, Choice, FieldKind, Form, Row};
use crate::filling::Filling;
use crate::form::{FormOf, value_of};
use crate::name;
use crate::place::{Place, Shows};
use crate::screens::Context;
use crate::show::roof::Drawn;
use acts::{ActError, leak, measure};
use serde::Serialize;
use trade::history::History;
use trade::ids::StructureId;
use trade::leak::{LookTo, Stain, Suspected};
use trade::visit::WetWhen;
use trade::words::Said;

/// One suspect.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Suspect {
    /// What it is, and how much of all suspicion falls on it; a tap goes to look at it while a visit is open.
    pub row: Row,
    /// Why, what weighs most first.
    pub why: Vec<String>,
}

/// The state of Leak.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Leak {
    /// The address and the structure.
    pub under: String,
    /// The heading.
    pub title: String,
    /// How places are told; nothing more once it was traced.
    pub how: Option<String>,
    /// Where it shows and in which weather.
    pub ask: Option<Form>,
    /// The plan with the stain and the ways of its water, once it was traced.
    pub plan: Option<Drawn>,
    /// Over the suspects.
    pub suspects_title: String,
    /// The suspects.
    pub suspects: Vec<Suspect>,
    /// What must be said of them.
    pub caution: Option<String>,
    /// The same question, once it was traced: to ask it otherwise.
    pub again: Option<Form>,
    /// Back to the roof.
    pub back: Button,
}

pub(crate) fn show(
    context: &Context<'_>,
    structure: StructureId,
    stain: Option<&Shows>,
) -> Result<Leak, ActError> {
    let history = measure::of_structure(context.book, structure)?;
    let suspects = match stain {
        Some(shows) => leak::suspects(&history, structure, &stain_of(shows))?,
        None => Vec::new(),
    };
    let form = ask(context, structure, stain);
    let (ask, again) = match stain {
        None => (Some(form), None),
        Some(_) => (None, Some(form)),
    };
    Ok(Leak {
        under: name::under(context.words, &history, structure),
        title: context.text("leak-title"),
        how: ask.is_some().then(|| context.text("leak-how")),
        ask,
        plan: match stain {
            Some(shows) => Some(traced(context, &history, structure, shows, &suspects)?),
            None => None,
        },
        suspects_title: context.text("leak-suspects"),
        caution: (!suspects.is_empty()).then(|| context.text("leak-caution")),
        suspects: suspects
            .iter()
            .map(|one| suspect(context, &history, structure, one))
            .collect(),
        again,
        back: Button::new(
            context.text("roof-title"),
            Action::Go {
                to: Place::Roof { structure },
            },
        ),
    })
}

/// The plan, the stain, and the way of the water from each of the first suspects.
fn traced(
    context: &Context<'_>,
    history: &History,
    structure: StructureId,
    shows: &Shows,
    suspects: &[Suspected],
) -> Result<Drawn, ActError> {
    let picture = leak::pictured(
        history,
        structure,
        &stain_of(shows),
        suspects,
        context.words,
    )?;
    let names: Vec<Said> = suspects
        .iter()
        .take(leak::SHOWN)
        .map(|one| one.name.clone())
        .collect();
    Ok(Drawn {
        drawing: picture.drawing,
        title: context.text("roof-plan-title"),
        says: context.say(&Said::new("leak-plan-says").with("names", names)),
    })
}

fn stain_of(shows: &Shows) -> Stain {
    Stain {
        at: (shows.x.in_metres(), shows.y.in_metres()),
        within: shows.within,
        when: shows.when,
        wind_from: shows.wind_from.map(f64::from),
    }
}

fn suspect(
    context: &Context<'_>,
    history: &History,
    structure: StructureId,
    suspected: &Suspected,
) -> Suspect {
    let name = match suspected.what {
        LookTo::Part { part } => name::part(context.words, history, part),
        _ => context.say(&suspected.name),
    };
    let open = history
        .visits
        .iter()
        .rev()
        .find(|visit| visit.closed.is_none() && visit.structures.contains(&structure));
    Suspect {
        row: Row {
            title: name,
            says: context.say(
                &Said::new("leak-share")
                    .with("share", format!("{:.0}", suspected.share * 100.0))
                    .with("stop", Said::new(suspected.stop.message())),
            ),
            ladder: None,
            action: open.map(|visit| Action::Go {
                to: Place::Walk {
                    visit: visit.id,
                    structure,
                    stop: Some(suspected.stop.clone()),
                },
            }),
        },
        why: suspected
            .why
            .iter()
            .map(|why| context.say(&why.says()))
            .collect(),
    }
}

/// Wind from the street blows up the plan.
const WINDS: [(&str, &str); 5] = [
    ("", "choice-none"),
    ("180", "wind-street"),
    ("270", "wind-left"),
    ("0", "wind-rear"),
    ("90", "wind-right"),
];

fn ask(context: &Context<'_>, structure: StructureId, stain: Option<&Shows>) -> Form {
    let length = |of: fn(&Shows) -> trade::units::Length| {
        stain.map(|shows| of(shows).imperial()).unwrap_or_default()
    };
    let when = stain
        .and_then(|shows| shows.when)
        .map(|when| value_of(&when));
    let wind = stain
        .and_then(|shows| shows.wind_from)
        .map(|wind| wind.to_string());
    let whens = WetWhen::ALL.into_iter().map(|when| Choice {
        value: value_of(&when),
        label: context.text(when.key()),
    });
    let nothing = Choice {
        value: String::new(),
        label: context.text("choice-none"),
    };
    let winds = WINDS.map(|(value, label)| Choice {
        value: value.to_owned(),
        label: context.text(label),
    });
    Filling::new(context, FormOf::Stain { structure })
        .field("x", "roof-x", &length(|shows| shows.x), FieldKind::Line)
        .field("y", "roof-y", &length(|shows| shows.y), FieldKind::Line)
        .field(
            "within",
            "leak-within",
            &length(|shows| shows.within),
            FieldKind::Line,
        )
        .field(
            "when",
            "request-wet-when",
            &when.unwrap_or_default(),
            FieldKind::OneOf {
                choices: std::iter::once(nothing).chain(whens).collect(),
            },
        )
        .field(
            "wind",
            "leak-wind",
            &wind.unwrap_or_default(),
            FieldKind::OneOf {
                choices: winds.into(),
            },
        )
        .done(context.text("leak-where"), "leak-trace")
}
