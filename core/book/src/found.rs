//! What a search found, and why.

use crate::records::Card;
use trade::property::Address;

/// One property that a search found.
#[derive(Clone, Debug, PartialEq)]
pub struct Found {
    /// The property; where it was joined with another, the kept one.
    pub card: Card,
    /// Why it was found.
    pub why: Why,
    /// What speaks against it: 0 where nothing does. Results come with the least first.
    pub away: u32,
}

/// Why a property was found.
#[derive(Clone, Debug, PartialEq)]
pub enum Why {
    /// By the address the firm writes to.
    Address {
        /// Whether it is spelled otherwise than it was typed, or is another house on the street.
        nearly: bool,
    },
    /// By another of its addresses: the other street of a corner lot, an old name, that of a property joined with it.
    OtherAddress {
        /// That address.
        address: Address,
        /// Whether it is spelled otherwise than it was typed, or is another house on the street.
        nearly: bool,
    },
    /// By one of its people.
    Person {
        /// The name as it was recorded.
        name: String,
        /// Whether it is spelled otherwise than it was typed.
        nearly: bool,
    },
    /// By a telephone number.
    Phone {
        /// The number as it was recorded.
        number: String,
    },
    /// By where it stands.
    Position {
        /// How far that is, in metres.
        metres: f64,
    },
}
