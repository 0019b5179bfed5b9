//! The book: one firm's whole record, an encrypted SQLite file and a folder of sealed pictures. The only room that holds records on disk.
//!
//! Where to start:
//! - [`Book`]: making, opening, and the one door to writing.
//! - [`Records`]: what can be read of an open book; [`Writing`]: what one act of a person can write.
//! - [`Entry`]: what can be recorded, and [`ink`], the journal it goes into. The tables are drawn from the ink (`project`) and can be
//!   made anew from it (`rebuild`).
//! - [`address`], [`phone`], [`spelling`]: one form for all spellings of an address or number, and how near two are; they touch no disk.
//! - [`BookError`]: what can go wrong, and what is safe then.

pub mod address;
mod backup;
mod book;
mod check;
mod content;
mod database;
mod drafts;
mod entry;
mod error;
mod exif;
mod finding;
mod folder;
mod found;
mod header;
mod history;
mod hlc;
mod ink;
mod key;
pub mod phone;
mod photos;
mod project;
mod rebuild;
mod records;
mod schema;
mod seal;
mod search;
pub mod spelling;
mod writing;

pub use backup::Backup;
pub use book::Book;
pub use check::{Checked, Problem};
pub use content::MOST_BYTES;
pub use entry::{Entry, Subject};
pub use error::{BookError, Result, system};
pub use exif::{Facts, Taken, is_picture};
pub use found::{Found, Why};
pub use hlc::{ClockOdd, HybridTime};
pub use ink::{ActId, Line, LineId};
pub use key::{Key, Salt};
pub use photos::Kept;
pub use rebuild::{Difference, Differs, Rebuilt};
pub use records::{Card, Due, Records};
pub use writing::Writing;
