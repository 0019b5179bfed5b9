//! What is due: a look promised, a date passed, a cover that has run out, a letter without an answer.

use super::advice::{self, Advice};
use super::named;
use super::record::{Known, Record};
use jiff::{Span, Unit, civil::Date};
use trade::catalogue::RemedySize;
use trade::doorstep::{Line, Tells};
use trade::outcome::{Because, Came, Reminder};
use trade::verdict::{Course, StandsOn};
use trade::words::Said;

pub(super) fn lines(record: &Record<'_>) -> Vec<Line> {
    let reminders = reminders(record);
    let is_reminded =
        |because: Because| reminders.iter().any(|reminder| reminder.because == because);
    let advice = advice::all(record);
    let steps: Vec<Line> = advice
        .iter()
        .filter(|advice| !advice.done)
        .flat_map(|advice| passed(record, advice))
        .filter(|(course, _)| *course != Course::MakeSafe || !is_reminded(Because::CoverRunsOut))
        .map(|(_, line)| line)
        .collect();
    let covers = if is_reminded(Because::CoverRunsOut) || !steps.is_empty() {
        Vec::new()
    } else {
        covers_run_out(record)
    };
    let unanswered = (!is_reminded(Because::AskForAnswer))
        .then(|| unanswered(record))
        .flatten();
    reminders
        .iter()
        .map(|reminder| reminded(record, reminder))
        .chain(steps)
        .chain(covers)
        .chain(unanswered)
        .chain(long_ago(record))
        .collect()
}

/// Reminders that are due by today, and looks promised for later, since he is there now.
fn reminders<'a>(record: &Record<'a>) -> Vec<&'a Reminder> {
    let mut due: Vec<&Reminder> = record
        .history
        .reminders
        .iter()
        .filter(|reminder| reminder.done.is_none_or(|done| done > record.today()))
        .filter(|reminder| {
            let look = matches!(
                reminder.because,
                Because::LookPromised | Because::NotSeenYet
            );
            look || reminder.on <= record.today()
        })
        .collect();
    due.sort_by_key(|reminder| (reminder.on, reminder.id));
    due
}

fn reminded(record: &Record<'_>, reminder: &Reminder) -> Line {
    let key = if reminder.on <= record.today() {
        "doorstep-due"
    } else {
        "doorstep-due-later"
    };
    let due = Said::new(key)
        .with("because", Said::new(reminder.because.key()))
        .with("on", reminder.on);
    let says = if reminder.words.is_empty() {
        due
    } else {
        Said::new("doorstep-sentences")
            .with("first", due)
            .with("next", Said::verbatim(reminder.words.as_str()))
    };
    Line {
        tells: Tells::Due,
        says,
        stands_on: reminder.visit.map(StandsOn::Visit).into_iter().collect(),
    }
}

/// Steps of the last verdict whose day has passed. A cover that the owner declined was never laid.
fn passed(record: &Record<'_>, advice: &Advice<'_>) -> Vec<(Course, Line)> {
    advice
        .steps
        .iter()
        .filter(|step| step.course != Course::MakeSafe || !advice.declined)
        .filter_map(|step| {
            let until = step.until.filter(|until| *until < record.today())?;
            let key = if step.course == Course::MakeSafe {
                "doorstep-cover-until"
            } else {
                "doorstep-step-until"
            };
            let line = Line {
                tells: Tells::Due,
                says: Said::new(key)
                    .with("course", named::course(step.course))
                    .with("until", until),
                stands_on: vec![StandsOn::Visit(advice.visit)],
            };
            Some((step.course, line))
        })
        .collect()
}

/// Temporary covers that have lain longer than house policy lets them.
fn covers_run_out(record: &Record<'_>) -> Vec<Line> {
    record
        .parts
        .iter()
        .filter(|known| known.became.is_open())
        .filter_map(|known| cover_run_out(record, known))
        .collect()
}

fn cover_run_out(record: &Record<'_>, known: &Known<'_>) -> Option<Line> {
    let standing = &known.standing;
    let laid = standing
        .story
        .open
        .iter()
        .filter_map(|open| {
            standing
                .story
                .patches_on(&open.finding.cause, &standing.since)
                .pop()
        })
        .find(|patch| {
            let remedy = patch.remedy.as_ref();
            remedy.and_then(|remedy| record.size(remedy)) == Some(RemedySize::MakeSafe)
        })?;
    let weeks = record.rules.policy.make_safe_weeks;
    let good_until = laid
        .when
        .saturating_add(Span::new().weeks(i64::from(weeks)));
    (good_until < record.today()).then(|| Line {
        tells: Tells::Due,
        says: Said::new("doorstep-cover-run-out")
            .with("part", named::part(record, standing.story.part))
            .with("when", laid.when)
            .with("weeks", weeks),
        stands_on: vec![StandsOn::Mark(standing.last_mark.mark.id)],
    })
}

/// The last letter, where nobody has answered it for as long as house policy waits.
fn unanswered(record: &Record<'_>) -> Option<Line> {
    let letter = record.letters.last()?;
    let answered = record
        .outcome_of(letter.id)
        .is_some_and(|outcome| outcome.came != Came::NoAnswer);
    let days = days(letter.on, record.today());
    (!answered && days >= i64::from(record.rules.policy.ask_after_days)).then(|| Line {
        tells: Tells::Due,
        says: Said::new("doorstep-unanswered")
            .with("on", letter.on)
            .with("days", days),
        stands_on: vec![StandsOn::Visit(letter.visit)],
    })
}

/// The last visit, where it is longer ago than house policy lets a sound roof go.
fn long_ago(record: &Record<'_>) -> Option<Line> {
    let visit = record.last_visit()?;
    let years = record.rules.policy.look_again_years;
    let due = visit.on.saturating_add(Span::new().years(i64::from(years)));
    (due <= record.today()).then(|| Line {
        tells: Tells::Due,
        says: Said::new("doorstep-long-ago")
            .with("on", visit.on)
            .with("years", years),
        stands_on: vec![StandsOn::Visit(visit.id)],
    })
}

fn days(from: Date, to: Date) -> i64 {
    from.until((Unit::Day, to))
        .map_or(0, |span| i64::from(span.get_days()))
}
