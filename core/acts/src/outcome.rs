//! What came of a letter, and what to come back to.

use crate::{ActError, Moment, arrive, tray};
use book::{Book, Due, Entry};
use icalendar::{Calendar, Component, Event};
use jiff::civil::Date;
use trade::catalogue::RemedyKey;
use trade::history::History;
use trade::ids::{LetterId, OutcomeId, PhotoId, PropertyId, ReminderId};
use trade::outcome::{Because, Came, Outcome, Reminder};
use trade::units::Money;
use trade::verdict::{Course, Step};
use trade::words::{Said, Words};
use trade::work::{By, Did, Evidence, Work, WorkOn};

/// What is recorded of an outcome.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Told {
    /// The letter it answers; the last one where none is named.
    pub letter: Option<LetterId>,
    /// What came of it.
    pub came: Came,
    /// The day.
    pub on: Date,
    /// What was paid or asked.
    pub amount: Option<Money>,
    /// His own words.
    pub words: String,
}

/// Records what came of a letter. Work done by this firm goes to the threads of the parts that the letter named; an answer ends the
/// reminder to ask for one.
///
/// # Errors
/// Where the property or letter is not in the book, the day lies ahead, or the book cannot be written.
pub fn record(
    book: &mut Book,
    property: PropertyId,
    told: Told,
    moment: Moment,
) -> Result<OutcomeId, ActError> {
    if told.on > moment.today {
        return Err(ActError::wrong("date", Said::new("wrong-outcome-ahead")));
    }
    let history = arrive::history(book, property)?;
    let letter = match told.letter {
        Some(id) => Some(
            history
                .letters
                .iter()
                .find(|letter| letter.id == id)
                .ok_or_else(|| ActError::not_there("there-letter"))?,
        ),
        None => history.letters.last(),
    };
    let works = match (told.came, letter) {
        (Came::DoneByUs, Some(letter)) => letter
            .verdicts
            .iter()
            .flat_map(|verdict| {
                verdict
                    .steps
                    .iter()
                    .flat_map(move |step| works_of(step, WorkOn::Structure(verdict.structure)))
            })
            .map(|(on, remedy)| our_work(property, on, remedy, told.on, moment))
            .collect(),
        _ => Vec::new(),
    };
    let outcome = Outcome {
        id: moment.id(),
        property,
        letter: letter.map(|letter| letter.id),
        came: told.came,
        on: told.on,
        amount: told.amount,
        words: told.words.trim().to_owned(),
        photos: Vec::new(),
    };
    let id = outcome.id;
    let ended = ended(&history, told.came, told.on);
    book.write(moment.at, |tx| {
        tx.record(Entry::Outcome(outcome))?;
        for work in works {
            tx.record(Entry::Work(work))?;
        }
        for reminder in ended {
            tx.record(Entry::Reminder(reminder))?;
        }
        Ok(id)
    })
}

/// Takes in a picture of the finished work. It is kept with the visit whose letter was answered; that visit stays closed.
///
/// # Errors
/// Where the outcome is not in the book, nobody ever visited, the bytes are no picture, or the book cannot be written; then nothing is kept.
pub fn shoot(
    book: &mut Book,
    property: PropertyId,
    outcome: OutcomeId,
    bytes: &[u8],
    moment: Moment,
) -> Result<PhotoId, ActError> {
    let history = arrive::history(book, property)?;
    let mut outcome = history
        .outcomes
        .iter()
        .find(|known| known.id == outcome)
        .cloned()
        .ok_or_else(|| ActError::not_there("there-outcome"))?;
    let answered = outcome
        .letter
        .and_then(|id| history.letters.iter().find(|letter| letter.id == id))
        .map(|letter| letter.visit);
    let visit = answered
        .or_else(|| history.visits.last().map(|visit| visit.id))
        .ok_or_else(|| ActError::not_there("there-visit"))?;
    book.write(moment.at, |tx| {
        let photo = tray::taken(tx, outcome.property, visit, bytes, moment)?;
        outcome.photos.push(photo);
        tx.record(Entry::Outcome(outcome))?;
        Ok(photo)
    })
}

