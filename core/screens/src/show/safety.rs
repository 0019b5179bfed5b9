//! Safety: may he climb at all. These stop work; they never replace training, local law or a licensed trade.

use crate::action::Action;
use crate::block::{Button, FieldKind, Form, Row};
use crate::filling::Filling;
use crate::form::FormOf;
use crate::name;
use crate::place::Place;
use crate::screens::Context;
use acts::{ActError, ladder, visit};
use serde::Serialize;
use trade::answer::Answer;
use trade::history::History;
use trade::ids::VisitId;
use trade::units::Length;
use trade::visit::{Reach, SafetyCheck, Sky, Visit};

/// One safety question with its answers.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct CheckRow {
    /// The question.
    pub asks: String,
    /// Yes, it holds.
    pub yes: Button,
    /// No, it does not.
    pub no: Button,
}

/// How one structure is reached.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct ReachRow {
    /// The structure.
    pub structure: String,
    /// The ways.
    pub ways: Vec<Button>,
}

/// How the ladder stands.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct LadderCheck {
    /// What the numbers do not say: it comes before them.
    pub caution: String,
    /// What to measure.
    pub form: Form,
    /// What the rule says of the ladder as it was measured.
    pub says: Vec<String>,
}

/// The state of Safety.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Safety {
    /// The address.
    pub address: String,
    /// The heading.
    pub title: String,
    /// Dangers known from before.
    pub dangers: Vec<String>,
    /// The questions.
    pub checks: Vec<CheckRow>,
    /// The sky.
    pub sky_title: String,
    /// The sky's choices, and the wind.
    pub sky: Vec<Button>,
    /// How warm it is.
    pub temperature: Form,
    /// How the ladder stands, and what the rule says of it.
    pub ladder: LadderCheck,
    /// What forbids climbing now.
    pub stops: Vec<Row>,
    /// The heading over how the structures are reached.
    pub reach_title: String,
    /// How the structures are reached.
    pub reach: Vec<ReachRow>,
    /// What is said at all times.
    pub always: String,
    /// The way back.
    pub back: Button,
    /// The main act.
    pub main: Button,
}

pub(crate) fn show(context: &Context<'_>, visit: VisitId) -> Result<Safety, ActError> {
    let (history, visit) = visit::find_open(context.book, visit)?;
    Ok(Safety {
        address: history.property.address.line.clone(),
        title: context.text("safety-title"),
        dangers: history.property.dangers.clone(),
        checks: SafetyCheck::ALL
            .into_iter()
            .map(|check| check_row(context, &visit, check))
            .collect(),
        sky_title: context.text("safety-sky"),
        sky: sky(context, &visit),
        temperature: temperature(context, &visit),
        ladder: ladder(context, &visit),
        stops: stops(context, &visit),
        reach_title: context.text("safety-reach"),
        reach: reach(context, &history, &visit),
        always: context.text("safety-always"),
        back: Button::new(
            context.text("back-doorstep"),
            Action::Go {
                to: Place::Doorstep {
                    property: history.property.id,
                },
            },
        ),
        main: main(context, &history, &visit),
    })
}

fn check_row(context: &Context<'_>, visit: &Visit, check: SafetyCheck) -> CheckRow {
    let given = visit
        .safety
        .iter()
        .find(|answer| answer.check == check)
        .map(|answer| answer.holds);
    let button = |label: &str, holds| {
        Button::new(
            context.text(label),
            Action::AnswerSafety {
                visit: visit.id,
                check,
                holds,
            },
        )
        .chosen(given == Some(holds))
    };
    CheckRow {
        asks: context.text(check.key()),
        yes: button("answer-yes", Answer::Yes),
        no: button("answer-no", Answer::No),
    }
}

