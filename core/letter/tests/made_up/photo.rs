//! Pictures drawn for tests, with the EXIF data a phone writes: orientation and position.

use image::codecs::jpeg::JpegEncoder;
use image::{ImageBuffer, Rgb};
use letter::Pictures;
use trade::ids::PhotoId;

/// The same picture for every id.
pub struct Drawn {
    pub jpeg: Vec<u8>,
}

impl Drawn {
    /// A roof, a wall and a sky, `width` × `height` pixels, turned as orientation 1 to 8 says.
    pub fn new(width: u32, height: u32, orientation: u8) -> Self {
        Self {
            jpeg: with_exif(&scene(width, height), orientation),
        }
    }
}

impl Pictures for Drawn {
    fn original(&self, _: PhotoId) -> Option<Vec<u8>> {
        Some(self.jpeg.clone())
    }
}

/// No picture is to be had.
pub struct Lost;

impl Pictures for Lost {
    fn original(&self, _: PhotoId) -> Option<Vec<u8>> {
        None
    }
}

fn scene(width: u32, height: u32) -> Vec<u8> {
    let picture = ImageBuffer::from_fn(width, height, |x, y| {
        // Granules of eight pixels: as hard to compress as a roof is, also when shrunk.
        let grain = ((x / 8).wrapping_mul(2_654_435_761) ^ (y / 8).wrapping_mul(2_246_822_519))
            .wrapping_mul(3_266_489_917)
            >> 27;
        let (sky, wall) = (y * 3 < height, x * 4 < width);
        let course = y % (height / 12).max(1) < (height / 120).max(1);
        let base = match (sky, wall, course) {
            (true, _, _) => [200, 215, 230],
            (false, true, _) => [190, 170, 140],
            (false, false, true) => [40, 40, 40],
            (false, false, false) => [95, 90, 85],
        };
        Rgb(base.map(|value: u8| value.saturating_add(grain as u8)))
    });
    let mut jpeg = Vec::new();
    JpegEncoder::new_with_quality(&mut jpeg, 90)
        .encode_image(&picture)
        .unwrap();
    jpeg
}

/// Puts an EXIF segment after the start of a JPEG: orientation, and a position in an invented place (TIFF 6.0, EXIF 2.3).
pub fn with_exif(jpeg: &[u8], orientation: u8) -> Vec<u8> {
    let mut tiff = b"MM\0\x2a\0\0\0\x08".to_vec();
    let entry = |tiff: &mut Vec<u8>, tag: u16, kind: u16, count: u32, value: [u8; 4]| {
        tiff.extend(tag.to_be_bytes());
        tiff.extend(kind.to_be_bytes());
        tiff.extend(count.to_be_bytes());
        tiff.extend(value);
    };
    tiff.extend(2_u16.to_be_bytes());
    entry(&mut tiff, 0x0112, 3, 1, [0, orientation, 0, 0]);
    entry(&mut tiff, 0x8825, 4, 1, 38_u32.to_be_bytes());
    tiff.extend(0_u32.to_be_bytes());
    tiff.extend(4_u16.to_be_bytes());
    entry(&mut tiff, 1, 2, 2, *b"N\0\0\0");
    entry(&mut tiff, 2, 5, 3, 92_u32.to_be_bytes());
    entry(&mut tiff, 3, 2, 2, *b"W\0\0\0");
    entry(&mut tiff, 4, 5, 3, 116_u32.to_be_bytes());
    tiff.extend(0_u32.to_be_bytes());
    for value in [41_u32, 1, 7, 1, 30, 1, 93, 1, 15, 1, 12, 1] {
        tiff.extend(value.to_be_bytes());
    }
    let length = u16::try_from(tiff.len() + 8).unwrap();
    let mut out = jpeg[..2].to_vec();
    out.extend([0xFF, 0xE1]);
    out.extend(length.to_be_bytes());
    out.extend(b"Exif\0\0");
    out.extend(tiff);
    out.extend(&jpeg[2..]);
    out
}
