//! What the firm goes by: its name, the code where it works, its own policy.

use crate::{ActError, Moment};
use book::{Book, Entry};
use judge::Rules;
use trade::catalogue::Catalogue;
use trade::firm::{Firm, HousePolicy, Profile};
use trade::words::Language;

/// What a judgement goes by, as the book holds it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Going {
    /// The firm.
    pub firm: Firm,
    /// The code.
    pub profile: Profile,
    /// The policy.
    pub policy: HousePolicy,
}

impl Going {
    /// Reads it from the book.
    ///
    /// # Errors
    /// Where the book cannot be read.
    pub fn of(book: &Book) -> Result<Self, ActError> {
        Ok(Self {
            firm: book.firm()?,
            profile: book.profile()?,
            policy: book.policy()?,
        })
    }

    /// The rules to judge by.
    pub fn rules(&self) -> Rules<'_> {
        Rules {
            profile: &self.profile,
            policy: &self.policy,
            catalogue: Catalogue::standard(),
        }
    }
}

/// Sets the firm.
///
/// # Errors
/// Where the book cannot be written.
pub fn set_firm(book: &mut Book, firm: Firm, moment: Moment) -> Result<(), ActError> {
    record(book, Entry::Firm(firm), moment)
}

/// A new firm speaks the language of the device that its book is made on, until it says otherwise.
///
/// # Errors
/// Where the book cannot be read or written.
pub fn speak(book: &mut Book, language: Language, moment: Moment) -> Result<(), ActError> {
    let mut firm = book.firm()?;
    if firm.language != language {
        firm.language = language;
        set_firm(book, firm, moment)?;
    }
    Ok(())
}

/// Sets the code profile.
///
/// # Errors
/// Where the book cannot be written.
pub fn set_profile(book: &mut Book, profile: Profile, moment: Moment) -> Result<(), ActError> {
    record(book, Entry::Profile(profile), moment)
}

/// Sets the house policy.
///
/// # Errors
/// Where the book cannot be written.
pub fn set_policy(book: &mut Book, policy: HousePolicy, moment: Moment) -> Result<(), ActError> {
    record(book, Entry::Policy(policy), moment)
}

fn record(book: &mut Book, entry: Entry, moment: Moment) -> Result<(), ActError> {
    book.write(moment.at, |tx| {
        tx.record(entry)?;
        Ok(())
    })
}
