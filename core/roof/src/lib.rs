//! From what was measured of a roof to its planes and lines, and how a covering is laid on them. Pure: it knows no file, clock or chance.

pub mod angles;
mod dormer;
pub mod draw;
pub mod error;
pub mod export;
pub mod frame;
pub mod geojson;
mod json;
pub mod laying;
pub mod leak;
mod loops;
mod outline;
pub mod outline_file;
mod plan;
mod planes;
mod read;
pub mod skeleton;
pub mod survey;
mod typed;

pub use dormer::back_to_the_top;
pub use error::ShapeError;
pub use plan::{plan, plan_of};
pub use read::read_outline;
