//! The letter: what the owner gets.

use crate::judge::Judged;
use crate::roofed::{self, RoofTold};
use crate::{ActError, Moment, judge};
use ::letter::{Content, Material, Pictures, Roofed};
use book::{Book, Entry};
use trade::catalogue::Catalogue;
use trade::history::History;
use trade::ids::{LetterId, PhotoId, VisitId};
use trade::letter::Letter;
use trade::outcome::{Because, Reminder};
use trade::verdict::Course;
use trade::words::Language;

/// The pictures of a property, read from the book one at a time.
struct FromBook<'a> {
    book: &'a Book,
    history: &'a History,
}

impl Pictures for FromBook<'_> {
    fn original(&self, photo: PhotoId) -> Option<Vec<u8>> {
        let photo = self.history.photos.iter().find(|known| known.id == photo)?;
        self.book.photo_bytes(&photo.sha256).ok()
    }
}

/// A letter drawn three ways from one content.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Drawn {
    /// As a PDF.
    pub pdf: Vec<u8>,
    /// As a page.
    pub html: String,
    /// As a short text to send.
    pub text: String,
}

/// The content of the letter that a visit would give today.
///
/// # Errors
/// Where the visit is not in the book, or the book cannot be read.
pub fn compose(
    book: &Book,
    visit: VisitId,
    language: Language,
    moment: Moment,
) -> Result<(Judged, Content), ActError> {
    let judged = judge::judge(book, visit, moment)?;
    let told = roofed::roofs(book, &judged, language, moment)?;
    let roofs: Vec<Roofed<'_>> = told.iter().map(RoofTold::roofed).collect();
    let content = ::letter::compose(&Material {
        firm: &judged.going.firm,
        profile: &judged.going.profile,
        history: &judged.history,
        visit,
        threads: &judged.threads,
        verdicts: &judged.verdicts,
        roofs: &roofs,
        catalogue: Catalogue::standard(),
        language,
        on: moment.today,
    });
    Ok((judged, content))
}

/// Draws a letter without keeping it.
///
/// # Errors
/// As [`compose`], and where a picture cannot be read or the page cannot be set.
pub fn draw(
    book: &Book,
    visit: VisitId,
    language: Language,
    moment: Moment,
) -> Result<(Judged, Drawn), ActError> {
    let (judged, content) = compose(book, visit, language, moment)?;
    let pictures = FromBook {
        book,
        history: &judged.history,
    };
    let drawn = Drawn {
        pdf: ::letter::pdf(&content, &pictures)?,
        html: ::letter::html(&content, &pictures),
        text: ::letter::text(&content),
    };
    Ok((judged, drawn))
}

/// Makes the letter of a closed visit, keeps it word for word, and reminds to ask for the answer and of every cover that runs out.
///
/// # Errors
/// As [`draw`]; and where the visit is still open or the book cannot be written.
pub fn make(
    book: &mut Book,
    visit: VisitId,
    language: Language,
    moment: Moment,
) -> Result<(LetterId, Drawn), ActError> {
    let (judged, drawn) = draw(book, visit, language, moment)?;
    keep(book, &judged, drawn, language, moment)
}

/// Keeps a letter that was just drawn.
///
/// # Errors
/// Where the visit is still open or the book cannot be written.
pub fn keep(
    book: &mut Book,
    judged: &Judged,
    drawn: Drawn,
    language: Language,
    moment: Moment,
) -> Result<(LetterId, Drawn), ActError> {
    if judged.visit.closed.is_none() {
        return Err(ActError::StillOpen);
    }
    let reminders = reminders(judged, moment);
    book.write(moment.at, |tx| {
        let sha256 = tx.put_letter(&drawn.pdf)?;
        let letter = Letter {
            id: moment.id(),
            property: judged.history.property.id,
            visit: judged.visit.id,
            made: moment.at,
            on: moment.today,
            language,
            verdicts: judged.verdicts.clone(),
            sha256,
            text: drawn.text.clone(),
            out_of_date: None,
        };
        let id = letter.id;
        tx.record(Entry::Letter(letter))?;
        for reminder in reminders {
            tx.record(Entry::Reminder(reminder))?;
        }
        Ok((id, drawn))
    })
}

fn reminders(judged: &Judged, moment: Moment) -> Vec<Reminder> {
    let property = judged.history.property.id;
    let new = |on, because| Reminder {
        id: moment.id(),
        property,
        visit: Some(judged.visit.id),
        on,
        because,
        words: String::new(),
        done: None,
    };
    let days = i64::from(judged.going.policy.ask_after_days);
    let ask = moment
        .today
        .checked_add(jiff::Span::new().days(days))
        .unwrap_or(moment.today);
    judged
        .verdicts
        .iter()
        .flat_map(|verdict| &verdict.steps)
        .filter_map(|step| Some(new(step.until?, because(step.course))))
        .chain([new(ask, Because::AskForAnswer)])
        .collect()
}

/// A temporary cover runs out on its day; any other day named in a verdict is that of a look.
fn because(course: Course) -> Because {
    match course {
        Course::MakeSafe => Because::CoverRunsOut,
        _ => Because::LookPromised,
    }
}

/// The PDF of a letter as it was made.
///
/// # Errors
/// Where it is not in the book or damaged.
pub fn pdf(book: &Book, letter: LetterId) -> Result<Vec<u8>, ActError> {
    match book.get(letter)? {
        Some(Entry::Letter(letter)) => Ok(book.letter_pdf(&letter.sha256)?),
        _ => Err(ActError::not_there("there-letter")),
    }
}

/// Page one of a letter: each question an owner asks, and its answer in lines.
pub fn page_one(content: &Content) -> Vec<(String, Vec<String>)> {
    content
        .answers
        .iter()
        .map(|answer| {
            let says: Vec<String> = answer
                .says
                .iter()
                .map(|line| match &line.lead {
                    Some(lead) => format!("{lead} {}", line.says),
                    None => line.says.to_string(),
                })
                .collect();
            (answer.question.to_string(), says)
        })
        .collect()
}
