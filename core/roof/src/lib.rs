//! From what was measured of a roof to its planes and lines, and how a covering is laid on them. Pure: it knows no file, clock or chance.

pub mod angles;
pub mod draw;
pub mod export;
pub mod frame;
pub mod laying;
pub mod leak;
pub mod skeleton;
