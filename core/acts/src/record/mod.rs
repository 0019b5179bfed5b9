//! Taking in a visit that was written down elsewhere: read, checked in every way that can be known before, and then recorded as one act.

mod check;
pub mod file;
mod problem;
mod shape;
mod write;

pub use check::check;
pub use problem::{At, Problem, Told, Wrong};

use crate::{ActError, Moment};
use book::Book;
use file::VisitFile;
use trade::ids::{PropertyId, VisitId};
use trade::words::Said;

/// Where the pictures of a visit file come from.
pub trait PictureFiles {
    /// The bytes of a file named in the visit file, or what is wrong with it.
    ///
    /// # Errors
    /// Why it cannot be read, as half a sentence: [`book::system`].
    fn read(&self, name: &str) -> Result<Vec<u8>, Said>;
}

/// What a visit file came to.
#[derive(Clone, Copy, Debug, PartialEq, Eq, serde::Serialize)]
pub struct Taken {
    /// The property, found or new.
    pub property: PropertyId,
    /// Whether it is new.
    pub new: bool,
    /// The visit.
    pub visit: VisitId,
    /// Marks recorded, those included that closing the visit made.
    pub marks: usize,
    /// Pictures taken in.
    pub photos: usize,
}

/// Why a visit file was not taken in. Nothing was changed.
#[derive(Debug, thiserror::Error)]
pub enum NotTaken {
    /// The file says things that cannot be.
    #[error("{} problems in the visit file; nothing was changed", .0.len())]
    Problems(Vec<Problem>),
    /// The book refused it.
    #[error(transparent)]
    Act(#[from] ActError),
}

impl From<book::BookError> for NotTaken {
    fn from(error: book::BookError) -> Self {
        Self::Act(error.into())
    }
}

/// Reads a visit file from JSON.
///
/// # Errors
/// Where it is no JSON, or not of the published shape: the place and the reason.
pub fn read(json: &str) -> Result<VisitFile, NotTaken> {
    let mut reader = serde_json::Deserializer::from_str(json);
    let file: VisitFile = serde_path_to_error::deserialize(&mut reader)
        .map_err(|error| NotTaken::Problems(vec![Problem::unreadable(json, &error)]))?;
    reader
        .end()
        .map_err(|error| NotTaken::Problems(vec![Problem::no_json(&error)]))?;
    Ok(file)
}

/// Takes a visit file in, as one act: all of it, or nothing.
///
/// # Errors
/// Where it says things that cannot be, or the book refuses; nothing is changed then.
pub fn take_in(
    book: &mut Book,
    file: &VisitFile,
    pictures: &dyn PictureFiles,
    moment: Moment,
) -> Result<Taken, NotTaken> {
    let known = write::find(book, &file.property)?;
    let mut problems = check(file, moment.today);
    problems.extend(write::against_the_book(file, known.as_ref()));
    let bytes = write::pictures(file, pictures, &mut problems);
    if !problems.is_empty() {
        return Err(NotTaken::Problems(problems));
    }
    write::write(book, file, known, &bytes, moment)
}
