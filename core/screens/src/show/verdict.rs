//! Verdict: read in time. What is refused is struck through with its reason; then the look that could change it.

use crate::action::Action;
use crate::block::{Button, Row};
use crate::name;
use crate::place::Place;
use crate::screens::Context;
use acts::{ActError, judge};
use serde::Serialize;
use trade::history::History;
use trade::ids::{StructureId, VisitId};
use trade::ladder::Ladder;
use trade::verdict::{Reason, Refused, Source, Step, Task, Verdict as Judged};
use trade::words::Said;

/// One step in time.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct StepBlock {
    /// When.
    pub when: String,
    /// What.
    pub what: String,
    /// On which parts.
    pub tasks: Vec<String>,
    /// By when.
    pub until: Option<String>,
    /// Why, with its source.
    pub why: Vec<(String, String)>,
    /// Over the reasons beyond the first [`WHY_FIRST`], where there are more.
    pub why_more: Option<String>,
}

/// How many reasons of a step are shown at once.
pub const WHY_FIRST: usize = 3;

/// What is refused.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct RefusedBlock {
    /// "Not allowed" or "not sold".
    pub label: String,
    /// What.
    pub what: String,
    /// By rule or by judgement, and why.
    pub why: Vec<(String, String)>,
}

/// The state of Verdict.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Verdict {
    /// Address and structure.
    pub under: String,
    /// The heading.
    pub title: String,
    /// The structures.
    pub structures: Vec<Button>,
    /// What to do, in order of time.
    pub steps: Vec<StepBlock>,
    /// What is refused.
    pub refused: Vec<RefusedBlock>,
    /// The heading over the look that could change it.
    pub look_title: String,
    /// The look that could change it.
    pub look: Vec<Row>,
    /// What the verdict would turn to.
    pub turns_to: Option<String>,
    /// The heading over cautions.
    pub cautions_title: String,
    /// Cautions.
    pub cautions: Vec<String>,
    /// How far it reaches.
    pub limits: Vec<String>,
    /// The heading over what was not seen.
    pub unseen_title: String,
    /// What was not seen.
    pub unseen: Vec<String>,
    /// What it costs.
    pub offer: Button,
    /// Going to look, or back.
    pub back: Button,
    /// The main act.
    pub main: Button,
}

pub(crate) fn show(
    context: &Context<'_>,
    visit: VisitId,
    structure: StructureId,
) -> Result<Verdict, ActError> {
    let judged = judge::judge(context.book, visit, context.moment)?;
    let verdict = judged
        .verdict(structure)
        .ok_or_else(|| ActError::not_there("there-structure"))?;
    let history = &judged.history;
    Ok(Verdict {
        under: name::under(context.words, history, structure),
        title: context.text("verdict-title"),
        structures: judged
            .visit
            .structures
            .iter()
            .map(|&other| {
                Button::new(
                    name::structure(context.words, history, other),
                    Action::Go {
                        to: Place::Verdict {
                            visit,
                            structure: other,
                        },
                    },
                )
                .chosen(other == structure)
            })
            .collect(),
        steps: verdict
            .steps
            .iter()
            .map(|step| step_block(context, history, step))
            .collect(),
        refused: verdict
            .refused
            .iter()
            .map(|refused| refused_block(context, refused))
            .collect(),
        look_title: context.text("verdict-look"),
        look: look(context, verdict, visit, judged.visit.closed.is_none()),
        turns_to: turns_to(context, verdict),
        cautions_title: context.text("verdict-cautions"),
        cautions: verdict
            .cautions
            .iter()
            .map(|reason| context.say(&reason.says))
            .collect(),
        limits: verdict
            .limits
            .iter()
            .map(|reason| context.say(&reason.says))
            .collect(),
        unseen_title: context.text("verdict-unseen"),
        unseen: verdict
            .unseen
            .iter()
            .map(|part| name::part(context.words, history, *part))
            .collect(),
        offer: Button::new(
            context.text("offer-title"),
            Action::Go {
                to: Place::Offer { visit, structure },
            },
        ),
        back: Button::new(
            context.text("then-and-now-title"),
            Action::Go {
                to: Place::ThenAndNow { visit },
            },
        ),
        main: Button::new(
            context.text("verdict-letter"),
            Action::Go {
                to: Place::Letter { visit },
            },
        ),
    })
}

