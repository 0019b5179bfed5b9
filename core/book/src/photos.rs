//! Pictures: taken in as they are, with what their EXIF says, and small ones to show in lists.

use crate::book::Book;
use crate::error::{BookError, Result};
use crate::exif::{self, Facts};
use crate::folder::{self, Folder};
use crate::records::Records;
use crate::seal;
use crate::writing::Writing;
use image::{DynamicImage, ImageFormat, ImageReader, Limits};
use std::fs;
use std::io::Cursor;
use std::path::PathBuf;

/// The longer side of a thumbnail in pixels.
const THUMBNAIL: u32 = 320;
/// The most pixels a side and the most memory that decoding may take: a small file can claim to be a huge picture.
const MOST_PIXELS_A_SIDE: u32 = 20_000;
const MOST_MEMORY: u64 = 512 << 20;

/// A picture that was taken in.
#[derive(Clone, Debug, PartialEq)]
pub struct Kept {
    /// SHA-256 of its bytes, lower-case hexadecimal: what [`trade::visit::Photo::sha256`] holds.
    pub sha256: String,
    /// What the picture says of itself.
    pub facts: Facts,
}

impl Book {
    /// Takes in a picture. It is on the disk when this returns.
    ///
    /// # Errors
    /// [`BookError::NotAPicture`], [`BookError::TooLarge`], or what the disk says; nothing is kept then.
    pub fn put_photo(&mut self, bytes: &[u8]) -> Result<Kept> {
        keep_photo(self, bytes)
    }

    /// Takes in a letter's PDF and gives its SHA-256. It is on the disk when this returns.
    ///
    /// # Errors
    /// [`BookError::TooLarge`], or what the disk says.
    pub fn put_letter(&mut self, pdf: &[u8]) -> Result<String> {
        self.keep(pdf)
    }
}

impl Writing<'_> {
    /// Takes in a picture as part of this act.
    ///
    /// # Errors
    /// As [`Book::put_photo`].
    pub fn put_photo(&mut self, bytes: &[u8]) -> Result<Kept> {
        keep_photo(self, bytes)
    }

    /// Takes in a letter's PDF as part of this act.
    ///
    /// # Errors
    /// As [`Book::put_letter`].
    pub fn put_letter(&mut self, pdf: &[u8]) -> Result<String> {
        self.keep(pdf)
    }
}

fn keep_photo(records: &Records, bytes: &[u8]) -> Result<Kept> {
    let facts = exif::read(bytes)?;
    Ok(Kept {
        sha256: records.keep(bytes)?,
        facts,
    })
}

impl Records {
    /// The bytes of a picture as it was taken. They are checked against their SHA-256.
    ///
    /// # Errors
    /// [`BookError::FileDamaged`] where they are gone or no longer what they were.
    pub fn photo_bytes(&self, sha256: &str) -> Result<Vec<u8>> {
        self.content(sha256)
    }

    /// The bytes of a letter's PDF.
    ///
    /// # Errors
    /// [`BookError::FileDamaged`] where they are gone or no longer what they were.
    pub fn letter_pdf(&self, sha256: &str) -> Result<Vec<u8>> {
        self.content(sha256)
    }

    /// A small upright JPEG of a picture, without EXIF, made when first asked for and kept sealed; `None` where this program cannot decode
    /// the picture (HEIC).
    ///
    /// # Errors
    /// As [`Records::photo_bytes`].
    pub fn thumbnail(&self, sha256: &str) -> Result<Option<Vec<u8>>> {
        let name = seal::unhex::<32>(sha256).ok_or_else(|| BookError::FileDamaged {
            sha256: sha256.to_owned(),
        })?;
        let path = self.thumbnail_path(&name);
        if let Some(small) = self.read_thumbnail(&name, &path)? {
            return Ok(Some(small));
        }
        let original = self.content(sha256)?;
        let Some(small) = shrink(&original, exif::orientation(&original)) else {
            return Ok(None);
        };
        if let Some(key) = self.kept(&name)? {
            let sealed = seal::seal(&key.derived("thumbnail"), &small, &name)?;
            // A cache: where it cannot be written, it is made again next time.
            let _ = folder::put(&path, &sealed);
        }
        Ok(Some(small))
    }

    fn read_thumbnail(&self, name: &[u8; 32], path: &PathBuf) -> Result<Option<Vec<u8>>> {
        let (Ok(sealed), Some(key)) = (fs::read(path), self.kept(name)?) else {
            return Ok(None);
        };
        Ok(seal::unseal(&key.derived("thumbnail"), &sealed, name))
    }

    pub(crate) fn thumbnail_path(&self, sha256: &[u8; 32]) -> PathBuf {
        Folder::place(&self.folder.thumbnails(), &self.content_name(sha256))
    }
}

fn shrink(bytes: &[u8], orientation: u8) -> Option<Vec<u8>> {
    let mut reader = ImageReader::new(Cursor::new(bytes))
        .with_guessed_format()
        .ok()?;
    let mut limits = Limits::default();
    limits.max_image_width = Some(MOST_PIXELS_A_SIDE);
    limits.max_image_height = Some(MOST_PIXELS_A_SIDE);
    limits.max_alloc = Some(MOST_MEMORY);
    reader.limits(limits);
    let picture = reader.decode().ok()?;
    let small = upright(picture.thumbnail(THUMBNAIL, THUMBNAIL), orientation);
    let mut out = Cursor::new(Vec::new());
    DynamicImage::ImageRgb8(small.into_rgb8())
        .write_to(&mut out, ImageFormat::Jpeg)
        .ok()?;
    Some(out.into_inner())
}

/// Turns a picture as its EXIF orientation says (EXIF 2.32, tag 0x0112).
fn upright(picture: DynamicImage, orientation: u8) -> DynamicImage {
    match orientation {
        2 => picture.fliph(),
        3 => picture.rotate180(),
        4 => picture.flipv(),
        5 => picture.rotate90().fliph(),
        6 => picture.rotate90(),
        7 => picture.rotate270().fliph(),
        8 => picture.rotate270(),
        _ => picture,
    }
}
