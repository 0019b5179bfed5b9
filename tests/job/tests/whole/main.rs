//! The whole job, as a person does it. One program, so that Typst and SQLCipher are linked once.

mod closed_book;
mod half_typed;
mod kill;
mod likely;
mod main_story;
mod no_false_sound;
mod owner;
mod premises;
mod priced;
mod record_wrong;
mod roof;
mod said;
mod schema;
mod three_taps;
mod trouble;
mod undo;
mod worksheet;
