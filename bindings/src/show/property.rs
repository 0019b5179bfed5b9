//! Property: what stands there, who lives there, what else it is called; and whether two addresses are one place.

use crate::block::{Button, Form, Row};
use crate::cross::mirror;

mirror! {
    /// Another record of the same place, with the tap that joins it or parts it.
    Twin of screens::Twin {
        /// Its address and who lives there.
        row: Row,
        /// Joins it, or parts it.
        tap: Button,
    }

    /// The state of Property.
    PropertyState of screens::Property {
        /// The address.
        address: String,
        /// The heading.
        title: String,
        /// Its other addresses.
        also: Vec<Row>,
        /// The heading over them.
        also_title: String,
        /// Address, other address, what holds on every visit.
        place: Vec<Form>,
        /// The heading over the people.
        people_title: String,
        /// The people, each to be written anew, and one more.
        people: Vec<Form>,
        /// The heading over the structures.
        structures_title: String,
        /// The structures.
        structures: Vec<Form>,
        /// The heading over what may be the same place.
        same_title: String,
        /// What was joined with it.
        joined: Vec<Twin>,
        /// Looking for the same place under another address.
        same: Form,
        /// What was found.
        found: Vec<Twin>,
        /// What to say where nothing was found.
        none: Option<String>,
        /// What erasing destroys.
        erase_says: String,
        /// Erasing.
        erase: Form,
        /// The way back.
        back: Button,
    }
}