fn step_block(context: &Context<'_>, history: &History, step: &Step) -> StepBlock {
    StepBlock {
        when: context.text(step.when.key()),
        what: context.text(step.course.key()),
        tasks: step
            .tasks
            .iter()
            .map(|task| task_line(context, history, task))
            .collect(),
        until: step
            .until
            .map(|until| context.say(&Said::new("verdict-until").with("until", until))),
        why: reasons(context, &step.reasons),
        why_more: why_more(context, step.reasons.len()),
    }
}

fn why_more(context: &Context<'_>, all: usize) -> Option<String> {
    let more = i64::try_from(all.checked_sub(WHY_FIRST)?).ok()?;
    (more > 0).then(|| context.say(&Said::new("verdict-reasons-left").with("count", more)))
}

pub(crate) fn task_line(context: &Context<'_>, history: &History, task: &Task) -> String {
    let part = name::part(context.words, history, task.part);
    let said = match (&task.remedy, task.trade) {
        (Some(remedy), Some(trade)) => Said::new("task-remedy-trade")
            .with("remedy", Said::new(remedy.message()))
            .with("trade", Said::new(trade.key())),
        (Some(remedy), None) => {
            Said::new("task-remedy").with("remedy", Said::new(remedy.message()))
        }
        (None, Some(trade)) => Said::new("task-trade").with("trade", Said::new(trade.key())),
        (None, None) => Said::new("task-part"),
    };
    context.say(&said.with("part", part))
}

fn refused_block(context: &Context<'_>, refused: &Refused) -> RefusedBlock {
    let what = match refused.narrowed.key() {
        Some(key) => context.text(key),
        None => context.text(refused.course.key()),
    };
    let label = if refused.forbidden {
        "verdict-forbidden"
    } else {
        "verdict-refused"
    };
    RefusedBlock {
        label: context.text(label),
        what,
        why: reasons(context, &refused.reasons),
    }
}

fn reasons(context: &Context<'_>, reasons: &[Reason]) -> Vec<(String, String)> {
    reasons
        .iter()
        .map(|reason| (context.say(&reason.says), source(context, reason)))
        .collect()
}

/// What a reason stands on, in words: "IRC 2018 R905.2.8.1", "house policy".
pub(crate) fn source(context: &Context<'_>, reason: &Reason) -> String {
    match &reason.source {
        Source::Code(code) => {
            let edition = code.edition.map(|year| year.to_string());
            [
                Some(code.document.clone()),
                edition,
                Some(code.section.clone()),
            ]
            .into_iter()
            .flatten()
            .collect::<Vec<_>>()
            .join(" ")
        }
        Source::LocalAmendment { place } => {
            context.say(&Said::new("source-local").with("place", place.clone()))
        }
        Source::Evidence => context.text("source-evidence"),
        Source::Practice => context.text("source-practice"),
        Source::HousePolicy => context.text("source-house-policy"),
        Source::Owner => context.text("source-owner"),
    }
}

fn look(context: &Context<'_>, verdict: &Judged, visit: VisitId, open: bool) -> Vec<Row> {
    let Some(next) = &verdict.next_look else {
        return Vec::new();
    };
    next.looks
        .iter()
        .map(|look| Row {
            title: context.text(look.question.key()),
            says: context.text(&format!("{}.ask", look.question.key())),
            ladder: Some(Ladder::NotSeen),
            action: look.stop.clone().filter(|_| open).map(|stop| Action::Go {
                to: Place::Walk {
                    visit,
                    structure: verdict.structure,
                    stop: Some(stop),
                },
            }),
        })
        .collect()
}

fn turns_to(context: &Context<'_>, verdict: &Judged) -> Option<String> {
    verdict.next_look.as_ref().map(|next| {
        let answers: Vec<Said> = next
            .looks
            .iter()
            .map(|look| {
                let end = if look.answer.is_yes() { "yes" } else { "no" };
                Said::new(format!("{}.{end}", look.question.key()))
            })
            .collect();
        context.say(
            &Said::new("verdict-turns-to")
                .with("answers", answers)
                .with("course", Said::new(next.turns_to.key())),
        )
    })
}
