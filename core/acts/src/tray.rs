//! The tray: pictures and words taken first and tied to a part later.

use crate::walk::Spot;
use crate::{ActError, Moment, mark, visit};
use book::{Book, Entry, Writing};
use trade::history::History;
use trade::ids::{NoteId, PartId, PhotoId, PropertyId, VisitId};
use trade::mark::{Condition, NotSeen};
use trade::visit::{Note, Photo};
use trade::words::Said;

/// Takes a picture in. With a spot it lands there, without one it lies in the tray.
///
/// # Errors
/// Where the visit is closed, the bytes are no picture, or the book cannot be written; then nothing is kept.
pub fn shoot(
    book: &mut Book,
    visit: VisitId,
    spot: Option<&Spot>,
    bytes: &[u8],
    moment: Moment,
) -> Result<PhotoId, ActError> {
    let (history, open) = visit::find_open(book, visit)?;
    book.write(moment.at, |tx| {
        let id = taken(tx, open.property, visit, bytes, moment)?;
        if let Some(spot) = spot {
            mark::write(tx, &history, &open, spot, moment, |mark, _| {
                mark.photos.push(id);
            })?;
        }
        Ok(id)
    })
}

/// Records a picture, as a piece of a larger act.
pub(crate) fn taken(
    tx: &mut Writing<'_>,
    property: PropertyId,
    visit: VisitId,
    bytes: &[u8],
    moment: Moment,
) -> Result<PhotoId, ActError> {
    let kept = tx.put_photo(bytes)?;
    let photo = Photo {
        id: moment.id(),
        property,
        visit,
        sha256: kept.sha256,
        taken: kept
            .facts
            .taken
            .and_then(|taken| taken.at(moment.offset))
            .unwrap_or(moment.at),
        position: kept.facts.position,
        direction: kept.facts.direction,
        orientation: kept.facts.orientation,
        caption: String::new(),
    };
    let id = photo.id;
    tx.record(Entry::Photo(photo))?;
    Ok(id)
}

/// Keeps words for later.
///
/// # Errors
/// Where the visit is closed, nothing was said, or the book cannot be written.
pub fn say(
    book: &mut Book,
    visit: VisitId,
    words: &str,
    moment: Moment,
) -> Result<NoteId, ActError> {
    visit::find_open(book, visit)?;
    if words.trim().is_empty() {
        return Err(ActError::wrong("words", Said::new("wrong-nothing-said")));
    }
    let note = Note {
        id: moment.id(),
        visit,
        at: moment.at,
        words: words.trim().to_owned(),
    };
    let id = note.id;
    book.write(moment.at, |tx| {
        tx.record(Entry::Note(note))?;
        Ok(id)
    })
}

/// Ties a picture to a spot. A part that had no mark gets one that says no more than that there is a picture.
///
/// # Errors
/// As [`mark::change`].
pub fn tie_photo(
    book: &mut Book,
    visit: VisitId,
    photo: PhotoId,
    spot: &Spot,
    moment: Moment,
) -> Result<PartId, ActError> {
    mark::change(book, visit, spot, moment, |mark, _| {
        if !mark.photos.contains(&photo) {
            mark.photos.push(photo);
        }
    })
}

/// Ties words to a spot, after what is said there already, and takes them out of the tray.
///
/// # Errors
/// As [`mark::change`].
pub fn tie_note(
    book: &mut Book,
    visit: VisitId,
    note: NoteId,
    spot: &Spot,
    moment: Moment,
) -> Result<PartId, ActError> {
    let (history, open) = visit::find_open(book, visit)?;
    let words = history
        .notes
        .iter()
        .find(|known| known.id == note)
        .map(|note| note.words.clone())
        .ok_or_else(|| ActError::not_there("there-note"))?;
    book.write(moment.at, |tx| {
        let part = mark::write(tx, &history, &open, spot, moment, |mark, _| {
            if !mark.words.is_empty() {
                mark.words.push(' ');
            }
            mark.words.push_str(&words);
        })?;
        tx.withdraw(note)?;
        Ok(part)
    })
}

/// Sets what a picture shows.
///
/// # Errors
/// Where the visit is closed, the picture is not in the book, or the book cannot be written.
pub fn set_caption(
    book: &mut Book,
    visit: VisitId,
    photo: PhotoId,
    caption: &str,
    moment: Moment,
) -> Result<(), ActError> {
    let (history, _) = visit::find_open(book, visit)?;
    let mut photo = history
        .photos
        .iter()
        .find(|known| known.id == photo)
        .cloned()
        .ok_or_else(|| ActError::not_there("there-picture"))?;
    caption.trim().clone_into(&mut photo.caption);
    book.write(moment.at, |tx| {
        tx.record(Entry::Photo(photo))?;
        Ok(())
    })
}

/// The pictures of a visit that are tied to no part.
pub fn loose_photos(history: &History, visit: VisitId) -> Vec<&Photo> {
    history
        .photos
        .iter()
        .filter(|photo| photo.visit == visit)
        .filter(|photo| {
            !history
                .marks
                .iter()
                .any(|mark| mark.photos.contains(&photo.id))
        })
        .filter(|photo| {
            !history
                .outcomes
                .iter()
                .any(|outcome| outcome.photos.contains(&photo.id))
        })
        .collect()
}

/// The words of a visit that are tied to no part.
pub fn loose_notes(history: &History, visit: VisitId) -> Vec<&Note> {
    history
        .notes
        .iter()
        .filter(|note| note.visit == visit)
        .collect()
}

/// Parts that have a picture or words but no rung yet: to be completed at the tailgate.
pub fn half_done(history: &History, visit: VisitId) -> Vec<PartId> {
    history
        .parts
        .iter()
        .filter(|part| {
            history.mark_on(part.id, visit).is_some_and(|mark| {
                matches!(
                    mark.condition,
                    Condition::NotSeen {
                        why: NotSeen::NotReached
                    }
                ) && (!mark.photos.is_empty() || !mark.words.is_empty())
            })
        })
        .map(|part| part.id)
        .collect()
}

/// A small upright picture; the original where this program cannot make one (HEIC).
///
/// # Errors
/// Where it is not in the book or damaged.
pub fn thumbnail(book: &Book, photo: PhotoId) -> Result<Vec<u8>, ActError> {
    let sha256 = sha256(book, photo)?;
    match book.thumbnail(&sha256)? {
        Some(small) => Ok(small),
        None => Ok(book.photo_bytes(&sha256)?),
    }
}

/// A picture as it was taken.
///
/// # Errors
/// Where it is not in the book or damaged.
pub fn original(book: &Book, photo: PhotoId) -> Result<Vec<u8>, ActError> {
    Ok(book.photo_bytes(&sha256(book, photo)?)?)
}

fn sha256(book: &Book, photo: PhotoId) -> Result<String, ActError> {
    match book.get(photo)? {
        Some(Entry::Photo(photo)) => Ok(photo.sha256),
        _ => Err(ActError::not_there("there-picture")),
    }
}
