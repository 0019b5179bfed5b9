//! Then and now: what became of every part since the last real look.

use crate::action::Action;
use crate::block::{Button, Choice, FieldKind, Form, Picture};
use crate::filling::Filling;
use crate::form::{FormOf, value_of};
use crate::name;
use crate::place::Place;
use crate::screens::Context;
use acts::{ActError, judge};
use serde::Serialize;
use trade::history::History;
use trade::ids::{MarkId, VisitId};
use trade::ladder::Ladder;
use trade::mark::{Condition, Rung};
use trade::thread::{Became, Thread};
use trade::words::Said;

/// One part, then and now.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Changed {
    /// The part.
    pub part: String,
    /// What became of it.
    pub became: String,
    /// More of it: patches, whose work, a callback.
    pub says: Vec<String>,
    /// Its ladder then.
    pub then: Option<Ladder>,
    /// Its ladder now.
    pub now: Ladder,
    /// A picture then.
    pub picture_then: Option<Picture>,
    /// A picture now.
    pub picture_now: Option<Picture>,
    /// Correcting the record, where the visit is closed.
    pub correct: Option<Form>,
}

/// The state of Then and now.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct ThenAndNow {
    /// The address.
    pub under: String,
    /// The heading.
    pub title: String,
    /// What changed, worst first.
    pub changed: Vec<Changed>,
    /// How many were sound then and now.
    pub quiet: Option<String>,
    /// Back to the walk, where the visit is open.
    pub back: Button,
    /// The main act.
    pub main: Button,
}

pub(crate) fn show(context: &Context<'_>, visit: VisitId) -> Result<ThenAndNow, ActError> {
    let judged = judge::judge(context.book, visit, context.moment)?;
    let mut threads: Vec<&Thread> = judged
        .threads
        .iter()
        .filter(|thread| thread.became != Became::Quiet)
        .filter(|thread| !is_first_sound(thread))
        .collect();
    threads.sort_by_key(|thread| (thread.became, std::cmp::Reverse(thread.rung_now)));
    let quiet = judged.threads.len() - threads.len();
    let closed = judged.visit.closed.is_some();
    let structure = judged.visit.structures.first().copied();
    let to = |place: fn(VisitId, trade::ids::StructureId) -> Place| {
        structure.map_or_else(Place::start, |structure| place(visit, structure))
    };
    let back = if closed {
        Button::new(
            context.text("back-doorstep"),
            Action::Go {
                to: Place::Doorstep {
                    property: judged.history.property.id,
                },
            },
        )
    } else {
        Button::new(
            context.text("back-walk"),
            Action::Go {
                to: to(|visit, structure| Place::Walk {
                    visit,
                    structure,
                    stop: None,
                }),
            },
        )
    };
    Ok(ThenAndNow {
        under: judged.history.property.address.line.clone(),
        title: context.text("then-and-now-title"),
        changed: threads
            .into_iter()
            .map(|thread| changed(context, &judged.history, visit, thread, closed))
            .collect(),
        quiet: (quiet > 0).then(|| {
            context.say(
                &Said::new("then-and-now-quiet").with("count", i64::try_from(quiet).unwrap_or(0)),
            )
        }),
        back,
        main: Button::new(
            context.text("verdict-title"),
            Action::Go {
                to: to(|visit, structure| Place::Verdict { visit, structure }),
            },
        ),
    })
}

/// A part seen for the first time and found sound is as quiet as one that stayed sound.
fn is_first_sound(thread: &Thread) -> bool {
    thread.became == Became::New && thread.rung_now == Some(Rung::Sound)
}

/// What was taken down shows bare rails, not the dots of what nobody saw.
fn ladder_now(history: &History, thread: &Thread) -> Ladder {
    let gone = |mark| {
        history
            .mark(mark)
            .is_some_and(|mark| mark.condition == Condition::Gone)
    };
    if thread.now.is_some_and(gone) {
        return Ladder::Gone;
    }
    thread.rung_now.into()
}

fn changed(
    context: &Context<'_>,
    history: &History,
    visit: VisitId,
    thread: &Thread,
    closed: bool,
) -> Changed {
    Changed {
        part: name::part(context.words, history, thread.part),
        became: context.text(thread.became.key()),
        says: says(context, history, thread),
        then: thread.rung_then.map(Ladder::from),
        now: ladder_now(history, thread),
        picture_then: picture(context, history, thread.earlier),
        picture_now: picture(context, history, thread.now),
        correct: thread
            .now
            .filter(|_| closed)
            .map(|mark| correct(context, visit, mark)),
    }
}

fn says(context: &Context<'_>, history: &History, thread: &Thread) -> Vec<String> {
    let found = |mark: Option<MarkId>, key: &str| {
        let mark = history.mark(mark?)?;
        let on = history.visit(mark.visit)?.on;
        let defects: Vec<Said> = mark
            .defects
            .iter()
            .map(|seen| Said::new(seen.defect.message()))
            .collect();
        (!defects.is_empty())
            .then(|| context.say(&Said::new(key).with("on", on).with("defects", defects)))
    };
    let mut says: Vec<String> = found(thread.earlier, "then-found")
        .into_iter()
        .chain(found(thread.now, "now-found"))
        .collect();
    says.extend(thread.patches.last().map(|patch| {
        context.say(
            &Said::new("then-and-now-patched")
                .with("count", i64::try_from(thread.patches.len()).unwrap_or(0))
                .with("on", patch.when),
        )
    }));
    says.extend(thread.by.map(|by| context.text(by.key())));
    says.extend(thread.callback.map(|by| {
        context.say(&Said::new("then-and-now-callback").with("by", Said::new(by.key())))
    }));
    says.extend(
        thread
            .now
            .and_then(|mark| history.mark(mark))
            .and_then(|mark| mark.corrected.as_ref())
            .map(|corrected| {
                context.say(
                    &Said::new("corrected-line")
                        .with("on", corrected.on)
                        .with("why", corrected.why.clone()),
                )
            }),
    );
    says
}

fn picture(context: &Context<'_>, history: &History, mark: Option<MarkId>) -> Option<Picture> {
    let mark = history.mark(mark?)?;
    let on = history.visit(mark.visit)?.on;
    let part = name::part(context.words, history, mark.part);
    mark.photos.last().map(|&photo| Picture {
        photo,
        alt: context.say(&Said::new("picture-of").with("part", part).with("on", on)),
    })
}

fn correct(context: &Context<'_>, visit: VisitId, mark: MarkId) -> Form {
    let rungs = [Choice {
        value: String::new(),
        label: context.text("choice-as-it-is"),
    }]
    .into_iter()
    .chain(Rung::ALL.into_iter().map(|rung| Choice {
        value: value_of(&rung),
        label: context.text(rung.key()),
    }))
    .collect();
    Filling::new(context, FormOf::Correct { visit, mark })
        .one_of("rung", "correct-rung", rungs)
        .blank("words", "correct-words", FieldKind::Words)
        .blank("why", "correct-why", FieldKind::Line)
        .done(context.text("correct-title"), "correct-keep")
}
