//! An outline from a file, whichever of the two kinds it is.

use crate::error::ShapeError;
use crate::geojson;
use crate::json::{At, parse};
use crate::outline_file;
use trade::sketch::Drawn;
use trade::units::{Length, Pitch};

/// Reads GeoJSON where the file says that it is, by its `type`, else the plain outline file. Pitch and overhang hold where the file says none.
///
/// # Errors
/// Where it is neither, or bounds no roof: what is wrong and where.
pub fn read_outline(
    text: &str,
    pitch: Option<Pitch>,
    overhang: Length,
) -> Result<Drawn, ShapeError> {
    let is_geojson = At::root(&parse(text)?).member("type")?.is_some();
    if is_geojson {
        geojson::read(text, pitch, overhang)
    } else {
        outline_file::read(text, pitch, overhang)
    }
}
