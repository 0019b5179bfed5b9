//! What a person does with the book: one function each, one transaction each.

pub mod record;
