//! Taking in a visit that was written down elsewhere.

pub mod file;