fn sky(context: &Context<'_>, visit: &Visit) -> Vec<Button> {
    let skies = [Sky::Dry, Sky::Wet, Sky::Frozen, Sky::Thunder];
    let mut buttons: Vec<Button> = skies
        .into_iter()
        .map(|sky| {
            Button::new(
                context.text(sky.key()),
                Action::SetSky {
                    visit: visit.id,
                    sky,
                },
            )
            .chosen(visit.weather.sky == sky)
        })
        .collect();
    buttons.push(
        Button::new(
            context.text("weather-windy"),
            Action::SetWindy {
                visit: visit.id,
                windy: !visit.weather.windy,
            },
        )
        .chosen(visit.weather.windy),
    );
    buttons
}

/// Said as it is read on a thermometer here, in degrees Fahrenheit; `20 C` is taken too.
fn temperature(context: &Context<'_>, visit: &Visit) -> Form {
    let known = visit
        .weather
        .celsius
        .map(|celsius| format!("{} F", fahrenheit(celsius)));
    Filling::new(context, FormOf::Temperature { visit: visit.id })
        .field(
            "degrees",
            "safety-degrees",
            &known.unwrap_or_default(),
            FieldKind::Line,
        )
        .done(context.text("safety-temperature"), "say-keep")
}

fn fahrenheit(celsius: i16) -> String {
    format!("{:.0}", f64::from(celsius) * 1.8 + 32.0)
}

fn ladder(context: &Context<'_>, visit: &Visit) -> LadderCheck {
    let stood = visit.ladder.unwrap_or_default();
    let length = |length: Option<Length>| length.map(Length::imperial).unwrap_or_default();
    let leans = stood
        .leans
        .map(|tenths| format!("{:.1}", f64::from(tenths) / 10.0));
    let form = Filling::new(context, FormOf::Ladder { visit: visit.id })
        .field(
            "working",
            "ladder-working",
            &length(stood.working),
            FieldKind::Line,
        )
        .field("base", "ladder-base", &length(stood.base), FieldKind::Line)
        .field(
            "readings",
            "ladder-leans",
            &leans.unwrap_or_default(),
            FieldKind::Inclination,
        )
        .field(
            "landing",
            "ladder-landing",
            &length(stood.landing),
            FieldKind::Line,
        )
        .done(context.text("ladder-check"), "ladder-tell");
    // What was kept was measured well enough to say something of.
    let says = visit.ladder.and_then(|stood| ladder::says(&stood).ok());
    LadderCheck {
        caution: context.say(&ladder::caution()),
        form,
        says: says
            .unwrap_or_default()
            .iter()
            .map(|said| context.say(said))
            .collect(),
    }
}

fn stops(context: &Context<'_>, visit: &Visit) -> Vec<Row> {
    acts::judge::stops(visit, &context.going)
        .into_iter()
        .map(|reason| Row {
            title: context.say(&reason.says),
            says: crate::show::verdict::source(context, &reason),
            ladder: None,
            action: None,
        })
        .collect()
}

fn reach(context: &Context<'_>, history: &History, visit: &Visit) -> Vec<ReachRow> {
    visit
        .structures
        .iter()
        .map(|&structure| ReachRow {
            structure: name::structure(context.words, history, structure),
            ways: Reach::ALL
                .into_iter()
                .map(|how| {
                    Button::new(
                        context.text(how.key()),
                        Action::SetReach {
                            visit: visit.id,
                            structure,
                            how,
                        },
                    )
                    .chosen(visit.reach(structure) == Some(how))
                })
                .collect(),
        })
        .collect()
}

fn main(context: &Context<'_>, history: &History, visit: &Visit) -> Button {
    let to = visit.structures.first().map_or(
        Place::Doorstep {
            property: history.property.id,
        },
        |structure| Place::Walk {
            visit: visit.id,
            structure: *structure,
            stop: None,
        },
    );
    let label = if acts::judge::stops(visit, &context.going).is_empty() {
        "safety-up"
    } else {
        "safety-from-ground"
    };
    Button::new(context.text(label), Action::Go { to })
}