/// The work that carrying out a step comes to: the remedies of its parts, or the whole course.
fn works_of(step: &Step, whole: WorkOn) -> Vec<(WorkOn, RemedyKey)> {
    match step.course {
        Course::TearOff => vec![(whole, RemedyKey::from("tear-off"))],
        Course::Recover => vec![(whole, RemedyKey::from("recover"))],
        Course::Maintain | Course::Repair | Course::MakeSafe => step
            .tasks
            .iter()
            .filter(|task| task.trade.is_none())
            .filter_map(|task| Some((WorkOn::Part(task.part), task.remedy.clone()?)))
            .collect(),
        Course::Leave | Course::Refer | Course::LookFirst => Vec::new(),
    }
}

fn our_work(
    property: PropertyId,
    on: WorkOn,
    remedy: RemedyKey,
    when: Date,
    moment: Moment,
) -> Work {
    Work {
        id: moment.id(),
        property,
        visit: None,
        on,
        did: Did::Remedy(remedy),
        by: By::Us,
        when,
        exact: true,
        evidence: Evidence::OwnRecord,
    }
}

/// Reminders that an outcome settles: asking for an answer, and a cover that was made good.
fn ended(history: &History, came: Came, on: Date) -> Vec<Reminder> {
    history
        .reminders
        .iter()
        .filter(|reminder| reminder.done.is_none())
        .filter(|reminder| match reminder.because {
            Because::AskForAnswer => came != Came::NoAnswer,
            Because::CoverRunsOut => matches!(came, Came::DoneByUs | Came::DoneByOthers),
            Because::LookPromised | Because::NotSeenYet => false,
        })
        .map(|reminder| Reminder {
            done: Some(on),
            ..reminder.clone()
        })
        .collect()
}

/// Adds something to come back to.
///
/// # Errors
/// Where the property is not in the book, or the book cannot be written.
pub fn remind(
    book: &mut Book,
    property: PropertyId,
    on: Date,
    because: Because,
    words: &str,
    moment: Moment,
) -> Result<ReminderId, ActError> {
    let history = arrive::history(book, property)?;
    let reminder = Reminder {
        id: moment.id(),
        property,
        visit: history.visits.last().map(|visit| visit.id),
        on,
        because,
        words: words.trim().to_owned(),
        done: None,
    };
    let id = reminder.id;
    book.write(moment.at, |tx| {
        tx.record(Entry::Reminder(reminder))?;
        Ok(id)
    })
}

/// Ends a reminder.
///
/// # Errors
/// Where it is not in the book, or the book cannot be written.
pub fn done(
    book: &mut Book,
    property: PropertyId,
    reminder: ReminderId,
    moment: Moment,
) -> Result<(), ActError> {
    let history = arrive::history(book, property)?;
    let mut reminder = history
        .reminders
        .into_iter()
        .find(|known| known.id == reminder)
        .ok_or_else(|| ActError::not_there("there-reminder"))?;
    reminder.done = Some(moment.today);
    book.write(moment.at, |tx| {
        tx.record(Entry::Reminder(reminder))?;
        Ok(())
    })
}

/// Open reminders up to a day, soonest first, with the property they are of.
///
/// # Errors
/// Where the book cannot be read.
pub fn due(book: &Book, until: Date) -> Result<Vec<Due>, ActError> {
    Ok(book.due(until)?)
}

/// Open reminders as an iCalendar file (RFC 5545): one all-day event each.
///
/// # Errors
/// Where the book cannot be read.
pub fn calendar(book: &Book, words: &Words, moment: Moment) -> Result<String, ActError> {
    let mut calendar = Calendar::new();
    for Due { reminder, card } in due(book, Date::MAX)? {
        let mut event = Event::new();
        event
            .uid(&reminder.id.to_string())
            .timestamp_text(moment)
            .summary(&format!(
                "{}: {}",
                words.text(reminder.because.key()),
                card.address.line
            ))
            .description(&reminder.words)
            .add_property("DTSTART;VALUE=DATE", compact(reminder.on));
        calendar.push(event.done());
    }
    Ok(calendar.to_string())
}

trait Stamped {
    fn timestamp_text(&mut self, moment: Moment) -> &mut Self;
}

impl Stamped for Event {
    /// The stamp must not come from the clock of this room.
    fn timestamp_text(&mut self, moment: Moment) -> &mut Self {
        self.add_property("DTSTAMP", moment.at.strftime("%Y%m%dT%H%M%SZ").to_string())
    }
}

fn compact(date: Date) -> String {
    date.strftime("%Y%m%d").to_string()
}
