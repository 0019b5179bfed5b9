//! The nouns of the trade, and the catalogue they draw on.
//!
//! Where to start:
//! - [`property`]: what stands at an address: structures, slopes, parts.
//! - [`mark`]: what was recorded about one part on one visit, and [`visit`], the visit itself.
//! - [`thread`]: one part's marks through all visits, and what became of it.
//! - [`verdict`]: what to do with a structure, and why.
//! - [`sketch`]: what was measured of a roof, [`roof`]: its planes and lines, [`laid`]: a covering laid on them.
//! - [`takeoff`]: what a roof takes and what comes down, [`price_list`]: the firm's own prices, [`worksheet`]: what was counted and chosen for
//!   an offer, [`offer`]: the priced courses.
//! - [`catalogue`]: kinds of part, defects and remedies, read from the data files beside this crate.
//! - [`words`]: every sentence a person reads, in English and Spanish.
//!
//! This room knows no file, clock, network or random source: dates and identifiers are handed in.

pub mod answer;
pub mod catalogue;
pub mod doorstep;
pub mod drawing;
pub mod firm;
pub mod history;
pub mod ids;
pub mod ladder;
pub mod laid;
pub mod leak;
pub mod letter;
pub mod mark;
pub mod offer;
pub mod outcome;
pub mod price_list;
pub mod property;
pub mod roof;
pub mod sketch;
pub mod stack;
pub mod takeoff;
pub mod thread;
pub mod units;
pub mod verdict;
pub mod visit;
pub mod words;
pub mod work;
pub mod worksheet;
