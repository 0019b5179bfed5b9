//! Who uses whom: the arrows between the rooms and between the modules inside each, read from the sources themselves.
//!
//! - [`rooms`]: the rooms as Cargo knows them, each with its modules.
//! - [`source`]: the paths that one module names, tests left out.
//! - [`law`]: which room may use which, and what the pure ones may not name.
//! - [`print`]: the arrows as text, kept in `arrows.txt` and compared.

pub mod law;
pub mod print;
pub mod rooms;
pub mod source;
