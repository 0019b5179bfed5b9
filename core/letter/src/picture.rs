//! Pictures at print size: upright, small, and without anything but what they show.

use crate::Pictures;
use crate::content::Picture;
use image::codecs::jpeg::JpegEncoder;
use image::metadata::Orientation;
use image::{DynamicImage, ImageDecoder, ImageReader, Limits};
use std::io::Cursor;

/// Longer side in pixels: 200 to the inch at the width of 3.2 inches that a letter shows a picture at.
pub const LONGER_SIDE: u32 = 640;
const QUALITY: u8 = 82;
/// The most memory one picture may take while it is read: a hundred megapixels.
const MOST_MEMORY: u64 = 300_000_000;

/// A picture as it goes into the letter.
pub struct Shrunk {
    /// JPEG bytes holding pixels alone.
    pub jpeg: Vec<u8>,
    /// Width in pixels.
    pub width: u32,
    /// Height in pixels.
    pub height: u32,
}

/// One picture, shrunk. The original is let go before this returns. `None` where it is not to be had or can't be read.
pub fn shrunk(pictures: &dyn Pictures, picture: &Picture) -> Option<Shrunk> {
    let original = pictures.original(picture.photo)?;
    let upright = upright(&original, picture.orientation)?;
    drop(original);
    written_anew(upright)
}

fn upright(original: &[u8], recorded: u8) -> Option<DynamicImage> {
    let mut limits = Limits::default();
    limits.max_alloc = Some(MOST_MEMORY);
    let mut reader = ImageReader::new(Cursor::new(original))
        .with_guessed_format()
        .ok()?;
    reader.limits(limits);
    let mut decoder = reader.into_decoder().ok()?;
    // What the file says of itself goes before what the record says of it.
    let orientation = match decoder.orientation().ok()? {
        Orientation::NoTransforms => {
            Orientation::from_exif(recorded).unwrap_or(Orientation::NoTransforms)
        }
        said => said,
    };
    let full = DynamicImage::from_decoder(decoder).ok()?;
    let mut small = if full.width().max(full.height()) > LONGER_SIDE {
        full.thumbnail(LONGER_SIDE, LONGER_SIDE)
    } else {
        full
    };
    small.apply_orientation(orientation);
    Some(small)
}

fn written_anew(picture: DynamicImage) -> Option<Shrunk> {
    let pixels = picture.into_rgb8();
    let mut jpeg = Vec::new();
    JpegEncoder::new_with_quality(&mut jpeg, QUALITY)
        .encode_image(&pixels)
        .ok()?;
    Some(Shrunk {
        jpeg,
        width: pixels.width(),
        height: pixels.height(),
    })
}
