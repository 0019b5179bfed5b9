//! From a measured roof to what is ordered, hauled away and paid.
//!
//! - [`takeoff()`]: what a new covering takes, from the plan and the covering as it is laid.
//! - [`tear_off()`]: what comes down, how heavy it is and in how many loads; [`load()`]: what the roof carries.
//! - [`read_list`] and [`write_list`]: the firm's price list as a file.
//! - [`offers()`]: the courses of a verdict as priced courses, in order of time.
//! - [`worth`]: money now against money later.
//!
//! Pure: it knows no file, clock or chance.

pub mod choices;
mod code;
mod list;
mod load;
pub mod offers;
mod reading;
pub mod standing;
pub mod supplies;
pub mod takeoff;
mod tear_off;
mod weights;
pub mod worth;

pub use choices::Choices;
pub use list::{Column, PriceListError, PriceListErrors, Problem, read_list, write_list};
pub use load::load;
pub use offers::{Asking, OfferError, Patch, Wanted, offers};
pub use reading::Reading;
pub use standing::Standing;
pub use supplies::{Supplies, Supply};
pub use takeoff::{Basis, TakeoffError, takeoff};
pub use tear_off::{TearOffError, tear_off};
pub use weights::Weights;
